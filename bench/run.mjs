/**
 * `npm run bench`: how fast, as ratios measured in one run, as a Markdown table. `npm run bench -- --write` puts it into the
 * README. Needs a build. Never a test: on a busy machine run it more than once.
 */
import {execFileSync} from 'node:child_process';
import {existsSync, readFileSync, writeFileSync} from 'node:fs';
import {cpus, loadavg} from 'node:os';
import {measureBytes, measureElements} from './elements.mjs';
import {dragRows} from './drag.mjs';
import {measureCore} from './core.mjs';
import {ROOT} from '../scripts/set-up.mjs';

if (!existsSync(`${ROOT}dist/standalone/all.js`)) {
  console.error('There is no build to measure. Run “npm run build” first.');
  process.exit(1);
}

const number = (value) => (value >= 100 ? Math.round(value).toLocaleString('en-US') : value >= 10 ? value.toFixed(0) : value.toFixed(value >= 1 ? 1 : 2));
const times = (ratio) => `${number(ratio)} ×`;
const faster = (ratio) => (ratio >= 1 ? `${times(ratio)} faster` : `${times(1 / ratio)} slower`);
const took = (seconds) => (seconds < 1e-6 ? `${number(seconds * 1e9)} ns` : seconds < 1e-3 ? `${number(seconds * 1e6)} µs` : `${number(seconds * 1e3)} ms`);
const rows = [];
const add = (what, measured, against, ratio) => rows.push(`| ${what} | ${measured} | ${against} | ${ratio} |`);

const {empty, rows: core} = await measureCore();
for (const {what, ours, brute, against} of core) {
  add(what, `${number(1 / ours)} calls/s`, `an empty call (${took(empty)})`, times(ours / empty));
  add('', '', `${against} (${took(brute)})`, faster(brute / ours));
}

const tally = execFileSync(process.execPath, [`${ROOT}bench/tally.mjs`], {encoding: 'utf8'});
const sums = new Map([...tally.matchAll(/^(.+?)\s+([\d.]+) ms\s+([\d.]+) sums$/gm)].map(([, name, ms]) => [name, Number(ms)]));
const counting = sums.get('tally of everything');
add('counting 24 megapixels, four channels', took(counting / 1000), `adding the buffer up as 32-bit words`, times(counting / sums.get('adding up as 32-bit words')));
add('… a crop that is dragged', took(sums.get('tally of a moved crop, from tiles') / 1000), 'the same', times(sums.get('tally of a moved crop, from tiles') / sums.get('adding up as 32-bit words')));
for (const [name, label] of [
  ['plain loop over bytes', 'a plain loop, four channels'], ['image-js: three charts', 'image-js, three channels'],
  ['sharp: statistics (no charts)', 'sharp, statistics without charts'],
]) if (sums.has(name)) add('', '', `${label} (${took(sums.get(name) / 1000)})`, faster(sums.get(name) / counting));

const {upgrade, drag} = await measureElements();
add('50 dials, from tag to layout', took(upgrade.dials / 1000), `50 bare Lit elements of ${upgrade.bareNodes} nodes (the dial has ${upgrade.nodes})`, times(upgrade.dials / upgrade.bare));
add(`worst frame of a drag, ${drag.elements} elements linked, ${drag.turns} changes`, took(drag.drag.worst / 1000),
  `worst frame of the idle page (${took(drag.idle.worst / 1000)}); middle frame ${took(drag.drag.middle / 1000)}`, times(drag.drag.worst / drag.idle.worst));
for (const {what, measured, against, ratio} of await dragRows()) add(what, measured, against, times(ratio));

const {lit, elements} = await measureBytes();
for (const {tag, bytes} of elements) {
  add(tag === 'all' ? 'every element, gzip' : `\`${tag}\`, gzip`, `${(bytes / 1000).toFixed(1)} kB`, `bare Lit (${(lit / 1000).toFixed(1)} kB)`, times(bytes / lit));
}

const [cpu] = cpus();
const machine = `${new Date().toISOString().slice(0, 10)}, ${cpu?.model.trim()}, ${cpus().length} cores, Node ${process.version}, load ${loadavg()[0].toFixed(1)}`;
const table = `${machine}\n\n| what | measured | against | ratio |\n|---|---|---|---|\n${rows.join('\n')}`;
console.log(table);
if (process.argv.includes('--write')) {
  const file = `${ROOT}README.md`;
  const before = readFileSync(file, 'utf8');
  if (!before.includes('<!-- bench -->')) throw new Error('The README has no place for the table: <!-- bench --> … <!-- /bench -->');
  writeFileSync(file, before.replace(/(<!-- bench -->)[^]*?(<!-- \/bench -->)/, (_, open, close) => `${open}\n${table}\n${close}`));
}
