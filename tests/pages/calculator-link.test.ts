import {expect, waitUntil} from '@open-wc/testing';
import {verdictOf} from './host-page.js';

const LINK = '#shot=1&aperture=f/11&shutter=0.6s&metered-aperture=f/2.8&metered-shutter=1/25&base-depth=75mm&focal-length=90mm';

type Bench = Element & Readonly<Record<string, unknown>>;

/** The calculator, as somebody gets it who follows a link to a shot. */
async function open(hash: string, page = 'index.html'): Promise<Document> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:900px;height:900px;border:0';
  frame.src = `/site/${page}${hash}`;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  const doc = frame.contentDocument as Document;
  await waitUntil(() => [...doc.querySelectorAll('stop-trade-dial, sharp-zone-bar')].every((each) => each.shadowRoot && verdictOf(each)),
    'the checks speak', {timeout: 15_000});
  return doc;
}

const found = (doc: Document, tag: string) => doc.querySelector(tag) as Bench;

describe('a link to a shot', () => {
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('lays the calculator’s table as its record has it, and opens the sheet that says so', async () => {
    const doc = await open(LINK);
    await waitUntil(() => verdictOf(found(doc, 'stop-trade-dial')).includes('f/11'), 'the dial follows', {timeout: 8000});
    expect(verdictOf(found(doc, 'stop-trade-dial'))).to.contain('0.6 s').and.to.contain('f/2.8').and.to.contain('1/25');
    const bar = found(doc, 'sharp-zone-bar');
    expect([bar.baseDepth, bar.focalLength]).to.deep.equal([75, 90]);
    expect((doc.querySelector('[data-check="shot-sheet"]') as HTMLDetailsElement).open).to.equal(true);
    const sheet = () => found(doc, 'shot-sheet').shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';
    await waitUntil(() => sheet().includes('f/11') && sheet().includes('75'), 'the sheet has the shot', {timeout: 8000});
  });

  it('keeps and explains what it cannot use, and uses the rest', async () => {
    const doc = await open('#shot=1&aperture=eleven&base-depth=75mm&shutter=0.6s');
    await waitUntil(() => found(doc, 'sharp-zone-bar').baseDepth === 75, 'the rest is used', {timeout: 8000});
    const shown = () => ['stop-trade-dial', 'sharp-zone-bar'].map((tag) => found(doc, tag))
      .flatMap(({shadowRoot}) => [...shadowRoot?.querySelectorAll('input') ?? []]).map(({value}) => value);
    await waitUntil(() => shown().includes('eleven'), 'the text stands as it came', {timeout: 8000});
  });

  it('leaves the table as it stands when the address has no shot', async () => {
    const before = found(await open(''), 'sharp-zone-bar').baseDepth;
    const doc = await open('#chart');
    expect(found(doc, 'sharp-zone-bar').baseDepth).to.equal(before);
    expect((doc.querySelector('[data-check="shot-sheet"]') as HTMLDetailsElement).open).to.equal(false);
  });
});
