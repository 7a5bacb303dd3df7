/**
 * `npm run pictures`: every page of the demo, and every element by itself, narrow and wide, light and dark, into pictures/
 * with a page to leaf through. Build first.
 */
import {createServer} from 'node:http';
import {mkdirSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import puppeteer from 'puppeteer-core';
import sirv from 'sirv';
import {ENGINES} from './browsers.mjs';
import {ROOT} from './set-up.mjs';

const OUT = `${ROOT}pictures/`;
const WIDTHS = {narrow: 320, wide: 1200};
const SCHEMES = ['light', 'dark'];
/** Longest a page may take until it rests, ms: then its picture is taken as it is, and that is said. */
const PATIENCE_MS = 6000;
const site = `${ROOT}site/`;
const tags = readdirSync(`${site}embed`).map((name) => name.replace('.html', ''));
const pages = [...['', 'reference/'].flatMap((folder) => readdirSync(site + folder).filter((name) => name.endsWith('.html')).map((name) => folder + name)
  .filter((page) => page !== 'embed.html')), ...tags.map((tag) => `embed.html?tag=${tag}`)];

const began = Date.now();
const server = createServer(sirv(site, {dev: true}));
await new Promise((resolve) => { server.listen(0, '127.0.0.1', resolve); });
const address = `http://127.0.0.1:${server.address().port}/`;
const browser = await puppeteer.launch({executablePath: ENGINES.chromium.find(), args: ['--no-sandbox', '--disable-gpu', '--force-color-profile=srgb']});

rmSync(OUT, {recursive: true, force: true});
mkdirSync(OUT, {recursive: true});
const taken = [];
try {
  for (const page of pages) {
    const names = await takeAll(page);
    taken.push(...names);
    console.log(`${String(Math.round((Date.now() - began) / 1000)).padStart(4)} s  ${page}: ${names.length}`);
  }
} finally {
  await browser.close();
  server.close();
}
writeFileSync(`${OUT}index.html`, leaves(taken));
console.log(`${taken.length} pictures of ${pages.length} pages in ${Math.round((Date.now() - began) / 1000)} s: pictures/index.html`);

/** A page is opened once for each width, and seen in both schemes. @returns names of the pictures' files */
async function takeAll(page) {
  const names = [];
  for (const [size, width] of Object.entries(WIDTHS)) {
    const tab = await browser.newPage();
    await tab.setViewport({width, height: 900});
    await tab.goto(address + page, {waitUntil: 'load', timeout: 30_000});
    // What is folded on the page is opened: each check is to be seen.
    await tab.evaluate(() => { for (const details of document.querySelectorAll('details')) details.open = true; });
    await rest(tab, page);
    for (const scheme of SCHEMES) {
      await tab.emulateMediaFeatures([{name: 'prefers-color-scheme', value: scheme}]);
      const name = `${page.replace('.html', '').replaceAll(/[/?]/g, '-').replace('tag=', '')}.${size}.${scheme}.png`;
      await tab.screenshot({path: OUT + name, fullPage: true});
      names.push(name);
      const element = page.startsWith('reference/') && await tab.$(page.slice(10, -5));
      if (element) {
        const own = `element-${page.slice(10, -5)}.${size}.${scheme}.png`;
        await element.screenshot({path: OUT + own});
        names.push(own);
      }
    }
    await tab.close();
  }
  return names;
}

async function rest(tab, page) {
  const idle = tab.waitForNetworkIdle({idleTime: 300, timeout: PATIENCE_MS});
  const settled = tab.waitForFunction(() => [...document.querySelectorAll('*')].every(({localName, shadowRoot}) =>
    !customElements.get(localName) || shadowRoot?.querySelector('.plate') && !shadowRoot.querySelector('[aria-busy=true]')), {timeout: PATIENCE_MS});
  const late = (await Promise.allSettled([idle, settled])).some(({status}) => status === 'rejected');
  if (late) console.log(`       ${page} did not come to rest in ${PATIENCE_MS / 1000} s`);
}

function leaves(names) {
  const groups = Map.groupBy?.(names, (name) => name.split('.')[0]) ?? names.reduce((all, name) => {
    const [key] = name.split('.');
    return all.set(key, [...all.get(key) ?? [], name]);
  }, new Map());
  const sections = [...groups].map(([key, own]) => `<section id="${key}"><h2>${key}</h2>${own.map((name) =>
    `<figure><figcaption>${name}</figcaption><a href="${name}"><img src="${name}" alt="${name}" loading="lazy"></a></figure>`).join('')}</section>`);
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Pictures</title><style>
body{font:14px sans-serif;margin:1em;background:#888}nav{columns:4}section{display:flex;flex-wrap:wrap;gap:1em;align-items:start}h2{flex:1 0 100%}
figure{margin:0}img{max-width:44vw;display:block}</style>
<nav>${[...groups.keys()].map((key) => `<a href="#${key}">${key}</a><br>`).join('')}</nav>
${sections.join('\n')}</html>`;
}
