import {expect, waitUntil} from '@open-wc/testing';
import {executeServerCommand} from '@web/test-runner-commands';
import type {AxeResults, RunOptions} from 'axe-core';
import {isChromium} from './cases.js';

/** The pages of the demo, as built. */
const PAGES = ['index', 'article', 'club'] as const;

async function opened(page: string): Promise<HTMLIFrameElement> {
  const frame = document.createElement('iframe');
  frame.title = page;
  frame.style.cssText = 'inline-size: 1000px; block-size: 900px; border: 0';
  frame.src = `/site/${page}.html`;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  const view = frame.contentWindow as Window & typeof globalThis;
  const late = [...view.document.querySelectorAll('*')].filter(({localName}) => localName.includes('-') && !view.document.querySelector(`details:not([open]) ${localName}`));
  await waitUntil(() => late.every(({shadowRoot}) => shadowRoot?.querySelector('.plate')), `${page} works`, {timeout: 15_000}).catch(() => undefined);
  await new Promise((resolve) => { setTimeout(resolve, 400); });
  return frame;
}

async function complaints(frame: HTMLIFrameElement, options: RunOptions): Promise<string> {
  const view = frame.contentWindow as Window & {axe?: {run: (context: Document, options: RunOptions) => Promise<AxeResults>}};
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

describe('pages of the demo, as built', () => {
  if (!isChromium) it('are asked by axe-core in Chromium, where dark and forced colours can be had');
  else for (const page of PAGES) {
    it(`${page}: axe-core has nothing to say in light, dark and forced colours`, async function () {
      this.timeout(60_000);
      const frame = await opened(page);
      try {
        expect(await complaints(frame, {resultTypes: ['violations']}), 'light').to.equal('');
        await executeServerCommand('media', {'prefers-color-scheme': 'dark'});
        expect(await complaints(frame, {resultTypes: ['violations'], runOnly: ['color-contrast']}), 'dark').to.equal('');
        await executeServerCommand('media', {'forced-colors': 'active'});
        // Ratios are the reader's own there, and axe-core reads the page's colours instead of those that are forced.
        expect(await complaints(frame, {resultTypes: ['violations'], rules: {'color-contrast': {enabled: false}}}), 'forced colours').to.equal('');
      } finally {
        await executeServerCommand('media', {});
        frame.remove();
      }
    });
  }
});
