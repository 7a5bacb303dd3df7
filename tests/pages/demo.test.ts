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
/** Everything an element shows, values of its fields included. */
const shownBy = (node: Node): string => [...node.childNodes].map((child) => {
  if (child.nodeType === 3) return child.textContent ?? '';
  const {localName, value} = child as HTMLInputElement;
  return localName === 'style' ? '' : ['input', 'select', 'textarea'].includes(localName) ? `[${value}]` : shownBy(child);
}).join(' ').replace(/\s+/g, ' ');

/** What all checks that are alive show, once it has been the same for a while. */
async function settled({document: page, customElements: known}: Window & typeof globalThis): Promise<Record<string, string>> {
  const all = () => Object.fromEntries([...page.querySelectorAll('main [bench]')].filter(({localName}) => known.get(localName))
    .map(({localName, shadowRoot}) => [localName, shadowRoot ? shownBy(shadowRoot) : '']));
  for (let [before, same] = ['', 0]; same < 8;) {
    await new Promise((resolve) => { setTimeout(resolve, 80); });
    const now = JSON.stringify(all());
    [before, same] = [now, now === before ? same + 1 : 0];
  }
  return all();
}

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

  it('opening every fold, the last one first, changes nothing that another check says or has in its fields', async () => {
    const {page, chart} = demo;
    await seen(() => verdict(chart) !== '', 'the chart speaks');
    const folds = [...page.document.querySelectorAll<HTMLDetailsElement>('[data-check]')].reverse();
    expect(folds.length).to.equal(5);
    let before = await settled(page);
    for (const fold of folds) {
      const check = fold.querySelector('[bench]') as HTMLElement;
      fold.open = true;
      await seen(() => Boolean(check.shadowRoot?.querySelector('.verdict, .blank')), `${check.localName} is there`);
      const after = await settled(page);
      for (const [name, said] of Object.entries(before)) expect(after[name], `${name}, once ${check.localName} is open`).to.equal(said);
      before = after;
    }
    // Lamps and backdrop are on the sheet as soon as there is one.
    expect(before['shot-sheet']).to.match(/\bkey\b/i).and.to.contain('300 mm').and.to.contain('black card');
    expect(demo.errors).to.deep.equal([]);
  });

  it('a card shot of the guild is read when it is taken', async () => {
    const {page} = demo;
    const fold = page.document.querySelector('[data-check="gray-card-check"]') as HTMLDetailsElement;
    fold.open = true;
    const card = fold.querySelector('gray-card-check') as HTMLElement;
    await seen(() => Boolean(card.shadowRoot?.querySelector('.blank')), 'it asks for a card shot');
    fold.querySelector<HTMLButtonElement>('[data-shot="card-neutral"]')?.click();
    await seen(() => words(card).includes('card-neutral.jpg') && verdict(card) !== '', 'it speaks of the card');
  });

  it('where shots do not fit side by side, a piece of the next one shows', async () => {
    const {frame, page} = demo;
    const list = page.document.querySelector('#shots') as HTMLElement;
    for (const width of [320, 360, 390, 480, 600, 768, 834, 900]) {
      frame.style.width = `${width}px`;
      const {right: edge} = list.getBoundingClientRect();
      const hidden = [...list.children].map((item) => item.getBoundingClientRect()).filter(({right}) => right > edge + 1);
      if (hidden.length) expect(edge - (hidden[0]?.left ?? edge), `${width} px`).to.be.above(20);
      expect(hidden.length > 0, `${width} px: all of them fit`).to.equal(width < 905);
    }
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
