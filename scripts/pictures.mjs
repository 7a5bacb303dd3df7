/** `npm run pictures`: every page of the demo, narrow and wide, light and dark, into pictures/ with a page to leaf through. Build first. */
import {createServer} from 'node:http';
import {mkdirSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import puppeteer from 'puppeteer-core';
import sirv from 'sirv';
import {ENGINES} from './browsers.mjs';
import {ROOT} from './set-up.mjs';

const OUT = `${ROOT}pictures/`;
const WIDTHS = {narrow: 320, wide: 1100};
const site = `${ROOT}site/`;
const pages = ['', 'reference/'].flatMap((folder) => readdirSync(site + folder).filter((name) => name.endsWith('.html')).map((name) => folder + name));

const server = createServer(sirv(site, {dev: true}));
await new Promise((resolve) => { server.listen(0, '127.0.0.1', resolve); });
const address = `http://127.0.0.1:${server.address().port}/`;
const browser = await puppeteer.launch({executablePath: ENGINES.chromium.find(), args: ['--no-sandbox', '--disable-gpu', '--force-color-profile=srgb']});

rmSync(OUT, {recursive: true, force: true});
mkdirSync(OUT, {recursive: true});
const taken = [];
for (const page of pages) {
  for (const [size, width] of Object.entries(WIDTHS)) {
    for (const scheme of ['light', 'dark']) taken.push(await take(page, size, width, scheme));
  }
}
await browser.close();
server.close();
writeFileSync(`${OUT}index.html`, leaves(taken));
console.log(`${taken.length} pictures of ${pages.length} pages: pictures/index.html`);

/** @returns name of the picture's file */
async function take(page, size, width, scheme) {
  const tab = await browser.newPage();
  await tab.emulateMediaFeatures([{name: 'prefers-color-scheme', value: scheme}]);
  await tab.setViewport({width, height: 900});
  await tab.goto(address + page, {waitUntil: 'networkidle0', timeout: 30_000});
  // What is folded on the page is opened: each check is to be seen.
  await tab.evaluate(() => { for (const details of document.querySelectorAll('details')) details.open = true; });
  await tab.waitForNetworkIdle({idleTime: 400, timeout: 15_000}).catch(() => undefined);
  const name = `${page.replace('.html', '').replaceAll('/', '-')}.${size}.${scheme}.png`;
  await tab.screenshot({path: OUT + name, fullPage: true});
  await tab.close();
  return name;
}

function leaves(names) {
  const figures = names.map((name) => `<figure><figcaption>${name}</figcaption><img src="${name}" alt="${name}" loading="lazy"></figure>`);
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Pictures</title><style>
body{font:14px sans-serif;margin:1em;display:flex;flex-wrap:wrap;gap:1em;align-items:start;background:#888}figure{margin:0}img{max-width:48vw;display:block}</style>
${figures.join('\n')}</html>`;
}
