import {expect, waitUntil} from '@open-wc/testing';
import type {TonalChartReader} from '../../src/elements/tonal-chart-reader/class.js';
import {shot} from '../photo/pictures.js';

const TAGS = ['stop-trade-dial', 'sharp-zone-bar', 'shot-plan', 'tonal-chart-reader', 'gray-card-check', 'backdrop-shade', 'settings-trail',
  'shot-sheet'];

type Page = Window & typeof globalThis & {readonly refused: string[]};

async function openPage(policy: string): Promise<{frame: HTMLIFrameElement; page: Page}> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:100%;height:900px;border:0';
  frame.src = `/tests/pages/csp/page.html?policy=${policy}`;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  const page = frame.contentWindow as Page;
  await waitUntil(() => TAGS.every((tag) => page.document.querySelector(tag)?.shadowRoot?.querySelector('[part~="plate"]')),
    'every element draws', {timeout: 15_000});
  return {frame, page};
}

async function openPhoto(page: Page): Promise<TonalChartReader> {
  const chart = page.document.querySelector('tonal-chart-reader') as TonalChartReader;
  const files = new page.DataTransfer();
  files.items.add(await shot('exposure-plus1.jpg'));
  chart.dispatchEvent(new page.DragEvent('drop', {dataTransfer: files, bubbles: true, cancelable: true}));
  await waitUntil(() => chart.shadowRoot?.querySelector('[part~="chart"]'), 'the chart is drawn', {timeout: 15_000});
  return chart;
}

/** Whether a page made a worker of the photo's script: it then loaded it. */
const workerLoaded = (page: Page) => page.performance.getEntriesByType('resource').some(({name}) => name.endsWith('/photo-worker.js'));

/** What the page asked for beyond its own files. The test server puts a script of its own into every page. */

/** What the page asked for beyond its own files. The test server puts a script of its own into every page. */
const foreign = (page: Page) => page.performance.getEntriesByType('resource').map(({name}) => name)
  .filter((name) => !name.startsWith(`${location.origin}/__web-dev-server__`))
  .filter((name) => !name.startsWith(`${location.origin}/__web-dev-server__`))
  .filter((name) => !name.startsWith(`${location.origin}/dist/standalone/`) && !name.startsWith(`${location.origin}/tests/pages/csp/`)
    && !name.startsWith(`blob:${location.origin}/`) && !name.startsWith('data:'));

describe('under a strict content policy', () => {
  let opened: Awaited<ReturnType<typeof openPage>>;
  afterEach(() => { opened.frame.remove(); });

  it('has its policy', async () => {
    opened = await openPage('strict');
    const {page} = opened;
    const before = page.refused.length;
    const image = page.document.createElement('p');
    image.setAttribute('style', 'color: red');
    await waitUntil(() => page.refused.length > before, 'a style attribute is refused');
    expect(page.refused[before]).to.contain('style-src');
  });

  it('every element draws, dressed, and nothing is refused', async () => {
    opened = await openPage('strict');
    const {page} = opened;
    for (const tag of TAGS) {
      const plate = page.document.querySelector(tag)?.shadowRoot?.querySelector('[part~="plate"]') as Element;
      expect(page.getComputedStyle(plate).borderTopStyle, tag).to.equal('solid');
    }
    expect(page.refused).to.deep.equal([]);
  });

  it('opens a photo in a worker, and asks for nothing but its own files', async () => {
    opened = await openPage('strict');
    const {page} = opened;
    await openPhoto(page);
    expect(workerLoaded(page)).to.equal(true);
    expect(page.refused).to.deep.equal([]);
    expect(foreign(page)).to.deep.equal([]);
  });

  it('opens a photo in the page where workers are forbidden', async () => {
    opened = await openPage('workerless');
    const {page} = opened;
    const chart = await openPhoto(page);
    expect(chart.shadowRoot?.querySelector('.verdict')?.textContent).not.to.equal('');
    expect(page.refused.filter((each) => !each.startsWith('worker-src'))).to.deep.equal([]);
    expect(page.refused.some((each) => each.startsWith('worker-src'))).to.equal(true);
  });
});
