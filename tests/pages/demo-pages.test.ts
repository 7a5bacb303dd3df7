import {expect, waitUntil} from '@open-wc/testing';
import {chord} from '../hands.js';
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

/** Whether words are said as they stand: not as the beginning of longer words, or of a number with more places. */
function isSaid(said: string, text: string): boolean {
  const literal = plain(said).replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\d]|\\d[.,])${literal}(?![\\p{L}\\d]|[.,]\\d)`, 'u').test(plain(text));
}

/** All an element says, what stands behind its folds included. */
function saidBy(check: Element): string {
  for (const fold of check.shadowRoot?.querySelectorAll('details') ?? []) fold.open = true;
  return check.shadowRoot ? wordsOf(check.shadowRoot) : '';
}

const verdictOn = (page: Document, tag: string) => plain(page.querySelector(tag)?.shadowRoot?.querySelector('.verdict')?.textContent ?? '');

/** WCAG 2.2, “contrast ratio” and “relative luminance”. */
function contrast(...colors: readonly [string, string]): number {
  const [light = 0, dark = 0] = colors.map((color) => {
    const [red = 0, green = 0, blue = 0] = (color.match(/[\d.]+/g) ?? []).map((code) => Number(code) / 255)
      .map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }).sort((one, other) => other - one);
  return (light + 0.05) / (dark + 0.05);
}

describe('pages of the demo', () => {
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('the article says nothing that the check beside it does not say', async () => {
    const page = await open('article.html');
    const claims = [...page.querySelectorAll<HTMLElement>('[data-of]')];
    expect(claims.length).to.be.above(25);
    for (const claim of claims) {
      const check = page.querySelector(claim.dataset.of ?? '') as Element;
      const said = plain(claim.textContent ?? '');
      await waitUntil(() => isSaid(said, saidBy(check)), `${claim.dataset.of ?? ''}: ${said}`, {timeout: 8000});
    }
    // So are the numbers of what stands there without script.
    for (const check of page.querySelectorAll('.step > [id]:not(settings-trail)')) {
      for (const [number] of (check.textContent ?? '').matchAll(/(?:f\/)?\d+(?:[./]\d+)*/g)) {
        await waitUntil(() => isSaid(number, saidBy(check)), `${check.id}, between the tags: ${number}`, {timeout: 8000});
      }
    }
  });

  it('a number that is said with more places, or as a part of another, is not said', () => {
    expect(isSaid('1.04', 'R 1.000 G 1.025 B 1.044')).to.equal(false);
    expect(isSaid('4 mm', '34 mm')).to.equal(false);
    expect(isSaid('1.02', 'red by 0.98 and blue by 1.02.')).to.equal(true);
  });

  it('the figure and its table are the same on every page, and so is how dark the black card is', async () => {
    const told = new Map<string, string>();
    const keys = ['picture-width', 'field-width', 'focal-length', 'base-depth', 'figure-width', 'figure-height', 'overhang-front', 'overhang-back', 'tilt',
      'room', 'backdrop-distance', 'backdrop-reflectance', 'lights'];
    for (const path of ['index.html', 'article.html', 'noscript.html', ...['sharp-zone-bar', 'shot-plan', 'backdrop-shade', 'shot-sheet'].map((tag) => `reference/${tag}.html`)]) {
      const page = new DOMParser().parseFromString(await (await fetch(`/site/${path}`)).text(), 'text/html');
      for (const check of page.querySelectorAll('main *')) {
        for (const key of check.localName.includes('-') ? keys : []) {
          const text = check.getAttribute(key);
          if (text === null) continue;
          if (!told.has(key)) told.set(key, text);
          expect(text, `${key} of ${check.localName} in ${path}`).to.equal(told.get(key));
        }
      }
    }
    expect([...told.keys()]).to.have.members(keys);

    const [index, article, reference] = await Promise.all(['index.html', 'article.html', 'reference/backdrop-shade.html'].map((path) => open(path)));
    if (!index || !article || !reference) throw new Error('no pages');
    (index.querySelector('[data-check="backdrop-shade"]') as HTMLDetailsElement).open = true;
    await waitUntil(() => [index, article, reference].every((page) => verdictOn(page, 'backdrop-shade')), 'all of them speak', {timeout: 15_000});
    const said = verdictOn(index, 'backdrop-shade');
    expect(verdictOn(article, 'backdrop-shade')).to.equal(said);
    expect(verdictOn(reference, 'backdrop-shade')).to.equal(said);
    const unscripted = plain((await open('noscript.html')).querySelector('backdrop-shade')?.textContent ?? '');
    for (const number of unscripted.match(/(?<=lies |value )[\d.]+/g) ?? []) {
      expect(isSaid(number, saidBy(index.querySelector('backdrop-shade') as Element)), `without script: ${number}`).to.equal(true);
    }
  });

  it('the article opens with the whole picture', async () => {
    const picture = (await open('article.html', 1280)).querySelector('.plate-picture img') as HTMLImageElement;
    await picture.decode();
    const {width, height} = picture.getBoundingClientRect();
    expect(width / height).to.be.closeTo(picture.naturalWidth / picture.naturalHeight, 0.01);
    expect(height).to.be.below(picture.ownerDocument.documentElement.clientHeight);
  });

  it('fields and buttons of the club’s dark page can be seen: 3 to 1 against the card they lie on', async () => {
    const page = await open('club.html');
    const checks = [...page.querySelectorAll('settings-trail, stop-trade-dial, shot-plan')];
    await waitUntil(() => checks.every((check) => check.shadowRoot?.querySelector('.verdict')), 'all of them speak', {timeout: 15_000});
    for (const check of checks) {
      const card = getComputedStyle(check.closest('.card') as Element).backgroundColor;
      const lined = [...check.shadowRoot?.querySelectorAll('input, select, button') ?? []].map((el) => getComputedStyle(el))
        .filter(({borderBottomWidth, borderBottomStyle}) => parseFloat(borderBottomWidth) > 0 && borderBottomStyle !== 'none');
      expect(lined.length, check.localName).to.be.above(0);
      for (const {borderBottomColor} of lined) expect(contrast(borderBottomColor, card), `${check.localName}: ${borderBottomColor}`).to.be.at.least(3);
    }
  });

  it('a check’s own page, opened by itself, says what it is and leads to all of them with its shot', async () => {
    const page = await open('embed.html?tag=stop-trade-dial&lang=de#shot=1&aperture=f/11');
    // In a frame the page around it says so.
    expect((page.querySelector('#alone') as HTMLElement).checkVisibility()).to.equal(false);
    // A window is only had by somebody's own hand.
    const button = document.createElement('button');
    const opened: Window[] = [];
    button.addEventListener('click', () => { opened.push(window.open('/site/embed.html?tag=stop-trade-dial&lang=de#shot=1&aperture=f/11') as Window); });
    document.body.append(button);
    button.focus();
    await chord('Enter');
    await waitUntil(() => opened[0], 'it is opened', {timeout: 8000});
    button.remove();
    const alone = opened[0] as Window;
    try {
      await waitUntil(() => alone.document.querySelector('#alone h1'), 'it has a title', {timeout: 8000});
      expect(alone.document.querySelector('h1')?.textContent).to.equal('Gleiches Licht, andere Einstellung');
      expect(alone.document.title).to.contain('Gleiches Licht');
      const ways = [...alone.document.querySelectorAll<HTMLAnchorElement>('#alone a')].map(({href}) => href);
      expect(ways).to.deep.equal([`${location.origin}/site/index.de.html#shot=1&aperture=f/11`, location.href]);
      expect((alone.document.querySelector('#alone') as HTMLElement).checkVisibility()).to.equal(true);
    } finally {
      alone.close();
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

  it('what a knob’s check cannot use is said beside the knob, until it is put right', async () => {
    const page = await open('reference/sharp-zone-bar.html');
    const check = page.querySelector('sharp-zone-bar') as HTMLElement & {readonly aperture: number};
    await waitUntil(() => check.shadowRoot?.querySelector('.verdict'), 'the check is there', {timeout: 8000});
    const knob = page.querySelector('[data-attribute=aperture]') as HTMLInputElement;
    const turn = (text: string) => {
      knob.value = text;
      knob.dispatchEvent(new Event('input', {bubbles: true}));
    };
    const reason = () => page.getElementById(knob.getAttribute('aria-describedby') ?? '') as HTMLElement;
    turn('0"6');
    expect(check.aperture).to.equal(8);
    expect(knob.getAttribute('aria-invalid')).to.equal('true');
    expect(reason().checkVisibility()).to.equal(true);
    expect(reason().textContent).to.contain('0"6').and.to.contain('f-number');
    expect(Math.abs(reason().getBoundingClientRect().top - knob.getBoundingClientRect().bottom)).to.be.below(20);
    turn('f/11');
    expect(check.aperture).to.be.closeTo(2 ** 3.5, 1e-9);
    expect(knob.getAttribute('aria-invalid')).to.equal('false');
    expect(reason().checkVisibility()).to.equal(false);
  });

  it('a code box that is cut off shows a shadow there', async () => {
    const box = (await open('reference/sharp-zone-bar.html', 320)).querySelector('pre') as HTMLElement;
    expect(box.scrollWidth).to.be.above(box.clientWidth);
    // What covers the shadow at an end moves with the text; the shadow stays.
    const {backgroundAttachment, backgroundImage} = getComputedStyle(box);
    expect(backgroundAttachment.split(', ')).to.deep.equal(['local', 'local', 'scroll', 'scroll']);
    expect(backgroundImage.match(/linear-gradient/g)?.length).to.equal(4);
  });
});
