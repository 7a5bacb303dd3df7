import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import type {Lights} from '../../../src/core/light/set-text.js';
import {cleanName, readLights, refuseLights, writeLights} from '../../../src/core/light/set-text.js';
import {DEFAULT_SHOT} from '../../../src/core/shot/shot.js';
import {SHOT_FIELDS} from '../../../src/core/shot/fields.js';

const read = (text: string): Lights => {
  const lights = readLights(text);
  if (lights instanceof Problem) throw lights;
  return lights;
};

describe('readLights', () => {
  it('reads a soft box and a flag', () => {
    expect(read('key 180x180 at -230,-200,300 aim 0,0,45 power -1 1/2; flag 150x180 at 70,200,400 facing 0,0,1')).toEqual({
      lamps: [{name: 'key', kind: 'rectangle', width: 180, height: 180, position: [-230, -200, 300], aim: [0, 0, 45], power: -1.5}],
      flags: [{width: 150, height: 180, position: [70, 200, 400], facing: [0, 0, 1]}],
      table: 0,
    });
  });
  it.each([
    'key 180x180 at -230,-200,300', 'key 18 x 18 cm at -23, -20, 30 cm power 0', 'key 180mm × 180mm aimed at 0,0,45 at -230 -200 300',
    'key 180x180 at 230 left 200 front 300 up', 'key 180x180 at 23 cm left, 20 cm before, 30 cm up', 'key 180x180 at −230,−200,300 power 0 stops',
  ])('takes “%s” for the same lamp', (text) => {
    expect(read(text).lamps).toEqual(read('key 180x180 at -230,-200,300 aim 0,0,45 power 0').lamps);
  });
  it('reads lamps of every kind, and names of several words', () => {
    const {lamps} = read('ring light round 20 cm at 0,-400,60\ntorch small at 0,500,900 aim 0,400,0\nceiling bulb at 0,0,1500; bulb at 1,2,3; lamp 2 90x60 at 9,9,9');
    expect(lamps.map(({name, kind, width}) => [name, kind, width])).toEqual([
      ['ring light', 'disc', 200], ['torch', 'small', undefined], ['ceiling', 'bulb', undefined], ['bulb', 'bulb', undefined],
      ['lamp 2', 'rectangle', 90],
    ]);
  });
  it('lets a card stand as people say it, and the table throw light back', () => {
    const {flags, table} = read('bulb at 0,0,900; card 150x180 at 200 back 400 up facing up; table 18%');
    expect(flags).toEqual([{width: 150, height: 180, position: [0, 200, 400], facing: [0, 0, 1]}]);
    expect(table).toBe(0.18);
  });
  it.each([
    '', 'key', 'key 180x180', 'key 180x180 at 1,2', 'key 180x180 at here', 'key 0x180 at 1,2,3', 'key 180 at 1,2,3', 'key 1e9x3 at 1,2,3',
    'key 180x180 at 0,0,45 aim 0,0,45', 'key 180x180 at 1,2,3 power lots', 'flag 150x180 at 1,2,3', 'key 1x1 at 1,2,3; flag at 1,2,3',
    'key 10x10 at 1,2,3 at 4,5,6', 'key 10x10 at 1,2,3; flag 9x9 at 1,2,3 facing 0,0,0', 'key 10x10 at 1,2,3; table 200%',
    'key 10x10 at 1 left 2 sideways', 'key 10x10 at 1,2,3 power 99', 'key 10x10 at 1,2,3 <b>', 'key 10x10 at 99999999,2,3',
  ])('cannot read “%s”, and says so by name', (text) => {
    const problem = readLights(text);
    expect(problem).toBeInstanceOf(Problem);
    expect((problem as Problem).parameter).toBe('lights');
    expect((problem as Problem).value).toBe(text);
  });
  it('says which piece it stumbled over', () => {
    expect((readLights('key 180x180 at 1,2,3; fill at dawn') as Problem).wanted).toContain('“fill at dawn”');
  });
});

const part = fc.integer({min: -50_000, max: 50_000}).map((tenths) => tenths / 10);
const place = fc.tuple(part, part, part);
const size = fc.integer({min: 10, max: 90_000}).map((tenths) => tenths / 10);
const name = fc.oneof(fc.constantFrom('key', 'fill', 'bulb', 'round', 'small', 'my small', 'lamp 2', 'lamp 10', 'big round', 'Fensterlicht', '窓', '! AT!', 'at-large', 'flag!', 'card-board'),
  fc.string().map(cleanName));
const lamp = fc.record({name, position: place, aim: place, power: fc.integer({min: -60, max: 60}).map((power) => power / 4)}).chain((common) =>
  fc.oneof(
    fc.record({kind: fc.constant('rectangle' as const), width: size, height: size}), fc.record({kind: fc.constant('disc' as const), width: size}),
    fc.record({kind: fc.constantFrom('bulb' as const, 'small' as const)}),
  ).map((kind) => ({...common, ...kind}))).filter(({position, aim}) => position.some((at, axis) => at !== aim[axis]));
const flag = fc.record({position: place, facing: place, width: size, height: size}).filter(({facing}) => facing.some((at) => at !== 0));
const lights = fc.record({
  lamps: fc.array(lamp, {minLength: 1, maxLength: 4}), flags: fc.array(flag, {maxLength: 3}), table: fc.integer({min: 0, max: 1000}).map((share) => share / 1000),
});

describe('writeLights', () => {
  it('reads back as the same lights, whatever they are called', () => {
    fc.assert(fc.property(lights, (given) => {
      const back = read(writeLights(given));
      // Aim is of no account to a bulb and is not written; −0 and 0 are the same place.
      const plain = (all: Lights) => JSON.parse(JSON.stringify({...all, lamps: all.lamps.map((one) => (one.kind === 'bulb' ? {...one, aim: 0} : one))})) as unknown;
      expect(plain(back)).toEqual(plain(given));
    }), {numRuns: 400});
  });
  it('leaves out of a name every word that would make a flag of the lamp', () => {
    expect(cleanName('card flag table key')).toBe('key');
  });
  it('reads any text without throwing', () => {
    fc.assert(fc.property(fc.string(), (text) => {
      const found = readLights(text);
      expect(found instanceof Problem || refuseLights(found) === undefined).toBe(true);
    }));
  });
});

describe('lights, backdrop and wish of a shot', () => {
  it('starts from a set that reads back', () => {
    expect(read(writeLights(DEFAULT_SHOT.lights))).toEqual(DEFAULT_SHOT.lights);
  });
  it.each([['black card', 0.04], ['Black-Velvet', 0.01], ['4%', 0.04], ['0,05', 0.05], ['18 %', 0.18], ['100%', 1]])('reads a backdrop of %s', (text, share) => {
    expect(SHOT_FIELDS.backdropReflectance.read(text)).toBeCloseTo(share, 12);
    expect(SHOT_FIELDS.backdropReflectance.read(SHOT_FIELDS.backdropReflectance.write(share))).toBeCloseTo(share, 12);
  });
  it.each(['0', '-4%', '101%', 'plaid'])('refuses a backdrop of %s', (text) => {
    expect(SHOT_FIELDS.backdropReflectance.read(text)).toBeInstanceOf(Problem);
  });
  it('reads a wish in stops', () => {
    expect(SHOT_FIELDS.backdropWish.read('4 1/2 stops')).toBe(4.5);
    expect(SHOT_FIELDS.backdropWish.read('very dark')).toBeInstanceOf(Problem);
  });
  it('refuses what a script gives in place of lights', () => {
    const [key] = DEFAULT_SHOT.lights.lamps as [Lights['lamps'][0]];
    for (const bad of [
      null, undefined, 'key', {lamps: [null], flags: [], table: 0}, {lamps: [key], flags: [null], table: 0}, {lamps: [{...key, kind: 'sun'}], flags: [], table: 0},
      {lamps: [], flags: [], table: 0}, {lamps: [key], flags: 'none', table: 0}, {lamps: [{...key, power: NaN}], flags: [], table: 0},
      {lamps: [{...key, name: 'a; b'}], flags: [], table: 0}, {lamps: [{...key, aim: key.position}], flags: [], table: 0}, {lamps: [key], flags: [], table: 2},
    ]) expect(SHOT_FIELDS.lights.refuse(bad as unknown as Lights)).toBeInstanceOf(Problem);
    expect(SHOT_FIELDS.lights.refuse(DEFAULT_SHOT.lights)).toBeUndefined();
  });
});
