/**
 * A drag on a slow device, in Chromium with its processor throttled: every element linked on one page, from the built
 * standalone files. Frames beside those of the same drag unthrottled, and beside the limit. Never a test.
 */
import {existsSync, readFileSync} from 'node:fs';
import {createServer} from 'node:http';
import puppeteer from 'puppeteer-core';
import {ENGINES} from '../scripts/browsers.mjs';
import {ROOT} from '../scripts/set-up.mjs';

/** Longest frame a drag may have on a slow device, ms. */
export const LIMIT_MS = 50;
/** How much slower a slow device is. */
export const SLOWER = 4;
const MOVES = 90;

/** What is dragged in each element. */
const HELD = {
  'stop-trade-dial': '[role=slider]', 'sharp-zone-bar': '[role=slider]', 'shot-plan': '[role=slider]', 'backdrop-shade': '[data-thing=lamp0], [role=slider]',
};
const MIME = {js: 'text/javascript', html: 'text/html'};

/** @returns for each element `{tag, frames: {slow, free}}`: the middle, the slowest in twenty and the worst frame of a drag, ms */
export async function measureDrags() {
  const server = createServer((request, response) => {
    const path = new URL(request.url, 'http://localhost').pathname.slice(1);
    if (!path) return response.setHeader('content-type', MIME.html).end('<!doctype html><title>drag</title><main></main>');
    const file = `${ROOT}dist/standalone/${path}`;
    if (!existsSync(file)) return response.writeHead(404).end();
    return response.setHeader('content-type', MIME[path.split('.').at(-1)] ?? 'application/octet-stream').end(readFileSync(file));
  });
  await new Promise((done) => { server.listen(0, done); });
  const browser = await puppeteer.launch({executablePath: ENGINES.chromium.find(), args: ['--no-sandbox', '--disable-gpu'], protocolTimeout: 300_000});
  try {
    const page = await browser.newPage();
    await page.setViewport({width: 1000, height: 900});
    await page.goto(`http://localhost:${server.address().port}/`);
    await page.evaluate(standAll, Object.keys(HELD));
    const rows = [];
    for (const [tag, held] of Object.entries(HELD)) {
      await page.emulateCPUThrottling(null);
      await dragged(page, tag, held); // once, so that code is warm in both
      const free = await dragged(page, tag, held);
      await page.emulateCPUThrottling(SLOWER);
      rows.push({tag, free, slow: await dragged(page, tag, held)});
    }
    return rows;
  } finally {
    await browser.close();
    server.close();
  }
}

/** Runs in the page. */
async function standAll(dragged) {
  await import('/all.js');
  const rest = ['tonal-chart-reader', 'gray-card-check', 'settings-trail', 'shot-sheet'].filter((tag) => customElements.get(tag));
  document.querySelector('main').append(...[...dragged, ...rest].map((tag) => Object.assign(document.createElement(tag), {bench: 'bench'})));
  await new Promise((done) => { setTimeout(done, 2000); });
  // What a frame costs: from the first move that it answers until it has been painted. Waiting for the screen is no cost.
  globalThis.costs = [];
  let began = 0;
  const {port1, port2} = new MessageChannel();
  port1.onmessage = () => {
    if (began) costs.push(performance.now() - began);
    began = 0;
  };
  addEventListener('pointermove', () => {
    if (began) return;
    began = performance.now();
    requestAnimationFrame(() => port2.postMessage(0));
  }, {capture: true});
}

async function dragged(page, tag, held) {
  const box = await page.evaluate((name, selector) => {
    const handle = document.querySelector(name).shadowRoot.querySelector(selector);
    const grip = handle.querySelector('.grip, .knob, .tab, .hit') ?? handle;
    grip.scrollIntoView({block: 'center'});
    const {x, y, width, height} = grip.getBoundingClientRect();
    return {x: x + width / 2, y: y + height / 2};
  }, tag, held);
  await page.mouse.move(box.x, box.y);
  await page.mouse.down();
  await page.evaluate(() => { globalThis.costs = []; });
  for (let move = 0; move < MOVES; move++) await page.mouse.move(box.x + 60 * Math.sin(move / 9), box.y + 30 * (1 - Math.cos(move / 9)));
  await page.mouse.up();
  await page.evaluate(() => new Promise((done) => { setTimeout(done, 300); }));
  return page.evaluate(() => {
    costs.sort((one, other) => one - other);
    return {frames: costs.length, middle: costs[costs.length >> 1], slowest: costs[Math.floor(costs.length * 0.95)], worst: costs.at(-1)};
  });
}

/** Rows of the table of `npm run bench`. */
export async function dragRows() {
  const ms = (value) => `${value.toFixed(value < 10 ? 1 : 0)} ms`;
  return (await measureDrags()).map(({tag, free, slow}) => ({
    what: `\`${tag}\` dragged on a processor ${SLOWER} times slower, slowest frame in twenty of ${slow.frames}`,
    measured: `${ms(slow.slowest)} (worst ${ms(slow.worst)})`,
    against: `the limit of ${LIMIT_MS} ms; unthrottled ${ms(free.slowest)}`,
    ratio: slow.slowest / LIMIT_MS,
  }));
}

if (import.meta.url === `file://${process.argv[1]}`) {
  for (const {what, measured, against, ratio} of await dragRows()) console.log(`${what}: ${measured}, against ${against}: ${ratio.toFixed(2)} ×`);
}
