import {assert, expect} from '@open-wc/testing';
import type {FileFacts} from '../../src/photo/kind.js';
import {openPhoto} from '../../src/photo/open.js';
import type {Photo} from '../../src/photo/open.js';
import {isPhotoProblem} from '../../src/photo/problem.js';
import type {PhotoProblem} from '../../src/photo/problem.js';
import {oddFile} from './odd-files.js';
import type {OddFile} from './odd-files.js';
import {bytesOf, drawn, fill, png, shot} from './pictures.js';

async function opened(file: Blob): Promise<Photo> {
  const result = await openPhoto(file);
  if (isPhotoProblem(result)) assert.fail(`${result.problem} (${result.kind})`);
  return result;
}

async function refused(file: Blob): Promise<PhotoProblem> {
  const result = await openPhoto(file);
  if (!isPhotoProblem(result)) {
    result.close();
    assert.fail('opened');
  }
  return result;
}

/** Whether this browser can decode a file at all. */
const decodes = (file: Blob) => createImageBitmap(file).then(() => true, () => false);

/** Mean codes of a part of the photo, from its tally. */
async function meanOf(photo: Photo, x: number, y: number, width: number, height: number): Promise<number[]> {
  const tally = await photo.tally({x, y, width, height});
  return [tally.red, tally.green, tally.blue].map((counts) =>
    counts.reduce((sum, count, code) => sum + count * code, 0) / tally.pixels);
}

const near = (codes: readonly number[], expected: readonly number[], within: number) => {
  for (const [index, code] of codes.entries()) expect(code, `channel ${index} of ${codes}`).to.be.closeTo(expected[index]!, within);
};

describe('odd files that open', () => {
  // Left half and right half as they were before the file's own conversion: see make-odd-files.mjs.
  const [RED, GRAY] = [[200, 30, 20], [90, 90, 90]] as const;
  const cases: readonly (readonly [OddFile, Partial<FileFacts>, readonly number[], number])[] = [
    // A gray of the same luminance as the red: code 102 (sharp 0.35 says so too).
    ['grayJpeg', {kind: 'jpeg', colours: 'gray', progressive: false}, [102, 102, 102], 2],
    ['progressiveJpeg', {kind: 'jpeg', colours: 'colour', progressive: true}, RED, 2],
    ['wideGamutJpeg', {kind: 'jpeg', profile: true}, RED, 3],
    ['wideGamutPng', {kind: 'png', profile: true}, RED, 2],
    ['palettePng', {kind: 'png', colours: 'palette'}, RED, 0],
    ['interlacedPng', {kind: 'png', progressive: true}, RED, 0],
    ['webp', {kind: 'webp', cutShort: false}, RED, 0],
    ['avif', {kind: 'avif', cutShort: false, width: 32, height: 16}, RED, 3],
    ['gif', {kind: 'gif'}, RED, 0],
  ];
  for (const [name, facts, left, within] of cases) {
    it(`reads ${name}`, async () => {
      if (name === 'avif' && !await decodes(oddFile(name))) {
        // A browser without the codec says so, and does not call the file damaged.
        expect(await refused(oddFile(name))).to.include({problem: 'unsupported', kind: 'avif', width: 32, height: 16});
        return;
      }
      const photo = await opened(oddFile(name));
      expect(photo.facts).to.include(facts);
      expect([photo.width, photo.height]).to.deep.equal([32, 16]);
      near(await meanOf(photo, 0, 0, 16, 16), left, within);
      near(await meanOf(photo, 16, 0, 16, 16), GRAY, within);
      photo.close();
    });
  }

  it('reads cmykJpeg, about right: without a profile nobody knows the inks', async () => {
    const photo = await opened(oddFile('cmykJpeg'));
    expect(photo.facts.colours).to.equal('cmyk');
    near(await meanOf(photo, 0, 0, 16, 16), RED, 40);
    near(await meanOf(photo, 16, 0, 16, 16), GRAY, 40);
    photo.close();
  });

  it('reads a 16-bit PNG at 8 bits, to the nearest code', async () => {
    // 0x5a80 is 90.15 of 255, 0xc8c8 exactly 200.
    const row = [0, 0x5a, 0x80, 0x5a, 0x80, 0x5a, 0x80, 0xc8, 0xc8, 0xc8, 0xc8, 0xc8, 0xc8];
    const photo = await opened(await png({width: 2, height: 1, bits: 16, type: 2, rows: Uint8Array.from(row)}));
    expect(photo.facts.bits).to.equal(16);
    const {red} = await photo.tally();
    expect([red[90], red[200]]).to.deep.equal([1, 1]);
    photo.close();
  });

  it('leaves transparent pixels out, and keeps the colour of the others', async () => {
    const row = [0, 200, 30, 20, 255, 9, 9, 9, 0, 90, 90, 90, 255];
    const photo = await opened(await png({width: 3, height: 1, bits: 8, type: 6, rows: Uint8Array.from(row)}));
    expect(photo.facts.alpha).to.equal(true);
    const tally = await photo.tally();
    expect([tally.pixels, tally.red[200], tally.red[90], tally.red[0], tally.red[9]]).to.deep.equal([2, 1, 1, 0, 0]);
    photo.close();
  });

  it('reads a picture of a single pixel', async () => {
    const photo = await opened(await drawn(1, 1, (pen) => fill(pen, RED, 0, 0, 1, 1)));
    const tally = await photo.tally();
    expect([photo.width, photo.height, tally.pixels, tally.red[200]]).to.deep.equal([1, 1, 1, 1]);
    photo.close();
  });

  // All of them take it, but WebKit’s driver and Firefox need many times Chromium’s time; a quarter each way shows the same there.
  const side = navigator.userAgent.includes('Chrome/') ? 10_000 : 2_400;
  it(`reads ${Math.round(side ** 2 / 1e6)} megapixels, exactly`, async function () {
    this.timeout(60_000);
    const bytes = 1 + side / 8;
    const rows = new Uint8Array(side * bytes);
    // One bit a pixel: everything black but for the last eight pixels of the last row.
    rows[rows.length - 1] = 0xff;
    const photo = await opened(await png({width: side, height: side, bits: 1, type: 0, rows}));
    const tally = await photo.tally();
    expect([tally.pixels, tally.red[0], tally.red[255]]).to.deep.equal([side ** 2, side ** 2 - 8, 8]);
    const corner = await photo.tally({x: side - 10, y: side - 2, width: 10, height: 2});
    expect([corner.red[0], corner.red[255]]).to.deep.equal([12, 8]);
    photo.close();
  });
});

describe('odd files that do not', () => {
  it('says that nothing is in a file of zero bytes', async () => {
    expect(await refused(new File([], 'IMG_2.jpg'))).to.deep.equal({problem: 'empty', kind: 'empty', name: 'IMG_2.jpg', size: 0});
  });

  it('says that a text, a document, a drawing or a video is no picture', async () => {
    const files = {
      unknown: 'Dear guild,', document: '%PDF-1.7', drawing: '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>',
      video: '\0\0\0\x18ftypisom\0\0\0\0isommp42',
    };
    for (const [kind, text] of Object.entries(files)) {
      expect(await refused(new File([text], 'a.png', {type: 'image/png'}))).to.include({problem: 'not-a-picture', kind});
    }
  });

  for (const share of [0.999, 0.5, 0.02]) {
    it(`says that a JPEG is cut short after ${share * 100} per cent`, async () => {
      const whole = await bytesOf(await shot('aperture-f8.jpg'));
      const part = await refused(new File([whole.subarray(0, whole.length * share)], 'part.jpg'));
      expect(part).to.include({problem: 'cut-short', kind: 'jpeg'});
    });
  }

  for (const name of ['palettePng', 'webp', 'avif', 'gif'] as const) {
    it(`says that ${name} is cut short`, async () => {
      const whole = await bytesOf(oddFile(name));
      expect((await refused(new File([whole.subarray(0, whole.length - 6)], 'part'))).problem).to.equal('cut-short');
    });
  }

  it('is not taken in by the end mark of a thumbnail inside the metadata', async () => {
    const whole = await bytesOf(await shot('aperture-f8.jpg'));
    const thumbnail = Uint8Array.from([0xff, 0xe1, 0, 12, 0x45, 0x78, 0x69, 0x66, 0, 0, 0xff, 0xd8, 0xff, 0xd9]);
    const part = new File([whole.subarray(0, 2), thumbnail, whole.subarray(2, whole.length / 2)], 'part.jpg');
    expect(await refused(part)).to.include({problem: 'cut-short'});
  });

  it('says how large a picture is that is too large, before decoding it', async () => {
    const huge = await png({width: 20_000, height: 9_000, bits: 1, type: 0, rows: new Uint8Array(10)});
    expect(await refused(huge)).to.deep.include(
      {problem: 'too-large', kind: 'png', width: 20_000, height: 9_000, limit: {pixels: 120_000_000}});
  });

  it('tells a raw file from a picture in the same container, without names of makers', async () => {
    // A directory with one entry each: colour-filter mosaic, raw version, a plain RGB picture.
    const directory = (tag: number, value: number) => new File([Uint8Array.from([
      0x49, 0x49, 42, 0, 8, 0, 0, 0, 1, 0, tag & 255, tag >> 8, 3, 0, 1, 0, 0, 0, value & 255, value >> 8, 0, 0, 0, 0, 0, 0,
    ])], 'a.jpg');
    expect(await refused(directory(262, 32803))).to.include({problem: 'raw', kind: 'raw'});
    expect(await refused(directory(50706, 0x0104))).to.include({problem: 'raw'});
    expect(await refused(directory(262, 2))).to.include({problem: 'unsupported', kind: 'tiff'});
    expect(await refused(oddFile('tiff'))).to.include({problem: 'unsupported', kind: 'tiff'});
  });

  it('says heic of a file that calls itself so and cannot be opened here', async () => {
    const box = '\0\0\0\x18ftypheic\0\0\0\0mif1heic' + '\0\0\0\x10mdat\0\0\0\0\0\0\0\0';
    expect(await refused(new File([box], 'IMG_3.HEIC'))).to.include({problem: 'heic', kind: 'heic'});
  });

  it('says that a file is damaged that is whole and still cannot be decoded', async () => {
    // Seven bits a channel: PNG knows no such thing. (Torn image data some browsers show as far as they get.)
    const file = await png({width: 4, height: 4, bits: 7, type: 2, rows: new Uint8Array(60)});
    expect(await refused(file)).to.include({problem: 'damaged', kind: 'png', width: 4, height: 4});
  });

  it('says that a file is unreadable when reading it fails', async () => {
    const gone = new File(['x'], 'gone.jpg');
    const fails = () => Promise.reject(new DOMException('gone', 'NotFoundError'));
    // A file that was moved after it was picked; only in the page, as the trick does not cross into a worker.
    Object.defineProperty(gone, 'slice', {value: () => ({arrayBuffer: fails})});
    const result = await openPhoto(gone, {inPage: true});
    expect(result).to.include({problem: 'unreadable', name: 'gone.jpg'});
  });
});
