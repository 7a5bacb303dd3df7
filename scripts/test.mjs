/** `npm test`: sets up and runs every check, in the order in which a mistake is cheapest to read. */
import {ROOT, installPackages} from './set-up.mjs';
import {spawn} from 'node:child_process';

installPackages();
const {ensureChromium} = await import('./browsers.mjs');
const chromium = await ensureChromium();

const STEPS = [
  ['type check', 'npm', ['run', '-s', 'check:types']],
  ['lint', 'npm', ['run', '-s', 'check:lint']],
  ['core', 'npm', ['run', '-s', 'check:core']],
  ['build', 'npm', ['run', '-s', 'build']],
  ['elements', 'npm', ['run', '-s', 'check:elements']],
  ['package', 'npm', ['run', '-s', 'check:package']],
];

const results = [];
for (const [name, command, args] of STEPS) {
  console.log(`\n── ${name} ──`);
  const began = Date.now();
  const code = await new Promise((resolve) => {
    spawn(command, args, {cwd: ROOT, stdio: 'inherit', env: {...process.env, CHROME_PATH: chromium}}).on('close', resolve);
  });
  results.push({name, passed: code === 0, seconds: (Date.now() - began) / 1000});
}

console.log('\n── all checks ──');
for (const {name, passed, seconds} of results) console.log(`${passed ? 'ok    ' : 'FAILED'}  ${name.padEnd(12)} ${seconds.toFixed(0).padStart(4)} s`);
const failed = results.filter(({passed}) => !passed).length;
console.log(`\n${results.length - failed} passed, ${failed} failed`);
process.exit(failed ? 1 : 0);
