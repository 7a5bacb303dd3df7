/**
 * Makes the site out of demo/ and the built files: pages, scripts, frames, oEmbed documents, reference pages, and what
 * the calculator needs to work offline. Everything is addressed relatively, so that it runs from any folder; only oEmbed
 * wants whole addresses, and takes them from SITE_URL.
 */
import {cpSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync} from 'node:fs';
import {createHash} from 'node:crypto';
import {dirname} from 'node:path';
import {build} from 'esbuild';
import {ROOT, isStarted} from './set-up.mjs';
import {framePages} from './frames.mjs';
import {referencePages} from './element-pages.mjs';
import {languagePages} from './page-languages.mjs';
import {serverRenderer} from './server-render.mjs';

/** What the calculator keeps for offline use; other shots of the guild are kept once they were seen. */
const KEPT_OFFLINE = [/^(index(\.\w\w)?\.html|demo\.(css|js)|icon\.svg|manifest\.webmanifest)$/, /^icons\//, /^shots\/small\//,
  /^shots\/aperture-f8\.jpg$/, /^lampblack\/[^/]+\.js$/];

/** Pages that are sent with their checks rendered, so that nothing on them moves; the others show what stands in without script. */
const RENDERED = [/^(index(\.\w\w)?|article|club)\.html$/, /^reference\/.+\.html$/];

/**
 * @param options.standalone - folder of the script-tag files
 * @param options.site - folder to make
 * @param options.address - where the site will stand, for oEmbed
 * @param options.manifest - custom-elements.json
 */
export async function buildSite({
  standalone = `${ROOT}dist/standalone/`, site = `${ROOT}site/`, address = process.env.SITE_URL || 'http://localhost:4173/',
  manifest = [`${ROOT}custom-elements.json`, `${ROOT}dist/custom-elements.json`].find(existsSync),
} = {}) {
  rmSync(site, {recursive: true, force: true});
  mkdirSync(site);
  cpSync(`${ROOT}demo`, site, {recursive: true});
  rmSync(`${site}words`, {recursive: true});
  writeAll(site, languagePages());
  cpSync(standalone, `${site}lampblack`, {recursive: true});
  const tags = readdirSync(`${ROOT}src/elements`).filter((name) => existsSync(`${ROOT}src/elements/${name}/define.ts`));
  await Promise.all(tags.map((tag) => buildFrame(tag, `${site}lampblack/frame/`)));
  const elements = manifest ? referencePages(JSON.parse(readFileSync(manifest, 'utf8')), tags, await observedBy(tags)) : {};
  writeAll(site, elements);
  writeAll(site, framePages(tags, address.replace(/\/?$/, '/'), readFileSync(`${ROOT}demo/embed.html`, 'utf8')));
  await renderPages(site, tags);
  await buildServiceWorker(site);
}

async function renderPages(site, tags) {
  const render = await serverRenderer(tags);
  for (const name of files(site).filter((file) => RENDERED.some((page) => page.test(file)))) {
    writeFileSync(site + name, await render(readFileSync(site + name, 'utf8')));
  }
}

/** Attributes each element listens to: what its class says when it is asked, which no comment can get wrong. */
async function observedBy(tags) {
  const asked = tags.map(async (tag) => {
    const path = `${ROOT}dist/elements/${tag}/class.js`;
    const found = existsSync(path) ? Object.values(await import(path)).find((value) => value.observedAttributes) : undefined;
    return [tag, found?.observedAttributes];
  });
  return Object.fromEntries((await Promise.all(asked)).filter(([, names]) => names));
}

function writeAll(site, pages) {
  for (const [name, text] of Object.entries(pages)) {
    mkdirSync(dirname(site + name), {recursive: true});
    writeFileSync(site + name, text);
  }
}

/**
 * An ordinary script, no module, with everything inside: a frame that is sandboxed without allow-same-origin belongs to
 * no origin, and may fetch no module from a server that does not say so.
 */
function buildFrame(tag, outdir) {
  const name = tag.replace(/(?:^|-)([a-z])/g, (_, letter) => letter.toUpperCase());
  return build({
    stdin: {
      contents: `import {${name}} from './elements/${tag}/class.js'; import {showFrame} from './frame/frame.js';
        customElements.define('${tag}', ${name}); showFrame('${tag}');`,
      resolveDir: `${ROOT}src`, loader: 'ts',
    },
    outfile: `${outdir}${tag}.js`, bundle: true, minify: true, format: 'iife', target: 'es2022', conditions: ['production'],
    tsconfig: `${ROOT}tsconfig.json`, legalComments: 'none', logLevel: 'error',
    banner: {js: 'var lampblackScript=new URL("../frame.js",document.currentScript.src).href;'},
    define: {'import.meta.url': 'lampblackScript'},
  });
}

/** The list of what is kept carries a mark of each file's content, so that a new build replaces what changed. */
async function buildServiceWorker(site) {
  const entries = files(site).filter((name) => KEPT_OFFLINE.some((kept) => kept.test(name)))
    .map((url) => ({url, revision: createHash('sha256').update(readFileSync(site + url)).digest('hex').slice(0, 16)}));
  await build({
    entryPoints: [`${ROOT}scripts/service-worker.js`], outfile: `${site}service-worker.js`, bundle: true, minify: true,
    format: 'iife', target: 'es2022', logLevel: 'error', legalComments: 'none',
    define: {'self.__WB_MANIFEST': JSON.stringify(entries), 'process.env.NODE_ENV': '"production"'},
  });
}

function files(folder, under = '') {
  return readdirSync(folder + under).sort().flatMap((name) => (
    statSync(folder + under + name).isDirectory() ? files(folder, `${under}${name}/`) : [under + name]));
}

if (isStarted(import.meta.url)) await buildSite();
