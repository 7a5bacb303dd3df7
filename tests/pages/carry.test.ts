import {expect, waitUntil} from '@open-wc/testing';
import {FIGURE, verdictOf} from './host-page.js';
import type {ShotRecord} from '../../src/core/shot/record.js';
import type {ShotSheet} from '../../src/elements/shot-sheet/class.js';

type Decode = (data: Uint8ClampedArray, width: number, height: number) => {readonly data: string} | null;

const PAGE = '/tests/pages/carry.html';
const TAGS = ['shot-sheet', 'stop-trade-dial', 'sharp-zone-bar', 'shot-plan', 'backdrop-shade'] as const;
/** Text that nobody can use stays what was typed. A link writes what could be used in its own way, to the same value. */
const REFUSED = {blurLimit: 'wide', room: 'a bit'} as const;

const frames: HTMLIFrameElement[] = [];
const within = (el: Element): ShadowRoot => el.shadowRoot as ShadowRoot;
const plain = (text: string | null | undefined) => text?.replace(/\s+/g, ' ').trim() ?? '';

/** Opens an address in a frame and puts the elements there, as built. Those of a bench of the same name. */
async function open(address: string, sheetAttributes: string, others = ''): Promise<Document> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'width:700px;height:900px;border:0';
  frame.src = address;
  const loaded = new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  frames.push(frame);
  document.body.append(frame);
  await loaded;
  const page = frame.contentDocument as Document;
  page.body.innerHTML = TAGS.map((tag) => `<${tag} bench="bearer" ${tag === 'shot-sheet' ? sheetAttributes : others}></${tag}>`).join('');
  const script = page.createElement('script');
  Object.assign(script, {type: 'module', src: '/dist/standalone/all.js'});
  page.body.append(script);
  await waitUntil(() => TAGS.every((tag) => verdictOf(one(page, tag))), 'every element speaks', {timeout: 15_000});
  return page;
}

function one<T extends HTMLElement>(page: Document, tag: string): T {
  const found = page.querySelector<T>(tag);
  if (!found) throw new Error(`no ${tag}`);
  return found;
}

function press(el: Element, text: string): void {
  const button = [...within(el).querySelectorAll('button')].find((each) => plain(each.textContent).startsWith(text));
  if (!button) throw new Error(`no button “${text}”`);
  button.click();
}

/** Every value and every verdict. The sheet's verdict tells of kept shots too, and those stay where they were kept. */
function standing(page: Document) {
  return TAGS.map((tag) => {
    const el = one(page, tag);
    const {shotKeys} = el.constructor as unknown as {readonly shotKeys: readonly string[]};
    const values = Object.fromEntries(shotKeys.map((key) => [key, (el as unknown as Record<string, unknown>)[key]]));
    return {tag, values: JSON.stringify(values), verdict: tag === 'shot-sheet' ? verdictOf(el).split('. ')[0] : verdictOf(el)};
  });
}

async function reappears(on: Document, of: Document, texts: ShotRecord['texts'] = REFUSED): Promise<void> {
  const wanted = standing(of);
  await waitUntil(() => JSON.stringify(standing(on)) === JSON.stringify(wanted), 'the shot reappears', {timeout: 8000}).catch(() => {
    expect(standing(on)).to.deep.equal(wanted);
  });
  const sheet = one<ShotSheet>(on, 'shot-sheet');
  expect(sheet.record.values).to.deep.equal(one<ShotSheet>(of, 'shot-sheet').record.values);
  expect(sheet.record.texts).to.deep.equal(texts);
  for (const text of Object.values(REFUSED)) expect(plain(within(sheet).textContent)).to.contain(`“${text}”`);
}

async function opened(sheet: ShotSheet): Promise<void> {
  for (const details of within(sheet).querySelectorAll('details')) details.open = true;
  await waitUntil(() => within(sheet).querySelector('.show-qr'), 'what carries a shot is there', {timeout: 8000});
}

/** Invented: the guild's lantern bearer. */
const setUp = () => open(PAGE, `page="${PAGE}" aperture="f/11" shutter="0.6 s" iso="200" sensor-width="23.5 mm" ${FIGURE}
  blur-limit="wide" room="a bit" backdrop-distance="333.3 mm" note="Flag closer — 灯 &amp; 100 %"`);
const FRESH = 'focus="12 mm"';

describe('a shot set up on one page, opened on another', () => {
  let desk: Document;
  let sheet: ShotSheet;

  before(async () => {
    desk = await setUp();
    sheet = one<ShotSheet>(desk, 'shot-sheet');
    await opened(sheet);
  });
  after(() => { for (const frame of frames.splice(0)) frame.remove(); });

  it('reappears by its link', async () => {
    await reappears(await open(sheet.link, 'follow-link'), desk);
    // What a page brings along itself gives way to the link.
    const own = await open(sheet.link, 'follow-link', FRESH);
    expect(one<ShotSheet>(own, 'shot-sheet').record.values.focus).to.equal(36);
  });

  it('reappears by the QR code on the screen', async () => {
    // jsQR is an independent decoder; it comes as a plain script.
    await import(new URL('../../node_modules/jsqr/dist/jsQR.js', import.meta.url).href);
    press(sheet, 'Show QR code');
    await waitUntil(() => within(sheet).querySelector('.qr path'), 'a code', {timeout: 8000});
    const code = within(sheet).querySelector('.qr')?.cloneNode(true) as SVGSVGElement;
    const size = 4 * Number(code.getAttribute('viewBox')?.split(' ')[2]);
    for (const [name, value] of [['xmlns', 'http://www.w3.org/2000/svg'], ['width', size], ['height', size]] as const) code.setAttribute(name, `${value}`);
    code.querySelector('rect')?.setAttribute('fill', '#fff');
    const image = new Image();
    image.src = URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(code)], {type: 'image/svg+xml'}));
    await image.decode();
    const context = new OffscreenCanvas(size, size).getContext('2d') as OffscreenCanvasRenderingContext2D;
    context.drawImage(image, 0, 0);
    const read = (globalThis as unknown as {jsQR: Decode}).jsQR(context.getImageData(0, 0, size, size).data, size, size)?.data;
    await reappears(await open(read ?? 'no code was read', 'follow-link'), desk);
  });

  it('reappears from the JSON file', async () => {
    const {writeDocument} = await import('../../src/core/shot/document.js');
    press(sheet, 'Keep this shot');
    await waitUntil(() => sheet.shots.length === 1, 'the shot is kept');
    const table = await open(PAGE, FRESH);
    const other = one<ShotSheet>(table, 'shot-sheet');
    await opened(other);
    const area = within(other).querySelector<HTMLTextAreaElement>('#pasted') as HTMLTextAreaElement;
    area.value = writeDocument(sheet.shots);
    area.dispatchEvent(new Event('input'));
    await other.updateComplete;
    press(other, 'Add these shots');
    await waitUntil(() => other.shots.length === 1, 'the shot is added');
    expect(other.shots).to.deep.equal(JSON.parse(JSON.stringify(sheet.shots)) as ShotRecord[]);
    press(other, 'Back to these settings');
    await reappears(table, desk, sheet.record.texts);
  });
});
