import {expect, waitUntil} from '@open-wc/testing';
import {executeServerCommand} from '@web/test-runner-commands';
import type {AxeResults, RunOptions} from 'axe-core';
import {TAGS} from './cases.js';

type View = Window & typeof globalThis & {axe?: {run: (context: Document, options: RunOptions) => Promise<AxeResults>}};

/** Every page of the demo, as built, from its folder; of frames, which differ in their check alone, two, and of languages the longest. */
const PAGES = [
  'index.html', 'index.pl.html', 'article.html', 'club.html', 'forum.html', 'noscript.html', 'reference/index.html',
  ...TAGS.map((tag) => `reference/${tag}.html`), 'embed.html?tag=stop-trade-dial', 'embed.html?tag=tonal-chart-reader', 'embed/stop-trade-dial.html',
];

/**
 * A page that allows no script cannot be asked by one: it is read without the line that says so, and without its own
 * scripts, which it refuses.
 */
async function withoutScripts(path: string): Promise<string | undefined> {
  const text = await (await fetch(`/site/${path}`)).text();
  if (!text.includes("script-src 'none'")) return undefined;
  return text.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, '').replace(/<script\b[^>]*><\/script>/g, '').replace('<head>', `<head><base href="${location.origin}/site/">`);
}

async function opened(path: string): Promise<HTMLIFrameElement> {
  const frame = document.createElement('iframe');
  frame.title = path;
  frame.style.cssText = 'inline-size: 1000px; block-size: 900px; border: 0';
  const text = await withoutScripts(path);
  if (text === undefined) frame.src = `/site/${path}`;
  else frame.srcdoc = text;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  const {document: page} = frame.contentWindow as View;
  // Where no module is asked for, tags stay as they were written.
  if (!page.querySelector('script[type=module][src]:not([src^="/__"]), #check')) return frame;
  const waiting = () => [...page.querySelectorAll('*')].filter((el) => el.localName.includes('-') && !page.querySelector(`details:not([open]) ${el.localName}`));
  await waitUntil(() => waiting().every((el) => el.shadowRoot?.querySelector('.plate')), `${path} works`, {timeout: 15_000});
  await new Promise((resolve) => { setTimeout(resolve, 300); });
  return frame;
}

async function complaints(frame: HTMLIFrameElement, options: RunOptions): Promise<string> {
  const view = frame.contentWindow as View;
  if (!view.axe) {
    const script = view.document.createElement('script');
    script.src = '/node_modules/axe-core/axe.min.js';
    const loaded = new Promise((resolve) => { script.addEventListener('load', resolve, {once: true}); });
    view.document.head.append(script);
    await loaded;
  }
  const {violations} = await view.axe?.run(view.document, options) as AxeResults;
  return violations.flatMap(({id, nodes}) => nodes.map(({target, failureSummary}) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`)).join('\n');
}

/** A frame's page is a part of another, whose heading of the first level it stands under. */
const framed = (page: string) => page.startsWith('embed');
const rulesFor = (page: string): NonNullable<RunOptions['rules']> => (framed(page) ? {'page-has-heading-one': {enabled: false}} : {});

describe('pages of the demo, as built', () => {
  for (const page of PAGES) {
    it(`${page}: axe-core has nothing to say in light, dark and forced colours`, async function () {
      this.timeout(60_000);
      const frame = await opened(page);
      try {
        expect(await complaints(frame, {resultTypes: ['violations'], rules: rulesFor(page)}), 'light').to.equal('');
        await executeServerCommand('media', {'prefers-color-scheme': 'dark'});
        expect(await complaints(frame, {resultTypes: ['violations'], runOnly: ['color-contrast']}), 'dark').to.equal('');
        await executeServerCommand('media', {'forced-colors': 'active'});
        // Ratios are the reader's own there, and axe-core reads the page's colours instead of those that are forced. What has
        // nothing to do with colours and sizes was asked in light.
        expect(await complaints(frame, {resultTypes: ['violations'], runOnly: ['link-in-text-block', 'target-size']}), 'forced colours').to.equal('');
      } finally {
        await executeServerCommand('media', {});
        frame.remove();
      }
    });
  }
});
