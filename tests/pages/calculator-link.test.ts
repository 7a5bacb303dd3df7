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

  it('says at its top where the shot comes from, says nothing of the example, and leads back to it', async () => {
    const doc = await open(LINK);
    await waitUntil(() => verdictOf(found(doc, 'stop-trade-dial')).includes('f/11'), 'the dial follows', {timeout: 8000});
    const line = doc.querySelector('#by-link') as HTMLElement;
    expect(line.checkVisibility()).to.equal(true);
    expect(line.compareDocumentPosition(doc.querySelector('main') as Node) & Node.DOCUMENT_POSITION_FOLLOWING).to.be.above(0);
    const example = [...doc.querySelectorAll<HTMLElement>('[data-example]')];
    expect(example.filter((said) => said.checkVisibility())).to.deep.equal([]);
    expect((doc.querySelector('.head') as HTMLElement).innerText + (doc.querySelector('#light > p') as HTMLElement).innerText).not.to.contain('f/2.8');
    expect(doc.querySelector<HTMLAnchorElement>('.languages [hreflang=fr]')?.hash).to.equal(LINK);
    const frame = document.querySelector('iframe') as HTMLIFrameElement;
    const left = new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
    line.querySelector('a')?.click();
    await left;
    const own = frame.contentDocument as Document;
    await waitUntil(() => verdictOf(found(own, 'stop-trade-dial')).includes('f/8'), 'the guild’s own setting', {timeout: 8000});
    expect((own.querySelector('#by-link') as HTMLElement).checkVisibility()).to.equal(false);
    expect(own.querySelector<HTMLElement>('[data-example]')?.checkVisibility()).to.equal(true);
  });

  it('what it does not say is said by no fold that is opened later', async () => {
    const doc = await open(LINK);
    const bar = found(doc, 'sharp-zone-bar');
    await waitUntil(() => bar.baseDepth === 75, 'the bar follows', {timeout: 8000});
    const before = bar.room;
    for (const tag of ['shot-plan', 'backdrop-shade']) {
      (doc.querySelector(`[data-check="${tag}"]`) as HTMLDetailsElement).open = true;
      await waitUntil(() => found(doc, tag).shadowRoot?.querySelector('.verdict') && found(doc, tag).figureWidth !== undefined, `${tag} is there`, {timeout: 8000});
    }
    expect(bar.room).to.equal(before);
    // Without a width of its own a figure is as wide as its base is deep.
    expect(found(doc, 'shot-plan').figureWidth).to.equal(75);
    expect(found(doc, 'shot-sheet').shadowRoot?.textContent).not.to.contain('black card');
  });

  it('is followed when it is put into the address of a calculator that is open', async () => {
    const doc = await open('');
    doc.location.hash = LINK;
    await waitUntil(() => found(doc, 'sharp-zone-bar').baseDepth === 75, 'the bar follows', {timeout: 8000});
    expect((doc.querySelector('#by-link') as HTMLElement).checkVisibility()).to.equal(true);
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
