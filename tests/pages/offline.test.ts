import {expect, waitUntil} from '@open-wc/testing';
import {executeServerCommand} from '@web/test-runner-commands';
import type {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';
import {verdictOf} from './host-page.js';

/** A copy of the site at an address of its own, which is no root: /away/NAME/. */
const NAME = `table-${Date.now()}`;
const FOLDER = `/away/${NAME}/`;

async function visit(path: string): Promise<HTMLIFrameElement> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:700px;height:900px;border:0';
  frame.src = FOLDER + path;
  const loaded = new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  document.body.append(frame);
  await loaded;
  return frame;
}

const find = <T extends Element>(frame: HTMLIFrameElement, selector: string) => frame.contentDocument?.querySelector<T>(selector) as T;

describe('the calculator without a network', () => {
  after(async () => {
    // A browser that is just looking for a newer worker unregisters none until it has its answer.
    await executeServerCommand('there', NAME);
    const registrations = await navigator.serviceWorker.getRegistrations();
    // Nobody else comes by this address: one that takes longer does no harm.
    await Promise.race([Promise.all(registrations.map((each) => each.unregister())), new Promise((resolve) => { setTimeout(resolve, 5000); })]);
  });

  it('is described as something to install, with icons that are there', async () => {
    const manifest = await (await fetch(`${FOLDER}manifest.webmanifest`)).json() as {
      readonly start_url: string; readonly icons: readonly {readonly src: string; readonly sizes: string; readonly purpose?: string}[];
    };
    expect((await fetch(FOLDER + manifest.start_url)).ok).to.equal(true);
    expect(manifest.icons.some(({purpose}) => purpose === 'maskable')).to.equal(true);
    for (const {src, sizes} of manifest.icons) {
      const image = new Image();
      image.src = FOLDER + src;
      await image.decode();
      if (sizes !== 'any') expect(`${image.naturalWidth}x${image.naturalHeight}`, src).to.equal(sizes);
    }
  });

  it('works on the second visit with the server gone: checks, the photo, and a check that was never opened before', async () => {
    const first = await visit('index.html');
    const container = (first.contentWindow as Window).navigator.serviceWorker;
    const {active} = await container.ready;
    await waitUntil(() => active?.state === 'activated' && container.controller !== null, 'the worker is in charge', {timeout: 8000});
    first.remove();

    await executeServerCommand('gone', NAME);
    // The server is gone indeed: what was never kept cannot be had.
    const missed = await fetch(`${FOLDER}forum.html`).then(() => 'there', () => 'gone');
    expect(missed).to.equal('gone');

    const second = await visit('index.html');
    await waitUntil(() => find<StopTradeDial>(second, 'stop-trade-dial')?.shadowRoot, 'the dial is there', {timeout: 5000});
    const dial = find<StopTradeDial>(second, 'stop-trade-dial');
    await waitUntil(() => verdictOf(dial) === 'f/8 at 0.3 s gives the same light as f/2.8 at 1/25 s.', 'the dial speaks', {timeout: 5000});
    await waitUntil(() => /crop|edge/.test(verdictOf(find(second, 'tonal-chart-reader'))), 'the photo is read', {timeout: 8000});
    find<HTMLDetailsElement>(second, '[data-check="settings-trail"]').open = true;
    await waitUntil(() => verdictOf(find(second, 'settings-trail')).includes('does not balance'), 'the lesson is read', {timeout: 5000});
    second.remove();
  });
});
