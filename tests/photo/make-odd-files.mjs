/**
 * Writes odd-files.ts: tiny pictures of kinds that a browser's canvas cannot write. Run by hand, with sharp:
 *   node tests/photo/make-odd-files.mjs
 * Each is 32 × 16 pixels, the left half rgb(200, 30, 20) and the right half rgb(90, 90, 90), before its own conversion.
 */
import {writeFileSync} from 'node:fs';
import sharp from 'sharp';

const [WIDTH, HEIGHT] = [32, 16];
const data = Buffer.alloc(WIDTH * HEIGHT * 3, 90);
for (let y = 0; y < HEIGHT; y++) for (let x = 0; x < WIDTH / 2; x++) data.set([200, 30, 20], (y * WIDTH + x) * 3);
const picture = () => sharp(data, {raw: {width: WIDTH, height: HEIGHT, channels: 3}});
const jpeg = {quality: 98, chromaSubsampling: '4:4:4'};

const files = {
  grayJpeg: picture().grayscale().toColourspace('b-w').jpeg(jpeg),
  progressiveJpeg: picture().jpeg({...jpeg, progressive: true}),
  cmykJpeg: picture().toColourspace('cmyk').jpeg(jpeg),
  wideGamutJpeg: picture().withIccProfile('p3').jpeg(jpeg),
  wideGamutPng: picture().withIccProfile('p3').png(),
  palettePng: picture().png({palette: true, colours: 4}),
  interlacedPng: picture().png({progressive: true}),
  webp: picture().webp({lossless: true}),
  avif: picture().avif({quality: 95, chromaSubsampling: '4:4:4'}),
  gif: picture().gif(),
  tiff: picture().tiff(),
};

const lines = [];
for (const [name, file] of Object.entries(files)) {
  const base64 = (await file.toBuffer()).toString('base64');
  lines.push(`  ${name}: [`, ...base64.match(/.{1,108}/g).map((part) => `    '${part}',`), '  ],');
}
writeFileSync(new URL('odd-files.ts', import.meta.url), [
  `/** Made by make-odd-files.mjs with sharp ${sharp.versions.sharp}, libvips ${sharp.versions.vips}. Not to be edited. */`,
  'const files = {', ...lines, '} as const;', '',
  'export type OddFile = keyof typeof files;', '',
  '/** One of the tiny pictures as a file. Its name says nothing of what it is. */',
  'export function oddFile(name: OddFile): File {',
  '  const bytes = Uint8Array.from(atob(files[name].join(\'\')), (letter) => letter.charCodeAt(0));',
  '  return new File([bytes], `${name}.bin`);',
  '}', '',
].join('\n'));
