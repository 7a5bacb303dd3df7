import {assert, expect} from '@open-wc/testing';
import {openPhoto} from '../../src/photo/open.js';
import type {Photo} from '../../src/photo/open.js';
import {isPhotoProblem} from '../../src/photo/problem.js';
import {withExif} from './exif.js';
import {drawn, fill, shot} from './pictures.js';

async function opened(file: Blob, options = {}): Promise<Photo> {
  const result = await openPhoto(file, options);
  if (isPhotoProblem(result)) assert.fail(result.problem);
  return result;
}

type Rectangle = readonly [number, number, number, number];
interface Truth {
  readonly file: string;
  readonly card?: {readonly patches_px: Record<'white' | 'gray' | 'black', {rect: Rectangle; mean_linear: readonly [number, number, number]}>};
}

/** Ground truth of the rendered card shots: tests/reference/shots/shots.json. */
async function truthOf(name: string): Promise<NonNullable<Truth['card']>['patches_px']> {
  const {shots} = await fetch(new URL('../reference/shots/shots.json', import.meta.url)).then((response) => response.json()) as
    {shots: readonly Truth[]};
  return shots.find(({file}) => file === name)!.card!.patches_px;
}

const cropOf = ([x, y, width, height]: Rectangle) => ({x, y, width, height});

describe('the gray card in a JPEG file', () => {
  for (const inPage of [false, true]) {
    for (const name of ['card-neutral.jpg', 'card-warm.jpg']) {
      it(`${name}, ${inPage ? 'in the page' : 'in a worker'}: gains are those of the render within 1 per cent`, async () => {
        const {white, gray, black} = await truthOf(name);
        const photo = await opened(await shot(name), {inPage});
        const patches = {white: cropOf(white.rect), gray: cropOf(gray.rect), black: cropOf(black.rect)};
        const reading = await photo.ask('readCard', patches);
        const [red, green, blue] = gray.mean_linear;
        expect(reading.gains!.red).to.be.closeTo(green / red, 0.01 * green / red);
        expect(reading.gains!.blue).to.be.closeTo(green / blue, 0.01 * green / blue);
        const level = await photo.ask('level', {region: patches.gray});
        expect(level.blue.mean).to.equal(reading.gray.blue.mean);
        photo.close();
      });
    }
  }

  it('reads the same when the camera was held upright', async () => {
    const {gray} = await truthOf('card-neutral.jpg');
    const [x, y, width, height] = gray.rect;
    const [red, green, blue] = gray.mean_linear;
    const photo = await opened(await withExif(await shot('card-neutral.jpg'), {Orientation: 6}));
    // Turned clockwise: what was at the bottom is at the left.
    const level = await photo.ask('level', {region: {x: photo.width - y - height, y: x, width: height, height: width}});
    expect(level.green.mean / level.red.mean).to.be.closeTo(green / red, 0.01 * green / red);
    expect(level.green.mean / level.blue.mean).to.be.closeTo(green / blue, 0.01 * green / blue);
    photo.close();
  });
});

describe('a picture that was not rounded', () => {
  it('reads as its pixels are', async () => {
    const photo = await opened(await drawn(64, 64, (pen) => fill(pen, [120, 117, 111], 0, 0, 64, 64)));
    const {red, green, blue} = await photo.ask('level', {region: {x: 5, y: 5, width: 50, height: 50}});
    for (const [{code}, expected] of [[red, 120], [green, 117], [blue, 111]] as const) expect(code).to.be.closeTo(expected, 1e-9);
    photo.close();
  });
});
