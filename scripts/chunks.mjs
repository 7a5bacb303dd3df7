/** Names of the script-tag files that Rollup makes by itself, and the list of what loads what, with hashes. */
import {createHash} from 'node:crypto';
import {gzipSync} from 'node:zlib';

/** Words of a whole element: /dist/elements/stop-trade-dial/words/de.js. */
const WORDS = /\/dist\/elements\/([\w-]+)\/words\/([\w-]+)\.js$/;
/** Words of a part of one that is fetched later: /dist/elements/tonal-chart-reader/photo/words/de.js. */
const PART_WORDS = /\/dist\/elements\/([\w-]+(?:\/[\w-]+)+)\/words\/([\w-]+)\.js$/;

/**
 * A file that is fetched when it is needed is called after what it is: `stop-trade-dial.de.js` for the words of an element,
 * `shot-sheet.qr.js` for a part of it, `tonal-chart-reader.photo.de.js` for the words of such a part, `photo.desk.js`, `exifreader.js`. What several files have in common is `shared-….js`,
 * and what the words of a language have in common `words.de.js`.
 * @param chunk - as Rollup's `chunkFileNames` gets it
 */
export function chunkName({facadeModuleId, moduleIds}) {
  const languages = new Set(moduleIds.map((id) => WORDS.exec(id)?.[2]));
  const [, part, inPart] = PART_WORDS.exec(facadeModuleId ?? '') ?? [];
  if (part) return `${part.replaceAll('/', '.')}.${inPart}.js`;
  const [language] = languages;
  if (!facadeModuleId) return languages.size === 1 && language ? `words.${language}.js` : 'shared-[hash].js';
  const [, folder, spoken] = WORDS.exec(facadeModuleId) ?? [];
  if (spoken) return folder === 'shared' ? `words.${spoken}.js` : `${folder}.${spoken}.js`;
  const [, place, own, inner] = /\/dist\/(elements|core|photo)\/(?:(.+)\/)?([\w-]+)\.js$/.exec(facadeModuleId) ?? [];
  if (place) return `${place === 'elements' ? own.replaceAll('/', '.') : place}.${inner}.js`;
  const [, name] = /\/node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*\/node_modules\/)/.exec(facadeModuleId) ?? [];
  return name ? `${name.replace('@', '').replace('/', '-')}.js` : 'shared-[hash].js';
}

/**
 * A Rollup plugin that lists the files beside them, in integrity.json: `files`, the hash of each; what each `imports` at once; and for each of
 * the `entries`, which a page asks for itself, its `words` by language (those it speaks first, not those of a part that opens later), and what is `lazy`, words
 * included. All are whole: with what those files import in turn.
 */
export function chunkList() {
  return {
    name: 'chunk-list',
    generateBundle(_, bundle) {
      // Rollup puts a number behind the second.
      const second = Object.keys(bundle).find((name) => /[^\d]\d+\.js$/.test(name) && bundle[name.replace(/\d+\.js$/, '.js')]);
      if (second) this.error(`two files want one name: ${second}`);
    },
    writeBundle: {
      order: 'post',
      async handler({dir}, bundle) {
        const {writeFile} = await import('node:fs/promises');
        await writeFile(`${dir}/integrity.json`, `${JSON.stringify(listOf(bundle), null, 2)}\n`);
      },
    },
  };
}

/** @param bundle - Rollup's output, by name of file */
export function listOf(bundle) {
  const chunks = Object.values(bundle).filter(({type}) => type === 'chunk').sort((one, other) => (one.fileName < other.fileName ? -1 : 1));
  const files = Object.fromEntries(chunks.map(({fileName, code}) => [fileName, `sha384-${createHash('sha384').update(code).digest('base64')}`]));
  const atOnce = (name) => closure(bundle, [name], ({imports}) => imports);
  const imports = Object.fromEntries(chunks.map(({fileName}) => [fileName, [...atOnce(fileName)].filter((name) => name !== fileName).sort()]));
  const entries = chunks.filter(({isEntry}) => isEntry).map(({fileName}) => fileName);
  const [words, lazy] = [{}, {}];
  for (const fileName of entries) {
    const once = atOnce(fileName);
    const ever = closure(bundle, [fileName], ({imports: more, dynamicImports}) => [...more, ...dynamicImports]);
    lazy[fileName] = [...ever].filter((name) => !once.has(name)).sort();
    words[fileName] = {};
    for (const name of lazy[fileName]) {
      const [, , language] = WORDS.exec(bundle[name].facadeModuleId ?? '') ?? [];
      if (!language) continue;
      const wanted = words[fileName][language] ?? [];
      const brought = [...atOnce(name)].filter((each) => !once.has(each));
      words[fileName][language] = [...new Set([...wanted, ...brought])].sort();
    }
  }
  return {files, entries, imports, words, lazy};
}

/** Some files and all that `next` says they bring, as far as it goes. */
function closure(bundle, names, next) {
  const seen = new Set();
  const open = [...names];
  for (let name = open.pop(); name; name = open.pop()) {
    if (seen.has(name) || !bundle[name]) continue;
    seen.add(name);
    open.push(...next(bundle[name]));
  }
  return seen;
}

export const gzipped = (bytes) => gzipSync(bytes, {level: 9}).length;
