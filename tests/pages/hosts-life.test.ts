import {expect, waitUntil} from '@open-wc/testing';
import type {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';
import type {SharpZoneBar} from '../../src/elements/sharp-zone-bar/class.js';
import {FIGURE, MARKUP, awake, scriptOf, verdictOf, writePage, type HostPage} from './host-page.js';

const DIAL = MARKUP['stop-trade-dial'] as string;
const LINKED = `<stop-trade-dial bench="b" aperture="f/8" shutter="0.3 s"></stop-trade-dial><sharp-zone-bar bench="b" ${FIGURE}></sharp-zone-bar>`;
const page = (body: string) => `<!doctype html><html lang="en"><head><meta charset="utf-8"></head><body>${body}</body></html>`;

function get<T extends Element>(host: HostPage, selector: string): T {
  const found = host.page.document.querySelector<T>(selector);
  if (!found) throw new Error(`no ${selector}`);
  return found;
}

describe('what pages do with an element', () => {
  let host: HostPage | undefined;
  afterEach(() => {
    expect(host?.errors).to.deep.equal([]);
    host?.frame.remove();
    host = undefined;
  });

  it('written as text before the script comes and after it', async () => {
    host = writePage(page('<div id="before"></div>'));
    const {document} = host.page;
    get(host, '#before').innerHTML = DIAL;
    const script = document.createElement('script');
    script.type = 'module';
    script.src = '/dist/standalone/stop-trade-dial.js';
    document.body.append(script);
    const [before] = await awake(host, ['stop-trade-dial']);
    const after = document.createElement('div');
    document.body.append(after);
    after.innerHTML = DIAL;
    await awake(host, ['stop-trade-dial']);
    expect(verdictOf(after.firstElementChild as Element)).to.equal(verdictOf(before as Element));
  });

  it('moved to another place, what a reader typed comes along', async () => {
    host = writePage(page(`<section>${DIAL}</section><article></article>${scriptOf('stop-trade-dial')}`));
    await awake(host, ['stop-trade-dial']);
    const dial = get<StopTradeDial>(host, 'stop-trade-dial');
    const field = dial.shadowRoot?.querySelector<HTMLInputElement>('#aperture') as HTMLInputElement;
    field.value = 'f/16';
    field.dispatchEvent(new host.page.Event('change', {bubbles: true}));
    await dial.updateComplete;
    get(host, 'article').append(dial);
    await dial.updateComplete;
    expect(dial.aperture).to.equal(16);
    expect(verdictOf(dial)).to.contain('f/16');
    dial.remove();
    dial.setAttribute('iso', '200');
    get(host, 'section').append(dial);
    await dial.updateComplete;
    expect(dial.iso).to.equal(200);
    expect(dial.aperture).to.equal(16);
  });

  it('cloned: the copy begins with the attributes and is its own', async () => {
    host = writePage(page(`${DIAL}${scriptOf('stop-trade-dial')}`));
    await awake(host, ['stop-trade-dial']);
    const dial = get<StopTradeDial>(host, 'stop-trade-dial');
    dial.aperture = 16;
    const copy = dial.cloneNode(true) as StopTradeDial;
    host.page.document.body.append(copy);
    await copy.updateComplete;
    expect(copy.aperture).to.equal(8);
    copy.aperture = 4;
    await dial.updateComplete;
    expect(dial.aperture).to.equal(16);
  });

  it('linked ones taken out, moved and put back in other orders still share their shot', async () => {
    host = writePage(page(`<section>${LINKED}</section><article></article>${scriptOf('stop-trade-dial')}${scriptOf('sharp-zone-bar')}`));
    await awake(host, ['stop-trade-dial', 'sharp-zone-bar']);
    const [dial, bar] = [get<StopTradeDial>(host, 'stop-trade-dial'), get<SharpZoneBar>(host, 'sharp-zone-bar')];
    get(host, 'article').append(bar, dial);
    dial.aperture = 16;
    await waitUntil(() => verdictOf(bar) !== '' && bar.aperture === 16, 'the bar follows');
    get(host, 'section').prepend(dial);
    dial.aperture = 11;
    await bar.updateComplete;
    expect(bar.aperture).to.equal(11);
  });

  it('into another document: the element and its shot go along', async () => {
    host = writePage(page(`${DIAL}${scriptOf('stop-trade-dial')}`));
    const other = writePage(page(''));
    await awake(host, ['stop-trade-dial']);
    const dial = get<StopTradeDial>(host, 'stop-trade-dial');
    dial.aperture = 16;
    other.page.document.body.append(dial);
    await dial.updateComplete;
    expect(verdictOf(dial)).to.contain('f/16');
    expect(dial.shadowRoot?.querySelector('.plate')?.getBoundingClientRect().height).to.be.above(100);
    other.frame.remove();
  });

  it('two copies of the library on one page: the first to define a tag keeps it, and their elements share a bench', async () => {
    host = writePage(page(`${LINKED}${scriptOf('stop-trade-dial')}<script type="module" src="/site/lampblack/sharp-zone-bar.js"></script>
      <script type="module" src="/site/lampblack/stop-trade-dial.js"></script>`));
    await awake(host, ['stop-trade-dial', 'sharp-zone-bar']);
    const [dial, bar] = [get<StopTradeDial>(host, 'stop-trade-dial'), get<SharpZoneBar>(host, 'sharp-zone-bar')];
    expect(Object.getPrototypeOf(Object.getPrototypeOf(dial)), 'from two copies').not.to.equal(Object.getPrototypeOf(Object.getPrototypeOf(bar)));
    const before = verdictOf(bar);
    dial.aperture = 16;
    await waitUntil(() => verdictOf(bar) !== before, 'the bar of the other copy follows');
    expect(bar.aperture).to.equal(16);
  });

  it('a page with the tag of its own keeps it', async () => {
    host = writePage(page(`<script>customElements.define('stop-trade-dial', class extends HTMLElement { get own() { return true; } });</script>
      ${DIAL}<sharp-zone-bar ${FIGURE}></sharp-zone-bar>${scriptOf('all')}`));
    await awake(host, ['sharp-zone-bar']);
    expect(get<HTMLElement & {own?: boolean}>(host, 'stop-trade-dial').own).to.equal(true);
  });
});
