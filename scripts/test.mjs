/**
 * `npm test`: sets up and runs every check. What does not get in each other's way runs side by side, in lanes; a lane's
 * lines are printed together when a step of it ends.
 */
import {spawn} from 'node:child_process';
import {ROOT, installPackages} from './set-up.mjs';

installPackages();
const {ensureEngines, startWebKit} = await import('./browsers.mjs');
const engines = await ensureEngines();

const script = (name) => ['npm', ['run', '-s', name]];
const inEngine = (wanted) => engines.filter(({name}) => name === wanted).map(({name, found, how}) => ({
  name: `elements, ${name}`, run: script('check:elements'), env: {ENGINE: name}, missing: found ? '' : how,
  around: name === 'webkit' ? startWebKit : undefined,
}));

/** Each stage waits for the one before it; its lanes run side by side. */
const STAGES = [
  [[{name: 'type check', run: script('check:types')}, {name: 'lint', run: script('check:lint')}],
    [{name: 'build', run: script('build')}, {name: 'package', run: script('check:package')}]],
  [[{name: 'core', run: script('check:core')}, ...inEngine('chromium')],
    [...inEngine('webkit'), ...inEngine('firefox')]],
];

const began = Date.now();
const results = [];
for (const lanes of STAGES) {
  await Promise.all(lanes.map(async (steps) => {
    for (const step of steps) results.push(await take(step));
  }));
}

console.log('\n── all checks ──');
for (const {name, state, note, seconds} of results) {
  console.log(`${state.padEnd(8)}${name.padEnd(20)}${seconds.toFixed(0).padStart(4)} s${note ? `   ${note}` : ''}`);
}
const failed = results.filter(({state}) => state === 'FAILED').length;
const skipped = results.filter(({state}) => state === 'skipped').length;
console.log(`\nin ${Math.round((Date.now() - began) / 1000)} s`);
console.log(`${results.length - failed - skipped} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exit(failed ? 1 : 0);

/** Runs one step and prints its lines. An engine that is missing is said, and is a failure where all three are asked for. */
async function take({name, run: [command, args], env = {}, missing, around}) {
  if (missing) return {name, state: process.env.CI ? 'FAILED' : 'skipped', note: missing, seconds: 0};
  const start = Date.now();
  const end = await around?.();
  const lines = [];
  const code = await new Promise((resolve) => {
    const child = spawn(command, args, {cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'], env: {...process.env, FORCE_COLOR: '0', ...env}});
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data) => { lines.push(data); });
    child.on('close', resolve);
  });
  end?.();
  const seconds = (Date.now() - start) / 1000;
  console.log(`\n── ${name} ──\n${Buffer.concat(lines).toString().trim()}`);
  return {name, state: code === 0 ? 'ok' : 'FAILED', note: '', seconds};
}
