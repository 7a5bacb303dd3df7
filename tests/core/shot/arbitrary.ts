import fc from 'fast-check';
import {clicks} from '../../../src/core/exposure/clicks.js';
import {refusalOf, shotKeys} from '../../../src/core/shot/given.js';
import type {ShotRecord} from '../../../src/core/shot/record.js';
import {DEFAULT_SHOT, type Shot, type ShotKey} from '../../../src/core/shot/shot.js';
import {boundsOf, optionsOf} from './bounds.js';

const mm = (min: number, max: number): fc.Arbitrary<number> => fc.oneof(
  fc.double({min, max, noNaN: true}).map((value) => value + 0), fc.integer({min: Math.ceil(min), max: Math.floor(max)}));
const place = (far: number) => fc.tuple(mm(-far, far), mm(-far, far), mm(1, far));

const share = fc.oneof(fc.integer({min: 0, max: 50}).map((value) => value / 100), fc.double({min: 0, max: 0.5, noNaN: true}).map((value) => value + 0));

/** Values that are no single number, word or text, by key. */
const PARTS: Partial<Record<ShotKey, fc.Arbitrary<unknown>>> = {
  crop: fc.record({left: share, top: share, width: share.map((value) => value / 2 + 0.25), height: share.map((value) => value / 2 + 0.25)}),
  focalLengths: fc.array(mm(1, 5000), {minLength: 1, maxLength: 5}),
  closestFocus: fc.array(mm(1, 100_000), {maxLength: 5}),
  lights: fc.record({
    lamps: fc.array(fc.record({
      name: fc.constantFrom('key', 'fill', 'rim left', 'the “big” one', 'lampe à pince'), kind: fc.constant('rectangle' as const),
      position: place(2000), aim: fc.constant([0, 0, -50]), width: mm(1, 500), height: mm(1, 500), power: mm(-5, 5),
    }), {minLength: 1, maxLength: 3}),
    flags: fc.array(fc.record({position: place(900), facing: fc.constantFrom([0, 1, 0], [1, 0, 0.25]), width: mm(1, 500), height: mm(1, 500)}), {maxLength: 2}),
    table: fc.double({min: 0, max: 1, noNaN: true}).map((value) => value + 0),
  }),
};

/** Any text that can be stored: of any language, with markup, line breaks and signs that mean something in an address. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({unit: 'grapheme', maxLength: 40}),
  fc.constantFrom('', '=11', '~f/8', '==', 'a_b c', '<img src=x onerror=alert(1)>', '100 % sure & done.', 'line\nline', '#shot=2', '½ stop', '%41', '__proto__'),
);

const CLICKS: Partial<Record<ShotKey, fc.Arbitrary<number>>> = {
  aperture: fc.constantFrom(...clicks('aperture', 3).map(({value}) => value)),
  shutter: fc.constantFrom(...clicks('shutter', 3).map(({value}) => value)),
  iso: fc.constantFrom(...clicks('iso', 3).map(({value}) => value)),
};

function anyValue(key: ShotKey): fc.Arbitrary<unknown> {
  const like = DEFAULT_SHOT[key];
  if (PARTS[key]) return PARTS[key];
  if (typeof like === 'string') {
    const options = optionsOf(key);
    return options ? fc.constantFrom(...options) : anyText;
  }
  if (typeof like !== 'number') throw new Error(`${key}: a value made of parts needs an arbitrary here`);
  const {least, most, whole} = boundsOf(key);
  const [min, max] = [least === undefined ? -1e9 : least, most === undefined ? 1e9 : most];
  const odd = whole ? fc.integer({min, max}) : fc.double({min, max, noNaN: true}).map((value) => value + 0);
  const plain = whole ? odd : fc.integer({min: Math.ceil(Math.max(min, -9999) * 10), max: Math.floor(Math.min(max, 9999) * 10)}).map((tenths) => tenths / 10);
  return fc.oneof(odd, plain, CLICKS[key] ?? fc.constant(like)).filter((value) => !refusalOf(key, value));
}

/** Any values of a shot, any of them left out. */
export const anyValues: fc.Arbitrary<Partial<Shot>> = fc.record(
  Object.fromEntries(shotKeys().map((key) => [key, anyValue(key)])), {requiredKeys: []},
).map((values) => ({...values}) as Partial<Shot>);

/** A picture of one pixel stands for any. */
const PIXEL = 'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

/** Any record that can be kept. */
export const anyRecord: fc.Arbitrary<ShotRecord> = fc.record({
  title: anyText,
  made: fc.date({min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true}).map((date) => date.toISOString()),
  values: anyValues,
  texts: fc.dictionary(fc.constantFrom(...shotKeys()), anyText, {maxKeys: 4}).map((texts) => ({...texts})),
  measured: fc.record({
    photo: anyText, width: fc.integer({min: 1, max: 20_000}), atWhite: fc.double({min: 0, max: 1, noNaN: true}).map((value) => value + 0),
    roomAbove: fc.double({min: 0, max: 20, noNaN: true}).map((value) => value + 0),
    cardPhoto: anyText, cardTrusted: fc.boolean(), gainRed: fc.double({min: 0.01, max: 100, noNaN: true}), gainBlue: fc.double({min: 0.01, max: 100, noNaN: true}),
    cardOff: mm(-20, 20), spotCode: mm(0, 255), spotStops: mm(-20, 20),
  }, {requiredKeys: []}).map((measured) => ({...measured})),
  picture: fc.constant(PIXEL),
}, {requiredKeys: ['title', 'made', 'values', 'texts', 'measured']}).map((record) => ({...record}) as ShotRecord);
