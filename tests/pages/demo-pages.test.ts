import {expect, waitUntil} from '@open-wc/testing';
import {exposureStops, readAperture, readShutter, Problem, completeShot, SHOT_FIELDS, type ShotKey} from '../../src/core/index.js';
import {framingOf} from '../../src/core/shot/framing.js';
import {zoneFit} from '../../src/core/optics/fit.js';
import {axialToRuler} from '../../src/core/optics/outline.js';
import {attributeOf} from '../../src/core/shot/field.js';

async function open(path: string, width = 1100): Promise<Document> {
  const frame = document.createElement('iframe');
  frame.style.cssText = `width:${width}px;height:900px;border:0`;
  frame.src = `/site/${path}`;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  return frame.contentDocument as Document;
}

const plain = (text: string) => text.replace(/\s+/g, ' ').trim().toLowerCase();

/** Everything an element shows, values of fields included. */
const wordsOf = (node: Node): string => [...node.childNodes].map((child) => {
  if (child instanceof Text || child.nodeType === 3) return child.textContent ?? '';
  return (child as Element).localName === 'input' ? (child as HTMLInputElement).value : wordsOf(child);
}).join(' ');

describe('pages of the demo', () => {
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('the article says nothing that the check beside it does not say', async () => {
    const page = await open('article.html');
    const claims = [...page.querySelectorAll<HTMLElement>('[data-of]')];
    expect(claims.length).to.be.above(25);
    for (const claim of claims) {
      const check = page.querySelector(claim.dataset.of ?? '') as Element;
      const said = plain(claim.textContent ?? '');
      const says = () => {
        // Some of it is said behind a fold.
        for (const fold of check.shadowRoot?.querySelectorAll('details') ?? []) fold.open = true;
        return check.shadowRoot !== null && plain(wordsOf(check.shadowRoot)).includes(said);
      };
      await waitUntil(says, `${claim.dataset.of ?? ''}: ${said}`, {timeout: 8000});
    }
  });

  it('the zone in its prose and on the page without script is the core’s', async () => {
    for (const [path, aperture] of [['article.html', 2 ** 3.5], ['noscript.html', 2 ** 3.5]] as const) {
      const page = await open(path);
      const bar = page.querySelector('sharp-zone-bar') as Element;
      const values = Object.fromEntries((Object.keys(SHOT_FIELDS) as ShotKey[]).flatMap((key) => {
        const text = bar.getAttribute(attributeOf(key));
        const value = text === null ? undefined : SHOT_FIELDS[key].read(text);
        return value === undefined || value instanceof Problem ? [] : [[key, value]];
      }));
      const {framing} = framingOf(completeShot({...values, aperture}));
      const {zone, focusDepth} = zoneFit(framing);
      const along = axialToRuler(1, framing.tilt);
      const [from, to] = [(focusDepth - zone.near) * along, (focusDepth + zone.far) * along];
      expect(plain(page.body.textContent ?? '')).to.contain(`${Math.round(from)} mm to ${Math.round(to)} mm`);
    }
  });

  it('tables of pairs hold one light', async () => {
    for (const path of ['club.html', 'noscript.html']) {
      const pairs = [...(await open(path)).querySelectorAll<HTMLTableRowElement>('#pairs tr')].map(({cells}) => {
        const [aperture, shutter] = [readAperture(cells[0]?.textContent ?? ''), readShutter(cells[1]?.textContent ?? '')];
        if (aperture instanceof Problem || shutter instanceof Problem) throw new Error(path);
        return {aperture: aperture.value, shutter: shutter.value, iso: 100};
      });
      for (const pair of pairs) expect(exposureStops(pairs[0] as typeof pair, pair), path).to.be.closeTo(0, 1e-9);
    }
  });

  it('without script each check leaves something to read, and nothing has run', async () => {
    const page = await open('noscript.html');
    for (const tag of ['stop-trade-dial', 'sharp-zone-bar', 'settings-trail', 'tonal-chart-reader', 'backdrop-shade']) {
      const check = page.querySelector<HTMLElement>(tag);
      expect(check?.shadowRoot, tag).to.equal(null);
      expect(check?.innerText.length, tag).to.be.above(30);
    }
  });

  it('no page scrolls sideways on a phone, and none leads nowhere', async () => {
    for (const path of ['index.html', 'article.html', 'club.html', 'forum.html', 'noscript.html', 'reference/index.html', 'reference/sharp-zone-bar.html']) {
      const page = await open(path, 320);
      expect(page.documentElement.scrollWidth, path).to.be.at.most(320);
      for (const {href} of page.querySelectorAll<HTMLAnchorElement>('a[href]')) {
        expect((await fetch(href.replace(/#.*/, ''), {method: 'HEAD'})).ok, `${path} → ${href}`).to.equal(true);
      }
    }
  });

  it('a knob of a reference page turns its check and the markup to paste', async () => {
    const page = await open('reference/stop-trade-dial.html');
    const check = page.querySelector('stop-trade-dial') as HTMLElement & {readonly aperture: number};
    await waitUntil(() => check.shadowRoot, 'the check is there');
    const knob = page.querySelector('[data-attribute=aperture]') as HTMLInputElement;
    knob.value = 'f/16';
    knob.dispatchEvent(new Event('input', {bubbles: true}));
    expect(check.aperture).to.equal(16);
    expect(page.querySelector('#markup')?.textContent).to.contain('aperture="f/16"');
  });
});
