import {expect, fixture, html, oneEvent, waitUntil} from '@open-wc/testing';
import {sendKeys, sendMouse} from '@web/test-runner-commands';
import {expectAccessible} from '../audit.js';
import '../../src/elements/settings-trail/define.js';
import '../../src/elements/stop-trade-dial/define.js';
import type {SettingsTrail} from '../../src/elements/settings-trail/class.js';
import type {TrailChangeEvent} from '../../src/elements/settings-trail/events.js';
import type {ShotChangeEvent, ShotProblemEvent} from '../../src/elements/shared/events.js';

/** Invented; the third time was noted from a body that showed 0"6. */
const lesson = () => fixture<SettingsTrail>(html`
  <settings-trail>
    <ol><li>f/2.8, 1/25 s</li><li>f/5.6, 1/6 s, same light</li><li>f/11, 1/6</li></ol>
  </settings-trail>`);

const PROSE = 'We started at f/2.8 and 1/25 of a second, then went to f/5.6, 1/6 s, and finally f/11 at 1/6.';

const root = (el: Element) => el.shadowRoot as ShadowRoot;
const plain = (text: string | null | undefined) => text?.replace(/\s+/g, ' ').trim() ?? '';
const words = (el: Element) => plain(root(el).textContent);
const verdict = (el: Element) => plain(root(el).querySelector('.verdict')?.textContent);
const ways = (el: Element) => [...root(el).querySelectorAll<HTMLButtonElement>('.ways button')];
const taken = (el: Element) => [...root(el).querySelectorAll('.taken')].map((step) => plain(step.textContent));
const outcomes = (el: Element) => [...root(el).querySelectorAll('.outcome')].map((link) => plain(link.textContent));

async function paste(el: SettingsTrail, text: string): Promise<void> {
  (root(el).querySelector('details') as HTMLDetailsElement).open = true;
  const field = root(el).querySelector<HTMLTextAreaElement>('#lesson') as HTMLTextAreaElement;
  field.focus();
  field.select();
  await sendKeys({type: text});
  await sendKeys({press: 'Tab'});
  await sendKeys({press: 'Enter'});
  await el.updateComplete;
}

describe('settings-trail', () => {
  it('passes the accessibility audit: with a slip, mended, with a problem, empty', async () => {
    const el = await lesson();
    await expectAccessible(el);
    ways(el)[0]?.click();
    await el.updateComplete;
    await expectAccessible(el);
    el.setAttribute('steps', 'nothing that can be set');
    await el.updateComplete;
    await expectAccessible(el);
    await expectAccessible(await fixture(html`<settings-trail></settings-trail>`));
  });

  it('explains the first step that fails first, and gives the focus back to the way that is taken back', async () => {
    // Invented.
    const el = await fixture<SettingsTrail>(html`<settings-trail
      steps='Start at f/11, 1/4 s ISO 100. Then close to f/16 at 1/2. Open up to f/5.6 at 1/15, one stop darker. Then 0"6 at f 11.'></settings-trail>`);
    expect(verdict(el)).to.equal('2 steps of 4 do not balance. Step 3 does not balance: f/5.6 at 1/15 s is as bright as step 2; '
      + '1 stop darker was meant. It would balance with 1/30.');
    expect(ways(el).map((way) => plain(way.textContent))).to.deep.equal(['Step 3: 1/30 for 1/15 brings the light that was meant, 1 stop darker']);
    // Two slips, each with a way of its own; the second one is pressed, by keys.
    el.steps = 'f/2.8 1/25; f/11 1/6; f/5.6 1/6; f/13 1/8';
    await el.updateComplete;
    const [, second] = ways(el);
    const text = second?.textContent;
    second?.focus();
    await sendKeys({press: 'Enter'});
    await waitUntil(() => root(el).activeElement?.closest('.ways'), 'the next way has the focus');
    root(el).querySelector<HTMLElement>('.undo-mend')?.focus();
    await sendKeys({press: 'Enter'});
    await waitUntil(() => root(el).activeElement?.textContent === text, 'the way that was pressed has the focus');
  });

  it('invites to write where there is nothing, with the field open', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail></settings-trail>`);
    expect(verdict(el)).to.contain('Write or paste settings');
    expect(root(el).querySelector('details')?.open).to.equal(true);
    expect(el.trail.steps).to.deep.equal([]);
  });

  it('reads the plain list between its tags, names the slip and its mend', async () => {
    const el = await lesson();
    expect(taken(el)).to.deep.equal(['f/2.8 at 1/25 s', 'f/5.6 at 1/6 s', 'f/11 at 1/6 s']);
    // common practice, no source: 0"6 read as 1/6 is two stops
    expect(verdict(el)).to.equal('Step 3 does not balance: f/11 at 1/6 s is 2 stops darker than step 2. 0"6 was probably meant, not 1/6: it would balance.');
    expect(outcomes(el)).to.deep.equal(['The same light, as meant.', '2 stops darker than step 2; the same light was meant.']);
    expect(root(el).querySelector('.slip')?.textContent).to.equal('1/6');
    expect([...root(el).querySelectorAll('.between-rail')].map((rail) => rail.textContent)).to.deep.equal(['=', '≠']);
  });

  it('mends by keyboard, keeps what was written struck through, and goes back', async () => {
    const el = await lesson();
    ways(el)[0]?.focus();
    const [event] = await Promise.all([oneEvent(el, 'trail-change') as Promise<TrailChangeEvent>, sendKeys({press: 'Enter'})]);
    await el.updateComplete;
    expect(verdict(el)).to.equal('All 3 steps give the same light.');
    expect(event.trail.steps[2]?.exposure?.shutter).to.be.closeTo(2 ** (-2 / 3), 1e-12);
    expect(root(el).querySelector('del')?.textContent).to.equal('1/6');
    expect(root(el).querySelector('ins')?.textContent).to.equal('0"6');
    await el.updateComplete;
    expect((root(el).activeElement as HTMLElement).classList.contains('undo-mend')).to.equal(true); // the pressed button is gone
    expect(plain(root(el).querySelector('.done')?.textContent)).to.equal('Done: step 3 now says 0"6 instead of 1/6. Undo');
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect(verdict(el)).to.contain('Step 3 does not balance');
    expect(root(el).querySelector('del')).to.equal(null);
    expect(el.querySelectorAll('li')[2]?.textContent).to.equal('f/11, 1/6'); // the page's own list is not touched
  });

  it('mends by pointer', async () => {
    const el = await lesson();
    el.scrollIntoView();
    const box = ways(el)[0]?.getBoundingClientRect() as DOMRect;
    await sendMouse({type: 'click', position: [Math.round(box.x + box.width / 2), Math.round(box.y + box.height / 2)]});
    await el.updateComplete;
    expect(verdict(el)).to.equal('All 3 steps give the same light.');
  });

  it('finds the settings of a pasted lesson, names the slip, and mends it in the text', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail></settings-trail>`);
    await paste(el, PROSE);
    expect(taken(el)).to.deep.equal(['f/2.8 at 1/25 s', 'f/5.6 at 1/6 s', 'f/11 at 1/6 s']);
    expect(verdict(el)).to.contain('0"6 was probably meant, not 1/6');
    ways(el)[0]?.focus();
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect(root(el).querySelector<HTMLTextAreaElement>('#lesson')?.value).to.equal(PROSE.replace('at 1/6.', 'at 0"6.'));
    expect(verdict(el)).to.equal('All 3 steps give the same light.');
  });

  it('names a slip in the middle once', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail .steps=${['f/2.8 1/25', 'f/5.6 0"6', 'f/11 0"6']}></settings-trail>`);
    expect(verdict(el)).to.equal('2 steps of 3 do not balance. Step 2 does not balance: f/5.6 at 0.6 s is 2 stops brighter than step 1. '
      + '1/6 was probably meant in step 2, not 0"6: then all balances.');
    expect(ways(el).map((way) => plain(way.querySelector('strong')?.textContent))).to.deep.equal(['Step 2: 1/6 for 0"6']);
  });

  it('gives the time that would balance where no reading does', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail .steps=${['f/8 1/60 s', 'f/11']}></settings-trail>`);
    expect(verdict(el)).to.equal('Step 2 does not balance: f/11 at 1/60 s is 1 stop darker than step 1. It would balance with 1/30 s.');
    expect(words(el)).to.contain('Time as in the step before.');
    ways(el)[0]?.click();
    await el.updateComplete;
    expect(verdict(el)).to.equal('Both steps give the same light.');
    expect(root(el).querySelector('ins')?.textContent).to.equal('1/30 s');
  });

  it('holds each step to what was said of it', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail steps="1/25 f/8 +2
f/8 1/6
f/11, one stop darker"></settings-trail>`);
    expect(verdict(el)).to.equal('All 3 steps do what was meant.');
    expect(outcomes(el)).to.deep.equal(['2 stops brighter, as step 1 asked.', '1 stop darker, as meant.']);
  });

  it('judges nothing where nothing is expected and nothing said', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail expect="nothing" steps="f/8 1/60; f/11 1/60"></settings-trail>`);
    expect(verdict(el)).to.contain('Nothing says what was meant');
    const choice = root(el).querySelector<HTMLSelectElement>('#expect') as HTMLSelectElement;
    choice.value = 'same-light';
    choice.dispatchEvent(new Event('change'));
    await el.updateComplete;
    expect(verdict(el)).to.contain('Step 2 does not balance');
    expect(el.expect).to.equal('same-light');
  });

  it('counts half a click of the dial as nothing', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail steps="f/8 1/60; f/8 1/50"></settings-trail>`);
    expect(words(el)).to.contain('Up to a sixth of a stop counts as nothing');
    expect(verdict(el)).to.contain('1/3 stop brighter');
    el.setAttribute('clicks-per-stop', 'full');
    await el.updateComplete;
    expect(verdict(el)).to.contain('Both steps');
    expect(words(el)).to.contain('Up to half a stop');
  });

  it('points at the step and the word that cannot be used', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail .steps=${['f/8', 'turn the figure', 'f/8 1/6o', 'f/8 1/60', 'f/8 1/60']}></settings-trail>`);
    const steps = [...root(el).querySelectorAll('.step')].map((step) => plain(step.querySelector('.problem')?.textContent));
    expect(steps[0]).to.equal('Not said up to here: time. So nothing can be compared.');
    expect(steps[1]).to.contain('No setting can be read here');
    expect(steps[2]).to.contain('“1/6o” is not in use');
    expect(steps[3]).to.equal('');
    expect(root(el).querySelector('.unread')?.textContent).to.equal('1/6o');
    expect(verdict(el)).to.contain('Steps 1, 2 and 3 cannot be judged.');
  });

  it('keeps the last good list, shows the text as typed, and reports the problem', async () => {
    const el = await lesson();
    let problem: ShotProblemEvent | undefined;
    el.addEventListener('shot-problem', (event) => { problem = event; });
    el.setAttribute('steps', 'nothing that can be set');
    await el.updateComplete;
    expect(taken(el)).to.have.length(3);
    expect(problem?.problem.parameter).to.equal('steps');
    expect(root(el).querySelector<HTMLTextAreaElement>('#lesson')?.value).to.equal('nothing that can be set');
    expect(words(el)).to.contain('“nothing that can be set” does not read as a setting such as f/8 1/60. The last good list stays in use.');
    el.setAttribute('expect', 'everything');
    await el.updateComplete;
    expect(problem?.problem.parameter).to.equal('expect');
    expect(words(el)).to.contain('“everything” does not read as same-light or nothing');
    el.setAttribute('steps', 'f/8 1/60; f/11 1/30');
    await el.updateComplete;
    expect(verdict(el)).to.equal('Both steps give the same light.');
  });

  it('follows its light DOM when the page changes it', async () => {
    const el = await lesson();
    const item = document.createElement('li');
    item.textContent = 'f/11, 1 s';
    el.querySelector('ol')?.append(item);
    await new Promise((resolve) => { setTimeout(resolve); });
    await el.updateComplete;
    expect(taken(el)).to.have.length(4);
    expect(root(el).querySelector('slot')).to.equal(null);
  });

  it('reads a list that arrives piece by piece, as a slow page does', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail></settings-trail>`);
    const problems: Event[] = [];
    el.addEventListener('shot-problem', (event) => { problems.push(event); });
    const settle = async () => {
      await new Promise((resolve) => { setTimeout(resolve); });
      await el.updateComplete;
    };
    el.append('A lesson: ');
    await settle();
    el.append('f/8 at 1/60 s, then f/11 at 1/30 s.');
    await settle();
    expect(verdict(el)).to.equal('Both steps give the same light.');
    expect(problems).to.deep.equal([]);
    expect(root(el).querySelector('details')?.open).to.equal(false);
  });

  it('shows what stands between its tags while nothing in it can be read', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail>The list is still to come.</settings-trail>`);
    expect(root(el).querySelector('slot')?.assignedNodes()[0]?.textContent).to.equal('The list is still to come.');
  });

  it('shows hostile text as text', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail .steps=${['<img src=x onerror=alert(1)> f/8 1/60', 'f/11 1/30']}></settings-trail>`);
    expect(root(el).querySelector('img')).to.equal(null);
    expect(words(el)).to.contain('<img src=x onerror=alert(1)>');
  });

  it('copies the list as it stands, or gives it to be taken by hand', async () => {
    const el = await lesson();
    ways(el)[0]?.click();
    await el.updateComplete;
    const written: string[] = [];
    const clipboard = {writeText: (text: string) => { written.push(text); return Promise.resolve(); }};
    Object.defineProperty(navigator, 'clipboard', {configurable: true, get: () => clipboard});
    const copy = [...root(el).querySelectorAll('button')].find((button) => button.textContent === 'Copy the list') as HTMLButtonElement;
    copy.click();
    await new Promise((resolve) => { setTimeout(resolve); });
    await el.updateComplete;
    expect(written).to.deep.equal(['f/2.8, 1/25 s\nf/5.6, 1/6 s (same light)\nf/11, 0.6 s']);
    expect(words(el)).to.contain('Copied');
    clipboard.writeText = () => Promise.reject(new Error('not allowed'));
    copy.click();
    await new Promise((resolve) => { setTimeout(resolve); });
    await el.updateComplete;
    expect(root(el).querySelector<HTMLTextAreaElement>('#copy')?.value).to.contain('f/11, 0.6 s');
    await expectAccessible(el);
    delete (navigator as {clipboard?: unknown}).clipboard;
  });

  it('puts a step on the dial of its bench, and takes the clicks from there', async () => {
    const page = await fixture<HTMLDivElement>(html`<div>
      <settings-trail bench="trail-test" steps="1/25 f/8 +2; f/8 1/6; f/8 1/5"></settings-trail>
      <stop-trade-dial bench="trail-test"></stop-trade-dial>
    </div>`);
    const [el, dial] = [page.querySelector('settings-trail'), page.querySelector('stop-trade-dial')];
    if (!el || !dial) throw new Error('a trail and a dial expected');
    dial.aperture = 4;
    dial.shutter = 1 / 32;
    dial.meteredAperture = 5.6568;
    dial.meteredShutter = 1 / 16;
    await el.updateComplete;
    // before it is pressed: what will be replaced
    expect(words(el)).to.contain('the start of the dial on this page, instead of f/5.66 at 1/15 s, and what it is set to, instead of f/4 at 1/30 s.');
    const [first, second] = root(el).querySelectorAll<HTMLButtonElement>('.step button');
    const [event] = await Promise.all([oneEvent(el, 'shot-change') as Promise<ShotChangeEvent>, first?.click()]);
    await dial.updateComplete;
    expect(event.changes.correction).to.equal(2);
    expect([dial.aperture, dial.correction]).to.deep.equal([8, 2]);
    second?.click();
    await dial.updateComplete;
    expect(dial.shutter).to.be.closeTo(2 ** (-8 / 3), 1e-12);
    expect(dial.correction).to.equal(0);
    expect(verdict(el)).to.contain('Step 3 does not balance');
    dial.clicksPerStop = 1;
    await el.updateComplete;
    expect(verdict(el)).to.contain('All 3 steps');
  });

  it('says what it put on the dial, and takes it off again by keyboard, until the dial is turned', async () => {
    const page = await fixture<HTMLDivElement>(html`<div>
      <stop-trade-dial bench="trail-undo" aperture="f/4" shutter="1/30" metered-aperture="f/5.6" metered-shutter="1/15"></stop-trade-dial>
      <settings-trail bench="trail-undo" steps="1/25 f/8 +2; f/8 1/6"></settings-trail>
    </div>`);
    const [el, dial] = [page.querySelector('settings-trail'), page.querySelector('stop-trade-dial')];
    if (!el || !dial) throw new Error('a trail and a dial expected');
    const said = () => plain(root(el).querySelector('.step .done')?.textContent);
    const standing = () => [dial.aperture, dial.shutter, dial.meteredAperture, dial.meteredShutter, dial.correction, dial.getAttribute('aperture')];
    const before = standing();
    root(el).querySelector<HTMLButtonElement>('.step button')?.focus();
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    await el.updateComplete;
    expect(said()).to.equal('Done: the dial starts from f/8 at 1/25 s and is asked for 2 stops brighter. Undo');
    expect([dial.meteredAperture, dial.correction]).to.deep.equal([8, 2]);
    expect((root(el).activeElement as HTMLElement).classList.contains('undo-dial')).to.equal(true);
    await expectAccessible(el);
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    await el.updateComplete;
    expect(standing()).to.deep.equal(before);
    expect(said()).to.equal('');
    expect((root(el).activeElement as HTMLElement).id).to.equal('dial-0');
    await sendKeys({press: 'Enter'});
    dial.aperture = 11; // undoing would now throw this away
    await el.updateComplete;
    expect(said()).to.equal('');
  });

  it('calls an example one, and gives way to a list of the reader\'s own', async () => {
    const el = await fixture<SettingsTrail>(html`<settings-trail example><ol><li>f/8 1/60</li><li>f/11 1/60</li></ol></settings-trail>`);
    expect(plain(root(el).querySelector('.example')?.textContent)).to.equal('Example Paste your own settings here');
    await expectAccessible(el);
    root(el).querySelector<HTMLButtonElement>('.example button')?.focus();
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    await sendKeys({type: 'f/8 1/60, f/11 1/30'}); // in place of the example, which is selected
    await sendKeys({press: 'Tab'});
    await sendKeys({press: 'Enter'});
    await el.updateComplete;
    expect(taken(el)).to.deep.equal(['f/8 at 1/60 s', 'f/11 at 1/30 s']);
    expect(root(el).querySelector('.example')).to.equal(null);
  });

  it('speaks German with decimal commas, and gives the list away with points', async () => {
    const page = await fixture<HTMLElement>(html`<div lang="de"><settings-trail steps="f/2,8 1/25; f/5.6 1/6"></settings-trail></div>`);
    const el = page.querySelector('settings-trail') as SettingsTrail;
    await el.updateComplete;
    expect(verdict(el)).to.equal('Beide Schritte geben gleich viel Licht.');
    expect(taken(el)).to.deep.equal(['f/2,8 bei 1/25 s', 'f/5,6 bei 1/6 s']);
    Object.defineProperty(navigator, 'clipboard', {configurable: true, value: {writeText: () => Promise.reject(new Error('not allowed'))}});
    [...root(el).querySelectorAll('button')].find((button) => button.textContent === 'Liste kopieren')?.click();
    await waitUntil(() => root(el).querySelector('#copy'), 'the list to take by hand');
    delete (navigator as {clipboard?: unknown}).clipboard;
    expect(root(el).querySelector<HTMLTextAreaElement>('#copy')?.value).to.equal('f/2.8, 1/25 s\nf/5.6, 1/6 s');
  });

  it('keeps its mends while it is moved', async () => {
    const page = await fixture<HTMLDivElement>(html`<div><settings-trail><ol><li>f/8 1/6</li><li>f/8 0"6</li></ol></settings-trail><p></p></div>`);
    const el = page.querySelector('settings-trail') as SettingsTrail;
    ways(el)[0]?.click();
    await el.updateComplete;
    page.querySelector('p')?.append(el);
    await el.updateComplete;
    expect(verdict(el)).to.equal('Both steps give the same light.');
    expect(root(el).querySelector('del')).not.to.equal(null);
  });

  it('takes over properties set before it was defined', async () => {
    const tag = 'settings-trail-late';
    const late = document.createElement(tag) as SettingsTrail;
    late.steps = 'f/8 1/60; f/11 1/60';
    late.expect = 'nothing';
    document.body.append(late);
    customElements.define(tag, class extends (customElements.get('settings-trail') as typeof SettingsTrail) {});
    await late.updateComplete;
    expect(verdict(late)).to.contain('Nothing says what was meant');
    late.steps = 'f/8 1/60, same light; f/11 1/30';
    await late.updateComplete;
    expect(taken(late)[1]).to.equal('f/11 at 1/30 s');
    late.remove();
  });

  it('speaks a changed verdict once it has settled', async () => {
    const el = await lesson();
    ways(el)[0]?.click();
    await el.updateComplete;
    expect(plain(root(el).querySelector('.spoken')?.textContent)).to.equal('');
    await new Promise((resolve) => { setTimeout(resolve, 900); });
    expect(plain(root(el).querySelector('.spoken')?.textContent)).to.equal('All 3 steps give the same light.');
  });

  it('fits a narrow column, with nothing under 40 px to press', async () => {
    const box = await fixture<HTMLDivElement>(html`<div><settings-trail bench="narrow" steps=${PROSE}></settings-trail></div>`);
    box.style.width = '280px';
    const el = box.querySelector('settings-trail') as SettingsTrail;
    await el.updateComplete;
    expect(el.scrollWidth).to.be.at.most(280);
    for (const button of root(el).querySelectorAll('.plate > :not(details) button')) {
      expect(button.getBoundingClientRect().height).to.be.at.least(40);
    }
  });
});
