/** Builds dist/ (the package) and site/ (the demo as a static site that runs from any folder). */
import {rmSync} from 'node:fs';
import {ROOT, run} from './set-up.mjs';
import {writeEventTypes} from './event-types.mjs';
import {writeIntegrity} from './integrity.mjs';
import {elementTags, writeManifest} from './manifest.mjs';
import {printSizes, sizes} from './sizes.mjs';

rmSync(`${ROOT}dist`, {recursive: true, force: true});
run('npx', ['rollup', '-c', '--silent']);

const {files, imports} = writeIntegrity(`${ROOT}dist/standalone/`);
writeEventTypes(`${ROOT}dist/elements/`, elementTags());
await writeManifest(`${ROOT}dist/`);
const {buildSite} = await import('./site.mjs');
await buildSite();

console.log('\nIntegrity of the script-tag files (dist/standalone/integrity.json has all; node scripts/integrity.mjs TAG prints what to paste)');
for (const name of Object.keys(imports)) console.log(`  ${name.padEnd(24)}${files[name]}`);
const over = printSizes(await sizes());
if (over) console.log(`\n${over} over budget.`);
