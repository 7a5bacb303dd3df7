import {readFileSync} from 'node:fs';
import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {clickAt} from '../../../src/core/exposure/clicks.js';
import {findSteps} from '../../../src/core/exposure/find-settings.js';
import {readMeant} from '../../../src/core/exposure/meant.js';
import {mendText} from '../../../src/core/exposure/mend-trail.js';
import {trail} from '../../../src/core/exposure/trail.js';
import {trade} from '../../../src/core/exposure/trade.js';
import {writeAperture, writeShutter} from '../../../src/core/exposure/write.js';
import {writeTrail} from '../../../src/core/exposure/write-trail.js';
import {published} from '../../reference/published.js';

const HIDDEN_SLIP = 'We started at f/2.8 and 1/25 of a second, then went to f/5.6, 1/6 s for more of the cloak, '
  + 'and finally f/11 at 1/6, with the same light throughout.';

const pieces = (text: string | readonly string[]) => findSteps(text).steps
  .map(({aperture, shutter, iso}) => [aperture, shutter, iso].map((found) => found?.text ?? '-').join(' '));

describe('a lesson with a slip of two stops in it', () => {
  const read = trail(HIDDEN_SLIP);

  it('finds the three steps in running text, each with its place', () => {
    expect(pieces(HIDDEN_SLIP)).toEqual(['f/2.8 1/25 of a second -', 'f/5.6 1/6 s -', 'f/11 1/6 -']);
    for (const {start, end, text} of read.steps) expect(HIDDEN_SLIP.slice(start, end)).toBe(text);
    expect(HIDDEN_SLIP.slice(read.steps[2]?.shutter?.start, read.steps[2]?.shutter?.end)).toBe('1/6');
  });

  // common practice, no source: six tenths of a second read as a sixth
  it('names the third step, by how much, and the reading that mends it', () => {
    expect(read.broken).toEqual([2]);
    expect(read.steps[2]?.link).toMatchObject({light: expect.closeTo(-2, 9), depth: expect.closeTo(2, 9), holds: false});
    expect(read.mends).toMatchObject([{step: 2, was: '1/6', text: '0"6', how: 'seconds', repairs: [2]}]);
  });

  it('balances once the mend is written into it', () => {
    const mended = mendText(read.text, read.mends[0] as typeof read.mends[0] & object);
    expect(mended).toContain('finally f/11 at 0"6, with');
    expect(trail(mended)).toMatchObject({broken: [], mends: []});
  });
});

describe('the rendered aperture series', () => {
  interface Rendered {readonly tags: readonly string[]; readonly exposure: {
    readonly ev_offset: number; readonly exif: {readonly FNumber: number; readonly ExposureTime: string};
  };}
  const {shots} = JSON.parse(readFileSync(new URL('../../reference/shots/shots.json', import.meta.url), 'utf8')) as {shots: Rendered[]};
  const noted = ({exposure: {exif}}: Rendered) => `f/${exif.FNumber} ${exif.ExposureTime}`;

  it('balances as a trail, since it was rendered to equal brightness', () => {
    const series = shots.filter(({tags, exposure}) => tags.includes('aperture-series') && exposure.ev_offset === 0);
    expect(series.length).toBeGreaterThan(3);
    expect(trail(series.map(noted)).broken).toEqual([]);
  });

  it('measures the stops by which the exposure series was rendered', () => {
    const series = shots.filter(({exposure}) => exposure?.ev_offset && exposure.exif.FNumber === 11);
    expect(series.length).toBeGreaterThan(1);
    const start = shots.find(({exposure}) => exposure.ev_offset === 0 && exposure.exif.FNumber === 11) as Rendered;
    for (const other of series) {
      const [, step] = trail([noted(start), noted(other)]).steps;
      expect(step?.link?.light).toBeCloseTo(other.exposure.ev_offset, 1);
    }
  });
});

test('published full-stop scales, walked in step, are one light', () => {
  // “F-number”, encyclopedia; “Shutter speed chart”, teaching page
  const numbers = (id: string) => published('scales').find((record) => record.id === id)?.expected.value as readonly number[];
  const times = numbers('shutter-full').filter((time) => time >= 1 / 1000).reverse();
  const apertures = numbers('fstops-full').slice(1, times.length + 1);
  const lines = apertures.map((aperture, at) => `f/${aperture} ${writeShutter(times[at] as number)}`);
  expect(lines.length).toBeGreaterThan(10);
  const {steps, broken} = trail(lines);
  expect(broken).toEqual([]);
  for (const {link} of steps.slice(1)) expect(link?.depth).toBeCloseTo(1, 6);
});

describe('steps in a text', () => {
  // Invented, in forms that are common practice.
  it.each([
    ['one a line', 'f/2.8 1/6\nf8, 0.3s, ISO 100\n1/25 f/8 +2', ['f/2.8 1/6 -', 'f8 0.3s ISO 100', 'f/8 1/25 -']],
    ['numbered', '1. f/8 1/60\n2) f/11\nStep 3: f/16 1/15', ['f/8 1/60 -', 'f/11 - -', 'f/16 1/15 -']],
    ['bare numbers in a list', '8 1/60 100\n11 1/30 100', ['8 1/60 100', '11 1/30 100']],
    ['on one line', 'f/8 25; f/11 13 → f/16 6', ['f/8 25 -', 'f/11 13 -', 'f/16 6 -']],
    ['time first', '1/25 at f/2.8, then 1/6 at f/5.6', ['f/2.8 1/25 -', 'f/5.6 1/6 -']],
    ['a setting in the next sentence', 'Set f/8, 1/60. Stop down to f/11. The shutter becomes 1/30 s.', ['f/8 1/60 -', 'f/11 1/30 s -']],
    ['one setting at a time', 'f/8 at 1/60, then 1/30, then 1/15', ['f/8 1/60 -', '- 1/30 -', '- 1/15 -']],
    ['what is no setting', 'A 1/12 scale bust, 75 mm tall, lamp at 1/2 power, 2 m away, a third of a stop and 1/3 of a stop. '
      + 'Wait 10 s. f/8 at 2 seconds with 3 lamps.', ['f/8 2 seconds -']],
    ['a paragraph broken into lines', 'We started with the lens wide open, which is f/2.8 and\n1/25 of a second, then\nf/5.6 at 1/6.',
      ['f/2.8 1/25 of a second -', 'f/5.6 1/6 -']],
    ['a time alone before a close pair', 'f/5.6 and 1/13 s was dark, so I went to 1/6 s. For depth I took f/8 (1/3 s), f/11 (0.6 s) and f/16 (1.3 s).',
      ['f/5.6 1/13 s -', '- 1/6 s -', 'f/8 1/3 s -', 'f/11 0.6 s -', 'f/16 1.3 s -']],
    ['a change told from where it began', 'f/2.8 gave 1/25. Closing to f/11 takes the time from 1/25 to 0.6 s.', ['f/2.8 1/25 -', 'f/11 0.6 s -']],
    ['dates and pages', 'In the lesson of 12/3, page 3/4: "f/2.8 at 1/25 s" and "f/5.6 at 1/6 s".', ['f/2.8 1/25 s -', 'f/5.6 1/6 s -']],
    ['a misspelt time is not half read', 'f/8 1/6o\nf/8 1/60', ['f/8 - -', 'f/8 1/60 -']],
    ['none', 'The heron-headed lantern bearer of the Fenwick Painting Guild.', []],
    ['nothing', '', []],
  ])('%s', (_, text, expected) => {
    expect(pieces(text)).toEqual(expected);
  });

  it('points at what looks like a setting and is not in use', () => {
    const [step] = trail(['2. f/8 1/6o f/11', 'f/8 1/60']).steps;
    expect(step).toMatchObject({start: 3, text: 'f/8 1/6o f/11', unread: [{text: 'f/11', start: 12, end: 16}, {text: '1/6o', start: 7, end: 11}]});
  });

  it('keeps an item without settings as a step, and does not hold it to anything', () => {
    const {steps, broken} = trail(['f/8 1/60', 'turn the figure', 'f/8 1/60']);
    expect(steps.map(({link}) => link?.light ?? null)).toEqual([null, null, 0]);
    expect(broken).toEqual([]);
  });

  it('carries over what is not said, and says what was never said', () => {
    const {steps} = trail(['f/8', '1/60', 'f/11']);
    expect(steps.map(({carried, missing}) => [carried, missing])).toEqual([
      [[], ['shutter']], [['aperture', 'iso'], []], [['shutter', 'iso'], []],
    ]);
    expect(steps[0]?.exposure).toBeNull();
    expect(steps[1]?.link).toBeNull();
    expect(steps[2]?.link?.light).toBeCloseTo(-1, 9);
  });

  it('takes an ISO speed said once for the whole trail, unless base ISO balances better', () => {
    expect(trail('f/2.8 1/25, f/5.6 1/6, f/11 0.6 s, all at ISO 200')).toMatchObject({broken: [], isoSaid: true});
    const raised = trail('f/8 1/60, then f/16 1/60 at ISO 400');
    expect(raised.broken).toEqual([]);
    expect(raised.steps[1]?.link?.cost).toMatchObject({aperture: expect.closeTo(-2, 9), iso: expect.closeTo(2, 9)});
  });
});

describe('what was meant', () => {
  it.each([
    ['for the same light', 0, null], ['an equivalent exposure', 0, null], ['equal exposure', 0, null],
    ['one stop darker', -1, null], ['two stops brighter', 2, null], ['a stop and a half darker', -1.5, null],
    ['two-thirds of a stop brighter', 2 / 3, null], ['darker by 1 1/3 stops', -4 / 3, null], ['½ stop less light', -0.5, null],
    ['2/3 stop over', 2 / 3, -2 / 3], ['under by two', -2, 2], ['+2', 2, 2], ['−1 1/3', -4 / 3, -4 / 3], ['+0.7 EV', 2 / 3, 2 / 3],
    ['meter says +2', null, -2], ['the meter shows two under', null, 2], ['metered 1 stop over', null, -1],
    ['correct by +1', null, 1], ['needs one stop more light', null, 1], ['one stop too dark', null, 1], ['too bright', null, 'darker'],
    ['a bit brighter', 'brighter', null], ['not quite the same light', 'other', null], ['I moved the lamp', 'other', null],
  ])('“%s”', (text, change, next) => {
    const said = readMeant(`x, ${text}, y`);
    expect([said?.change, said?.next]).toEqual([change, next].map((wish) => (typeof wish === 'number' ? expect.closeTo(wish, 9) : wish)));
  });

  it.each(['two stops more depth', 'stop down two stops', 'a darker backdrop', 'with one lamp', '', 'step 3'])(
    '“%s” asks nothing of the light', (text) => { expect(readMeant(text)).toBeNull(); });

  it('a correction noted at a step is paid by the next', () => {
    expect(trail('1/25 f/8 +2\n1/6 f/8')).toMatchObject({broken: []});
    expect(trail('f/8 1/25, the meter says two over. Then f/16 at 1/25.').broken).toEqual([]);
    expect(trail('1/25 f/8 +2\n1/25 f/8').steps[1]?.link).toMatchObject({off: expect.closeTo(-2, 9), meant: {wish: 2, by: 'before'}});
  });

  it('is taken the way the settings bear out', () => {
    expect(trail('f/8 1/25\nf/8 1/6 +2').broken).toEqual([]); // the change into the second step
    expect(trail('f/8 1/25\nf/11 1/13\nf/11 1/13, 1 under\nf/8 1/13').broken).toEqual([]); // what the meter shows there
  });

  it('may name the fault of the step before', () => {
    const read = trail('A trial at f/5.6 and 1/13 s was quick. It came out one stop too dark, so I went to 1/6 s; then f/8 at 1/3 s.');
    expect(read.broken).toEqual([]);
    expect(read.steps[1]?.link?.meant).toEqual({wish: 1, by: 'step'});
    expect(trail('too dark: f/8 1/60\nf/8 1/30').broken).toEqual([]);
  });

  it('asks only for the direction where no number is said', () => {
    expect(trail('f/8 1/60 too dark\nf/8 1/30').broken).toEqual([]);
    expect(trail('f/8 1/60 too dark\nf/8 1/125').broken).toEqual([1]);
  });

  it('is the same light where nothing is said, unless nothing is expected', () => {
    const lines = 'f/2.8 1/25\nf/4 1/25';
    expect(trail(lines).steps[1]?.link?.meant).toEqual({wish: 0, by: 'assumed'});
    expect(trail(lines, {expect: 'nothing'}).steps[1]?.link).toMatchObject({meant: null, holds: null, light: expect.closeTo(-1, 9)});
    expect(trail(`All in the same light:\n${lines}`, {expect: 'nothing'}).broken).toEqual([1]);
  });

  it('forgives half a click of the dial and no more', () => {
    const third = ['f/8 1/60', 'f/8 1/50'];
    expect(trail(third).broken).toEqual([1]);
    expect(trail(third, {clicksPerStop: 1}).broken).toEqual([]);
    expect(trail(['f/8 0.37 s', 'f/8 0.40 s']).broken).toEqual([]); // an eighth of a stop, metered
  });
});

describe('mends', () => {
  it('names a slip in the middle once, though it breaks both its neighbours', () => {
    const {broken, mends} = trail('f/2.8 1/25\nf/5.6 0"6\nf/11 0"6');
    expect(broken).toEqual([1, 2]);
    expect(mends).toMatchObject([{step: 1, was: '0"6', text: '1/6', repairs: [1, 2]}]);
  });

  it('finds a slip in the step before the one that shows it', () => {
    expect(trail('f/11 1/6\nf/16 1"3\nf/11 0"6').mends).toMatchObject([{step: 0, was: '1/6', text: '0"6', repairs: [1]}]);
  });

  it('names two slips, each with its own mend', () => {
    const {mends} = trail('f/2.8 1/25\nf/11 1/6\nf/5.6 1/6\nf/13 1/8');
    expect(mends.map(({step, text}) => [step, text])).toEqual(expect.arrayContaining([[1, '0"6'], [3, '0"8']]));
    expect(mends).toHaveLength(2);
  });

  it('follows a slip through the steps that carry it over', () => {
    expect(trail('f/8 0"3\nf/11 1/6\nf/11\nf/16 1.3 s').mends).toMatchObject([{step: 1, text: '0"6', repairs: [1, 3]}]);
  });

  it('goes by the first step that fails, and offers nothing that puts it further off', () => {
    // Invented: step 3 was to be a stop darker, and step 4 follows whatever it says.
    const read = trail('Start at f/11, 1/4 s ISO 100. Then close to f/16 at 1/2. Open up to f/5.6 at 1/15, one stop darker. Then 0"6 at f 11.');
    expect(read.broken).toEqual([2, 3]);
    expect(read.mends).toMatchObject([{step: 2, was: '1/15', text: '1/30', how: 'needed', repairs: [2], others: []}]);
    const after = trail(mendText(read.text, read.mends[0] as typeof read.mends[0] & object));
    expect(after.broken).toEqual([3]);
    expect(after.mends).toMatchObject([{step: 3, was: '0"6', text: '1/8', how: 'needed', repairs: [3]}]);
  });

  it('finds a lost point and overlooked seconds', () => {
    expect(trail('f/56 1/60\nf/8 1/30').mends).toMatchObject([{step: 0, was: 'f/56', text: 'f/5.6', how: 'point-lost'}]);
    expect(trail('f/8 13 s\nf/11 25').mends).toMatchObject([{step: 1, was: '25', text: '25"', how: 'seconds'}]);
  });

  it('takes no reading that no body shows', () => {
    expect(trail('f/16 1"3\nf/16 1/2').mends).toMatchObject([{step: 1, text: '1"3', how: 'needed'}]); // not 1"2
  });

  it('gives the time that would balance where no reading of the digits does', () => {
    expect(trail('f/8 1/60\nf/11 1/60\n').mends).toMatchObject([{step: 1, was: '1/60', text: '1/30', how: 'needed'}]);
    const carried = trail('f/8 1/60 s\nf/11');
    expect(carried.mends).toMatchObject([{step: 1, was: '', text: ', 1/30 s', how: 'needed'}]);
    expect(mendText(carried.text, carried.mends[0] as typeof carried.mends[0] & object)).toBe('f/8 1/60 s\nf/11, 1/30 s');
  });
});

/** Correct trades on the clicks of third-stop dials from one start, as aperture and time. */
const lesson = fc.record({
  start: fc.record({aperture: fc.integer({min: 9, max: 24}), shutter: fc.integer({min: -18, max: 3})}),
  apertures: fc.array(fc.integer({min: 6, max: 27}), {minLength: 2, maxLength: 6}),
}).map(({start, apertures}) => {
  const from = {aperture: clickAt('aperture', start.aperture, 3).value, shutter: clickAt('shutter', start.shutter, 3).value, iso: 100};
  return [from, ...apertures.map((click) => (
    trade({from, change: {aperture: clickAt('aperture', click, 3).value}, pay: 'shutter', clicksPerStop: 3}).to))];
});

const style = fc.constantFrom('body', 'prose') as fc.Arbitrary<'body' | 'prose'>;
const joint = fc.constantFrom('\n', '; ', ', then ', '. Then ', ' and finally ');

describe('laws', () => {
  test('a trail of correct trades balances, however it is written', () => {
    fc.assert(fc.property(lesson, style, joint, (steps, how, between) => {
      const text = steps.map(({aperture, shutter}) => `${writeAperture(aperture)}, ${writeShutter(shutter, how)}`).join(between);
      const read = trail(text);
      expect(read.steps.map(({exposure}) => exposure)).toEqual(steps.map((step) => ({
        aperture: expect.closeTo(step.aperture, 9), shutter: expect.closeTo(step.shutter, 9), iso: expect.closeTo(step.iso, 9),
      })));
      expect(read.broken).toEqual([]);
      expect(read.mends).toEqual([]);
    }));
  });

  // common practice, no source: tenths of a second noted as the fraction with the same digit
  test('one time of tenths noted as a fraction is found and mended', () => {
    const tenths = ['0"4', '0"5', '0"6', '0"8'];
    const planted = lesson.chain((steps) => {
      const at = steps.flatMap(({shutter}, index) => (tenths.includes(writeShutter(shutter, 'body')) ? [index] : []));
      return fc.record({steps: fc.constant(steps), slip: at.length ? fc.constantFrom(...at) : fc.constant(-1)});
    }).filter(({slip}) => slip >= 0);
    fc.assert(fc.property(planted, joint, ({steps, slip}, between) => {
      const text = steps.map(({aperture, shutter}, at) => {
        const shown = writeShutter(shutter, 'body');
        return `${writeAperture(aperture)} ${at === slip ? shown.replace('0"', '1/') : shown}`;
      }).join(between);
      const read = trail(text);
      expect(read.broken.length).toBeGreaterThan(0);
      expect(read.mends[0]).toMatchObject({step: slip, value: expect.closeTo(steps[slip]?.shutter ?? NaN, 9), repairs: read.broken});
      expect(trail(mendText(read.text, read.mends[0] as typeof read.mends[0] & object)).broken).toEqual([]);
    }), {numRuns: 60});
  });

  test('every mend that is offered does what it says when it is made first', () => {
    const times = fc.constantFrom('1/60', '1/25', '1/15', '1/6', '0"6', '1/4', '1/2', '1"3');
    const line = fc.tuple(fc.constantFrom('f/2.8', 'f/5.6', 'f/8', 'f/11', 'f/16'), times, fc.constantFrom('', ' one stop darker', ' +1'));
    fc.assert(fc.property(fc.array(line, {minLength: 2, maxLength: 6}), (lines) => {
      const read = trail(lines.map(([aperture, time, light]) => `${aperture} ${time}${light}`).join('\n'));
      for (const mend of read.mends.flatMap((each) => [each, ...each.others])) {
        const after = trail(mendText(read.text, mend));
        expect(after.broken).toEqual(read.broken.filter((at) => !mend.repairs.includes(at)));
        for (const at of after.broken.filter((broken) => broken < (mend.repairs[0] as number))) {
          expect(Math.abs(after.steps[at]?.link?.off ?? 0)).toBeLessThanOrEqual(Math.abs(read.steps[at]?.link?.off ?? 0) + 1e-9);
        }
      }
    }));
  });

  test('a trail reads back after it was written, settings and wishes', () => {
    const wish = fc.constantFrom('', ' same light', ' one stop darker', ' 2/3 stop brighter', ' +2', ' meter says two under', ' too dark', ' light changed');
    const noted = fc.tuple(lesson, fc.array(wish, {minLength: 7, maxLength: 7}), fc.constantFrom('', ', ISO 200'));
    fc.assert(fc.property(noted, ([steps, wishes, iso]) => {
      const first = trail(steps.map(({aperture, shutter}, at) => `${writeAperture(aperture)} ${writeShutter(shutter)}${iso}${wishes[at]}`));
      const again = trail(writeTrail(first));
      expect(again.steps.map(({exposure}) => exposure)).toEqual(first.steps.map(({exposure}) => exposure));
      expect(again.steps.map(({link}) => link?.meant?.wish)).toEqual(first.steps.map(({link}) => link?.meant?.wish));
      expect(again.broken).toEqual(first.broken);
    }));
  });

  test('whatever is pasted, every place lies in the text and nothing throws', () => {
    const word = fc.oneof(fc.constantFrom('f/8', '1/6', '0"6', 'ISO 100', '+2', '. ', '\n', ' then ', '(', 'one stop darker'), fc.string());
    fc.assert(fc.property(fc.array(word, {maxLength: 30}).map((words) => words.join(' ')), (text) => {
      const read = trail(text);
      let last = 0;
      for (const step of read.steps) {
        expect(read.text.slice(step.start, step.end)).toBe(step.text);
        expect(step.start).toBeGreaterThanOrEqual(last);
        last = step.end;
        for (const found of [step.aperture, step.shutter, step.iso]) {
          if (!found) continue;
          expect(read.text.slice(found.start, found.end).trim()).toBe(found.text);
          expect(found.start >= step.start && found.end <= step.end).toBe(true);
        }
      }
    }));
  });

  it('reads no more than sixty steps of a pasted book', () => {
    expect(trail('f/8 1/60\n'.repeat(5000)).steps).toHaveLength(60);
  });
});
