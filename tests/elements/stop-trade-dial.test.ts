import {expect, fixture, html, waitUntil} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {expectAccessible} from '../audit.js';
import '../../src/elements/stop-trade-dial/define.js';
import type {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';
import {rgb, wcagContrast} from 'culori';
import {EMPTY_STATE} from '../../src/core/shot/state.js';
import {benchNamed} from '../../src/elements/shared/bench.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';

const lesson = () => fixture<StopTradeDial>(html`
  <stop-trade-dial metered-aperture="f/2.8" metered-shutter="1/25" aperture="f/2.8" shutter="1/25">
    f/2.8 at 1/25 s is f/11 at 0.6 s.
  </stop-trade-dial>`);

const words = (el: Element) => el.shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';
const verdict = (el: Element) => el.shadowRoot?.querySelector('.verdict')?.textContent?.replace(/\s+/g, ' ') ?? '';
const hand = (el: Element) => el.shadowRoot?.querySelector<SVGGElement>('[role=slider]') as SVGGElement;

async function typeInto(el: StopTradeDial, id: string, text: string): Promise<void> {
  const input = el.shadowRoot?.getElementById(id) as HTMLInputElement;
  input.focus();
  input.select();
  await sendKeys({type: text});
  await sendKeys({press: 'Tab'});
  await el.updateComplete;
}

async function open(el: StopTradeDial, fold: string): Promise<HTMLElement> {
  const details = el.shadowRoot?.querySelector<HTMLDetailsElement>(`details.${fold}`) as HTMLDetailsElement;
  details.open = true;
  await waitUntil(() => details.children.length > 1, 'the fold has arrived');
  await el.updateComplete;
  return details;
}

describe('stop-trade-dial', () => {
  it('passes the accessibility audit, at rest and with a problem', async () => {
    const el = await lesson();
    await expectAccessible(el);
    el.setAttribute('aperture', 'eleven');
    await el.updateComplete;
    await expectAccessible(el);
  });

  it('works with nothing stated', async () => {
    const el = await fixture<StopTradeDial>(html`<stop-trade-dial></stop-trade-dial>`);
    expect(verdict(el)).to.contain('f/8 at 1/4 s');
  });

  it('computes on the exact click behind a printed number', async () => {
    const el = await lesson();
    expect(el.shutter).to.be.closeTo(2 ** (-14 / 3), 1e-12);
    el.shutter = 1 / 60; // a number from a script stays what it is
    expect(el.shutter).to.equal(1 / 60);
  });

  it('trades f/2.8 at 1/25 s for f/11 at 0.6 s when the aperture is typed, and keeps the text', async () => {
    const el = await lesson();
    let changes: ShotChangeEvent | undefined;
    el.addEventListener('shot-change', (event) => { changes = event; });
    await typeInto(el, 'aperture', 'f11');
    expect(el.shutter).to.be.closeTo(2 ** (-2 / 3), 1e-12);
    expect(verdict(el)).to.equal('f/11 at 0.6 s gives the same light as f/2.8 at 1/25 s.');
    expect((el.shadowRoot?.getElementById('aperture') as HTMLInputElement).value).to.equal('f11');
    expect(changes?.changes.shutter).to.equal(el.shutter);
    // common practice, no source: six tenths read as a sixth is the slip this element exists to prevent
    expect(words(el)).to.contain('0.6 s shows as 0"6 on a camera body. Read as 1/6 s it would be 2 stops darker.');
  });

  it('shows the way there in whole stops', async () => {
    const el = await lesson();
    await typeInto(el, 'aperture', '11');
    await open(el, 'changed');
    const steps = [...el.shadowRoot?.querySelectorAll('.path li') ?? []].map((li) => li.textContent?.replace(/\s/g, ' '));
    expect(steps).to.deep.equal(['f/2.8 at 1/25 s', 'f/4 at 1/13 s', 'f/5.6 at 1/6 s', 'f/8 at 0.3 s', 'f/11 at 0.6 s']);
  });

  it('turns by keys: a click, a stop, to the end and back, and every pair gives the same light', async () => {
    const el = await lesson();
    hand(el).focus();
    await sendKeys({press: 'ArrowRight'});
    await el.updateComplete;
    expect(hand(el).getAttribute('aria-valuetext')?.replace(/\s/g, ' ')).to.equal('f/3.2 at 1/20 s');
    await sendKeys({press: 'PageUp'});
    await el.updateComplete;
    expect(hand(el).getAttribute('aria-valuetext')?.replace(/\s/g, ' ')).to.equal('f/4.5 at 1/10 s');
    await sendKeys({press: 'End'});
    await el.updateComplete;
    expect(el.aperture).to.be.closeTo(2 ** 4.5, 1e-9);
    await sendKeys({press: 'Home'});
    await el.updateComplete;
    expect(el.aperture).to.be.closeTo(2 ** 1.5, 1e-9);
    expect(el.shutter).to.be.closeTo(2 ** (-14 / 3), 1e-9);
  });

  it('turns by pointer, and the light stays', async () => {
    const el = await lesson();
    el.scrollIntoView();
    const grip = (el.shadowRoot?.querySelector('.grip') as SVGElement).getBoundingClientRect();
    const face = (el.shadowRoot?.querySelector('.rim') as SVGElement).getBoundingClientRect();
    const [x, y] = [grip.x + grip.width / 2, grip.y + grip.height / 2];
    await sendMouse({type: 'move', position: [Math.round(x), Math.round(y)]});
    await sendMouse({type: 'down'});
    // a fifth of the way round, clockwise, about the middle of the dial
    const [cx, cy] = [face.x + face.width / 2, face.y + face.height / 2];
    const turn = 60 * Math.PI / 180;
    const to: [number, number] = [
      Math.round(cx + (x - cx) * Math.cos(turn) - (y - cy) * Math.sin(turn)),
      Math.round(cy + (x - cx) * Math.sin(turn) + (y - cy) * Math.cos(turn)),
    ];
    await sendMouse({type: 'move', position: to});
    await sendMouse({type: 'up'});
    await el.updateComplete;
    expect(el.aperture).to.be.closeTo(8, 1e-9); // three whole stops at 20 degrees each
    expect(Math.log2(el.shutter * (2 ** 1.5) ** 2 / (el.aperture ** 2 * 2 ** (-14 / 3)))).to.be.closeTo(0, 1e-9);
  });

  it('pays a meter’s correction, by button and typed', async () => {
    const el = await fixture<StopTradeDial>(html`<stop-trade-dial aperture="f/8" shutter="1/25"></stop-trade-dial>`);
    const [, brighter] = el.shadowRoot?.querySelectorAll<HTMLButtonElement>('.stepper button') ?? [];
    brighter?.click();
    await el.updateComplete;
    expect(el.correction).to.be.closeTo(1 / 3, 1e-12);
    expect(el.shutter).to.be.closeTo(1 / 20.158737, 1e-6); // "1/20" on a third-stop dial
    await typeInto(el, 'correction', '+2');
    expect(verdict(el)).to.equal('f/8 at 1/6 s gives 2 stops more light than f/8 at 1/25 s, as asked.');
  });

  it('takes a start as a tutorial writes it, correction and all', async () => {
    const el = await lesson();
    await typeInto(el, 'start', '1/25 f/8 +2');
    await waitUntil(() => el.correction === 2, 'the start is read');
    expect(el.meteredAperture).to.be.closeTo(8, 1e-9);
    expect(el.correction).to.equal(2);
    expect(el.shutter).to.be.closeTo(2 ** (-8 / 3), 1e-9);
    await typeInto(el, 'start', 'no numbers here');
    await waitUntil(() => words(el).includes('“no numbers here” does not read as a setting'), 'the problem is said');
    expect(el.meteredAperture).to.be.closeTo(8, 1e-9);
  });

  it('shows all of a start of which half was typed, and says what was kept', async () => {
    const el = await fixture<StopTradeDial>(html`
      <stop-trade-dial metered-aperture="f/2.8" metered-shutter="1/25" metered-iso="200" aperture="f/2.8" shutter="1/25" iso="200"></stop-trade-dial>`);
    const start = () => (el.shadowRoot?.getElementById('start') as HTMLInputElement).value;
    const hint = () => el.shadowRoot?.getElementById('start-hint')?.textContent?.replace(/\s/g, ' ');
    await typeInto(el, 'start', 'f 11');
    await waitUntil(() => hint()?.startsWith('Not typed'), 'the start is read');
    expect(hint()).to.equal('Not typed, so kept: 1/25 s and ISO 200.');
    expect(start()).to.equal('f/11, 1/25 s, ISO 200');
    await typeInto(el, 'start', 'f/11 1/4');
    await waitUntil(() => hint() === 'Not typed, so kept: ISO 200.', 'the start is read');
    expect(start()).to.equal('f/11, 1/4 s, ISO 200');
    // All of it: nothing was kept, and the text stays as typed; another start takes its place.
    await typeInto(el, 'start', 'f8 0"3 ISO 100');
    await waitUntil(() => Math.abs(el.meteredAperture - 8) < 1e-9, 'the start is read');
    expect(hint()).to.match(/^as written anywhere/);
    expect(start()).to.equal('f8 0"3 ISO 100');
    el.meteredShutter = 1;
    await el.updateComplete;
    expect(start()).to.equal('f/8, 1 s, ISO 100');
  });

  it('shows again what is set when a field is emptied', async () => {
    const el = await lesson();
    const field = (id: string) => (el.shadowRoot?.getElementById(id) as HTMLInputElement).value;
    await typeInto(el, 'aperture', 'f/11');
    await typeInto(el, 'correction', '+1');
    for (const [id, text] of [['start', 'f/2.8, 1/25 s, ISO 100'], ['aperture', 'f/11'], ['iso', '100'], ['correction', '0']] as const) {
      (el.shadowRoot?.getElementById(id) as HTMLInputElement).focus();
      (el.shadowRoot?.getElementById(id) as HTMLInputElement).select();
      await sendKeys({press: 'Delete'});
      await sendKeys({press: 'Tab'});
      await el.updateComplete;
      expect(field(id), id).to.equal(text);
    }
    expect(words(el)).to.not.contain('does not read');
  });

  it('says times and widths as a reader can check them: about, since 30 s is 32', async () => {
    const el = await fixture<StopTradeDial>(html`
      <stop-trade-dial metered-aperture="f/11" metered-shutter="1/4" aperture="f/18" shutter="0.6 s"></stop-trade-dial>`);
    expect(words(el)).to.contain('The blur of what is out of focus shrinks to about 63% of its width. The shutter stays open about 2.5 times as long.');
  });

  it('keeps the figures that are out of reach readable', async () => {
    const el = await fixture<StopTradeDial>(html`<stop-trade-dial style="color: #222; background: #fff" aperture="f/8" shutter="1/4"></stop-trade-dial>`);
    const figures = [...el.shadowRoot?.querySelectorAll<SVGTextElement>('.unfaced text') ?? []];
    expect(figures.length).to.be.above(2);
    for (const figure of figures) {
      let share = rgb(getComputedStyle(figure).fill)?.alpha ?? 1;
      for (let part: Element | null = figure; part; part = part.parentElement) share *= Number(getComputedStyle(part).opacity);
      const seen = 1 - share * (1 - 0x22 / 255);
      // WCAG 2.2, 1.4.3: text of this size, 4.5 to 1.
      expect(wcagContrast({mode: 'rgb', r: seen, g: seen, b: seen}, 'white'), figure.textContent ?? '').to.be.at.least(4.5);
    }
  });

  it('says where a limit stops the trade, and each way out is a button that applies it', async () => {
    const el = await fixture<StopTradeDial>(html`<stop-trade-dial aperture="f/8" shutter="15 s" shutter-slowest='30"'></stop-trade-dial>`);
    await typeInto(el, 'aperture', 'f/22');
    expect(verdict(el)).to.equal('The shutter ends at 30 s: f/22 at 30 s comes out 2 stops too dark.');
    const way = [...el.shadowRoot?.querySelectorAll<HTMLButtonElement>('.ways button') ?? []].find((button) => button.textContent?.includes('ISO'));
    way?.click();
    await el.updateComplete;
    expect(el.iso).to.be.closeTo(400, 1e-9);
    expect(verdict(el)).to.contain('gives the same light');
  });

  it('says what a way out did and takes it back, as if nobody had said anything', async () => {
    const el = await fixture<StopTradeDial>(html`<stop-trade-dial aperture="f/8" shutter="15 s" shutter-slowest='30"'></stop-trade-dial>`);
    await typeInto(el, 'aperture', 'f/22');
    const way = [...el.shadowRoot?.querySelectorAll<HTMLButtonElement>('.ways button') ?? []].find((button) => button.textContent?.includes('ISO'));
    way?.focus();
    way?.click();
    await el.updateComplete;
    expect(el.shadowRoot?.querySelector('.done')?.textContent?.replace(/\s+/g, ' ')).to.contain('Done: f/22 at 30 s, ISO 400.');
    const undo = el.shadowRoot?.querySelector<HTMLButtonElement>('.undo');
    await waitUntil(() => el.shadowRoot?.activeElement === undo, 'the hand is on what takes it back');
    undo?.click();
    await el.updateComplete;
    await waitUntil(() => el.shadowRoot?.activeElement?.textContent?.includes('ISO'), 'the hand is on the way that was taken back');
    expect(el.iso).to.equal(100);
    expect(verdict(el)).to.contain('f/22 at 30 s comes out 2 stops too dark');
    expect(el.shadowRoot?.querySelector('.undo')).to.equal(null);
    // The text stands in its field again as it was typed.
    expect((el.shadowRoot?.getElementById('aperture') as HTMLInputElement).value).to.equal('f/22');
  });

  it('counts in what close-up loses beyond where it was metered, and says so', async () => {
    // Textbook close-up optics: life size takes 2·log2(1 + 1) = 2 stops; metered by hand, all of it is to be made up for.
    const bench = await fixture<HTMLElement>(html`<div>
      <stop-trade-dial bench="close-up" metered-aperture="f/8" metered-shutter="1/4" aperture="f/8" shutter="1 s"></stop-trade-dial>
    </div>`);
    const el = bench.querySelector('stop-trade-dial') as StopTradeDial;
    expect(verdict(el)).to.equal('f/8 at 1 s is 2 stops brighter than f/8 at 1/4 s.');
    benchNamed('close-up').change({...EMPTY_STATE, values: {...benchNamed('close-up').state.values, sensorWidth: 36, fieldWidth: 36, meteredMagnification: 0}});
    await el.updateComplete;
    expect(verdict(el)).to.equal('f/8 at 1 s gives the same light as f/8 at 1/4 s.');
    expect(words(el)).to.contain('Close-up loses 2 stops of light, which a hand-held meter does not see; that is counted in.');
    await typeInto(el, 'aperture', 'f/16');
    expect(el.shutter).to.be.closeTo(4, 1e-9);
    // A start metered behind the lens was metered from here.
    el.shadowRoot?.querySelector<HTMLButtonElement>('.pair button')?.click();
    await el.updateComplete;
    expect(el.shot.meteredMagnification).to.equal(1);
    expect(words(el)).to.not.contain('lose-up loses');
  });

  it('says when a setting is off, and mends it', async () => {
    const el = await fixture<StopTradeDial>(html`
      <stop-trade-dial metered-aperture="f/2.8" metered-shutter="1/25" aperture="f/11" shutter="1/6"></stop-trade-dial>`);
    expect(verdict(el)).to.equal('f/11 at 1/6 s is 2 stops darker than f/2.8 at 1/25 s.');
    el.shadowRoot?.querySelector<HTMLButtonElement>('.ways button')?.click();
    await el.updateComplete;
    expect(el.shutter).to.be.closeTo(2 ** (-2 / 3), 1e-12);
  });

  it('says which way bare digits were taken and offers the other', async () => {
    const el = await lesson();
    await typeInto(el, 'shutter', '25');
    expect(el.shutter).to.be.closeTo(2 ** (-14 / 3), 1e-12);
    const other = [...el.shadowRoot?.querySelectorAll<HTMLButtonElement>('.ways button') ?? []].find((button) => button.textContent?.includes('25'));
    expect(other?.textContent?.replace(/\s/g, ' ')).to.contain('Take 25 s instead');
  });

  it('keeps the last good setting and the text as typed, and reports the problem', async () => {
    const el = await lesson();
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    await typeInto(el, 'aperture', 'eleven');
    expect(el.aperture).to.be.closeTo(2 ** 1.5, 1e-9);
    expect((el.shadowRoot?.getElementById('aperture') as HTMLInputElement).value).to.equal('eleven');
    expect(words(el)).to.contain('“eleven” does not read as');
    expect(problem?.problem.parameter).to.equal('aperture');
  });

  it('never writes over what is being typed, whatever changes meanwhile', async () => {
    const el = await lesson();
    const input = el.shadowRoot?.getElementById('aperture') as HTMLInputElement;
    input.focus();
    input.select();
    await sendKeys({type: 'f/1'});
    el.iso = 200;
    await el.updateComplete;
    expect(input.value).to.equal('f/1');
    await sendKeys({type: '6'});
    await sendKeys({press: 'Tab'});
    await el.updateComplete;
    expect(el.aperture).to.be.closeTo(16, 1e-9);
    el.aperture = 4; // and given back afterwards
    await el.updateComplete;
    expect(input.value).to.equal('f/4');
  });

  it('refuses what the lens cannot do, beside the field', async () => {
    const el = await lesson();
    await typeInto(el, 'aperture', 'f/1.4');
    expect(words(el)).to.contain('“f/1.4” does not read as a value from f/2.8 to f/22 (see “Limits of lens and body” below)');
    expect(el.aperture).to.be.closeTo(2 ** 1.5, 1e-9);
  });

  it('shows hostile text as text', async () => {
    const el = await lesson();
    el.setAttribute('shutter', '<img src=x onerror=alert(1)>');
    await el.updateComplete;
    expect(el.shadowRoot?.querySelector('img')).to.equal(null);
    expect(words(el)).to.contain('<img src=x');
  });

  it('shares its shot by bench, both ways, and keeps it while it is moved', async () => {
    const page = await fixture<HTMLDivElement>(html`<div>
      <stop-trade-dial bench="dial-test" aperture="f/8" shutter="1/4"></stop-trade-dial>
      <stop-trade-dial bench="dial-test"></stop-trade-dial>
      <p></p>
    </div>`);
    const [one, two] = page.querySelectorAll('stop-trade-dial');
    if (!one || !two) throw new Error('two dials expected');
    expect(two.aperture).to.be.closeTo(8, 1e-9);
    await typeInto(two, 'aperture', 'f/16');
    expect(one.aperture).to.be.closeTo(16, 1e-9);
    expect(one.shutter).to.be.closeTo(1, 1e-9);
    page.querySelector('p')?.append(one);
    await one.updateComplete;
    expect(one.aperture).to.be.closeTo(16, 1e-9);
  });

  it('takes over properties set before it was defined', async () => {
    const tag = 'stop-trade-dial-late';
    const late = document.createElement(tag) as StopTradeDial;
    late.aperture = 16;
    document.body.append(late);
    customElements.define(tag, class extends (customElements.get('stop-trade-dial') as typeof StopTradeDial) {});
    await late.updateComplete;
    expect(late.aperture).to.equal(16);
    late.aperture = 4;
    await late.updateComplete;
    expect(late.shadowRoot?.textContent).to.contain('f/4');
    late.remove();
  });

  it('speaks a changed verdict once, after it has settled', async () => {
    const el = await lesson();
    const spoken = () => el.shadowRoot?.querySelector('.spoken')?.textContent?.trim();
    expect(spoken()).to.equal('');
    hand(el).focus();
    await sendKeys({press: 'ArrowRight'});
    await sendKeys({press: 'ArrowRight'});
    expect(spoken()).to.equal('');
    await new Promise((resolve) => { setTimeout(resolve, 900); });
    expect(spoken()?.replace(/\s/g, ' ')).to.contain('f/3.5 at 1/15 s gives the same light');
  });

  it('shows the fallback’s text only through the light DOM', async () => {
    const el = await lesson();
    expect(el.textContent?.trim()).to.equal('f/2.8 at 1/25 s is f/11 at 0.6 s.');
    expect(el.shadowRoot?.querySelector('slot')).to.equal(null);
  });

  it('speaks the language of the page, with its comma in fields and in the middle, and points on the rings as lenses have them', async () => {
    const page = await fixture<HTMLElement>(html`<div lang="de">
      <stop-trade-dial metered-aperture="f/2.8" metered-shutter="1/25" .aperture=${2 ** 2.5} shutter="1/6"></stop-trade-dial></div>`);
    const el = page.querySelector('stop-trade-dial') as StopTradeDial;
    await waitUntil(() => verdict(el), 'the words arrive');
    expect(verdict(el)).to.equal('f/5,6 bei 1/6 s gibt das gleiche Licht wie f/2,8 bei 1/25 s.');
    expect((el.shadowRoot?.getElementById('aperture') as HTMLInputElement).value).to.equal('f/5,6');
    expect(el.shadowRoot?.querySelector('.now')?.textContent).to.equal('f/5,6');
    expect([...el.shadowRoot?.querySelectorAll('.facing') ?? []].map((text) => text.textContent)).to.deep.equal(['1/6', '5.6']);
    await typeInto(el, 'aperture', 'f/11,5');
    expect(verdict(el)).to.match(/^f\/11,5 bei /);
    for (const [lang, light] of [['fr', 'donne la même lumière que'], ['es', 'da la misma luz que'], ['pl', 'daje tyle samo światła co']]) {
      page.lang = lang as string;
      await waitUntil(() => verdict(el).includes(light as string), `words in ${lang as string}`);
    }
  });

  it('keeps its letters at 12 px where it is narrow, apart from each other and from the window', async () => {
    const page = await fixture<HTMLElement>(html`<div><stop-trade-dial aperture="f/8" shutter="1/4"></stop-trade-dial></div>`);
    const el = page.firstElementChild as StopTradeDial;
    for (const width of [280, 320, 390, 1000]) {
      page.style.inlineSize = `${width}px`;
      for (const aperture of [2.8284, 8, 14.254, 22.627]) {
        el.aperture = aperture;
        await el.updateComplete;
        const letters = [...el.shadowRoot?.querySelectorAll<SVGTextElement>('.dial text') ?? []];
        const scale = (el.shadowRoot?.querySelector<SVGSVGElement>('.dial')?.getScreenCTM()?.a ?? 0);
        for (const letter of letters) expect(parseFloat(getComputedStyle(letter).fontSize) * scale, `${letter.textContent} at ${width}`).to.be.at.least(12);
        const rim = (el.shadowRoot?.querySelector('.rim') as Element).getBoundingClientRect();
        for (const letter of letters) expect(letter.getBoundingClientRect().right).to.be.below(rim.right);
      }
    }
  });

  it('holds letters of 32 px in a page of 320', async () => {
    const page = await fixture<HTMLElement>(html`<div lang="de"><stop-trade-dial metered-aperture="f/2.8" metered-shutter="1/25" aperture="f/11" shutter="0.6 s"></stop-trade-dial></div>`);
    page.style.cssText = 'inline-size: 320px; font-size: 32px';
    const el = page.firstElementChild as StopTradeDial;
    await open(el, 'changed');
    await open(el, 'limits');
    for (const part of el.shadowRoot?.querySelectorAll('.plate *:not(.spoken, svg *)') ?? []) {
      expect(part.getBoundingClientRect().right, part.className.toString()).to.be.at.most(el.getBoundingClientRect().right + 1);
    }
  });
});
