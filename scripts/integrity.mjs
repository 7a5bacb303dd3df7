/** Hashes by which a page holds the script-tag files to what it was given. */
import {createHash} from 'node:crypto';
import {readFileSync, readdirSync, writeFileSync} from 'node:fs';
import {entryFiles, withImports} from './sizes.mjs';

const hashOf = (path) => `sha384-${createHash('sha384').update(readFileSync(path)).digest('base64')}`;

/**
 * Writes `integrity.json`: the hash of every file, and for each file a page asks for the files it brings along.
 * @returns hashes and imports by name of file
 */
export function writeIntegrity(folder) {
  const names = readdirSync(folder).filter((name) => name.endsWith('.js')).sort();
  const files = Object.fromEntries(names.map((name) => [name, hashOf(folder + name)]));
  const imports = Object.fromEntries(entryFiles(folder).map((name) => [name, [...withImports(folder, name)].slice(1).sort()]));
  writeFileSync(`${folder}integrity.json`, `${JSON.stringify({files, imports}, null, 2)}\n`);
  return {files, imports};
}

/**
 * What to paste so that a file and everything it may import, lazily too, is held to its hash. The import map comes first:
 * browsers take `integrity` for imports from nowhere else.
 * @param address - where the files stand, with a slash at its end
 */
export function snippet(name, {files, imports}, address = 'https://your.site/lampblack/') {
  const held = Object.entries(files).filter(([file]) => file !== name && (file.startsWith('shared-') || imports[name]?.includes(file)));
  const map = {integrity: Object.fromEntries(held.map(([file, hash]) => [address + file, hash]))};
  const preload = (imports[name] ?? []).map((file) => `<link rel="modulepreload" href="${address}${file}" integrity="${files[file]}">`);
  return [
    `<script type="importmap">\n${JSON.stringify(map, null, 2)}\n</script>`,
    ...preload,
    `<script type="module" src="${address}${name}" integrity="${files[name]}" crossorigin="anonymous"></script>`,
  ].join('\n');
}

/** The README's table: the files a page asks for itself. */
export function integrityTable({files, imports}) {
  const rows = Object.keys(imports).filter((name) => name !== 'photo-worker.js').map((name) => `| \`${name}\` | \`${files[name]}\` |`);
  return ['| file | integrity |', '|---|---|', ...rows].join('\n');
}

/** `node scripts/integrity.mjs stop-trade-dial [address]` prints what to paste, `--readme` fills the README's table. */
if (process.argv[1] === new URL(import.meta.url).pathname) {
  const made = JSON.parse(readFileSync(new URL('../dist/standalone/integrity.json', import.meta.url), 'utf8'));
  const [what = 'all', address] = process.argv.slice(2);
  if (what === '--readme') {
    const readme = new URL('../README.md', import.meta.url);
    const text = readFileSync(readme, 'utf8');
    writeFileSync(readme, text.replace(/(<!-- integrity -->)[\s\S]*?(<!-- \/integrity -->)/, (_, open, close) => `${open}\n${integrityTable(made)}\n${close}`));
  } else console.log(snippet(`${what}.js`, made, address));
}
