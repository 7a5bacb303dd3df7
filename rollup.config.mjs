import {readdirSync} from 'node:fs';
import commonjs from '@rollup/plugin-commonjs';
import {nodeResolve} from '@rollup/plugin-node-resolve';
import terser from '@rollup/plugin-terser';
import typescript from '@rollup/plugin-typescript';
import {chunkList, chunkName} from './scripts/chunks.mjs';
import {minifyTemplates} from './scripts/minify-templates.mjs';

/** Every element is a folder of src/elements with a define.ts; `shared` has none. */
const tags = readdirSync('src/elements', {withFileTypes: true})
  .filter((entry) => entry.isDirectory() && entry.name !== 'shared')
  .map((entry) => entry.name)
  .sort();

/** What can be asked for alone: every file of src/core, beside the folders. */
const parts = readdirSync('src/core').filter((name) => name.endsWith('.ts')).map((name) => name.slice(0, -3)).sort();

const worker = {'photo/photo-worker': 'src/photo/photo-worker.ts'};

/** Modules for bundlers: our files one to one, `lit`, the metadata reader and the QR coder left to the consumer's bundler. */
const modules = {
  input: {
    ...Object.fromEntries(parts.map((part) => [`core/${part}`, `src/core/${part}.ts`])),
    'elements/all': 'src/elements/all.ts',
    'elements/server': 'src/elements/server.ts',
    ...worker,
    ...Object.fromEntries(tags.flatMap((tag) => ['define', 'class'].map((file) =>
      [`elements/${tag}/${file}`, `src/elements/${tag}/${file}.ts`]))),
  },
  external: [/^lit(\/|$)/, /^@lit\//, 'exifreader', 'uqr'],
  output: {dir: 'dist', format: 'es', preserveModules: true, preserveModulesRoot: 'src', sourcemap: true},
  plugins: [typescript({
    tsconfig: 'tsconfig.build.json', compilerOptions: {outDir: 'dist', declaration: true, declarationDir: 'dist'},
  })],
};

/**
 * Bundlers know the worker by the very expression in line.ts. Here nobody has to, so its address is vouched for where
 * a page's policy wants that (`require-trusted-types-for 'script'`).
 */
function trustedWorker() {
  const expression = "new Worker(new URL('./photo-worker.js', import.meta.url), ";
  return {
    name: 'trusted-worker',
    transform(code, id) {
      if (!id.endsWith('/dist/photo/line.js')) return null;
      if (!code.includes(expression)) this.error(`line.js has no “${expression}…” any more`);
      return {code: code.replace(expression, "new Worker(trusted(new URL('./photo-worker.js', import.meta.url).href), "), map: null};
    },
  };
}

/**
 * Files for a bare script tag: those modules with Lit inside. One build with many inputs, so that two elements on a page share one
 * chunk and load Lit once. Names stay from build to build, except of what is shared. Flat, because the worker is found beside the file that asks for it.
 */
const standalone = {
  input: {
    all: 'dist/elements/all.js',
    'photo-worker': 'dist/photo/photo-worker.js',
    ...Object.fromEntries(tags.map((tag) => [tag, `dist/elements/${tag}/define.js`])),
  },
  output: {
    dir: 'dist/standalone', format: 'es', entryFileNames: '[name].js', chunkFileNames: chunkName,
    sourcemap: false, hoistTransitiveImports: true,
  },
  plugins: [
    nodeResolve({browser: true, exportConditions: ['production']}),
    commonjs(),
    trustedWorker(),
    minifyTemplates(),
    chunkList(),
    terser({ecma: 2021, module: true, format: {comments: false}, compress: {passes: 2}}),
  ],
};

export default [modules, standalone];
