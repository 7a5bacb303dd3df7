import {expect, waitUntil} from '@open-wc/testing';
import {chord} from '../hands.js';
import {shot} from '../photo/pictures.js';
import type {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';
import type {SharpZoneBar} from '../../src/elements/sharp-zone-bar/class.js';
import type {TonalChartReader} from '../../src/elements/tonal-chart-reader/class.js';

/** The demo as built, in a frame: the page a visitor gets from `npm start`. */
async function openDemo() {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:100%;height:900px;border:0';
  frame.src = '/site/index.html';
  const errors: string[] = [];
  const loaded = new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  document.body.append(frame);
  await loaded;
  const page = frame.contentWindow as Window & typeof globalThis;
  page.addEventListener('error', (event) => { errors.push(event.message); });
  page.addEventListener('unhandledrejection', (event) => { errors.push(String(event.reason)); });
  const find = <T extends Element>(selector: string): T => {
    const found = page.document.querySelector<T>(selector);
    if (!found) throw new Error(`no ${selector} on the page`);
    return found;
  };
  return {
    frame, page, errors,
    dial: find<StopTradeDial>('stop-trade-dial'), bar: find<SharpZoneBar>('sharp-zone-bar'), chart: find<TonalChartReader>('tonal-chart-reader'),
  };
}

const verdict = (el: Element) => el.shadowRoot?.querySelector('.verdict')?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const words = (el: Element) => el.shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';
const seen = (what: () => boolean, why: string) => waitUntil(what, why, {timeout: 10_000});

describe('the demo, as built', () => {
  let demo: Awaited<ReturnType<typeof openDemo>>;

  beforeEach(async () => { demo = await openDemo(); });
  afterEach(() => { demo.frame.remove(); });

  it('opens on a worked case that already says something', async () => {
    const {dial, bar, chart} = demo;
    await seen(() => verdict(chart) !== '', 'the chart speaks');
    expect(verdict(dial)).to.equal('f/8 at 0.3 s gives the same light as f/2.8 at 1/25 s.');
    expect(verdict(bar)).to.match(/^Not sharp: the front \d+ mm and the back \d+ mm of the figure lie outside the sharp zone\./);
    expect(demo.errors).to.deep.equal([]);
  });

  it('tells the whole story: a photo is dropped, its settings arrive, an advice is taken, the bar follows', async () => {
    const {page, dial, bar, chart} = demo;
    await seen(() => verdict(chart) !== '', 'the chart speaks');

    // A photo with Exif is dropped.
    const files = new page.DataTransfer();
    files.items.add(await shot('exposure-plus1.jpg'));
    chart.dispatchEvent(new page.DragEvent('drop', {dataTransfer: files, bubbles: true, cancelable: true}));
    await seen(() => verdict(dial).startsWith('f/11'), 'the dial shows the photo’s settings');
    expect(dial.aperture).to.be.closeTo(2 ** 3.5, 1e-9);
    expect(dial.shutter).to.be.closeTo(2 ** (1 / 3), 1e-9); // 1.3 s in the file
    expect(bar.aperture).to.equal(dial.aperture);
    expect(words(chart)).to.contain('f/11');

    // The crop is moved by keys and speaks for itself alone.
    const whole = words(chart);
    const frame = chart.shadowRoot?.querySelector<SVGGElement>('.keep') as SVGGElement;
    frame.focus();
    await chord('Shift', 'ArrowLeft');
    await seen(() => chart.crop.width < 1, 'the crop became smaller');
    await seen(() => words(chart) !== whole, 'the chart follows the crop');

    // What pays is the aperture; the advice is taken; the bar follows.
    dial.pay = 'aperture';
    await seen(() => chart.shadowRoot?.querySelector('.ways button') !== null, 'there is an advice to take');
    const before = {aperture: dial.aperture, bar: verdict(bar)};
    await waitUntil(() => (chart.shadowRoot?.querySelector('.ways button')?.textContent ?? '').includes('f/11 →'), 'the advice is paid by the aperture');
    chart.shadowRoot?.querySelector<HTMLButtonElement>('.ways button')?.click();
    await seen(() => dial.aperture > before.aperture, 'the advice reached the dial');
    await seen(() => verdict(bar) !== before.bar, 'the bar followed');
    expect(bar.aperture).to.equal(dial.aperture);
    expect(verdict(dial)).to.match(/less light than f\/11 at 1\.3 s/);
    expect(demo.errors).to.deep.equal([]);
  });

  it('keeps what was on screen when a file is no picture', async () => {
    const {page, chart} = demo;
    await seen(() => verdict(chart) !== '', 'the chart speaks');
    const before = verdict(chart);
    const files = new page.DataTransfer();
    files.items.add(new page.File(['not a picture at all'], 'notes.jpg', {type: 'image/jpeg'}));
    chart.dispatchEvent(new page.DragEvent('drop', {dataTransfer: files, bubbles: true, cancelable: true}));
    await seen(() => words(chart).includes('notes.jpg'), 'the file is named');
    expect(verdict(chart)).to.equal(before);
  });

  it('fits a narrow phone without sideways scrolling', async () => {
    const {frame, page, chart} = demo;
    frame.style.width = '320px';
    await seen(() => verdict(chart) !== '', 'the chart speaks');
    expect(page.document.documentElement.scrollWidth).to.be.at.most(page.innerWidth);
  });

  it('asks nothing of anybody else', async () => {
    const {page, chart} = demo;
    await seen(() => verdict(chart) !== '', 'the chart speaks');
    const foreign = page.performance.getEntriesByType('resource').map(({name}) => name).filter((name) => !name.startsWith(page.location.origin));
    expect(foreign).to.deep.equal([]);
  });
});
