import {expect, waitUntil} from '@open-wc/testing';
import type {LitElement} from 'lit';
import {MARKUP, scriptOf, verdictOf} from './host-page.js';

/** Opens a page that a server rendered: the elements' markup in it, and nothing that runs. */
async function open(body: string, {language = 'en', head = ''} = {}): Promise<Window & typeof globalThis> {
  const page = `<!doctype html><html lang="${language}"><head><meta charset="utf-8">${head}</head><body style="margin:0;font:16px/1.5 sans-serif">${body}</body></html>`;
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:700px;height:900px;border:0;display:block';
  frame.src = `/rendered?page=${encodeURIComponent(page)}`;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  return frame.contentWindow as Window & typeof globalThis;
}

/** Brings the elements of a page to life. */
function start(page: Window, ...sources: string[]): void {
  for (const src of sources) page.document.body.append(Object.assign(page.document.createElement('script'), {type: 'module', src}));
}

/** Elements whose drawing has as many pixels across as there are. */
const MEASURED: Readonly<Record<string, true>> = {'sharp-zone-bar': true, 'backdrop-shade': true};

const find = (page: Window, tag: string) => page.document.querySelector(tag) as LitElement;
const height = (el: Element) => el.getBoundingClientRect().height;
const drawn = (page: Window) => new Promise((resolve) => { page.requestAnimationFrame(() => page.requestAnimationFrame(resolve)); });

describe('pages that a server rendered', () => {
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  for (const [tag, markup] of Object.entries(MARKUP)) {
    it(`show ${tag} before any script, and nothing moves when it comes to life`, async () => {
      const page = await open(`${markup}<p id="after">After it.</p>`);
      const el = find(page, tag);
      expect(el.shadowRoot, 'in the markup').to.not.equal(null);
      const [before, said] = [height(el), verdictOf(el)];
      expect(before).to.be.above(60);
      // A photo is opened and a plan is made in the browser alone, and both take their time.
      const isLater = markup.includes('src=') || tag === 'shot-plan';
      if (!isLater) expect(said).to.not.equal('');
      start(page, /src="([^"]+)"/.exec(scriptOf(tag))?.[1] ?? '');
      await page.customElements.whenDefined(tag);
      await waitUntil(() => el.hasUpdated, `${tag} lives`, {timeout: 8000});
      if (isLater) return;
      await drawn(page);
      // Drawings of the table are laid out for the width they have, which no server knows.
      expect(height(el), 'height').to.be.closeTo(before, tag in MEASURED ? before * 0.1 : 1);
      expect(verdictOf(el)).to.equal(said);
      expect(el.shadowRoot?.querySelectorAll('.plate').length).to.equal(1);
    });
  }

  it('are taken over node by node where hydration is loaded, and answer from then on', async () => {
    const page = await open(MARKUP['stop-trade-dial'] ?? '');
    const el = find(page, 'stop-trade-dial') as LitElement & {aperture: number};
    const verdict = el.shadowRoot?.querySelector('.verdict');
    start(page, '/tests/pages/hydrate.ts');
    await waitUntil(() => el.hasUpdated, 'hydrated', {timeout: 8000});
    expect(el.shadowRoot?.querySelector('.verdict')).to.equal(verdict);
    el.aperture = 16;
    await el.updateComplete;
    expect(verdict?.textContent).to.contain('f/16');
  });

  it('are drawn anew where a linked element knows more by then', async () => {
    const page = await open('<stop-trade-dial bench="a" aperture="f/5.6"></stop-trade-dial>');
    const el = find(page, 'stop-trade-dial') as LitElement & {shutter: number};
    start(page, '/tests/pages/hydrate.ts');
    await waitUntil(() => el.hasUpdated, 'drawn', {timeout: 8000});
    el.shutter = 1 / 8;
    await el.updateComplete;
    expect(verdictOf(el)).to.contain('f/5.6 at 1/8 s');
    expect(el.shadowRoot?.querySelectorAll('.plate').length).to.equal(1);
  });

  it('speak the language of the page from the first', async () => {
    const page = await open(MARKUP['stop-trade-dial'] ?? '', {language: 'de'});
    const said = verdictOf(find(page, 'stop-trade-dial'));
    expect(said).to.contain('f/2,8');
    expect(said).to.not.contain('same light');
  });

  if (PerformanceObserver.supportedEntryTypes.includes('layout-shift')) {
    for (const [path, width] of [['index.html', 390], ['index.html', 1100], ['article.html', 1100], ['club.html', 390], ['reference/shot-sheet.html', 700]] as const) {
      it(`hardly move: ${path}, ${width} px wide`, async () => {
        const frame = document.createElement('iframe');
        frame.style.cssText = `width:${width}px;height:900px;border:0;display:block`;
        frame.src = `/site/${path}`;
        document.body.append(frame);
        await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
        const page = frame.contentWindow as Window & typeof globalThis;
        let moved = 0;
        const observer = new page.PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & {readonly value: number})[]) moved += entry.value;
        });
        observer.observe({type: 'layout-shift', buffered: true});
        const checks = [...page.document.querySelectorAll<LitElement>('main *')].filter(({localName}) => localName in MARKUP);
        await waitUntil(() => checks.every((check) => check.closest('details:not([open])') ?? check.hasUpdated), 'all live', {timeout: 8000});
        for (let picture = 0; picture < 20; picture++) await drawn(page);
        // W3C Layout Instability; what web.dev/articles/cls calls good is a score of 0.1 or less
        expect(moved).to.be.at.most(0.1);
      });
    }
  }
});
