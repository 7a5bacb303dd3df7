/**
 * What a 24-megapixel photo asks of the page while it is opened, measured and dragged over, whether its memory comes back,
 * and what counting it costs beside a plain loop, image-js and sharp. From the built files:
 * `npm run build && node bench/photo.mjs`.
 *
 * The page's thread is watched by a message that the page sends itself over and over: the longest time between two is the
 * longest hold, with whatever else the machine is doing in it, so the same is measured on an idle page first. Beside it
 * stands the time that the thread spent working in all, which Linux counts and other work does not blur.
 */
import {execFileSync} from 'node:child_process';
import {existsSync, readdirSync, readFileSync} from 'node:fs';
import {createServer} from 'node:http';
import {fileURLToPath} from 'node:url';
import puppeteer from 'puppeteer-core';
import {ENGINES} from '../scripts/browsers.mjs';

const ROOT = new URL('../dist/', import.meta.url);
const TYPES = {js: 'text/javascript', html: 'text/html'};
/** Each job is done so often, and the shortest of its longest holds counts: what the page does itself comes back each time. */
const ROUNDS = 3;

const server = createServer((request, response) => {
  const path = request.url === '/' ? '' : request.url.slice(1);
  if (!path) return response.setHeader('content-type', TYPES.html).end('<!doctype html><title>bench</title>');
  const file = new URL(path, ROOT);
  if (!existsSync(file)) return response.writeHead(404).end();
  response.setHeader('content-type', TYPES[path.split('.').at(-1)] ?? 'application/octet-stream').end(readFileSync(file));
});
await new Promise((done) => server.listen(0, done));

for (const engine of ['chromium', 'firefox']) {
  const executablePath = ENGINES[engine].find();
  if (executablePath) await measure(engine, executablePath);
  else console.log(`${engine}: not on this machine\n`);
}
server.close();
console.log(execFileSync(process.execPath, [fileURLToPath(new URL('tally.mjs', import.meta.url))], {encoding: 'utf8'}));

async function measure(engine, executablePath) {
  const browser = await puppeteer.launch({
    browser: engine === 'firefox' ? 'firefox' : 'chrome', executablePath, headless: true,
    args: engine === 'firefox' ? [] : ['--no-sandbox', '--disable-gpu'],
  });
  const page = await browser.newPage();
  page.on('pageerror', (error) => console.error(String(error)));
  await page.goto(`http://localhost:${server.address().port}/`);
  await page.evaluate(prepare);
  console.log(`${engine}\n  idle page                  longest hold ${ms(await hold(page, 'rest'))}`);
  for (const inPage of [false, true]) {
    await page.evaluate((where) => { globalThis.inPage = where; }, inPage);
    const before = await memory(page, browser);
    console.log(`  ${inPage ? 'without a worker' : 'with a worker'}`);
    await page.evaluate(() => jobs.open()); // the code is compiled, and the worker is there
    const open = await memory(page, browser);
    for (const [job, label] of [['open', 'opening'], ['drag', 'dragging the crop'], ['level', 'a measured spot'], ['card', 'the gray card']]) {
      const longest = await hold(page, job);
      console.log(`    ${label.padEnd(22)} longest hold ${ms(longest)}, the page’s thread worked ${ms(await work(page, browser, job))}`);
    }
    await page.evaluate(async () => { for (let turn = 0; turn < 4; turn++) await jobs.open(); });
    const replaced = await memory(page, browser);
    await page.evaluate(() => jobs.close());
    console.log(`    memory: before ${before} MB, open ${open}, after replacing it four times more ${replaced}, closed ${await memory(page, browser)}`);
  }
  console.log('');
  await browser.close();
}

function ms(time) {
  return `${time.toFixed(1).padStart(6)} ms`;
}

/** Shortest of the longest holds of a job, ms. */
async function hold(page, job) {
  let least = Infinity;
  for (let round = 0; round < ROUNDS; round++) least = Math.min(least, await page.evaluate((name) => longestHold(jobs[name]), job));
  return least;
}

/** What a job makes the page's thread work, ms; not watched, since watching is work too. */
async function work(page, browser, job) {
  let least = Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const before = working(browser);
    await page.evaluate((name) => jobs[name](), job);
    least = Math.min(least, working(browser) - before);
  }
  return least;
}

/** Processes of the browser that pages run in. */
function pageProcesses(browser) {
  const all = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  const parents = new Map(all.map((id) => [id, /^PPid:\s+(\d+)/m.exec(read(`/proc/${id}/status`))?.[1]]));
  const isOurs = (id) => id !== undefined && (id === String(browser.process().pid) || isOurs(parents.get(id)));
  return all.filter((id) => isOurs(id) && /-contentproc|--type=renderer/.test(read(`/proc/${id}/cmdline`)));
}

/** MB that they hold, after a while, and in Chromium with the rubbish collected. */
async function memory(page, browser) {
  await new Promise((done) => setTimeout(done, 1500));
  const session = await page.createCDPSession().catch(() => undefined);
  await session?.send('HeapProfiler.collectGarbage');
  await session?.detach();
  const kilobytes = pageProcesses(browser).map((id) => Number(/VmRSS:\s+(\d+)/.exec(read(`/proc/${id}/status`))?.[1] ?? 0));
  return Math.round(kilobytes.reduce((sum, size) => sum + size, 0) / 1024);
}

/** Milliseconds that their first threads have worked so far: a page's own thread is the first of its process. */
function working(browser) {
  return pageProcesses(browser).reduce((sum, id) => sum + Number(read(`/proc/${id}/task/${id}/schedstat`).split(' ')[0]) / 1e6, 0);
}

/** A process may be gone by now. */
function read(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

/** Runs in the page: the module, a photo of 24 megapixels with something in it, what is done with it, and the watch. */
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
  let photo;
  const turn = () => new Promise((done) => setTimeout(done));
  const spot = (step) => ({x: 500 + 40 * step, y: 900, width: 400, height: 300});
  const jobs = {
    rest: () => new Promise((done) => setTimeout(done, 1000)),
    open: async () => {
      const next = await openPhoto(file, {inPage: globalThis.inPage});
      photo?.close();
      photo = next;
    },
    drag: async () => {
      for (let step = 0; step < 60; step++) {
        await photo.tally({x: 501 + 7 * step, y: 333 + 3 * step, width: 4200, height: 2800});
        await turn();
      }
    },
    level: async () => {
      for (let step = 0; step < 30; step++) {
        await photo.ask('level', {region: spot(step)});
        await turn();
      }
    },
    card: () => photo.ask('readCard', {white: spot(0), gray: spot(12), black: spot(24)}),
    close: () => {
      photo.close();
      photo = undefined;
    },
  };
  const longestHold = async (job) => {
    const {port1, port2} = new MessageChannel();
    let [longest, last, watching] = [0, performance.now(), true];
    port1.onmessage = () => {
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
      if (watching) port2.postMessage(0);
    };
    port2.postMessage(0);
    await job();
    watching = false;
    return Math.max(longest, performance.now() - last);
  };
  Object.assign(globalThis, {jobs, longestHold});
}
