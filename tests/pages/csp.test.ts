import {expect, waitUntil} from '@open-wc/testing';
import {shot} from '../photo/pictures.js';

const TAGS = ['stop-trade-dial', 'sharp-zone-bar', 'shot-plan', 'tonal-chart-reader', 'gray-card-check', 'backdrop-shade', 'settings-trail',
  'shot-sheet'];
const FILES = '/as-built/lampblack/';

type Page = Window & typeof globalThis & {readonly refused: string[]};
interface List {
  readonly files: Readonly<Record<string, string>>;
  readonly imports: Readonly<Record<string, readonly string[]>>;
  readonly words: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
}
const list = (async () => (await fetch(`${FILES}integrity.json`)).json() as Promise<List>)();

/** WebKit lets no file import another by its hash, with nothing else in the policy that allows it. */
const importsByHash = !/AppleWebKit/.test(navigator.userAgent) || /Chrome/.test(navigator.userAgent);

async function loadPage(query: string): Promise<Page> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:100%;height:900px;border:0';
  frame.src = `/as-built/page.html?${query}`;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  return frame.contentWindow as Page;
}

const plateOf = (page: Page, tag: string) => page.document.querySelector(tag)?.shadowRoot?.querySelector('[part~="plate"]');

async function openPage(policy: string, more = ''): Promise<Page> {
  const page = await loadPage(`policy=${policy}${more}`);
  await waitUntil(() => TAGS.every((tag) => plateOf(page, tag)), `every element draws (${page.refused.join('; ')})`, {timeout: 15_000});
  return page;
}

const chartOf = (page: Page) => page.document.querySelector('tonal-chart-reader')?.shadowRoot?.querySelector('[part~="chart"]');

async function openPhoto(page: Page): Promise<void> {
  const files = new page.DataTransfer();
  files.items.add(await shot('exposure-plus1.jpg'));
  page.document.querySelector('tonal-chart-reader')?.dispatchEvent(new page.DragEvent('drop', {dataTransfer: files, bubbles: true, cancelable: true}));
  await waitUntil(() => chartOf(page), 'the chart is drawn', {timeout: 15_000});
}

const asked = (page: Page) => page.performance.getEntriesByType('resource').map(({name}) => name);

/** Whether a page made a worker of the photo's script: it then loaded it. */
const workerLoaded = (page: Page) => asked(page).some((name) => name.endsWith('/photo-worker.js'));

/** What the page asked for beyond its own files and the photo that the reader opened. */
const foreign = (page: Page) => asked(page).filter((name) => (
  !name.startsWith(`${location.origin}/as-built/`) && !name.startsWith(`blob:${location.origin}/`) && !name.startsWith('data:')));

/** Whether a page that holds its files to their hashes can import one. */
const canImport = (page: Page, file: string) => (page.eval(`import('${FILES}${file}').then(() => true, () => false)`) as Promise<boolean>);

describe('under a strict content policy', () => {
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('has its policy', async () => {
    const page = await openPage('self');
    const before = page.refused.length;
    page.document.createElement('p').setAttribute('style', 'color: red');
    await waitUntil(() => page.refused.length > before, 'a style attribute is refused');
    expect(page.refused[before]).to.contain('style-src');
  });

  // Scripts by their place, by host and path, and by hash: import map, file and every import, with and without a word for what they import.
  for (const policy of ['self', 'host', ...(importsByHash ? ['hash'] : []), 'hash-and-own']) {
    it(`every element draws, dressed, and nothing is refused: ${policy}`, async () => {
      const page = await openPage(policy);
      for (const tag of TAGS) expect(page.getComputedStyle(plateOf(page, tag) as Element).borderTopStyle, tag).to.equal('solid');
      expect(page.refused).to.deep.equal([]);
      expect(foreign(page)).to.deep.equal([]);
    });
  }

  it('words come in each language, held to their hash too', async () => {
    const {words} = await list;
    const languages = Object.keys(words['stop-trade-dial.js'] ?? {});
    const spoken = new Set<string>();
    for (const language of languages) {
      const page = await openPage(importsByHash ? 'hash' : 'hash-and-own', `&lang=${language}`);
      expect(asked(page), language).to.include(`${location.origin}${FILES}stop-trade-dial.${language}.js`);
      spoken.add(plateOf(page, 'stop-trade-dial')?.getAttribute('aria-label') ?? '');
      expect(page.refused).to.deep.equal([]);
    }
    expect(spoken.size, [...spoken].join(', ')).to.equal(languages.length);
  });

  for (const policy of ['self', 'host', ...(importsByHash ? ['hash-and-worker'] : []), 'hash-and-own']) {
    it(`opens a photo in a worker, and asks for nothing but its own files: ${policy}`, async () => {
      const page = await openPage(policy);
      await openPhoto(page);
      expect(workerLoaded(page)).to.equal(true);
      expect(page.refused).to.deep.equal([]);
      expect(foreign(page)).to.deep.equal([]);
    });
  }

  // A worker has no hash that a policy could name, so a policy by hash alone forbids it; so does a list of names without ours.
  for (const [policy, directive] of [['workerless', 'worker-src'], ['nameless', ''], ...(importsByHash ? [['hash', 'worker-src'] as const] : [])] as const) {
    it(`opens a photo in the page where workers are forbidden: ${policy}`, async () => {
      const page = await openPage(policy);
      await openPhoto(page);
      expect(page.document.querySelector('tonal-chart-reader')?.shadowRoot?.querySelector('.verdict')?.textContent).not.to.equal('');
      expect(page.refused.some((each) => each.startsWith(directive))).to.equal(true);
      expect(page.refused.filter((each) => !/^(worker-src|trusted-types|require-trusted-types-for)/.test(each))).to.deep.equal([]);
      expect(foreign(page)).to.deep.equal([]);
    });
  }

  it('fetches the photo of an address where connect-src lets it, and says so where it does not', async () => {
    const allowed = await loadPage('policy=connect&src');
    await waitUntil(() => chartOf(allowed), 'the chart is drawn', {timeout: 15_000});
    expect(allowed.refused).to.deep.equal([]);
    const refused = await loadPage('policy=self&src');
    await waitUntil(() => refused.refused.some((each) => each.startsWith('connect-src')), 'the photo is refused', {timeout: 15_000});
    const reader = () => refused.document.querySelector('tonal-chart-reader')?.shadowRoot?.textContent ?? '';
    await waitUntil(() => reader().includes('aperture-f8.jpg'), 'the photo that could not be had is named');
    expect(chartOf(refused)).to.equal(null);
  });
});

describe('files held to their hashes', () => {
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('load when they are what the printed lines say', async () => {
    const page = await loadPage('held');
    await waitUntil(() => TAGS.every((tag) => plateOf(page, tag)), 'every element draws', {timeout: 15_000});
    for (const file of Object.keys((await list).files)) expect(await canImport(page, file), file).to.equal(true);
  });

  it('do not load when one that is imported at once is another, and the text between the tags stays', async () => {
    const {imports} = await list;
    const [shared = ''] = imports['stop-trade-dial.js'] ?? [];
    const page = await loadPage(`held&file=stop-trade-dial.js&spoilt=${shared}`);
    expect(await canImport(page, shared)).to.equal(false);
    expect(page.customElements.get('stop-trade-dial')).to.equal(undefined);
    expect((page.document.querySelector('stop-trade-dial') as HTMLElement).innerText).to.equal('fallback');
  });

  it('do not load when one that is fetched later is another', async () => {
    const page = await loadPage('held&spoilt=photo.desk.js');
    expect(await canImport(page, 'photo.desk.js')).to.equal(false);
    expect(await canImport(page, 'stop-trade-dial.js')).to.equal(true);
  });
});
