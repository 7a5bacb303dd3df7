import {expect, fixture, html, oneEvent} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {expectAccessible} from '../audit.js';
import '../../src/elements/shot-sheet/define.js';
import '../../src/elements/stop-trade-dial/define.js';
import '../../src/elements/sharp-zone-bar/define.js';
import type {ShotRecord} from '../../src/core/shot/record.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';
import {benchNamed} from '../../src/elements/shared/bench.js';
import type {ShotSheet} from '../../src/elements/shot-sheet/class.js';
import {layCard, wrap} from '../../src/elements/shot-sheet/card.js';
import {cardElement, cardPng, cardSvg, printCard} from '../../src/elements/shot-sheet/card-picture.js';
import type {ShotsChangeEvent} from '../../src/elements/shot-sheet/events.js';
import {memoryKey} from '../../src/elements/shot-sheet/memory.js';
import {qrCode} from '../../src/elements/shot-sheet/qr.js';
import {fileName} from '../../src/elements/shot-sheet/take.js';

type Decode = (data: Uint8ClampedArray, width: number, height: number) => {readonly data: string} | null;

const root = (el: Element) => el.shadowRoot as ShadowRoot;
const plain = (text: string | null | undefined) => text?.replace(/\s+/g, ' ').trim() ?? '';
const words = (el: Element) => plain(root(el).textContent);
const verdict = (el: Element) => plain(root(el).querySelector('.verdict')?.textContent);
const message = (el: Element) => plain(root(el).querySelector('.message')?.textContent);
const rows = (el: Element) => [...root(el).querySelectorAll('.kept > li')];
const button = (el: Element, text: string) => {
  const found = [...root(el).querySelectorAll('button')].find((one) => plain(one.textContent).startsWith(text));
  if (!found) throw new Error(`no button “${text}”`);
  return found;
};
/** A shot as it stands, problems by what they want. */
const standing = (bench: string) => {
  const {values: said, texts, problems} = benchNamed(bench).state;
  return {said, texts, problems: Object.entries(problems).map(([key, problem]) => [key, problem.value, problem.wanted]).sort()};
};
const values = (el: ShotSheet) => el.record.values;

/** Waits until something is so: parts of the sheet are loaded when they are looked for. */
async function until(el: ShotSheet, so: () => unknown): Promise<void> {
  for (let turn = 0; turn < 1000 && !so(); turn++) await new Promise((resolve) => { setTimeout(resolve, 10); });
  await el.updateComplete;
  expect(Boolean(so())).to.equal(true);
}

async function press(el: ShotSheet, text: string): Promise<void> {
  button(el, text).click();
  await el.updateComplete;
  await el.updateComplete;
}

/** Invented: the lantern bearer of the Fenwick Painting Guild. */
const bearer = (bench?: string) => fixture<ShotSheet>(html`<shot-sheet bench=${bench ?? `sheet-${Math.random()}`} aperture="f/8" shutter='0"3' iso="100"
  base-depth="90mm" focus="36mm" tilt="6" blur-limit="wide"></shot-sheet>`);

async function opened(el: ShotSheet): Promise<ShotSheet> {
  for (const details of root(el).querySelectorAll('details')) details.open = true;
  await until(el, () => root(el).querySelector('.show-qr'));
  return el;
}

async function withClipboard(writeText: (text: string) => Promise<void>, act: () => Promise<void>): Promise<void> {
  Object.defineProperty(navigator, 'clipboard', {configurable: true, get: () => ({writeText})});
  try { await act(); } finally { delete (navigator as {clipboard?: unknown}).clipboard; }
}

/** Takes files that the sheet gives, in place of the browser. */
async function savedBy(act: () => Promise<void> | void): Promise<{name: string; blob: Blob}[]> {
  const saved: {name: string; blob: Blob}[] = [];
  const made: Promise<unknown>[] = [];
  const click = (event: MouseEvent) => {
    const link = event.target;
    if (!(link instanceof HTMLAnchorElement)) return;
    event.preventDefault();
    made.push(fetch(link.href).then(async (answer) => { saved.push({name: link.download, blob: await answer.blob()}); }));
  };
  const original = HTMLAnchorElement.prototype.click;
  HTMLAnchorElement.prototype.click = function () { click({target: this, preventDefault() { /* nothing to prevent */ }} as unknown as MouseEvent); };
  try {
    await act();
    for (let turn = 0; turn < 100 && !made.length; turn++) await new Promise((resolve) => { setTimeout(resolve, 20); });
    await Promise.all(made);
  } finally { HTMLAnchorElement.prototype.click = original; }
  return saved;
}

afterEach(() => {
  localStorage.clear();
  history.replaceState(null, '', location.href.replace(/#.*$/, ''));
});

describe('shot-sheet', () => {
  it('passes the accessibility audit: empty, with shots, with everything open and a fault', async () => {
    await expectAccessible(await fixture(html`<shot-sheet></shot-sheet>`));
    const el = await bearer();
    await press(el, 'Keep this shot');
    await opened(el);
    await expectAccessible(el);
    await press(el, 'Show QR code');
    await until(el, () => root(el).querySelector('.qr'));
    await press(el, 'Add these shots');
    await expectAccessible(el);
  });

  it('says what it assumes while nothing is stated', async () => {
    const el = await fixture<ShotSheet>(html`<shot-sheet></shot-sheet>`);
    expect(verdict(el)).to.equal('f/8, 1/4 s, ISO 100. No shot is kept yet.');
    expect(words(el)).to.contain('Nothing was stated yet');
  });

  it('says which parts of the set-up are not on it and where they are added, until they are there', async () => {
    const el = await bearer('sheet-missing');
    const missing = () => [...root(el).querySelectorAll('.missing li')].map((line) => plain(line.textContent).split(':')[0]);
    expect(missing()).to.deep.equal(['Lens and field', 'Lamps and flags', 'Backdrop and its distance', 'Gray card']);
    el.setAttribute('lights', 'key 180x180 at -230,-200,300');
    el.setAttribute('field-width', '180 mm');
    el.setAttribute('backdrop-distance', '500 mm');
    benchNamed('sheet-missing').put({grayCard: {trusted: true, name: 'card.jpg'}});
    await el.updateComplete;
    expect(root(el).querySelector('.missing')).to.equal(null);
    expect(words(el)).to.contain('key: face of 180 mm by 180 mm, 230 mm to the left, 200 mm in front, 300 mm up');
  });

  it('brings no heading of its own into a page whose levels it cannot know', async () => {
    const el = await bearer();
    await press(el, 'Keep this shot');
    await opened(el);
    expect(root(el).querySelectorAll('h1, h2, h3, h4, h5, h6')).to.have.length(0);
    const named = [...root(el).querySelectorAll('[role=group]')].map((group) => root(el).getElementById(group.getAttribute('aria-labelledby') ?? '')?.textContent);
    expect(named).to.include.members(['Camera', 'Figure', 'Link', 'File']);
  });

  it('shows the beginning of a long link and copies the whole of it', async () => {
    const el = await opened(await bearer());
    el.page = 'https://example.org/lesson.html';
    el.note = 'long '.repeat(20).trim();
    await el.updateComplete;
    expect(plain(root(el).querySelector('.address')?.textContent)).to.equal(
      `example.org/lesson.html#shot=1&aperture=f/8&shutter=0.3s… (${el.link.length} characters; the whole of it is copied)`);
  });

  it('shows what was set, and what was typed and is not in use', async () => {
    const el = await bearer();
    expect(verdict(el)).to.equal('f/8, 0.3 s, ISO 100. No shot is kept yet.');
    expect(words(el)).to.contain('Base depth90 mm');
    expect(words(el)).to.contain('Typed, not in use');
    expect(words(el)).to.contain('“wide”');
  });

  it('keeps the last good value of a bad attribute, shows its text and reports it', async () => {
    const el = await bearer();
    const [event] = await Promise.all([oneEvent(el, 'shot-problem') as Promise<ShotProblemEvent>, el.setAttribute('tilt', 'a bit')]);
    await el.updateComplete;
    expect(event.problem.parameter).to.equal('tilt');
    expect(words(el)).to.contain('“a bit”');
    expect(values(el).tilt).to.equal(6);
  });

  it('keeps shots in order and says what changed, by keyboard', async () => {
    const el = await bearer();
    root(el).querySelector<HTMLElement>('#name')?.focus();
    await sendKeys({type: 'Second lantern'});
    button(el, 'Keep this shot').focus();
    const [event] = await Promise.all([oneEvent(el, 'shots-change') as Promise<ShotsChangeEvent>, sendKeys({press: 'Enter'})]);
    await el.updateComplete;
    expect(event.shots.map(({title}) => title)).to.deep.equal(['Second lantern']);
    expect(verdict(el)).to.contain('As kept in shot 1 “Second lantern”.');
    await until(el, () => message(el) === 'Kept as shot 1 “Second lantern”.');
    el.setAttribute('aperture', 'f/11');
    el.setAttribute('tilt', '8');
    await el.updateComplete;
    // common practice, no source: f/8 to f/11 is one stop
    expect(verdict(el)).to.equal('f/11, 0.3 s, ISO 100. Since shot 1 “Second lantern”: Aperture f/8 → f/11, 1 stop darker; Tilt down, degrees 6 → 8.');
    await press(el, 'Keep this shot');
    expect([...root(el).querySelectorAll('.changes li')].map((line) => plain(line.textContent))).to.deep.equal([
      'Aperture f/8 → f/11, 1 stop darker', 'Tilt down, degrees 6 → 8']);
  });

  it('keeps by pointer', async () => {
    const el = await bearer();
    el.scrollIntoView();
    const box = button(el, 'Keep this shot').getBoundingClientRect();
    await sendMouse({type: 'click', position: [Math.round(box.x + box.width / 2), Math.round(box.y + box.height / 2)]});
    await el.updateComplete;
    expect(rows(el)).to.have.length(1);
  });

  it('moves, removes and undoes, with the keyboard left where it can go on', async () => {
    const el = await bearer();
    for (const name of ['one', 'two', 'three']) {
      const field = root(el).querySelector<HTMLInputElement>('#name') as HTMLInputElement;
      field.value = name;
      field.dispatchEvent(new Event('change'));
      await press(el, 'Keep this shot');
    }
    const titles = () => el.shots.map(({title}) => title).join(' ');
    rows(el)[2]?.querySelector<HTMLElement>('.up')?.click();
    await el.updateComplete;
    expect(titles()).to.equal('one three two');
    await until(el, () => root(el).activeElement?.className === 'up');
    rows(el)[0]?.querySelector<HTMLElement>('button:last-child')?.click();
    await el.updateComplete;
    expect(titles()).to.equal('three two');
    await until(el, () => root(el).activeElement?.className === 'undo');
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect(titles()).to.equal('one three two');
    await until(el, () => root(el).activeElement === rows(el)[0]?.querySelector('.remove'));
    await press(el, 'Undo: shot 3 moved');
    expect(titles()).to.equal('one two three');
    await until(el, () => root(el).activeElement === rows(el)[2]?.querySelector('.up'));
    await press(el, 'Undo: shot 3 kept');
    await until(el, () => root(el).activeElement?.className === 'keep');
  });

  it('writes numbers as people do, and carries them on to the last bit', async () => {
    // Invented: what a plan works out, and what somebody typed.
    const el = await bearer();
    const given = {
      meteredMagnification: 0.192513, fieldWidth: 506.858, overhangFront: 18.25, tilt: 7.12345,
      crop: {left: 0.30061, top: 0.125, width: 0.39871, height: 0.39882},
    };
    Object.assign(el, given);
    el.setAttribute('focus', '40.332 mm');
    await el.updateComplete;
    for (const said of ['Metered at magnification0.19', 'Field width507 mm', 'Focus behind the base’s front edge40 mm', 'Overhang in front18.25 mm',
      'Tilt down, degrees7.12', '40% of the width and 40% of the height, from 30% on the left and 12.5% at the top']) {
      expect(words(el)).to.contain(said);
    }
    const {readLink} = await import('../../src/core/shot/link.js');
    expect(readLink(new URL(el.link).hash)?.state.values).to.deep.include({...given, focus: 40.332});
  });

  it('puts a kept shot on the bench exactly, typed text and all, and takes it back', async () => {
    const el = await bearer('sheet-back');
    const page = await fixture<HTMLDivElement>(html`<div><stop-trade-dial bench="sheet-back"></stop-trade-dial></div>`);
    const dial = page.querySelector('stop-trade-dial');
    const before = standing('sheet-back');
    await press(el, 'Keep this shot');
    el.setAttribute('aperture', 'f/16');
    el.setAttribute('blur-limit', '2');
    el.setAttribute('room', '900mm');
    await el.updateComplete;
    const changed = standing('sheet-back');
    const [event] = await Promise.all([oneEvent(el, 'shot-change') as Promise<ShotChangeEvent>, press(el, 'Back to these settings')]);
    expect(standing('sheet-back')).to.deep.equal(before);
    expect(event.shot.aperture).to.equal(8);
    expect(dial?.aperture).to.equal(8);
    expect(message(el)).to.equal('Set as in shot 1, in every linked check.');
    await press(el, 'Undo: back to shot 1');
    expect(standing('sheet-back')).to.deep.equal(changed);
  });

  it('writes the note on the bench and keeps it', async () => {
    const el = await bearer();
    root(el).querySelector<HTMLElement>('#note')?.focus();
    await sendKeys({type: 'Flag closer <b>'});
    const [event] = await Promise.all([oneEvent(el, 'shot-change') as Promise<ShotChangeEvent>, sendKeys({press: 'Tab'})]);
    expect(event.changes.note).to.equal('Flag closer <b>');
    await press(el, 'Keep this shot');
    expect(rows(el)[0]?.textContent).to.contain('Flag closer <b>');
    expect(root(el).querySelector('.kept b')).to.equal(null);
  });

  it('follows its bench, and its bench follows it', async () => {
    const el = await bearer('sheet-both');
    const page = await fixture<HTMLDivElement>(html`<div><stop-trade-dial bench="sheet-both"></stop-trade-dial></div>`);
    const dial = page.querySelector('stop-trade-dial');
    if (!dial) throw new Error('a dial expected');
    expect(dial.aperture).to.equal(8);
    dial.aperture = 16;
    await el.updateComplete;
    expect(verdict(el)).to.contain('f/16');
    el.setAttribute('iso', '200');
    expect(dial.iso).to.equal(200);
  });

  it('keeps its shots while it is moved', async () => {
    const page = await fixture<HTMLDivElement>(html`<div><shot-sheet aperture="f/8"></shot-sheet><p></p></div>`);
    const el = page.querySelector('shot-sheet') as ShotSheet;
    await press(el, 'Keep this shot');
    page.querySelector('p')?.append(el);
    await el.updateComplete;
    expect(rows(el)).to.have.length(1);
    expect(values(el).aperture).to.equal(8);
  });

  it('takes over properties set before it was defined', async () => {
    const tag = 'shot-sheet-late';
    const late = document.createElement(tag) as ShotSheet;
    const shot: ShotRecord = {title: 'Early', made: '2026-03-01T12:00:00Z', values: {aperture: 4}, texts: {}, measured: {}};
    late.shots = [shot];
    late.note = 'early';
    document.body.append(late);
    customElements.define(tag, class extends (customElements.get('shot-sheet') as typeof ShotSheet) {});
    await late.updateComplete;
    expect(rows(late)).to.have.length(1);
    expect(late.record.values.note).to.equal('early');
    late.remove();
  });

  it('fits a narrow column, with nothing under 40 px to press', async () => {
    const box = await fixture<HTMLDivElement>(html`<div><shot-sheet aperture="f/8" lights="key 180x180 at -230,-200,300; flag 150x180 at 70,200,400"></shot-sheet></div>`);
    box.style.width = '280px';
    const el = box.querySelector('shot-sheet') as ShotSheet;
    await press(el, 'Keep this shot');
    await opened(el);
    expect(el.scrollWidth).to.be.at.most(280);
    for (const one of root(el).querySelectorAll<HTMLElement>('button, summary, .pick')) expect(one.getBoundingClientRect().height, plain(one.textContent)).to.be.at.least(40);
  });
});

describe('shot-sheet: in the language of the page', () => {
  const german = () => fixture<ShotSheet>(html`<shot-sheet lang="de" aperture="f/5.6" shutter='0"3' iso="100" tilt="6.5" pay="iso" blur-limit="wide"
    lights="key 180x180 at -230,-200,300 aim 0,0,45 power -1.5"></shot-sheet>`);

  it('says labels, lamps and numbers in German, on the screen, as text and on the card', async () => {
    const el = await german();
    expect(verdict(el)).to.equal('f/5,6 · 0,3 s · ISO 100. Noch keine Aufnahme behalten.');
    expect(words(el)).to.contain('Neigung nach unten, Grad6,5');
    expect(words(el)).to.contain('Hauptlicht: Leuchtfläche 180 mm mal 180 mm · 230 mm links · 200 mm davor · 300 mm hoch · gerichtet auf: 45 mm hoch · 1 1/2 Blendenstufen schwächer');
    expect(words(el)).to.contain('„wide“');
    await opened(el);
    const copied: string[] = [];
    await withClipboard((text) => { copied.push(text); return Promise.resolve(); }, async () => {
      await press(el, 'Reiner Text');
      await until(el, () => copied.length);
    });
    expect(plain(copied[0])).to.contain('Aufnahme 1 f/5,6 · 0,3 s · ISO 100 Belichtung Ausgleich durch: ISO');
    const [svg] = await savedBy(async () => { await press(el, 'SVG speichern'); });
    expect(await svg?.blob.text()).to.contain('Neigung nach unten, Grad');
    await expectAccessible(el);
  });

  it('hands links and files on as machines read them', async () => {
    const el = await opened(await german());
    expect(el.link).to.match(/#shot=1&aperture=f\/5\.6&shutter=0\.3s&iso=ISO100/);
    const [file] = await savedBy(async () => { await press(el, 'Datei speichern'); });
    expect((JSON.parse(await file?.blob.text() ?? '') as {shots: {values: {tilt: number}}[]}).shots[0]?.values.tilt).to.equal(6.5);
  });

  it('speaks another language when the page does, in what was fetched later too', async () => {
    const el = await opened(await german());
    await press(el, 'Diese Aufnahme behalten');
    expect(message(el)).to.equal('Als Aufnahme 1 behalten.');
    el.lang = 'pl';
    await until(el, () => message(el) === 'Zachowano jako ujęcie 1.');
    await until(el, () => words(el).includes('Kopiuj link'));
    el.lang = 'fr';
    await until(el, () => message(el) === 'Gardée comme prise de vue 1.');
    await until(el, () => words(el).includes('Copier le lien'));
    el.lang = 'es';
    await until(el, () => words(el).includes('Copiar el enlace'));
  });
});

describe('shot-sheet: a photo on the bench', () => {
  it('draws, measures and keeps it', async () => {
    const el = await bearer('sheet-photo');
    // Invented: left half black, right half clipped red.
    const canvas = new OffscreenCanvas(800, 400);
    const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
    context.fillRect(0, 0, 400, 400);
    context.fillStyle = '#ff0000';
    context.fillRect(400, 0, 400, 400);
    const {openPhoto} = await import('../../src/photo/open.js');
    const photo = await openPhoto(new File([await canvas.convertToBlob()], 'halves.png'), {inPage: true});
    if ('problem' in photo) throw new Error('a photo expected');
    benchNamed('sheet-photo').put({photo});
    await until(el, () => words(el).includes('At white'));
    expect(words(el)).to.contain('Photohalves.png');
    expect(words(el)).to.contain('At white, any colour50%');
    expect(words(el)).to.contain('At black, any colour100%'); // red alone has no green and no blue
    await press(el, 'Keep this shot');
    expect(el.shots[0]?.picture).to.match(/^data:image\/jpeg;base64,/);
    expect((el.shots[0]?.picture ?? '').length).to.be.below(40_000);
    await until(el, () => root(el).querySelector<HTMLCanvasElement>('.kept canvas')?.width === 320);
    const kept = root(el).querySelector<HTMLCanvasElement>('.kept canvas');
    expect([kept?.width, kept?.height]).to.deep.equal([320, 160]);
    const [red = 0, green = 255] = kept?.getContext('2d')?.getImageData(300, 80, 1, 1).data ?? [];
    expect(red).to.be.above(240);
    expect(green).to.be.below(20);
    await opened(el);
    const [svg] = await savedBy(async () => { await press(el, 'Save SVG'); });
    const card = new DOMParser().parseFromString(await (svg?.blob.text() ?? ''), 'image/svg+xml');
    expect(card.querySelector('image')?.getAttribute('href')).to.match(/^data:image\/jpeg/);
    photo.close();
    benchNamed('sheet-photo').put({photo: undefined});
    await until(el, () => !words(el).includes('At white'));
  });
});

describe('shot-sheet: what was measured beside it', () => {
  it('keeps what the gray card and the measured spot gave, and says what changed', async () => {
    const el = await bearer('sheet-card');
    // Invented readings, in the shape the other elements lay on the bench.
    const card = {trusted: true, gains: {red: 0.8, green: 1, blue: 1.25}, exposureError: -1, name: 'card.jpg'};
    benchNamed('sheet-card').put({grayCard: card, level: {luminance: {code: 40}, stopsFromGray: -3}});
    await until(el, () => words(el).includes('card.jpg, can be relied on'));
    expect(words(el)).to.contain('red × 0.800, green × 1, blue × 1.250');
    await press(el, 'Keep this shot');
    expect(el.shots[0]?.measured).to.deep.equal({cardPhoto: 'card.jpg', cardTrusted: true, gainRed: 0.8, gainBlue: 1.25, cardOff: -1, spotCode: 40, spotStops: -3});
    benchNamed('sheet-card').put({grayCard: {...card, trusted: false, gains: undefined, exposureError: -Infinity}, level: {luminance: {code: 0}, stopsFromGray: -Infinity}});
    await until(el, () => words(el).includes('not to be relied on'));
    expect(words(el)).not.to.contain('Infinity');
    await press(el, 'Keep this shot');
    expect([...root(el).querySelectorAll('.changes li')].map((line) => plain(line.textContent))).to.deep.equal([
      'Gray card card.jpg, can be relied on → card.jpg, not to be relied on',
      'Measured spot level 40 of 255, 3 stops under the gray card → level 0 of 255']);
  });
});

describe('shot-sheet: links', () => {
  const LINK = '#shot=1&aperture=f/11&shutter==0.6&blur-limit=~wide&base-depth=90mm&focus=36.25mm&lens-hood=petal';

  it('takes the shot of the address, for every element of the bench', async () => {
    history.replaceState(null, '', LINK);
    const page = await fixture<HTMLDivElement>(html`<div>
      <sharp-zone-bar bench="sheet-link" base-depth="40mm" tilt="5"></sharp-zone-bar>
      <shot-sheet bench="sheet-link" follow-link></shot-sheet>
      <stop-trade-dial bench="sheet-link" aperture="f/2.8"></stop-trade-dial>
    </div>`);
    const [bar, el, dial] = [page.querySelector('sharp-zone-bar'), page.querySelector('shot-sheet'), page.querySelector('stop-trade-dial')];
    if (!bar || !el || !dial) throw new Error('three elements expected');
    await el.updateComplete;
    expect(bar.baseDepth).to.equal(90);
    expect(dial.aperture).to.be.closeTo(11.3137, 1e-4); // 2^(7/2)
    expect(dial.shutter).to.equal(0.6);
    expect(root(dial).textContent).not.to.contain('f/2.8.');
    expect(words(el)).to.contain('“lens-hood” in the link means nothing here');
    expect(words(el)).to.contain('“wide”');
    expect(el.link.endsWith(LINK)).to.equal(true);
  });

  it('follows when the address changes, and can be undone', async () => {
    const el = await fixture<ShotSheet>(html`<shot-sheet follow-link bench="sheet-hash" aperture="f/8"></shot-sheet>`);
    location.hash = 'shot=1&aperture=f/5.6&tilt=eleven';
    await until(el, () => verdict(el).startsWith('f/5.6'));
    expect(words(el)).to.contain('tilt “eleven” in the link does not read as');
    await press(el, 'Undo: link opened');
    expect(values(el)).to.deep.equal({aperture: 8});
    location.hash = 'part-two';
    await new Promise((resolve) => { setTimeout(resolve, 50); });
    expect(values(el)).to.deep.equal({aperture: 8});
  });

  it('leaves the address alone unless it is asked', async () => {
    history.replaceState(null, '', LINK);
    const el = await fixture<ShotSheet>(html`<shot-sheet></shot-sheet>`);
    expect(values(el)).to.deep.equal({});
  });

  it('copies the link, or gives it to be copied by hand', async () => {
    const el = await opened(await bearer());
    el.page = 'https://example.org/lesson.html?part=2#old';
    await el.updateComplete;
    const copied: string[] = [];
    await withClipboard((text) => { copied.push(text); return Promise.resolve(); }, async () => {
      await press(el, 'Copy link');
      await until(el, () => words(el).includes('Copied'));
    });
    expect(copied).to.deep.equal(['https://example.org/lesson.html?part=2#shot=1&aperture=f/8&shutter=0.3s&iso=ISO100&blur-limit=~wide&base-depth=90mm&tilt=6&focus=36mm']);
    await withClipboard(() => Promise.reject(new Error('not allowed')), async () => {
      await press(el, 'Copy link');
      await until(el, () => root(el).querySelector('#link-by-hand'));
    });
    const area = root(el).querySelector<HTMLTextAreaElement>('#link-by-hand');
    expect(area?.value).to.equal(copied[0]);
    expect(root(el).activeElement).to.equal(area);
    expect([area?.selectionStart, area?.selectionEnd]).to.deep.equal([0, copied[0]?.length]);
    await expectAccessible(el);
  });

  it('shows a QR code that another program reads as the link, from the screen', async () => {
    // jsQR is an independent decoder; it comes as a plain script.
    await import(new URL('../../node_modules/jsqr/dist/jsQR.js', import.meta.url).href);
    const decode = (globalThis as unknown as {jsQR: Decode}).jsQR;
    const el = await opened(await bearer('sheet-qr'));
    await press(el, 'Show QR code');
    await until(el, () => root(el).querySelector('.qr'));
    const shown = async () => {
      const code = root(el).querySelector('.qr')?.cloneNode(true) as SVGSVGElement;
      const size = Number(code.getAttribute('viewBox')?.split(' ')[2]);
      code.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
      code.setAttribute('width', `${size * 4}`);
      code.setAttribute('height', `${size * 4}`);
      code.querySelector('rect')?.setAttribute('fill', '#fff');
      const image = new Image();
      image.src = URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(code)], {type: 'image/svg+xml'}));
      await image.decode();
      const canvas = new OffscreenCanvas(size * 4, size * 4);
      const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
      context.drawImage(image, 0, 0);
      return decode(context.getImageData(0, 0, size * 4, size * 4).data, size * 4, size * 4)?.data;
    };
    expect(await shown()).to.equal(el.link);
    const first = el.link;
    el.note = 'Lantern first — dann der Umhang. 灯';
    await until(el, () => el.link !== first);
    await new Promise((resolve) => { setTimeout(resolve, 100); });
    await el.updateComplete;
    const link = await shown();
    expect(link).to.equal(el.link);
    // From the phone to the bench: the shot reappears exactly.
    const before = values(el);
    history.replaceState(null, '', new URL(link ?? '').hash);
    const phone = await fixture<ShotSheet>(html`<shot-sheet follow-link></shot-sheet>`);
    expect(values(phone)).to.deep.equal(before);
  });

  it('says when a link is longer than a code can hold', async () => {
    const el = await opened(await bearer());
    el.note = 'long '.repeat(900);
    await el.updateComplete;
    await press(el, 'Show QR code');
    await until(el, () => words(el).includes('more than a QR code holds'));
    expect(qrCode('x'.repeat(5000))).to.equal(null);
  });
});

describe('shot-sheet: files', () => {
  it('carries shots to another page exactly', async () => {
    const el = await opened(await bearer());
    el.note = 'Flag closer.';
    await press(el, 'Keep this shot');
    el.setAttribute('aperture', '11 or so');
    await press(el, 'Keep this shot');
    const which = root(el).querySelector<HTMLSelectElement>('#which') as HTMLSelectElement;
    which.value = 'all';
    which.dispatchEvent(new Event('change'));
    const [file] = await savedBy(async () => { await press(el, 'Save file'); });
    expect(file?.name).to.equal('shots.json');
    const other = await opened(await fixture<ShotSheet>(html`<shot-sheet bench="sheet-other"></shot-sheet>`));
    const input = root(other).querySelector<HTMLInputElement>('input[type=file]') as HTMLInputElement;
    const transfer = new DataTransfer();
    transfer.items.add(new File([file?.blob ?? ''], 'shots.json'));
    input.files = transfer.files;
    input.dispatchEvent(new Event('change'));
    await until(other, () => rows(other).length === 2);
    expect(other.shots).to.deep.equal(el.shots);
    expect(message(other)).to.equal('2 shots were added.');
    rows(other)[1]?.querySelector('button')?.click();
    await other.updateComplete;
    expect(standing('sheet-other')).to.deep.equal(standing(el.bench ?? ''));
    await press(other, 'Undo: back to shot 2');
    await press(other, 'Undo: shots added');
    expect(other.shots).to.deep.equal([]);
  });

  for (const [text, wanted] of [
    ['{"format":"lampblack-sho', 'is damaged'], ['{"recipes":[]}', 'not a file of shots'],
    ['{"format":"lampblack-shots","version":9,"shots":[]}', 'was made by a later version (“9”)'],
    ['{"format":"lampblack-shots","version":1,"shots":[{"title":"","made":"2026-03-01T12:00:00Z","values":{"baseDepth":-4},"texts":{},"measured":{}}]}',
      'base-depth of shot 1 is “-4”, wanted is a length from 1 to 5000 mm'],
  ] as const) {
    it(`says what is wrong, and changes nothing: ${wanted}`, async () => {
      const el = await opened(await bearer());
      await press(el, 'Keep this shot');
      const before = el.shots;
      const area = root(el).querySelector<HTMLTextAreaElement>('#pasted') as HTMLTextAreaElement;
      area.value = text;
      area.dispatchEvent(new Event('input'));
      await press(el, 'Add these shots');
      expect(plain(root(el).querySelector('#fault')?.textContent)).to.contain(wanted);
      expect(plain(root(el).querySelector('#fault')?.textContent)).to.contain('Nothing was changed');
      expect(el.shots).to.equal(before);
      expect(root(el).querySelector<HTMLTextAreaElement>('#pasted')?.value).to.equal(text);
    });
  }

  it('gives files names that any system takes', () => {
    expect(fileName('Lantern bearer: “second” try/3', 'png')).to.equal('lantern-bearer-second-try-3.png');
    expect(fileName('…', 'json')).to.equal('shots.json');
  });
});

describe('shot-sheet: this device', () => {
  it('keeps nothing unless it is asked', async () => {
    const el = await bearer('sheet-memory');
    await press(el, 'Keep this shot');
    expect(localStorage.length).to.equal(0);
  });

  it('remembers on request, from one visit to the next, until it is told to forget', async () => {
    const el = await bearer('sheet-memory');
    await press(el, 'Keep this shot');
    await press(el, 'Remember on this device');
    await until(el, () => localStorage.getItem(memoryKey('sheet-memory')));
    await press(el, 'Keep this shot');
    await until(el, () => localStorage.getItem(memoryKey('sheet-memory'))?.includes('Shot 2'));
    el.remove();
    const next = await fixture<ShotSheet>(html`<shot-sheet bench="sheet-memory"></shot-sheet>`);
    await until(next, () => rows(next).length === 2);
    expect(next.shots).to.deep.equal(el.shots);
    expect(button(next, 'Remember').getAttribute('aria-pressed')).to.equal('true');
    await press(next, 'Remember on this device');
    expect(localStorage.length).to.equal(0);
    expect(rows(next)).to.have.length(2);
  });

  it('does not double shots that the page brings along itself', async () => {
    const own: ShotRecord = {title: 'The page’s own', made: '2026-03-01T12:00:00Z', values: {aperture: 4}, texts: {}, measured: {}};
    const el = await fixture<ShotSheet>(html`<shot-sheet bench="sheet-own" .shots=${[own]}></shot-sheet>`);
    await press(el, 'Remember on this device');
    await until(el, () => localStorage.getItem(memoryKey('sheet-own')));
    el.remove();
    const next = await fixture<ShotSheet>(html`<shot-sheet bench="sheet-own" .shots=${[own]}></shot-sheet>`);
    await until(next, () => button(next, 'Remember').getAttribute('aria-pressed') === 'true');
    expect(next.shots).to.deep.equal([own]);
  });

  it('takes what another window of the page kept', async () => {
    const el = await bearer('sheet-windows');
    await press(el, 'Keep this shot');
    await press(el, 'Remember on this device');
    await until(el, () => localStorage.getItem(memoryKey('sheet-windows')));
    const text = (localStorage.getItem(memoryKey('sheet-windows')) ?? '').replace('Shot 1', 'From the other window');
    window.dispatchEvent(new StorageEvent('storage', {key: memoryKey('sheet-windows'), newValue: text}));
    await until(el, () => el.shots[0]?.title === 'From the other window');
    await press(el, 'Undo: shots of another window taken over');
    expect(el.shots[0]?.title).to.equal('Shot 1');
  });

  it('does not touch what it cannot read', async () => {
    localStorage.setItem(memoryKey('sheet-newer'), '{"format":"lampblack-shots","version":7,"shots":[]}');
    const el = await fixture<ShotSheet>(html`<shot-sheet bench="sheet-newer" aperture="f/8"></shot-sheet>`);
    await until(el, () => message(el).includes('later version'));
    await press(el, 'Keep this shot');
    expect(localStorage.getItem(memoryKey('sheet-newer'))).to.contain('"version":7');
  });

  for (const [name, wanted] of [['QuotaExceededError', 'no room left'], ['SecurityError', 'keeps nothing for this page']] as const) {
    it(`says so and keeps working: ${name}`, async () => {
      const el = await bearer('sheet-full');
      const {setItem} = Storage.prototype;
      Storage.prototype.setItem = () => { throw new DOMException('no', name); };
      try {
        await press(el, 'Keep this shot');
        await press(el, 'Remember on this device');
        await until(el, () => message(el).includes(wanted));
      } finally { Storage.prototype.setItem = setItem; }
      expect(message(el)).to.contain('save a file');
      expect(button(el, 'Remember').getAttribute('aria-pressed')).to.equal('false');
      await press(el, 'Keep this shot');
      expect(rows(el)).to.have.length(2);
    });
  }

  it('shows the shots of a blocked storage all the same', async () => {
    // WebKit lets nobody replace the storage itself, so that what it does is replaced.
    const {setItem} = Storage.prototype;
    Storage.prototype.setItem = () => { throw new DOMException('blocked', 'SecurityError'); };
    try {
      const el = await bearer();
      await press(el, 'Keep this shot');
      await press(el, 'Remember on this device');
      await until(el, () => message(el).includes('keeps nothing for this page'));
      expect(rows(el)).to.have.length(1);
    } finally { Storage.prototype.setItem = setItem; }
  });
});

describe('shot-sheet: text and cards', () => {
  it('copies the shot in four forms', async () => {
    const el = await opened(await bearer());
    el.note = '<b>Flag</b> [closer]';
    await el.updateComplete;
    const copied: string[] = [];
    await withClipboard((text) => { copied.push(text); return Promise.resolve(); }, async () => {
      for (const [at, form] of ['Plain text', 'Markdown', 'BBCode', 'HTML'].entries()) {
        await press(el, form);
        await until(el, () => copied.length === at + 1);
      }
    });
    for (const text of copied) expect(text).to.contain('f/8, 0.3 s, ISO 100');
    const made = new DOMParser().parseFromString(copied[3] ?? '', 'text/html');
    expect(made.querySelector('b')).to.equal(null);
    expect(made.body.textContent).to.contain('<b>Flag</b> [closer]');
  });

  it('saves a card as SVG that stands alone, and as PNG', async () => {
    const el = await opened(await bearer());
    el.note = 'a & b < c';
    await el.updateComplete;
    const [svg] = await savedBy(async () => { await press(el, 'Save SVG'); });
    const text = await svg?.blob.text() ?? '';
    const card = new DOMParser().parseFromString(text, 'image/svg+xml');
    expect(card.querySelector('parsererror')).to.equal(null);
    expect(text).not.to.match(/foreignObject|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
    expect(card.documentElement.textContent).to.contain('f/8, 0.3 s, ISO 100');
    expect(card.documentElement.textContent).to.contain('a & b < c');
    const [png] = await savedBy(async () => { await press(el, 'Save PNG'); });
    expect(png?.name).to.equal('shot-1.png');
    const bitmap = await createImageBitmap(png?.blob as Blob);
    expect(bitmap.width).to.equal(1440);
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d') as OffscreenCanvasRenderingContext2D;
    context.drawImage(bitmap, 0, 0);
    const {data} = context.getImageData(0, 0, bitmap.width, bitmap.height);
    const dark = data.filter((code, at) => at % 4 === 0 && code < 80).length;
    expect(dark / (data.length / 4)).to.be.within(0.005, 0.2); // ink on paper
  });

  it('takes characters that XML has no place for off the card', async () => {
    const card = layCard([{sheet: {title: 'a\u0000b\ud800c', settings: '', groups: [], note: ''}}]);
    const made = new DOMParser().parseFromString(await cardSvg(card).text(), 'image/svg+xml');
    expect(made.querySelector('parsererror')).to.equal(null);
    expect(await cardPng(card)).to.be.instanceOf(Blob);
  });

  it('keeps every line on the card inside its column', () => {
    const long = 'key 180x180 at -230,-200,300 aim 0,0,45 power 0; flag 150x180 at 70,200,400 facing 0,1,0';
    const card = layCard([{sheet: {title: 'Lantern bearer '.repeat(12), settings: 'f/8, 0.3 s, ISO 100', note: 'n'.repeat(300),
      groups: [{heading: 'Light', lines: [['Lights', long], ['Backdrop behind the base’s middle', '500 mm'], ['Focus behind the base’s front edge', '36 mm']]}]}}]);
    const svg = cardElement(card);
    document.body.append(svg);
    for (const text of svg.querySelectorAll('text')) {
      const box = text.getBBox();
      expect(box.x + box.width, text.textContent ?? '').to.be.at.most(card.width - 30);
      expect(box.y + box.height).to.be.at.most(card.height);
    }
    svg.remove();
    expect(wrap('', 100, 10)).to.deep.equal([]);
  });

  it('prints the card from a frame of its own', () => {
    const printed: string[] = [];
    const {append} = document.body;
    document.body.append = (...nodes) => {
      append.apply(document.body, nodes);
      const inner = (nodes[0] as HTMLIFrameElement).contentWindow;
      if (inner) inner.print = () => { printed.push(inner.document.body.textContent ?? ''); };
    };
    try {
      expect(printCard(layCard([{sheet: {title: 'Bearer', settings: 'f/8', groups: [], note: ''}}]), 'Shot sheet')).to.equal(true);
    } finally { document.body.append = append; }
    expect(printed).to.deep.equal(['Bearerf/8']);
    document.querySelector('iframe[aria-hidden]')?.remove();
  });
});

describe('shot-sheet: snippets', () => {
  const snippet = (el: ShotSheet, id: string) => root(el).querySelector<HTMLTextAreaElement>(`#snippet-${id}`)?.value ?? '';

  it('makes a tag that shows the same shot again', async () => {
    const el = await opened(await bearer());
    el.note = '"quoted" & <b>';
    await el.updateComplete;
    const made = new DOMParser().parseFromString(snippet(el, 'tag'), 'text/html').body.firstElementChild as HTMLElement;
    expect(made.localName).to.equal('shot-sheet');
    expect(plain(made.textContent)).to.equal('f/8, 0.3 s, ISO 100.');
    made.setAttribute('bench', 'sheet-again');
    const again = document.importNode(made, true) as ShotSheet;
    document.body.append(again);
    customElements.upgrade(again);
    await again.updateComplete;
    expect(values(again)).to.deep.equal(values(el));
    expect(words(again)).to.contain('“wide”');
    again.remove();
  });

  it('offers the elements of the bench, with the values each takes', async () => {
    const page = await fixture<HTMLDivElement>(html`<div><stop-trade-dial bench="sheet-tags"></stop-trade-dial>
      <shot-sheet bench="sheet-tags" aperture="f/8" base-depth="90mm" scripts="https://example.org/js"></shot-sheet></div>`);
    const el = await opened(page.querySelector('shot-sheet') as ShotSheet);
    expect(snippet(el, 'tag')).to.equal('<stop-trade-dial\n  bench="sheet-tags"\n  aperture="f/8">\n  f/8, 1/4 s, ISO 100.\n</stop-trade-dial>');
    expect(snippet(el, 'script')).to.equal('<script type="module" src="https://example.org/js/stop-trade-dial.js"></script>');
    const frame = new DOMParser().parseFromString(snippet(el, 'frame'), 'text/html').querySelector('iframe');
    expect(frame?.getAttribute('src')).to.equal(el.link);
    // as docs/embedding.md asks for
    expect([frame?.getAttribute('sandbox'), frame?.hasAttribute('data-lampblack')]).to.deep.equal(['allow-scripts', true]);
    expect(snippet(el, 'plain')).to.contain('Base depth: 90 mm');
    const tag = root(el).querySelector<HTMLSelectElement>('#tag') as HTMLSelectElement;
    tag.value = 'shot-sheet';
    tag.dispatchEvent(new Event('change'));
    await el.updateComplete;
    expect(snippet(el, 'tag')).to.contain('base-depth="90 mm"');
    const copied: string[] = [];
    await withClipboard((text) => { copied.push(text); return Promise.resolve(); }, async () => {
      root(el).querySelector<HTMLElement>('[data-copy=snippet-script]')?.click();
      await until(el, () => copied.length);
    });
    expect(copied[0]).to.contain('shot-sheet.js');
  });
});
