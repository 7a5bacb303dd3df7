/**
 * `npm test`: sets up and runs every check. Whatever does not need what another makes runs side by side, one step more
 * than there are cores, since browsers wait at times; the lines of a step are printed together when it ends.
 */
import {spawn} from 'node:child_process';
import {availableParallelism} from 'node:os';
import {stripVTControlCharacters} from 'node:util';
import {ROOT, installPackages} from './set-up.mjs';

installPackages();
const {ensureEngines, startWebKit} = await import('./browsers.mjs');
const engines = await ensureEngines();

const script = (name) => ['npm', ['run', '-s', name]];
/** @param part - of the tests: each element, photo and page by itself, or what is tried by the hundred */
const inEngines = (part) => engines.map(({name, found, how}) => ({
  name: `${part}, ${name}`, run: script('check:elements'), env: {ENGINE: name, PART: part}, missing: found ? '' : how,
  around: name === 'webkit' ? startWebKit : undefined, after: 'build',
}));

/** Where what is tried by the hundred runs: in Chromium, for the sake of six minutes; `PROOF=all npm test` has it in all three. */
const PROVED = new Set(process.env.PROOF === 'all' ? engines.map(({name}) => name) : ['chromium']);

/** In the order in which they are taken up: what others wait for, then what takes longest. */
const STEPS = [
  {name: 'build', run: script('build')}, {name: 'type check', run: script('check:types')}, {name: 'lint', run: script('check:lint')},
  ...inEngines('elements').reverse(), ...inEngines('proof').filter(({env}) => PROVED.has(env.ENGINE)).reverse(),
  {name: 'core', run: script('check:core'), after: 'build'}, {name: 'package', run: script('check:package'), after: 'build'},
  {name: 'examples', run: script('check:examples'), after: 'build'},
];

const began = Date.now();
const results = await takeAll(STEPS, availableParallelism() + 1);

console.log('\n── all checks ──');
for (const {name, state, note, seconds} of results) {
  console.log(`${state.padEnd(8)}${name.padEnd(20)}${seconds.toFixed(0).padStart(4)} s${note ? `   ${note}` : ''}`);
}
const failed = results.filter(({state}) => state === 'FAILED').length;
const skipped = results.filter(({state}) => state === 'skipped').length;
console.log(`\nin ${Math.round((Date.now() - began) / 1000)} s`);
console.log(`${results.length - failed - skipped} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exit(failed ? 1 : 0);

/** Takes up the first step that can be, whenever there is room. @returns results in the order of the steps */
async function takeAll(steps, room) {
  const waiting = new Set(steps);
  const going = new Map();
  const done = new Map();
  while (waiting.size || going.size) {
    for (const step of waiting) {
      if (going.size >= room) break;
      if (step.after && !done.has(step.after)) continue;
      waiting.delete(step);
      going.set(step, take(step).then((result) => { done.set(step.name, result); going.delete(step); }));
    }
    await Promise.race(going.values());
  }
  return steps.map(({name}) => done.get(name));
}

/** Runs one step and prints its lines. An engine that is missing is said, and is a failure where all three are asked for. */
async function take({name, run: [command, args], env = {}, missing, around}) {
  if (missing) return {name, state: process.env.CI ? 'FAILED' : 'skipped', note: missing, seconds: 0};
  const start = Date.now();
  const surroundings = await around?.();
  const lines = [];
  const [code, signal] = await new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'], env: {...process.env, FORCE_COLOR: '0', ...env, ...surroundings?.env},
    });
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data) => { lines.push(data); });
    child.on('close', (...how) => { resolve(how); });
  });
  surroundings?.end();
  const seconds = (Date.now() - start) / 1000;
  const said = Buffer.concat(lines).toString().trim();
  console.log(`\n── ${name} ──\n${said}`);
  const note = [countsIn(stripVTControlCharacters(said)), code === 0 ? '' : `ended with ${signal ?? code}`].filter(Boolean).join(', ');
  return {name, state: code === 0 ? 'ok' : 'FAILED', note, seconds};
}

/** How many tests a runner says there were, in one form. */
function countsIn(said) {
  const inBrowsers = [...said.matchAll(/test files \| (\d+ passed, \d+ failed(?:, \d+ skipped)?)/g)].at(-1)?.[1];
  const inNode = [...said.matchAll(/^\s*Tests\s+(.*?)\s*\(\d+\)/gm)].at(-1)?.[1].split(/\s*\|\s*/).reverse().join(', ');
  return inBrowsers ?? inNode ?? '';
}
