import {expect, waitUntil} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {LitElement} from 'lit';
import {CASES, stand, text, type Case} from './cases.js';

/**
 * A slider by its keys. Source: ARIA Authoring Practices Guide, slider pattern: Right and Up increase by a step, Left and Down decrease;
 * Page Up and Page Down by a larger one; Home and End go to the ends.
 */
interface SliderKeys {
  readonly tag: string;
  readonly at: string;
  readonly step: number;
  readonly page: number;
  readonly ends: readonly [number, number];
  /** What the ends may differ by; nothing where it is not said. */
  readonly slack?: number;
  /** A number and its unit, as a reader hears them. */
  readonly says: RegExp;
}

// Steps and ends: as the notes beside each drawing say, and common practice, no source: a click and a stop, a millimetre and a centimetre, a degree.
const LINES: readonly SliderKeys[] = [
  // 19 thirds of a stop lie between f/2.8 and f/22, and f/2.8 is the ninth after f/1.
  {tag: 'stop-trade-dial', at: '.hand-group', step: 1, page: 3, ends: [9, 27], says: /^f\/\d+(\.\d)? at (1\/)?[\d.]+ s$/},
  {tag: 'shot-plan', at: '[data-grip=tilt]', step: 1, page: 5, ends: [-80, 80], says: /^(\d+° (down|up)|level)/},
  {tag: 'shot-plan', at: '[data-grip=top]', step: 1, page: 10, ends: [0, 5000], says: /^[\d ]+ mm above the table$/},
  {tag: 'shot-plan', at: '[data-grip=base-front]', step: 1, page: 10, ends: [1, 5000], says: /^base [\d ]+ mm deep$/},
  {tag: 'shot-plan', at: '[data-grip=base-back]', step: 1, page: 10, ends: [1, 5000], says: /^base [\d ]+ mm deep$/},
  {tag: 'backdrop-shade', at: '[data-thing=backdrop][data-view=plan]', step: 10, page: 50, ends: [10, 2000], says: /^[\d ]+ mm behind$/},
  // The camera comes as near as a focal length and a half, of 60 mm, and the depth of the base.
  {tag: 'backdrop-shade', at: '[data-thing=camera][data-view=side]', step: 10, page: 50, ends: [-2000, -105], slack: 15, says: /^[\d ]+ mm in front, \d+ mm up$/},
];

const plain = (words: string | null | undefined): string => (words ?? '').replace(/\s+/g, ' ');

/** A slider with the focus, for real keys to move. */
class Held {
  private constructor(readonly el: LitElement, private readonly selector: string) {}

  static async of(tag: string, selector: string): Promise<Held> {
    const el = await stand({...CASES.find((one) => one.tag === tag && one.state === 'at work') as Case, unfolded: false});
    const held = new Held(el, selector);
    await waitUntil(() => held.node, `${selector} of ${tag}`, {timeout: 5000});
    held.node.focus();
    return held;
  }

  get node(): SVGGElement | HTMLInputElement {
    return this.el.shadowRoot?.querySelector(this.selector) as SVGGElement;
  }

  number(what: 'min' | 'max' | 'now'): number {
    return Number(this.node.getAttribute(`aria-value${what}`));
  }

  get said(): string { return plain(this.node.getAttribute('aria-valuetext')); }

  async press(key: string): Promise<number> {
    await sendKeys({press: key});
    await this.el.updateComplete;
    expect(this.el.shadowRoot?.activeElement, `the focus after ${key}`).to.equal(this.node);
    expect(this.number('now'), `${key}: ${this.said}`).to.be.within(this.number('min'), this.number('max'));
    return this.number('now');
  }
}

describe('a slider', () => {
  for (const {tag, at, step, page, ends: [least, most], slack = 0, says} of LINES) {
    it(`${tag} ${at}: goes by every key it should, and says a number and its unit`, async () => {
      const held = await Held.of(tag, at);
      const start = held.number('now');
      const went: Record<string, number> = {};
      const words = new Set([held.said]);
      for (const key of ['ArrowRight', 'ArrowUp', 'ArrowLeft', 'ArrowDown', 'PageUp', 'PageDown']) {
        const before = held.number('now');
        went[key] = Math.round(await held.press(key) - before);
        words.add(held.said);
      }
      expect(went).to.deep.equal({ArrowRight: step, ArrowUp: step, ArrowLeft: -step, ArrowDown: -step, PageUp: page, PageDown: -page});
      expect(held.number('now'), 'back where it began').to.be.closeTo(start, 1);
      for (const [key, end, name] of [['Home', least, 'min'], ['End', most, 'max']] as const) {
        expect(await held.press(key), key).to.be.closeTo(end, slack).and.to.equal(held.number(name));
      }
      words.add(held.said);
      for (const said of words) expect(said).to.match(says);
      expect(words.size, [...words].join('; ')).to.be.at.least(4);
    });
  }

  it('of the focus goes by a millimetre and a centimetre, and to the ends of what is drawn', async () => {
    const held = await Held.of('sharp-zone-bar', '[role=slider]');
    const came = [];
    for (const key of ['ArrowRight', 'ArrowUp', 'PageUp', 'ArrowLeft', 'ArrowDown', 'PageDown']) came.push(await held.press(key));
    expect(came).to.deep.equal([37, 38, 48, 47, 46, 36]);
    expect(held.said).to.equal('36 mm behind the base’s front edge');
    // The drawing ends where the figure does, beyond its tips 18 mm before the base and 26 mm behind its 90 mm.
    for (const [key, end, tip] of [['Home', 'min', -18], ['End', 'max', 116]] as const) {
      const then = held.number(end);
      expect(await held.press(key), key).to.be.closeTo(then, 1);
      expect(Math.abs(then), key).to.be.above(Math.abs(tip));
    }
  });

  it('that goes two ways goes by arrows as it is drawn, and tells its other keys', async () => {
    const there = async (tag: string, at: string, keys: readonly string[]): Promise<readonly string[]> => {
      const held = await Held.of(tag, at);
      const described = (held.node.getAttribute('aria-describedby') ?? '').split(' ').map((id) => text(held.el.shadowRoot?.getElementById(id))).join(' ');
      expect(described || text(held.node.querySelector('title')), `${tag} ${at}`).to.match(/arrow|left and right/i);
      const said = [];
      for (const key of keys) {
        await held.press(key);
        said.push(held.said);
      }
      return said;
    };
    expect(await there('tonal-chart-reader', '[data-frame=crop]', ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp', 'Home'])).to.deep.equal([
      '60% by 81%, 21% from the left, 2% from the top', '60% by 81%, 21% from the left, 3% from the top',
      '60% by 81%, 20% from the left, 3% from the top', '60% by 81%, 20% from the left, 2% from the top',
      '100% by 100%, 0% from the left, 0% from the top']);
    expect(await there('backdrop-shade', '[data-thing=lamp0][data-view=plan]', ['ArrowRight', 'ArrowUp', 'PageDown', 'End', 'Home'])).to.deep.equal([
      '230 mm left, 190 mm in front, 300 mm up', '240 mm left, 190 mm in front, 300 mm up', '240 mm left, 240 mm in front, 300 mm up',
      '240 mm left, 2 000 mm behind, 300 mm up', '240 mm left, 2 000 mm in front, 300 mm up']);
    // Further out at the front is to the left, where the camera stands.
    expect(await there('shot-plan', '[data-grip=overhang-front]', ['ArrowLeft', 'ArrowUp', 'ArrowRight', 'PageUp', 'End'])).to.deep.equal([
      '19 mm past the front edge, 20 mm up', '19 mm past the front edge, 21 mm up', '18 mm past the front edge, 21 mm up',
      '28 mm past the front edge, 21 mm up', '5 000 mm past the front edge, 21 mm up']);
    expect(await there('shot-plan', '[data-grip=overhang-back]', ['ArrowRight', 'ArrowUp', 'ArrowLeft', 'ArrowDown', 'PageUp', 'Home'])).to.deep.equal([
      '27 mm past the back edge, 45 mm up', '27 mm past the back edge, 46 mm up', '26 mm past the back edge, 46 mm up',
      '26 mm past the back edge, 45 mm up', '36 mm past the back edge, 45 mm up', 'does not reach past the base; left and right pull it out']);
  });

  it('of a picture before and after, and a choice among charts, go by arrows and are one stop each', async () => {
    const wipe = await Held.of('gray-card-check', 'input[type=range]');
    const said = [];
    for (const key of ['ArrowRight', 'ArrowLeft', 'Home', 'End']) {
      await sendKeys({press: key});
      await wipe.el.updateComplete;
      said.push(wipe.said);
    }
    expect(said).to.deep.equal(['51% before, 49% after', '50% before, 50% after', '0% before, 100% after', '100% before, 0% after']);

    const chart = await Held.of('tonal-chart-reader', 'input[type=radio][value=colours]');
    const chosen = [];
    for (const key of ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp']) {
      await sendKeys({press: key});
      await chart.el.updateComplete;
      const at = chart.el.shadowRoot?.activeElement as HTMLInputElement;
      chosen.push(at.checked && at.value);
    }
    expect(chosen).to.deep.equal(['brightness', 'red', 'brightness', 'colours']);
  });
});
