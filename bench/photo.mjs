/**
 * How long a 24-megapixel photo holds the page's thread while it is opened and its crop is dragged, and whether its
 * memory comes back. In Chromium, from the built files: `npm run build && node bench/photo.mjs`. The thread is watched by
 * a message that the page sends itself over and over: the longest time between two is the longest hold, with whatever
 * else the machine is doing in it. So the same is measured on an idle page first.
 */
import {existsSync, readFileSync} from 'node:fs';
import {createServer} from 'node:http';
import puppeteer from 'puppeteer-core';
import {ENGINES} from '../scripts/browsers.mjs';

const ROOT = new URL('../dist/', import.meta.url);
const TYPES = {js: 'text/javascript', html: 'text/html'};

const server = createServer((request, response) => {
  const path = request.url === '/' ? '' : request.url.slice(1);
  if (!path) return response.setHeader('content-type', TYPES.html).end('<!doctype html><title>bench</title>');
  const file = new URL(path, ROOT);
  if (!existsSync(file)) return response.writeHead(404).end();
  response.setHeader('content-type', TYPES[path.split('.').at(-1)] ?? 'application/octet-stream').end(readFileSync(file));
});
await new Promise((done) => server.listen(0, done));

const browser = await puppeteer.launch({executablePath: ENGINES.chromium.find(), args: ['--no-sandbox', '--disable-gpu']});
const page = await browser.newPage();
page.on('pageerror', (error) => console.error(String(error)));
await page.goto(`http://localhost:${server.address().port}/`);
await page.evaluate(prepare);

const idle = await page.evaluate(() => hold(() => new Promise((done) => setTimeout(done, 2000))));
console.log(`idle page                          longest hold ${idle.longest.toFixed(1)} ms`);
for (const inPage of [false, true]) {
  const before = await memory();
  const opening = await page.evaluate((where) => hold(async () => {
    globalThis.photo = await openPhoto(file, {inPage: where});
  }), inPage);
  const open = await memory();
  const dragging = await page.evaluate(() => hold(async () => {
    for (let step = 0; step < 60; step++) await photo.tally({x: 501 + 7 * step, y: 333 + 3 * step, width: 4200, height: 2800});
  }));
  const replacing = await page.evaluate(async (where) => {
    for (let turn = 0; turn < 4; turn++) {
      const next = await openPhoto(file, {inPage: where});
      photo.close();
      globalThis.photo = next;
    }
  }, inPage).then(memory);
  await page.evaluate(() => {
    photo.close();
    globalThis.photo = undefined;
  });
  await new Promise((done) => setTimeout(done, 500));
  console.log(`\n${inPage ? 'in the page, no worker' : 'in the worker'}`);
  console.log(`  opening      ${opening.took.toFixed(0).padStart(6)} ms, longest hold ${opening.longest.toFixed(1)} ms`);
  console.log(`  a moved crop ${(dragging.took / 60).toFixed(1).padStart(6)} ms, longest hold ${dragging.longest.toFixed(1)} ms`);
  console.log(`  memory before ${before}, open ${open}, after replacing it four times ${replacing}, closed ${await memory()} MB`);
}
await browser.close();
server.close();

/** MB of all renderer processes, rubbish collected. */
async function memory() {
  const session = await browser.target().createCDPSession();
  const own = await page.createCDPSession();
  await own.send('HeapProfiler.collectGarbage');
  const {processInfo} = await session.send('SystemInfo.getProcessInfo');
  const kilobytes = processInfo.filter(({type}) => type === 'renderer').map(({id}) =>
    Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0));
  return Math.round(kilobytes.reduce((sum, size) => sum + size, 0) / 1024);
}

/** Runs in the page: the module, a photo of 24 megapixels with something in it, and the watch on the thread. */
async function prepare() {
  const {openPhoto} = await import('/photo/open.js');
  const canvas = new OffscreenCanvas(6000, 4000);
  const pen = canvas.getContext('2d');
  for (let y = 0; y < 4000; y += 40) {
    for (let x = 0; x < 6000; x += 40) {
      pen.fillStyle = `hsl(${(x * 7 + y * 3) % 360} 60% ${10 + ((x + 2 * y) / 40) % 60}%)`;
      pen.fillRect(x, y, 40, 40);
    }
  }
  const file = await canvas.convertToBlob({type: 'image/jpeg', quality: 0.95});
  const hold = async (job) => {
    const {port1, port2} = new MessageChannel();
    let [longest, last, watching] = [0, performance.now(), true];
    port1.onmessage = () => {
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
      if (watching) port2.postMessage(0);
    };
    port2.postMessage(0);
    const start = performance.now();
    await job();
    watching = false;
    return {took: performance.now() - start, longest};
  };
  Object.assign(globalThis, {openPhoto, file, hold});
}
