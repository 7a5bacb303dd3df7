/** `npm test`: sets up and runs every check, in the order in which a mistake is cheapest to read. */
import {spawn} from 'node:child_process';
import {ROOT, installPackages} from './set-up.mjs';

installPackages();
const {ensureEngines, startWebKit} = await import('./browsers.mjs');
const engines = await ensureEngines();

const script = (name) => ['npm', ['run', '-s', name]];
const STEPS = [
  {name: 'type check', run: script('check:types')},
  {name: 'lint', run: script('check:lint')},
  {name: 'core', run: script('check:core')},
  {name: 'build', run: script('build')},
  ...engines.map(({name, found, how}) => ({
    name: `elements, ${name}`, run: script('check:elements'), env: {ENGINE: name}, missing: found ? '' : how,
    around: name === 'webkit' ? startWebKit : undefined,
  })),
  {name: 'package', run: script('check:package')},
];

const results = [];
for (const step of STEPS) {
  console.log(`\n── ${step.name} ──`);
  const began = Date.now();
  results.push({name: step.name, ...await outcome(step), seconds: (Date.now() - began) / 1000});
}

console.log('\n── all checks ──');
for (const {name, state, note, seconds} of results) {
  console.log(`${state.padEnd(8)}${name.padEnd(20)}${seconds.toFixed(0).padStart(4)} s${note ? `   ${note}` : ''}`);
}
const failed = results.filter(({state}) => state === 'FAILED').length;
const skipped = results.filter(({state}) => state === 'skipped').length;
console.log(`\n${results.length - failed - skipped} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exit(failed ? 1 : 0);

/** Runs one step. An engine that is missing is said, and is a failure where all three are asked for. */
async function outcome({run: [command, args], env = {}, missing, around}) {
  if (missing) return {state: process.env.CI ? 'FAILED' : 'skipped', note: missing};
  const end = await around?.();
  const code = await new Promise((resolve) => {
    spawn(command, args, {cwd: ROOT, stdio: 'inherit', env: {...process.env, ...env}}).on('close', resolve);
  });
  end?.();
  return {state: code === 0 ? 'ok' : 'FAILED', note: ''};
}
