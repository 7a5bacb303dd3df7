/** Elements in Chromium, from the built standalone files, beside bare Lit elements with as many nodes. */
import {existsSync, readFileSync, readdirSync} from 'node:fs';
import {createServer} from 'node:http';
import {gzipSync} from 'node:zlib';
import {build} from 'esbuild';
import puppeteer from 'puppeteer-core';
import {ENGINES} from '../scripts/browsers.mjs';
import {ROOT} from '../scripts/set-up.mjs';

const STANDALONE = `${ROOT}dist/standalone/`;

/** A Lit element that draws `rows` lines, each with a value in it and in an attribute. */
const BARE = `
  import {LitElement, html} from 'lit';
  export {LitElement, html};
  customElements.define('bare-lit', class extends LitElement {
    static properties = {rows: {type: Number}};
    render() { return Array.from({length: this.rows}, (_, at) => html\`<p title=\${at}>\${at}</p>\`); }
  });`;

async function bundle(contents) {
  const {outputFiles: [file]} = await build({
    stdin: {contents, resolveDir: ROOT}, bundle: true, minify: true, format: 'esm', write: false, conditions: ['production'], legalComments: 'none', logLevel: 'error',
  });
  return file.contents;
}

/** Bytes, compressed, of a standalone file and everything it imports before it runs. */
function bytesOf(file, seen = new Set()) {
  if (seen.has(file) || !existsSync(STANDALONE + file)) return 0;
  seen.add(file);
  const text = readFileSync(STANDALONE + file, 'utf8');
  const imported = [...text.matchAll(/(?:from|import)\s*"\.\/([^"]+)"/g)].map(([, name]) => name);
  return gzipSync(text, {level: 9}).length + imported.reduce((sum, name) => sum + bytesOf(name, seen), 0);
}

export async function measureBytes() {
  const lit = gzipSync(await bundle("export {LitElement, html, css, svg, nothing} from 'lit';"), {level: 9}).length;
  const tags = readdirSync(`${ROOT}src/elements`).filter((tag) => existsSync(`${STANDALONE}${tag}.js`) && existsSync(`${ROOT}src/elements/${tag}/define.ts`));
  return {lit, elements: [...tags, 'all'].map((tag) => ({tag, bytes: bytesOf(`${tag}.js`)}))};
}

export async function measureElements() {
  const bare = await bundle(BARE);
  const server = createServer((request, response) => {
    const path = request.url.slice(1);
    if (!path) return response.setHeader('content-type', 'text/html').end('<!doctype html><title>bench</title><main></main>');
    if (path === 'bare.js') return response.setHeader('content-type', 'text/javascript').end(bare);
    if (!existsSync(STANDALONE + path)) return response.writeHead(404).end();
    response.setHeader('content-type', 'text/javascript').end(readFileSync(STANDALONE + path));
  });
  await new Promise((done) => server.listen(0, done));
  const browser = await puppeteer.launch({executablePath: ENGINES.chromium.find(), args: ['--no-sandbox', '--disable-gpu'], protocolTimeout: 300_000});
  try {
    const page = await browser.newPage();
    await page.setViewport({width: 1000, height: 900});
    page.on('pageerror', (error) => console.error(String(error)));
    await page.goto(`http://localhost:${server.address().port}/`);
    const upgrade = await page.evaluate(fiftyOfEach);
    const drag = await dragged(page);
    return {upgrade, drag};
  } finally {
    await browser.close();
    server.close();
  }
}

/** Runs in the page: ms for fifty dials and for fifty bare elements with as many nodes, from tag to layout. */
async function fiftyOfEach() {
  await Promise.all([import('/stop-trade-dial.js'), import('/bare.js')]);
  const main = document.querySelector('main');
  const nodesOf = (root) => {
    const walker = document.createTreeWalker(root);
    let nodes = 0;
    while (walker.nextNode()) nodes++;
    return nodes;
  };
  const draw = async (tag, dress) => {
    const start = performance.now();
    const all = Array.from({length: 50}, () => {
      const element = document.createElement(tag);
      dress(element);
      return element;
    });
    main.append(...all);
    await Promise.all(all.map((element) => element.updateComplete));
    document.body.getBoundingClientRect();
    const took = performance.now() - start;
    const nodes = nodesOf(all[0].shadowRoot);
    main.replaceChildren();
    return {took, nodes};
  };
  const dial = () => draw('stop-trade-dial', (element) => { element.setAttribute('aperture', 'f/2.8'); element.setAttribute('shutter', '1/25'); });
  const withRows = (rows) => draw('bare-lit', (element) => { element.rows = rows; });
  const {nodes} = await dial();
  // Two sizes tell how many nodes a row has.
  const [ten, twenty] = [await withRows(10), await withRows(20)];
  const rows = Math.round((nodes - (2 * ten.nodes - twenty.nodes)) / ((twenty.nodes - ten.nodes) / 10));
  let [dials, bare, bareNodes] = [Infinity, Infinity, 0];
  for (let round = 0; round < 8; round++) {
    dials = Math.min(dials, (await dial()).took);
    const drawn = await withRows(rows);
    [bare, bareNodes] = [Math.min(bare, drawn.took), drawn.nodes];
  }
  return {dials, bare, nodes, bareNodes};
}

/** Every element on one bench; the dial's first slider is dragged. Longest time between two frames, and the same on the idle page. */
async function dragged(page) {
  const elements = await page.evaluate(async () => {
    await import('/all.js');
    const tags = ['stop-trade-dial', 'sharp-zone-bar', 'shot-plan', 'tonal-chart-reader', 'gray-card-check', 'backdrop-shade', 'settings-trail', 'shot-sheet']
      .filter((tag) => customElements.get(tag));
    document.querySelector('main').append(...tags.map((tag) => Object.assign(document.createElement(tag), {bench: 'bench'})));
    globalThis.watch = async (during) => {
      const gaps = [];
      let [last, on] = [performance.now(), true];
      const tick = (now) => { gaps.push(now - last); last = now; if (on) requestAnimationFrame(tick); };
      requestAnimationFrame(tick);
      await during();
      on = false;
      gaps.splice(0, 2);
      gaps.sort((one, other) => one - other);
      return {worst: gaps.at(-1), middle: gaps[gaps.length >> 1]};
    };
    await new Promise((done) => setTimeout(done, 1500));
    document.querySelector('stop-trade-dial').scrollIntoView();
    return tags.length;
  });
  const idle = await page.evaluate(() => watch(() => new Promise((done) => setTimeout(done, 1500))));
  const slider = (await page.evaluateHandle(() => document.querySelector('stop-trade-dial').shadowRoot.querySelector('[role=slider]'))).asElement();
  const box = await slider?.boundingBox();
  if (!box) throw new Error('The dial has no slider to drag.');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.evaluate(() => { globalThis.turns = 0; document.addEventListener('shot-change', () => { turns++; }); });
  await page.mouse.move(x, y);
  await page.mouse.down();
  const watching = page.evaluate(() => watch(() => new Promise((done) => { globalThis.stopWatching = done; })));
  for (let step = 0; step < 90; step++) await page.mouse.move(x + 120 * Math.sin(step / 14), y + 40 * Math.cos(step / 14));
  await page.mouse.up();
  await page.evaluate(() => stopWatching());
  return {elements, idle, drag: await watching, turns: await page.evaluate(() => turns)};
}
