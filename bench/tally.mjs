/**
 * How long counting a 24-megapixel photo takes, as a multiple of merely adding the same buffer up as 32-bit words, in
 * one run. Needs a build: `npm run build && node bench/tally.mjs`. On a busy machine run it more than once.
 */
import {readFileSync} from 'node:fs';
import sharp from 'sharp';
import {tallyPixels} from '../dist/core/tone/tally.js';
import {countTileRow, startTiles, tallyFromTiles} from '../dist/core/tone/tiles.js';

const WIDTH = 6000;
const HEIGHT = 4000;
const ROUNDS = 15;
/** What counting all four channels may cost, in sums. */
const ALLOWED = 2.5;

const pixels = await enlargedShot();
const words = new Uint32Array(pixels.data.buffer, pixels.data.byteOffset, WIDTH * HEIGHT);
const tiles = startTiles(pixels);
while (countTileRow(tiles));

let step = 0;
/** Another crop at every call, as when it is dragged; some edges near tile borders, some far. */
const movedCrop = () => {
  step = (step + 37) % 700;
  return {x: 501 + step, y: 333 + step, width: 4200, height: 2800};
};

const jobs = {
  'adding up as 32-bit words': () => sumOf(words),
  'tally of everything': () => tallyPixels(pixels).pixels,
  'building the tiles': () => {
    const fresh = startTiles(pixels);
    while (countTileRow(fresh));
  },
  'tally of a moved crop, from tiles': () => tallyFromTiles(tiles, movedCrop()).pixels,
  'plain loop over bytes': () => plain(pixels.data),
};

function sumOf(numbers) {
  let sum = 0;
  for (let at = 0; at < numbers.length; at++) sum += numbers[at];
  return sum;
}

function plain(data) {
  const [red, green, blue, luma] = [0, 1, 2, 3].map(() => new Uint32Array(256));
  for (let at = 0; at < data.length; at += 4) {
    red[data[at]]++;
    green[data[at + 1]]++;
    blue[data[at + 2]]++;
    luma[Math.round(0.2126 * data[at] + 0.7152 * data[at + 1] + 0.0722 * data[at + 2])]++;
  }
  return red;
}

/** A sample shot enlarged, with noise: as many colours side by side as a sensor gives. */
async function enlargedShot() {
  const shot = new URL('../demo/shots/exposure-plus1.jpg', import.meta.url);
  const data = await sharp(readFileSync(shot)).resize(WIDTH, HEIGHT, {fit: 'fill'}).ensureAlpha().raw().toBuffer();
  const copy = new Uint8ClampedArray(data);
  let state = 1;
  for (let at = 0; at < copy.length; at++) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    if (at % 4 !== 3) copy[at] += (state >>> 28) - 8;
  }
  return {data: copy, width: WIDTH, height: HEIGHT};
}

const times = Object.fromEntries(Object.keys(jobs).map((name) => [name, Infinity]));
const measure = async (name, job) => {
  const start = performance.now();
  await job();
  times[name] = Math.min(times[name] ?? Infinity, performance.now() - start);
};
// Turn and turn about, so that a busy moment of the machine hits all of them.
for (let round = 0; round < ROUNDS; round++) for (const [name, job] of Object.entries(jobs)) await measure(name, job);

const image = sharp(pixels.data, {raw: {width: WIDTH, height: HEIGHT, channels: 4}});
for (let round = 0; round < 2; round++) await measure('sharp: statistics (no charts)', () => image.clone().stats());
await withImageJs();

async function withImageJs() {
  try {
    const {Image} = await import('image-js');
    const picture = new Image(WIDTH, HEIGHT, {data: new Uint8Array(pixels.data.buffer), colorModel: 'RGBA'});
    for (let round = 0; round < 2; round++) {
      await measure('image-js: three charts', () => [0, 1, 2].map((channel) => picture.histogram({channel})));
    }
  } catch (error) {
    console.log(`image-js left out: ${error.message}`);
  }
}

const base = times['adding up as 32-bit words'];
console.log(`${WIDTH * HEIGHT / 1e6} megapixels, best of ${ROUNDS}\n`);
for (const [name, ms] of Object.entries(times)) {
  console.log(`${name.padEnd(36)} ${ms.toFixed(1).padStart(7)} ms ${(ms / base).toFixed(2).padStart(7)} sums`);
}
const ratio = times['tally of everything'] / base;
console.log(`\n${ratio <= ALLOWED ? 'within' : 'OVER'} the ${ALLOWED} sums that counting four channels may cost`);
