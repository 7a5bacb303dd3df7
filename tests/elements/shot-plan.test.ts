import {expect, fixture, html, waitUntil} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {expectAccessible} from '../audit.js';
import '../../src/elements/shot-plan/define.js';
import type {ShotPlan} from '../../src/elements/shot-plan/class.js';
import {curveOf} from '../../src/elements/shot-plan/curve.js';
import {planJobOf} from '../../src/core/shot/plan-job.js';
import {runInSlices} from '../../src/elements/shot-plan/planning.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';
import {zoneFit} from '../../src/core/optics/fit.js';
import {blurLimit} from '../../src/core/optics/blur.js';
import {shotPlan} from '../../src/core/optics/plan.js';
import type {PlanWay} from '../../src/core/optics/plan-way.js';
import '../../src/elements/sharp-zone-bar/define.js';
import type {SharpZoneBar} from '../../src/elements/sharp-zone-bar/class.js';
import '../../src/elements/stop-trade-dial/define.js';
import type {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';

/** Invented, as all figures here: the Fenwick Painting Guild's lantern bearer, its bill past the front and its cloak past the back. */
const bearer = () => fixture<ShotPlan>(html`
  <shot-plan base-depth="60" overhang-front="12" overhang-front-height="70" overhang-back="9" overhang-back-height="30" figure-height="80"
    focal-lengths="60, 100 mm" metered-aperture="f/8" metered-shutter="1/4" field-width="180" picture-width="1200" picture-height="900">
    In one frame or two: the plan says which.
  </shot-plan>`);

const settled = async <T extends ShotPlan>(el: T): Promise<T> => {
  await el.updateComplete;
  await waitUntil(() => el.shadowRoot?.querySelector('.plate')?.getAttribute('aria-busy') === 'false', 'a plan', {timeout: 15_000});
  // The width is known, and drawn with, a picture or two later.
  for (let picture = 0; picture < 3; picture++) await new Promise(requestAnimationFrame);
  await el.updateComplete;
  return el;
};
const ready = async () => settled(await bearer());
const text = (node: Element | null | undefined) => node?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const verdict = (el: ShotPlan) => text(el.shadowRoot?.querySelector('.verdict'));
const ways = (el: ShotPlan) => [...el.shadowRoot?.querySelectorAll<HTMLElement>('.way') ?? []];
const line = (column: Element | undefined, key: string) => text(column?.querySelector(`.${key} dd`));
const grip = (el: ShotPlan, name: string) => el.shadowRoot?.querySelector<SVGGElement>(`[data-grip=${name}]`) as SVGGElement;
const picked = (el: ShotPlan, at: number) => ways(el)[at]?.querySelector<HTMLButtonElement>('.pick') as HTMLButtonElement;

/** Opens a fold and waits for what is fetched only then. */
async function open(el: ShotPlan, fold: string): Promise<HTMLDetailsElement> {
  const details = el.shadowRoot?.querySelector<HTMLDetailsElement>(`details.${fold}`) as HTMLDetailsElement;
  details.open = true;
  await waitUntil(() => details.children.length > 1, `what is in ${fold}`, {timeout: 5000});
  await el.updateComplete;
  return details;
}
const columns = async (el: ShotPlan) => [...(await open(el, 'side-by-side')).querySelectorAll<HTMLElement>('.column')];

async function drag(el: ShotPlan, name: string, dx: number, dy: number): Promise<void> {
  grip(el, name).scrollIntoView({block: 'center'});
  const knob = grip(el, name).querySelector('.knob')?.getBoundingClientRect() as DOMRect;
  const [x, y] = [Math.round(knob.x + knob.width / 2), Math.round(knob.y + knob.height / 2)];
  await sendMouse({type: 'move', position: [x, y]});
  await sendMouse({type: 'down'});
  await sendMouse({type: 'move', position: [x + dx, y + dy]});
  // A picture later: what moves may come bundled.
  await new Promise(requestAnimationFrame);
  await sendMouse({type: 'up'});
  await el.updateComplete;
}

async function typeInto(el: ShotPlan, id: string, value: string): Promise<void> {
  if (!el.shadowRoot?.getElementById(id)) await open(el, 'figure'); // and what stands in the other folds comes along
  const input = el.shadowRoot?.getElementById(id) as HTMLInputElement;
  const details = input.closest('details');
  if (details) details.open = true;
  input.focus();
  input.select();
  await sendKeys({type: value});
  await sendKeys({press: 'Tab'});
  await el.updateComplete;
}

describe('shot-plan', () => {
  it('passes the accessibility audit: with ways, with a problem, with nothing possible', async () => {
    const el = await ready();
    await expectAccessible(el);
    el.setAttribute('margin', 'some');
    await el.updateComplete;
    await expectAccessible(el);
    const none = await settled(await fixture<ShotPlan>(html`<shot-plan base-depth="90" room="400" most-frames="1" picture-width="2000"></shot-plan>`));
    await expectAccessible(none);
  });

  it('plans with nothing stated', async () => {
    const el = await settled(await fixture<ShotPlan>(html`<shot-plan></shot-plan>`));
    expect(verdict(el)).to.match(/^(?:Sharp|In focus) from tip to tip in /);
    expect(ways(el).length).to.be.greaterThan(0);
    expect(text(el.shadowRoot?.querySelector('.plate'))).to.not.match(/NaN|Infinity|undefined/);
  });

  it('shows the fallback until there is a plan', async () => {
    const el = await fixture<ShotPlan>(html`<shot-plan>f/16 from further back.</shot-plan>`);
    expect(el.shadowRoot?.querySelector('slot')).to.not.equal(null);
    await settled(el);
    expect(el.shadowRoot?.querySelector('slot')).to.equal(null);
  });

  it('says in the verdict what a body shows that counts close-up in', async () => {
    const el = await ready();
    el.setAttribute('aperture-shown', 'working');
    await settled(el);
    const [best] = shotPlan(planJobOf(el.shot)).ways;
    // Working f-number by hand, pupils alike: N·(1 + m); the click it is shown as lies within half a third of a stop.
    const working = (best?.lens.aperture ?? NaN) * (1 + (best?.lens.magnification ?? NaN));
    const shown = Number(/the body shows f\/([\d.]+)/.exec(verdict(el))?.[1]);
    expect(Math.abs(2 * Math.log2(shown / working))).to.be.below(0.25);
  });

  it('says what a single frame would take where only stacks do it, and takes it', async () => {
    const el = await settled(await fixture<ShotPlan>(html`<shot-plan base-depth="80" room="480" picture-width="2000" picture-height="1500"></shot-plan>`));
    expect(shotPlan(planJobOf(el.shot)).ways.map(({kind}) => kind)).to.deep.equal(['stack']);
    await waitUntil(() => el.shadowRoot?.querySelector('.single'), 'what one frame takes', {timeout: 15_000});
    const more = el.shadowRoot?.querySelector('.single') as HTMLDetailsElement;
    more.open = true;
    expect(text(more)).to.match(/What a single frame would take Any one of these/);
    more.querySelector<HTMLButtonElement>('button')?.click();
    await el.updateComplete;
    await settled(el);
    expect(shotPlan(planJobOf(el.shot)).ways.some(({kind}) => kind !== 'stack')).to.equal(true);
    await waitUntil(() => !el.shadowRoot?.querySelector('.single'));
  });

  it('lets the page in between two slices, and stops when it is told to', async () => {
    let [steps, done] = [0, false];
    function* endless(): Generator<undefined, string> { for (;;) { steps += 1; yield; } }
    const stop = runInSlices(endless(), () => { done = true; }, (error) => { throw error; });
    const first = steps; // the first slice has ended by itself
    await new Promise((resolve) => { setTimeout(resolve, 40); });
    expect(steps).to.be.greaterThan(first);
    stop();
    const last = steps;
    await new Promise((resolve) => { setTimeout(resolve, 40); });
    expect([steps, done]).to.deep.equal([last, false]);
  });

  it('names the same numbers in the verdict, in the first way and in the core’s plan', async () => {
    const el = await ready();
    const [best] = shotPlan(planJobOf(el.shot)).ways;
    if (!best) throw new Error('a way was expected');
    const [first] = await columns(el);
    expect(line(first, 'camera').replace(/[^\d]/g, '')).to.equal(best.cameraDistance.toFixed(0));
    expect(line(first, 'contrast')).to.contain(`${(best.worst * 100).toFixed(0)}% left`);
    expect(line(first, 'pixels').replace(/\s/g, '')).to.match(new RegExp(`^${Math.round(best.pixelsAcross)},`));
    expect(text(ways(el)[0]).replace(/\s/g, '')).to.contain(`from${best.cameraDistance.toFixed(0)}mm`);
    expect(verdict(el).replace(/\s/g, '')).to.contain(`from${best.cameraDistance.toFixed(0)}mm`);
  });

  it('sets a way on the bench with one click, and the optics agree that all of it is sharp', async () => {
    const el = await ready();
    const at = (await columns(el)).findIndex((way) => line(way, 'frames') === '1');
    let event: ShotChangeEvent | undefined;
    el.addEventListener('shot-change', (change) => { event = change; });
    picked(el, at).click();
    await el.updateComplete;
    const {shot} = el;
    expect(event?.changes).to.include.keys('aperture', 'shutter', 'focalLength', 'fieldWidth', 'focus', 'crop');
    expect(picked(el, at).getAttribute('aria-pressed')).to.equal('true');
    const kept = {keptWidth: shot.sensorWidth * shot.crop.width, pictureWidth: shot.pictureWidth};
    const {outline} = planJobOf(shot);
    const fit = zoneFit({
      outline, tilt: shot.tilt, focus: shot.focus, limit: blurLimit(shot.blurLimit, kept),
      lens: {focalLength: shot.focalLength, aperture: shot.aperture, magnification: shot.sensorWidth / shot.fieldWidth, pupilRatio: shot.pupilRatio},
    });
    expect(Math.max(fit.outsideFront, fit.outsideBack)).to.be.below(1e-6);
    // the crop has the picture's shape
    expect(shot.crop.width * shot.sensorWidth / (shot.crop.height * shot.sensorHeight)).to.be.closeTo(1200 / 900, 1e-9);
    expect(shot.crop.width * shot.frameWidth).to.be.at.least(1199.99);
  });

  it('does not plan anew, or otherwise, because a way was set', async () => {
    const el = await ready();
    // How far it is depends on where the camera stands.
    const seen = async () => (await columns(el)).map((way) => text(way).replace(/[\d ]+ mm further back than now; /, ''));
    const before = await seen();
    picked(el, 1).click();
    await settled(el);
    expect(await seen()).to.deep.equal(before);
  });

  it('gives distances, times and pixels that add up, counted from where the camera stands', async () => {
    const el = await ready();
    // Thin lens, textbook: sensor mark to focus plane is f·(2 + m + 1/m); 36 mm of sensor take in 180 mm.
    const now = 60 * (2 + 0.2 + 5);
    const [first] = await columns(el);
    const number = (pattern: RegExp) => Number(pattern.exec(line(first, 'price').replace(/(\d)\s(?=\d{3})/g, '$1'))?.[1]);
    expect(now + number(/(\d+) mm further back than now/)).to.equal(Number(line(first, 'camera').replace(/[^\d]/g, '')));
    expect(number(/(\d+) px of width cropped away/) + Number(line(first, 'pixels').split(',')[0]?.replace(/\D/g, ''))).to.equal(6000);
    expect(line(first, 'price').startsWith(`${line(first, 'shutter')};`)).to.equal(true);
    picked(el, 0).click();
    await settled(el);
    expect(text(ways(el)[0])).to.contain('cropped away').and.not.to.contain('further back');
    const alone = await settled(await fixture<ShotPlan>(html`<shot-plan base-depth="60"></shot-plan>`));
    expect(text(ways(alone)[0])).to.contain('further back than the nearest place');
  });

  it('calls sharp what the bar calls sharp, and says in the same numbers what diffraction does', async () => {
    const el = await fixture<ShotPlan>(html`<shot-plan bench="plan-bar" base-depth="60" field-width="180"></shot-plan>`);
    const bar = await fixture<SharpZoneBar>(html`<sharp-zone-bar bench="plan-bar"></sharp-zone-bar>`);
    for (const limit of [1.5, 2.5, 4]) {
      el.setAttribute('blur-limit', String(limit));
      await settled(el);
      for (const at of ways(el).keys()) {
        picked(el, at).click();
        await settled(el);
        await bar.updateComplete;
        const said = text(bar.shadowRoot?.querySelector('.plate'));
        const [, point] = /Diffraction softens all of it(?: a little)?: (a point is [\d.]+ px wide, the limit is [\d.]+ px)\.$/.exec(verdict(el)) ?? [];
        expect(verdict(el).startsWith('Sharp')).to.equal(point === undefined);
        expect(said.includes('diffraction draws')).to.equal(point !== undefined);
        if (point) expect(said).to.contain(point.replace('a point is', 'diffraction draws a point'));
      }
    }
    expect(text(el.shadowRoot?.querySelector('.ways-part .note'))).to.contain('in all of them the finest line keeps at least 30% of its contrast');
  });

  it('lets the bar know that several frames were set, and no more once one is', async () => {
    const page = await fixture(html`<div><sharp-zone-bar bench="plan-frames" base-depth="60" field-width="180"></sharp-zone-bar>
      <shot-plan bench="plan-frames"></shot-plan></div>`);
    const [plan, bar] = [await settled(page.querySelector('shot-plan') as ShotPlan), page.querySelector('sharp-zone-bar') as SharpZoneBar];
    const said = async (at: number) => {
      picked(plan, at).click();
      await settled(plan);
      await bar.updateComplete;
      return text(bar.shadowRoot?.querySelector('.verdict'));
    };
    const kinds = shotPlan(planJobOf(plan.shot)).ways.map(({kind}) => kind);
    const frames = /in (\d+) frames/.exec((await said(kinds.indexOf('stack')), verdict(plan)))?.[1];
    expect(text(bar.shadowRoot?.querySelector('.verdict'))).to.match(new RegExp(`^The plan blends ${frames} frames, which together hold all of it\\.`));
    expect(await said(kinds.indexOf('move-back'))).to.match(/^In focus/);
  });

  it('draws the way that was set, and speaks of it', async () => {
    const el = await ready();
    picked(el, 1).click();
    await el.updateComplete;
    expect(text(el.shadowRoot?.querySelector('.drawing .note'))).to.contain(text(picked(el, 1).querySelector('strong')));
    const distance = /from ([\d ]+ mm) away/.exec(text(picked(el, 1)))?.[1];
    expect(verdict(el)).to.contain(`from ${distance ?? ''} away`);
  });

  it('marks the best click on the curve, where none of the clicks does better', async () => {
    const job = planJobOf((await ready()).shot);
    const [way] = shotPlan(job).ways;
    if (!way) throw new Error('a way was expected');
    const {best, points} = curveOf(way, job);
    expect(points.length).to.equal(job.apertures.length);
    for (const {worst} of points) expect(worst).to.be.at.most(best.worst);
    expect(points.find(({aperture}) => aperture === way.lens.aperture)?.worst).to.be.closeTo(way.worst, 1e-9);
  });

  it('moves every handle by keys and says where it stands', async () => {
    const el = await ready();
    const press = async (name: string, ...keys: string[]) => {
      grip(el, name).focus();
      for (const key of keys) await sendKeys({press: key});
      await el.updateComplete;
    };
    await press('overhang-front', 'ArrowLeft', 'ArrowUp');
    expect([el.shot.overhangFront, el.shot.overhangFrontHeight]).to.deep.equal([13, 71]);
    expect(grip(el, 'overhang-front').getAttribute('aria-valuetext')?.replace(/\s/g, ' ')).to.equal('13 mm past the front edge, 71 mm up');
    await press('overhang-back', 'PageUp', 'ArrowDown');
    expect([el.shot.overhangBack, el.shot.overhangBackHeight]).to.deep.equal([19, 29]);
    await press('top', 'ArrowUp', 'PageDown');
    expect(el.figureHeight).to.equal(71);
    await press('base-back', 'ArrowRight');
    expect([el.baseDepth, el.overhangBack]).to.deep.equal([61, 18]);
    await press('base-front', 'ArrowRight');
    expect([el.baseDepth, el.overhangFront]).to.deep.equal([62, 12]);
    await press('tilt', 'ArrowUp', 'PageUp');
    expect(el.tilt).to.equal(6);
    await press('overhang-front', 'Home');
    expect([el.shot.overhangFront, el.shot.overhangFrontHeight]).to.deep.equal([0, 0]);
  });

  it('drags a tip along and up, keeps the last good plan meanwhile, and plans for the new figure', async () => {
    const el = await ready();
    const before = verdict(el);
    await drag(el, 'overhang-back', 20, -15);
    expect(el.overhangBack).to.be.greaterThan(9);
    expect(el.shot.overhangBackHeight).to.be.greaterThan(30);
    expect(verdict(el)).to.equal(before);
    await settled(el);
    expect(verdict(el)).to.not.equal(before);
  });

  it('drags the front edge and leaves the tip where it is in the room', async () => {
    const el = await ready();
    await drag(el, 'base-front', 15, 0);
    expect(el.baseDepth).to.be.below(60);
    expect(el.overhangFront - 12).to.be.closeTo(60 - el.baseDepth, 1e-9);
  });

  it('tilts the camera by dragging it up', async () => {
    const el = await ready();
    await drag(el, 'tilt', 0, -60);
    expect(el.tilt).to.be.greaterThan(2);
  });

  it('gives every handle at least 40 px, on a narrow page too', async () => {
    const box = await fixture<HTMLDivElement>(html`<div><shot-plan></shot-plan></div>`);
    box.setAttribute('style', 'width: 280px');
    const el = await settled(box.firstElementChild as ShotPlan);
    await waitUntil(() => el.shadowRoot?.querySelector('svg')?.getBoundingClientRect().width === 280);
    for (const hit of el.shadowRoot?.querySelectorAll('.hit') ?? []) {
      const {width, height} = hit.getBoundingClientRect();
      expect(Math.min(width, height)).to.be.at.least(40);
    }
    expect(el.scrollWidth).to.be.at.most(280);
  });

  it('says which wish to give up first, and a click gives it up', async () => {
    const el = await settled(await fixture<ShotPlan>(html`<shot-plan base-depth="60" room="200" focal-lengths="60"></shot-plan>`));
    expect(verdict(el)).to.match(/^Not all of these wishes can be met at once\. Least to give up: “Make room for /);
    const button = el.shadowRoot?.querySelector<HTMLButtonElement>('.ways button');
    button?.click();
    await settled(el);
    expect(el.room).to.be.greaterThan(200);
    expect(verdict(el)).to.match(/^In focus from tip to tip/);
  });

  it('keeps the last good value, shows the text as typed, and reports the problem', async () => {
    const el = await ready();
    const before = verdict(el);
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    await typeInto(el, 'focal-lengths', 'the long one');
    expect(el.focalLengths).to.deep.equal([60, 100]);
    expect(text(el.shadowRoot?.querySelector('.fields'))).to.contain('“the long one” does not read as focal lengths such as 50, 60, 100 mm');
    expect(problem?.problem.parameter).to.equal('focal-lengths');
    expect(verdict(el)).to.equal(before);
  });

  it('keeps its plan while limits leave nothing to set, and says why', async () => {
    const el = await ready();
    const before = verdict(el);
    await typeInto(el, 'aperture-smallest', 'f/2');
    await settled(el);
    expect(text(el.shadowRoot?.querySelector('.plate'))).to.contain('No plan: between the limits of the aperture there is nothing to set.');
    expect(verdict(el)).to.equal(before);
    await typeInto(el, 'aperture-smallest', 'f/22');
    await settled(el);
    expect(text(el.shadowRoot?.querySelector('.plate'))).to.not.contain('No plan');
  });

  it('writes what a body shows that counts close-up in, and reads the metered one that way', async () => {
    // Textbook close-up optics: at half life size f/8 works as f/12.
    const el = await settled(await fixture<ShotPlan>(html`
      <shot-plan metered-magnification="0.5" metered-aperture="8" aperture-shown="working"></shot-plan>`));
    expect((el.shadowRoot?.getElementById('metered-aperture') as HTMLInputElement).value).to.equal('f/12');
    await typeInto(el, 'metered-aperture', 'f/24');
    expect(el.shot.meteredAperture).to.be.closeTo(16, 1e-9);
    expect((el.shadowRoot?.getElementById('metered-aperture') as HTMLInputElement).value).to.equal('f/24');
    await settled(el);
    expect(line((await columns(el))[0], 'aperture')).to.match(/^f\/\S+, body shows f\/\d/);
  });

  it('counts in inches and turns the camera upright', async () => {
    const el = await settled(await fixture<ShotPlan>(html`<shot-plan unit="in" base-depth="2 in"></shot-plan>`));
    expect(line((await columns(el))[0], 'field')).to.match(/in$/);
    await open(el, 'camera');
    const held = el.shadowRoot?.getElementById('held') as HTMLSelectElement;
    held.value = 'tall';
    held.dispatchEvent(new Event('change'));
    expect([el.shot.sensorWidth, el.shot.sensorHeight, el.shot.frameWidth]).to.deep.equal([24, 36, 4000]);
    await el.updateComplete;
    const format = el.shadowRoot?.getElementById('sensor-format') as HTMLSelectElement;
    format.value = 'four-thirds';
    format.dispatchEvent(new Event('change'));
    expect([el.shot.sensorWidth, el.shot.sensorHeight]).to.deep.equal([13, 17.3]);
    await settled(el);
  });

  it('shares its shot by bench, both ways', async () => {
    const page = await fixture<HTMLDivElement>(html`<div>
      <shot-plan bench="plan-test" base-depth="40"></shot-plan><shot-plan bench="plan-test"></shot-plan><p></p></div>`);
    const [one, two] = page.querySelectorAll('shot-plan');
    if (!one || !two) throw new Error('two plans expected');
    await settled(one);
    await settled(two);
    expect(two.baseDepth).to.equal(40);
    picked(two, 0).click();
    await settled(one);
    expect(one.aperture).to.equal(two.aperture);
    expect(picked(one, 0).getAttribute('aria-pressed')).to.equal('true');
    page.querySelector('p')?.append(one);
    await settled(one);
    expect(one.baseDepth).to.equal(40);
    expect(ways(one).length).to.be.greaterThan(0);
  });

  it('takes over properties set before it was defined', async () => {
    const tag = 'shot-plan-late';
    const late = document.createElement(tag) as ShotPlan;
    late.focalLengths = [85];
    document.body.append(late);
    customElements.define(tag, class extends (customElements.get('shot-plan') as typeof ShotPlan) {});
    await settled(late);
    expect(late.focalLengths).to.deep.equal([85]);
    late.remove();
  });

  it('shows hostile text as text', async () => {
    const el = await ready();
    el.setAttribute('room', '<img src=x onerror=alert(1)>');
    await el.updateComplete;
    expect(el.shadowRoot?.querySelector('img')).to.equal(null);
    expect(text(el.shadowRoot?.querySelector('.fields'))).to.contain('<img src=x');
  });

  it('reads a changed verdict out once it has settled, and nothing at first', async () => {
    const el = await ready();
    const spoken = () => text(el.shadowRoot?.querySelector('.spoken'));
    await new Promise((resolve) => { setTimeout(resolve, 900); });
    expect(spoken()).to.equal('');
    el.tilt = 30;
    await settled(el);
    await waitUntil(() => spoken() !== '', 'something said', {timeout: 3000});
    expect(spoken()).to.equal(verdict(el));
  });

  it('says what a way did and takes it back as if it had never been', async () => {
    const el = await ready();
    const [before, said] = [{...el.shot}, verdict(el)];
    picked(el, 1).focus();
    picked(el, 1).click();
    await el.updateComplete;
    const done = () => el.shadowRoot?.querySelector('.done');
    expect(text(done())).to.match(/^Done: f\/\d+ at .* away\. ?Undo$/);
    expect(picked(el, 1).getAttribute('aria-pressed')).to.equal('true');
    el.shadowRoot?.querySelector<HTMLButtonElement>('.undo')?.focus();
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect({...el.shot}).to.deep.equal(before);
    expect(done()).to.equal(null);
    expect(verdict(el)).to.equal(said);
    expect(el.shadowRoot?.activeElement).to.equal(picked(el, 1));
    // What was metered follows the setting again, since nobody has said it.
    expect(picked(el, 1).getAttribute('aria-pressed')).to.equal('false');
  });

  it('puts the hand on what takes a wish back, and forgets it once something else was changed', async () => {
    const el = await settled(await fixture<ShotPlan>(html`<shot-plan base-depth="60" room="200" focal-lengths="60"></shot-plan>`));
    el.shadowRoot?.querySelector<HTMLButtonElement>('.ways button')?.click();
    await waitUntil(() => el.shadowRoot?.activeElement?.classList.contains('undo'), 'the hand is there');
    expect(text(el.shadowRoot?.querySelector('.done'))).to.match(/^Done: Make room for /);
    el.room = 2000;
    await settled(el);
    expect(el.shadowRoot?.querySelector('.done')).to.equal(null);
  });

  it('leaves a dial on the same bench even, close-up counted in', async () => {
    const page = await fixture(html`<div>
      <stop-trade-dial bench="plan-dial" metered-aperture="f/8" metered-shutter="1/4"></stop-trade-dial>
      <shot-plan bench="plan-dial" base-depth="60" field-width="100" metered-magnification="0.36" room="1200"></shot-plan></div>`);
    const plan = await settled(page.querySelector('shot-plan') as ShotPlan);
    const dial = page.querySelector('stop-trade-dial') as StopTradeDial;
    for (const at of ways(plan).keys()) {
      picked(plan, at).click();
      await settled(plan);
      await dial.updateComplete;
      expect(text(dial.shadowRoot?.querySelector('.verdict')), text(picked(plan, at))).to.contain('gives the same light');
      expect(text(dial.shadowRoot?.querySelector('.reason'))).to.match(/^From here close-up loses .* light than where it was metered; that is counted in\./);
    }
  });

  it('says what a stack’s time is made of', async () => {
    const el = await ready();
    const stack = shotPlan(planJobOf(el.shot)).ways.findIndex(({kind}) => kind === 'stack');
    const {frames, shutter, price} = shotPlan(planJobOf(el.shot)).ways[stack] as PlanWay;
    const [, total, count, each, settle] = /Price: ([\d.]+) s \((\d+) × ([\d.]+) s, and ([\d.]+) s of moving/.exec(text(ways(el)[stack])) ?? [];
    expect(Number(count)).to.equal(frames.length);
    expect(Number(each)).to.be.closeTo(shutter.value, shutter.value * 0.06); // a dial's printed numbers are that rough
    expect(Number(count) * Number(each) + Number(settle)).to.be.closeTo(Number(total), 0.6);
    expect(Number(total)).to.be.closeTo(price.seconds, 0.5);
  });

  it('speaks the language of the page, and reads and writes its commas', async () => {
    const page = await fixture<HTMLElement>(html`<div lang="de"><shot-plan base-depth="60" metered-aperture="f/8" metered-shutter="1/4"></shot-plan></div>`);
    const el = await settled(page.querySelector('shot-plan') as ShotPlan);
    expect(verdict(el)).to.match(/^Im Fokus von Spitze zu Spitze in .*Die Beugung macht alles weich: Ein Punkt wird 3 px breit, die Grenze ist 1,5 px\.$/);
    const [first] = await columns(el);
    expect(line(first, 'contrast')).to.match(/^\p{L}+, noch \d+ %$/u);
    await typeInto(el, 'blur-limit', '1,25');
    expect(el.shot.blurLimit).to.equal(1.25);
    for (const [lang, opening] of [['fr', 'Au point d’un bout à l’autre'], ['es', 'Enfocado de punta a punta'], ['pl', 'W zakresie ostrości od końca do końca']]) {
      page.lang = lang as string;
      await waitUntil(() => verdict(el).startsWith(opening as string), `words in ${lang as string}`);
      expect(text(el.shadowRoot?.querySelector('.plate'))).to.not.match(/NaN|Infinity|undefined|\[object/);
    }
  });

  it('keeps its letters at 12 px, and holds letters of 32 px in a page of 320', async () => {
    const page = await fixture<HTMLElement>(html`<div lang="de"><shot-plan focal-lengths="60, 100 mm" overhang-front="18" overhang-front-height="20" tilt="7"></shot-plan></div>`);
    page.style.inlineSize = '280px';
    const el = await settled(page.querySelector('shot-plan') as ShotPlan);
    for (const fold of ['side-by-side', 'every-aperture', 'rates-part', 'figure', 'camera', 'sharp']) await open(el, fold);
    await settled(el);
    for (const letter of el.shadowRoot?.querySelectorAll<SVGTextElement>('svg text') ?? []) {
      expect(parseFloat(getComputedStyle(letter).fontSize) * (letter.ownerSVGElement?.getScreenCTM()?.a ?? 0), letter.textContent ?? '').to.be.at.least(11.99);
    }
    page.style.cssText = 'inline-size: 320px; font-size: 32px';
    await settled(el);
    for (const part of el.shadowRoot?.querySelectorAll('.plate *:not(.spoken, svg *)') ?? []) {
      expect(part.getBoundingClientRect().right, `${part.localName} ${part.className} ${text(part).slice(0, 40)}`).to.be.at.most(el.getBoundingClientRect().right + 1);
    }
  });
});
