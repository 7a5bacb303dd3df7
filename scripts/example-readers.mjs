/** What a reader does on the page of each example, in Chromium, with real keys; and that the page asks nothing of anybody else. */
import {createServer} from 'node:http';
import {join} from 'node:path';
import puppeteer from 'puppeteer-core';
import sirv from 'sirv';
import {ENGINES} from './browsers.mjs';
import {ROOT} from './set-up.mjs';

/** Where the page of each is, from the project's folder, and what is done on it. */
const READERS = {
  rollup: {
    serve: '.',
    read: async (page) => {
      await says(page, 'stop-trade-dial', 'f/8');
      await turn(page);
      await waitFor(page, () => document.title === 'ISO 100', 'the page hears of the change');
      const stops = await page.evaluate(async () => (await import('/built/compute.js')).stopped);
      // 2·log2(2.8/8) by the definition of a stop; three whole clicks on the labels.
      if (Math.abs(stops + 3.03) > 0.01) throw new Error(`f/2.8 to f/8 is ${stops} stops there`);
    },
  },
  'vite-react': {
    serve: 'built',
    read: async (page) => {
      await says(page, 'stop-trade-dial', 'f/8');
      await turn(page);
      await waitFor(page, () => /Shot at f\/(?!8\b)/.test(document.querySelector('main p').textContent), 'React hears of the change');
      const file = await page.waitForSelector('tonal-chart-reader >>> input[type=file]');
      await file.uploadFile(`${ROOT}demo/shots/small/aperture-f8.jpg`);
      await waitFor(page, () => document.querySelector('tonal-chart-reader').shadowRoot.querySelector('[part~=chart]'), 'the chart of a photo is drawn');
      if (!page.asked.some((address) => /photo-worker-[\w-]+\.js$/.test(address))) throw new Error('the photo was not read in the worker that Vite built');
    },
  },
  'vite-vue': {
    serve: 'built',
    read: async (page) => {
      await says(page, 'sharp-zone-bar', '');
      const field = await page.waitForSelector('sharp-zone-bar >>> input#aperture');
      await field.click({clickCount: 3});
      await page.keyboard.type('f/11');
      await page.keyboard.press('Tab');
      await waitFor(page, () => document.querySelector('#page p').textContent === 'Shot at f/11.', 'Vue hears of the change');
    },
  },
  eleventy: {
    serve: 'built',
    read: async (page) => {
      await says(page, 'stop-trade-dial', 'f/8 at 0.3 s');
      await turn(page);
      await waitFor(page, () => !document.querySelector('stop-trade-dial').shadowRoot.querySelector('.verdict').textContent.includes('f/8 at 0.3'), 'the dial turns');
    },
  },
};

const waitFor = (page, holds, what, ...args) => page.waitForFunction(holds, {timeout: 20_000}, ...args).catch((error) => {
  throw new Error(`it does not come that ${what} (${error.message}) ${page.wrong.join('; ')}`);
});

const says = (page, tag, words) => waitFor(page, (name, wanted) => (
  document.querySelector(name)?.shadowRoot?.querySelector('.verdict')?.textContent.replace(/\s+/g, ' ').includes(wanted)
), `${tag} says “${words}”`, tag, words);

/** One click of the dial's hand, by keyboard. */
async function turn(page) {
  const hand = await page.waitForSelector('stop-trade-dial >>> [role=slider]');
  await hand.evaluate((element) => { element.focus(); });
  await page.keyboard.press('ArrowRight');
}

/** @param folder - with the built projects in it */
export async function readersOf(folder, names) {
  const executablePath = ENGINES.chromium.find();
  if (!executablePath) throw new Error('Chromium is not on this machine; “npm test” brings it.');
  const browser = await puppeteer.launch({executablePath, args: ['--no-sandbox', '--disable-gpu']});
  try {
    // One after the other: keys go to the page in front.
    for (const name of names) await read(browser, name, join(folder, name, READERS[name].serve));
  } finally {
    await browser.close();
  }
}

async function read(browser, name, folder) {
  const server = createServer(sirv(folder, {dev: true}));
  await new Promise((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  const origin = `http://127.0.0.1:${server.address().port}`;
  const page = await browser.newPage();
  page.wrong = [];
  page.asked = [];
  page.on('pageerror', (error) => { page.wrong.push(String(error)); });
  page.on('console', (message) => { if (message.type() === 'error' && !message.text().includes('404')) page.wrong.push(message.text()); });
  page.on('request', (request) => { page.asked.push(request.url()); });
  // Workers ask by themselves.
  page.on('workercreated', (worker) => { page.asked.push(worker.url()); });
  try {
    await page.goto(`${origin}/`);
    await READERS[name].read(page);
    const foreign = page.asked.filter((address) => !/^(data|blob):/.test(address) && !address.startsWith(origin));
    if (foreign.length) throw new Error(`it asks others: ${foreign.join(', ')}`);
    if (page.wrong.length) throw new Error(page.wrong.join('; '));
  } catch (error) {
    throw new Error(`${name}: ${error.message}`, {cause: error});
  } finally {
    await page.close();
    server.close();
  }
}
