/** What a page pastes so that it runs the script-tag files it was given and no others. */
import {createHash} from 'node:crypto';
import {readFileSync} from 'node:fs';
import {isStarted} from './set-up.mjs';

const LIST = new URL('../dist/standalone/integrity.json', import.meta.url);

/** The list that the build leaves beside the files; see chunks.mjs. */
export const readList = () => JSON.parse(readFileSync(LIST, 'utf8'));

/** Every file that a page which asks for `name` may come to load by importing, at once or later; the photo worker is none of them. */
const heldBy = (name, {imports, lazy}) => [...imports[name], ...lazy[name]].sort();

/** Text of the import map that holds what a file imports: browsers take the integrity of imports from nowhere else. */
function importMap(name, list, address) {
  const integrity = Object.fromEntries(heldBy(name, list).map((file) => [address + file, list.files[file]]));
  return `\n${JSON.stringify({integrity}, null, 2)}\n`;
}

/**
 * The lines to paste before anything else that loads a module.
 * @param name - `stop-trade-dial.js`
 * @param address - where the files stand, with a slash at its end
 */
export function snippet(name, list, address = 'https://your.site/lampblack/') {
  const preload = list.imports[name].map((file) => `<link rel="modulepreload" href="${address}${file}" integrity="${list.files[file]}" crossorigin>`);
  return [
    `<script type="importmap">${importMap(name, list, address)}</script>`,
    ...preload,
    `<script type="module" src="${address}${name}" integrity="${list.files[name]}" crossorigin></script>`,
  ].join('\n');
}

/** `script-src` of a policy that lets the snippet run and nothing else: a hash for the import map, one for each file. */
export function scriptSources(name, list, address) {
  const map = `sha384-${createHash('sha384').update(importMap(name, list, address)).digest('base64')}`;
  return [map, list.files[name], ...heldBy(name, list).map((file) => list.files[file])].map((hash) => `'${hash}'`).join(' ');
}

/** What the README has: the hash of each file that a page asks for itself, and the lines for one of them. */
export function integrityBlock(list, name = 'stop-trade-dial.js') {
  const rows = list.entries.filter((file) => file !== 'photo-worker.js').map((file) => `| \`${file}\` | \`${list.files[file]}\` |`);
  return [
    '| file | integrity |', '|---|---|', ...rows, '',
    `<details><summary>All lines for <code>${name}</code></summary>`, '', '```html', snippet(name, list), '```', '', '</details>',
  ].join('\n');
}

/** `node scripts/integrity.mjs stop-trade-dial [address]` prints what to paste and the policy that lets it run. */
if (isStarted(import.meta.url)) {
  const [tag = 'all', address = 'https://your.site/lampblack/'] = process.argv.slice(2);
  const [name, list] = [`${tag}.js`, readList()];
  if (!list.entries.includes(name)) {
    console.error(`There is no ${name}; there are ${list.entries.join(', ')}.`);
    process.exit(1);
  }
  console.log(snippet(name, list, address));
  // Without 'strict-dynamic' WebKit does not let a file import another by its hash.
  console.log(`\nContent-Security-Policy: script-src ${scriptSources(name, list, address)} 'strict-dynamic'`);
}
