/** Browser tests bundled before an engine starts: it then loads a few files for each test instead of hundreds. */
import {readFile} from 'node:fs/promises';
import {relative} from 'node:path';
import {build} from 'esbuild';
import {ROOT} from './set-up.mjs';

const WORKER = 'src/photo/photo-worker.ts';
const OURS = /[\\/](?:src|tests|bench|demo)[\\/].*\.ts$/;

/**
 * Plugins of the test server. The first answers for test files, what they share and the photo worker. Files are asked for
 * by their own addresses, so that the lines of a report are those of the source. What cannot be bundled is said, and is
 * served file by file by the second.
 * @param testFiles - paths from the root
 * @param byFile - the plugin that turns one file of the source into one for a browser
 */
export function bundlePlugins(testFiles, byFile) {
  let served = new Map();
  const {transform} = byFile;
  byFile.transform = (context) => (served.has(context.path) ? undefined : transform.call(byFile, context));
  return [{
    name: 'bundled-tests',
    async serverStart() {
      try {
        served = await bundle(testFiles);
      } catch (error) {
        console.error(`The tests are served file by file, because they cannot be bundled: ${error.message}`);
      }
    },
    serve(context) {
      const body = served.get(context.path);
      return body === undefined ? undefined : {body, type: context.path.endsWith('.map') ? 'json' : 'js'};
    },
  }, byFile];
}

/** @returns text by address */
async function bundle(testFiles) {
  const settings = {
    absWorkingDir: ROOT, bundle: true, write: false, format: 'esm', target: 'es2022', outdir: ROOT, outbase: ROOT, logLevel: 'silent',
    sourcemap: 'linked', sourcesContent: false, ignoreAnnotations: true, conditions: ['production'], plugins: [ownAddress],
  };
  const built = await Promise.all([
    build({...settings, entryPoints: testFiles, splitting: true, chunkNames: '__bundled/[hash]'}),
    build({...settings, entryPoints: [WORKER]}),
  ]);
  return new Map(built.flatMap(({outputFiles}) => outputFiles).map(({path, text}) => [addressOf(path, testFiles), text]));
}

/** A bundled test answers at the address of its source. The worker is asked for by the name it has once built. */
function addressOf(path, testFiles) {
  const name = relative(ROOT, path);
  const source = name.replace(/\.js$/, '.ts');
  return `/${testFiles.includes(source) ? source : name}`;
}

/** What a module finds beside itself it finds beside its source, wherever its code went. */
const ownAddress = {
  name: 'own-address',
  setup({onLoad, onResolve}) {
    // What is asked of the server stays a question to the server.
    onResolve({filter: /^\//}, ({kind, path}) => (kind === 'entry-point' ? undefined : {path, external: true}));
    // A plain script that puts itself on the page, and would not as a part of a bundle.
    onResolve({filter: /^piexifjs$/}, () => ({path: '/node_modules/piexifjs/piexif.js', external: true}));
    onLoad({filter: OURS}, async ({path}) => {
      const text = await readFile(path, 'utf8');
      if (!text.includes('import.meta.url')) return undefined;
      const address = JSON.stringify(`/${relative(ROOT, path)}`);
      return {contents: text.replaceAll('import.meta.url', `new URL(${address}, location.origin).href`), loader: 'ts'};
    });
  },
};
