/** Runs some test files in WebKit: `node scripts/webkit.mjs tests/elements/stop-trade-dial.test.ts`. */
import {spawn} from 'node:child_process';
import {startWebKit} from './browsers.mjs';
import {ROOT} from './set-up.mjs';

const {env, end} = await startWebKit();
const files = process.argv.slice(2);
const runner = spawn('npx', ['web-test-runner', ...(files.length ? ['--files', ...files] : [])], {
  cwd: ROOT, stdio: 'inherit', env: {...process.env, ...env, ENGINE: 'webkit'},
});
runner.on('close', (code) => { end(); process.exit(code ?? 1); });
