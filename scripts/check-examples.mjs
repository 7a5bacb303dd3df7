/**
 * Builds every project of examples/ against the packed library, each in a folder of its own, looks at what came out and does in
 * Chromium what a reader of its page would do.
 */
import {execFile, execFileSync} from 'node:child_process';
import {cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, symlinkSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {promisify} from 'node:util';
import {gzipped} from './chunks.mjs';
import {readersOf} from './example-readers.mjs';
import {ROOT, fail} from './set-up.mjs';

const EXAMPLES = `${ROOT}examples/`;
const run = promisify(execFile);

if (!existsSync(`${ROOT}dist/core/index.js`)) fail('There is no build to check. Run “npm run build” first.');

/** What has to be found in the built files of each, as a reader of the page would need it. */
const CHECKS = {
  rollup: (built) => [
    [built.text('main.js').includes("customElements.define('stop-trade-dial'"), 'the dial is defined'],
    [gzipped(built.text('compute.js')) < 1500, 'one function brings in only what it uses'],
    [!built.text('compute.js').includes('HTMLElement'), 'the core brings in no element'],
  ],
  'vite-react': (built) => [
    [built.all.includes('stop-trade-dial') && built.all.includes('tonal-chart-reader'), 'both elements are built in'],
    [built.names.some((name) => /photo-worker-[\w-]+\.js$/.test(name)), 'the worker is a file of its own'],
    [!/from\s*["']\.\/desk\.js["']/.test(built.all), 'the worker is bundled, with nothing left to look for'],
  ],
  'vite-vue': (built) => [[built.all.includes('sharp-zone-bar'), 'the bar is built in']],
  eleventy: (built) => [
    [built.text('index.html').includes('<stop-trade-dial metered-aperture="f/2.8"'), 'the tag is in the page'],
    [built.names.includes('lampblack/stop-trade-dial.js'), 'the script-tag file is copied'],
  ],
};

const folder = mkdtempSync(join(tmpdir(), 'lampblack-examples-'));
const seconds = (since) => `${((Date.now() - since) / 1000).toFixed(0)} s`;
const began = Date.now();
try {
  installTools();
  const tarball = installLibrary();
  const names = readdirSync(EXAMPLES).filter((name) => existsSync(`${EXAMPLES}${name}/package.json`) && name !== 'node_modules');
  const unchecked = names.filter((name) => !CHECKS[name]);
  if (unchecked.length) throw new Error(`nothing is checked of ${unchecked.join(', ')}`);
  const building = Date.now();
  const [frameworks] = await Promise.all([checkTypes(), ...names.map(build)]);
  console.log(`Compiled the types for ${frameworks.join(', ')}.`);
  console.log(`Built ${names.join(', ')} against ${tarball} in ${seconds(building)}.`);
  const reading = Date.now();
  await readersOf(folder, names);
  console.log(`Read and turned the page of each in Chromium in ${seconds(reading)}. All in all ${seconds(began)}.`);
} catch (error) {
  fail(`An example does not work: ${[error.message, error.stdout, error.stderr].filter(Boolean).join('\n')}`);
} finally {
  rmSync(folder, {recursive: true, force: true});
}

/** The library as somebody gets it, once: its tarball, and what that depends on. @returns name of the tarball */
function installLibrary() {
  const [{filename}] = JSON.parse(execFileSync('npm', ['pack', '--json', '--silent', '--pack-destination', folder], {cwd: ROOT, encoding: 'utf8'}));
  mkdirSync(join(folder, 'library'));
  execFileSync('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error', '--prefer-offline', '--ignore-scripts', '--no-save', '--no-package-lock',
    '--prefix', join(folder, 'library'), join(folder, filename)], {stdio: ['ignore', 'ignore', 'inherit']});
  return filename;
}

/** Installs what the examples build with when it is missing or the lock file is newer. */
function installTools() {
  const stamp = `${EXAMPLES}node_modules/.package-lock.json`;
  if (existsSync(stamp) && statSync(stamp).mtimeMs >= statSync(`${EXAMPLES}package-lock.json`).mtimeMs) return;
  console.log('Installing what the examples build with (once) …');
  execFileSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error', '--prefer-offline'], {cwd: EXAMPLES, stdio: 'inherit'});
}

async function build(name) {
  const project = join(folder, name);
  cpSync(EXAMPLES + name, project, {recursive: true});
  giveModules(project);
  await run('npm', ['run', '--silent', 'build'], {cwd: project});
  const wrong = CHECKS[name](reading(join(project, 'built'))).filter(([holds]) => !holds).map(([, what]) => what);
  if (wrong.length) throw new Error(`${name}: it does not hold that ${wrong.join('; ')}`);
}

/**
 * Compiles what somebody writes in the templates of each framework, right and wrong, against the types of that framework.
 * @returns names of the frameworks
 */
async function checkTypes() {
  const files = readdirSync(`${ROOT}tests/package/consumer/jsx`);
  const project = join(folder, 'types');
  cpSync(`${ROOT}tests/package/consumer/jsx`, project, {recursive: true});
  giveModules(project);
  return Promise.all(files.map(async (file) => {
    const framework = file.replace(/\.tsx?$/, '');
    if (!existsSync(`${EXAMPLES}node_modules/${framework}`)) return `${framework} NOT (it is not among what the examples build with)`;
    const config = `tsconfig.${framework}.json`;
    writeFileSync(join(project, config), JSON.stringify({
      compilerOptions: {
        target: 'ES2022', module: 'ESNext', moduleResolution: 'bundler', lib: ['ES2022', 'DOM'], jsx: 'react-jsx', jsxImportSource: framework,
        strict: true, exactOptionalPropertyTypes: true, noEmit: true, types: [], skipLibCheck: false,
      },
      files: [file],
    }));
    await run(`${EXAMPLES}node_modules/.bin/tsc`, ['-p', config], {cwd: project});
    return framework;
  }));
}

/** Gives a project the tools of the examples and the library. */
function giveModules(project) {
  const modules = join(project, 'node_modules');
  mkdirSync(modules);
  linkAll(`${EXAMPLES}node_modules`, modules);
  // The library and what it depends on are real folders, so that nothing is found in this checkout by accident.
  cpSync(join(folder, 'library/node_modules'), modules, {recursive: true, force: true, filter: (path) => !path.includes('.bin')});
}

/** Links every package of a folder into another, those of a scope one by one. */
function linkAll(from, to) {
  for (const name of readdirSync(from)) {
    if (name.startsWith('@')) {
      mkdirSync(join(to, name));
      linkAll(join(from, name), join(to, name));
    } else if (name === '.bin' || !name.startsWith('.')) symlinkSync(join(from, name), join(to, name));
  }
}

function reading(built) {
  const names = readdirSync(built, {recursive: true, encoding: 'utf8'}).filter((name) => statSync(join(built, name)).isFile());
  const text = (name) => readFileSync(join(built, name), 'utf8');
  return {names, text, all: names.filter((name) => /\.(js|html)$/.test(name)).map(text).join('\n')};
}
