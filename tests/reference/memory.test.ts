import {setFlagsFromString} from 'node:v8';
import {runInNewContext} from 'node:vm';
import sharp from 'sharp';
import {afterEach, beforeEach, describe, expect, it, vi} from 'vitest';
import {openDesk} from '../../src/photo/desk.js';
import type {Desk} from '../../src/photo/desk.js';

/** Pixels of the photo, and what they take, four bytes each. */
const [WIDTH, HEIGHT] = [2400, 1600];
const PHOTO_MB = WIDTH * HEIGHT * 4 / 1e6;
/** What may come and go beside photos, MB: a photo that stays is seven times that. */
const NOISE_MB = 2;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** MB that Node counts in array buffers, once rubbish is collected. */
async function held(): Promise<number> {
  for (let turn = 0; turn < 3; turn++) {
    collect();
    await new Promise((resolve) => { setTimeout(resolve, 5); });
  }
  return process.memoryUsage().arrayBuffers / 1e6;
}

/** What the desk needs of a browser: a decoder and a canvas, which here give pixels of no meaning in the right number. */
function lendBrowser(): {readonly openBitmaps: () => number} {
  let bitmaps = 0;
  vi.stubGlobal('createImageBitmap', (_: unknown, options?: {readonly resizeWidth?: number; readonly resizeHeight?: number}) => {
    bitmaps++;
    return Promise.resolve({
      width: options?.resizeWidth ?? WIDTH, height: options?.resizeHeight ?? HEIGHT, close: () => { bitmaps--; },
    });
  });
  vi.stubGlobal('OffscreenCanvas', class {
    getContext() {
      return {
        drawImage: () => undefined,
        getImageData: (_x: number, _y: number, width: number, height: number) =>
          ({data: new Uint8ClampedArray(width * height * 4).fill(255)}),
      };
    }
  });
  return {openBitmaps: () => bitmaps};
}

/** A file of that size, a few kilobytes since it is plain. */
async function plainFile(kind: 'png' | 'jpeg'): Promise<Blob> {
  const image = sharp({create: {width: WIDTH, height: HEIGHT, channels: 3, background: 'gray'}});
  return new Blob([new Uint8Array(await image.toFormat(kind).toBuffer())]);
}

async function open(desk: Desk, photo: number, file: Blob): Promise<{readonly close: () => void}> {
  const reply = await desk({do: 'open', photo, file});
  const opened = ('answer' in reply ? reply.answer : undefined) as {readonly width?: number; readonly preview?: {close: () => void}} | undefined;
  expect(opened?.width).toBe(WIDTH);
  return opened!.preview!;
}

// Measured by Node's own count of what array buffers hold. The decoder's part is the browser's: `bench/photo.mjs` measures that.
describe('memory of photos', () => {
  beforeEach(() => vi.unstubAllGlobals());
  afterEach(() => vi.unstubAllGlobals());

  it.each(['png', 'jpeg'] as const)('is that of one photo, however often it is replaced, and none once it is closed: %s', async (kind) => {
    const browser = lendBrowser();
    const file = await plainFile(kind);
    const desk = openDesk(() => undefined);
    // Tables that are made once are made now.
    (await open(desk, 0, file)).close();
    await desk({do: 'ask', photo: 0, question: 'level', asked: {region: {x: 10, y: 10, width: 99, height: 99}}, other: undefined});
    await desk({do: 'close', photo: 0});
    const empty = await held();

    (await open(desk, 1, file)).close();
    const one = await held() - empty;
    expect(one).toBeGreaterThan(PHOTO_MB);
    expect(one).toBeLessThan(PHOTO_MB + 3); // the sums over tiles

    for (let photo = 2; photo <= 5; photo++) {
      (await open(desk, photo, file)).close();
      await desk({do: 'ask', photo, question: 'level', asked: {region: {x: 10, y: 10, width: 99, height: 99}}, other: photo - 1});
      await desk({do: 'close', photo: photo - 1});
    }
    expect(await held() - empty).toBeLessThan(one + NOISE_MB);

    await desk({do: 'close', photo: 5});
    expect(await held() - empty).toBeLessThan(NOISE_MB);
    expect(browser.openBitmaps()).toBe(0);
  });

  it('is not kept for a photo that was refused or could not be read to its end', async () => {
    lendBrowser();
    const file = await plainFile('png');
    const desk = openDesk(() => undefined);
    const before = await held();
    vi.stubGlobal('OffscreenCanvas', class {
      getContext() {
        return {drawImage: () => undefined, getImageData: () => { throw new RangeError('no memory'); }};
      }
    });
    const reply = await desk({do: 'open', photo: 1, file});
    expect('answer' in reply && reply.answer).toMatchObject({problem: 'too-large'});
    expect(await held() - before).toBeLessThan(NOISE_MB);
  });
});
