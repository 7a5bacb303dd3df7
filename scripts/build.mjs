/** Builds dist/ (the package) and site/ (the demo as a static site that runs from any folder). */
import {readFileSync, rmSync} from 'node:fs';
import {ROOT, fail, run} from './set-up.mjs';
import {writeEventTypes} from './event-types.mjs';
import {elementTags, writeManifest} from './manifest.mjs';
import {printSizes, sizes} from './sizes.mjs';

rmSync(`${ROOT}dist`, {recursive: true, force: true});
run('npx', ['rollup', '-c', '--silent']);

writeEventTypes(`${ROOT}dist/elements/`, elementTags());
await writeManifest(`${ROOT}dist/`);
const {buildSite} = await import('./site.mjs');
await buildSite();

const {files, entries} = JSON.parse(readFileSync(`${ROOT}dist/standalone/integrity.json`, 'utf8'));
console.log('\nIntegrity of the script-tag files (dist/standalone/integrity.json has all; node scripts/integrity.mjs TAG prints what to paste)');
for (const name of entries) console.log(`  ${name.padEnd(24)}${files[name]}`);
const over = printSizes(await sizes());
if (over.length) fail(`Over budget: ${over.join(', ')}. What a page loads first should shrink, or scripts/budgets.json say why not.`);
