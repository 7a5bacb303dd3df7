import {describe, expect, it} from 'vitest';
import {Problem} from '../../src/core/problem.js';
import type {Field} from '../../src/core/shot/field.js';
import {SHOT_FIELDS} from '../../src/core/shot/fields.js';
import {readLength} from '../../src/core/units.js';
import {Say, type Family} from '../../src/elements/shared/say.js';
import {family as de} from '../../src/elements/shared/words/de.js';
import {family as en} from '../../src/elements/shared/words/en.js';
import {family as es} from '../../src/elements/shared/words/es.js';
import {family as fr} from '../../src/elements/shared/words/fr.js';
import {family as pl} from '../../src/elements/shared/words/pl.js';

const FAMILIES: Readonly<Record<string, Family>> = {de, es, fr, pl};
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

/** What the fields of a shot want when they are given nonsense by hand and by script. Invented nonsense. */
function everythingWanted(): ReadonlySet<string> {
  const wanted = new Set<string>();
  const note = (result: unknown) => { if (result instanceof Problem) wanted.add(result.wanted); };
  for (const field of Object.values(SHOT_FIELDS) as Field<unknown>[]) {
    for (const text of ['?!', '', '-99999999', '99999999999', '0', 'lamp key', 'flag']) note(field.read(text));
    for (const value of [NaN, null, {}, [], 'x', -1]) note(field.refuse(value));
  }
  return wanted;
}

describe('numbers and settings of a language', () => {
  it('has the decimal sign of the language and a thin space for thousands', () => {
    // ISO 80000-1:2022, 7.3: comma or point on the line as the decimal sign, small spaces between groups of three
    const [german, english] = [new Say('de', de), new Say('en', en)];
    expect(german.number(3.456, 1)).toBe('3,5');
    expect(english.number(3.456, 1)).toBe('3.5');
    expect(german.whole(2900)).toBe('2\u202f900');
    expect(german.fixed(1.5, 2)).toBe('1,50');
    expect(english.number(-0.2, 0)).toBe('0');
    expect(english.number(-2, 0)).toBe('−2');
    expect(english.percent(-0.001)).toBe('0%');
  });

  it('writes per cent as CLDR has it for each language', () => {
    // Unicode CLDR 44, percentFormats: en and pl without a blank, de, es and fr with one that does not break
    const written = (tag: string, family: Family) => plain(new Say(tag, family).percent(0.36));
    expect([written('en', en), written('pl', pl), written('de', de), written('es', es), written('fr', fr)])
      .toEqual(['36%', '36%', '36 %', '36 %', '36 %']);
  });

  it('writes settings with the decimal sign of the language, and what a body shows as it shows it', () => {
    // common practice, no source: 0,6 s and f/5,6 in German, French, Spanish and Polish prose
    const say = new Say('fr', fr);
    expect(plain(say.shutter(2 ** (-2 / 3)))).toBe('0,6 s');
    expect(say.aperture(2 ** 2.5)).toBe('f/5,6');
    expect(plain(say.shutter(1 / 64))).toBe('1/60 s');
    expect(plain(say.stops(4 / 3))).toBe('1 1/3 IL');
    expect(plain(new Say('de', de).stops(-2 / 3))).toBe('2/3 Blendenstufe');
  });

  it('takes the plural form of the language', () => {
    // Unicode CLDR 44, plural rules of Polish: 1 one; 2–4, 22–24 few; 5–21 many
    const forms = {one: 'zdjęcie', few: 'zdjęcia', many: 'zdjęć', other: 'zdjęcia'};
    const say = new Say('pl', pl);
    expect([1, 2, 5, 12, 22].map((count) => say.plural(count, forms))).toEqual(['zdjęcie', 'zdjęcia', 'zdjęć', 'zdjęć', 'zdjęcia']);
  });

  it('keeps to the numbers of a region whose words are those of the main language', () => {
    expect(new Say('de-CH', de).number(1.5, 1)).toBe('1.5'); // Unicode CLDR 44: Switzerland writes a point
    expect(new Say('de-AT', de).number(1.5, 1)).toBe('1,5');
  });
});

describe('what would do instead', () => {
  it.each(Object.keys(FAMILIES))('is said in %s for every field of a shot', (language) => {
    const say = new Say(language, FAMILIES[language] as Family);
    const wanted = [...everythingWanted()];
    expect(wanted.length).toBeGreaterThan(35);
    expect(wanted.filter((text) => say.wanted(text) === text && text !== 'text')).toEqual([]);
    expect(wanted.map((text) => say.wanted(text)).filter((text) => text.includes('{}'))).toEqual([]);
  });

  it('keeps its numbers, with the decimal sign of the language', () => {
    expect(new Say('de', de).wanted('a length from 1 to 50000 mm')).toBe('eine Länge von 1 bis 50000 mm');
    expect(new Say('pl', pl).wanted('a time such as 1/60, 0.6 s or 30"')).toBe('czas, na przykład 1/60, 0,6 s lub 30"');
  });

  it('leaves text alone that is in the language already', () => {
    expect(new Say('de', de).wanted('ein Name')).toBe('ein Name');
  });
});

describe('lengths typed in other languages', () => {
  // NIST Handbook 44, appendix C: 1 inch = 25.4 mm
  it.each([['2 Zoll', 50.8], ['1,5 pouces', 38.1], ['3 pulgadas', 76.2], ['1/2 cala', 12.7], ['2 cale', 50.8], ['6,5 cm', 65]] as const)('%s', (text, mm) => {
    const read = readLength('base-depth', text);

    expect(read).toBeCloseTo(mm, 10);
  });
});
