import {writeAperture, writeIso, writeShutter, writeStops} from '../../core/exposure/write.js';
import type {Setting} from '../../core/exposure/stops.js';
import type {Problem} from '../../core/problem.js';
import {MM_PER_INCH, lengthIn, type LengthUnit} from '../../core/units.js';

/** What every element of one language says alike. */
export interface Family {
  /** Under a field whose text cannot be used; `wanted` follows what the words before it ask for. */
  readonly problem: (text: string, wanted: string) => string;
  /**
   * What would do instead, by the English of the core with `{}` for each number, setting and quoted text in it:
   * `a length from {} to {}`. English has none.
   */
  readonly wanted: Readonly<Record<string, string>>;
  readonly settings: Readonly<Record<Setting, string>>;
  /** A number of stops with its unit. `amount` has no sign: `1 1/3`; `size` is the same as a number. */
  readonly stops: (amount: string, size: number) => string;
  /** Where a part of the element could not be fetched. */
  readonly unreachable: string;
}

/** Words of a count, by the plural forms of the language; `other` where a form is not given. */
export interface Forms {
  readonly one?: string;
  readonly few?: string;
  readonly many?: string;
  readonly other: string;
}

/** Holds a number and its unit together. */
export const NBSP = '\u00a0';

/** Text whose blanks do not break. */
export const tight = (text: string): string => text.replaceAll(' ', NBSP);

/**
 * Numbers, settings and lengths as readers of one language write them: the decimal sign and the per cent of the language,
 * thousands set apart by a thin space (ISO 80000-1, 7.3.1), since point and comma mean opposite things across borders. All blanks
 * inside what is returned hold.
 */
export class Say {
  readonly #formats = new Map<string, Intl.NumberFormat>();
  readonly #lists = new Map<Intl.ListFormatType, Intl.ListFormat>();
  readonly #plurals: Intl.PluralRules;
  readonly #point: string;

  constructor(
    /** BCP 47 tag: `de-AT`. */
    readonly language: string,
    /** What every element says alike in it. */
    readonly family: Family,
  ) {
    this.#plurals = new Intl.PluralRules(language);
    this.#point = this.#format({}).formatToParts(0.5).find(({type}) => type === 'decimal')?.value ?? '.';
  }

  #format(options: Intl.NumberFormatOptions): Intl.NumberFormat {
    const key = JSON.stringify(options);
    let format = this.#formats.get(key);
    if (!format) this.#formats.set(key, format = new Intl.NumberFormat(this.language, {useGrouping: false, ...options}));
    return format;
  }

  #number(value: number, options: Intl.NumberFormatOptions): string {
    // −0 is nothing, and a minus is as wide as a plus.
    return tight(this.#format(options).format(value + 0).replace(/^-(?=[0.,\s%]*$)/, '').replace('-', '−'));
  }

  // —— numbers ——

  /** At most so many digits behind the point, none that say nothing: `3.4`, `−2`. */
  number(value: number, decimals = 0): string {
    return this.#number(value, {maximumFractionDigits: decimals});
  }

  /** Always so many digits behind the point: `1.50`. */
  fixed(value: number, decimals: number): string {
    return this.#number(value, {minimumFractionDigits: decimals, maximumFractionDigits: decimals});
  }

  /** At most so many digits in all: `0.034`, `120`. */
  digits(value: number, significant: number): string {
    return this.#number(value, {maximumSignificantDigits: significant});
  }

  /** A whole number, thousands set apart: `2 900`. */
  whole(value: number): string {
    return this.number(value).replace(/\B(?=(\d{3})+$)/g, '\u202f');
  }

  /** `36%`, `36 %` — as the language has it. */
  percent(share: number, decimals = 0): string {
    return this.#number(share, {style: 'percent', maximumFractionDigits: decimals});
  }

  // —— lengths ——

  /**
   * Size of a length, sign left out, as finely as anybody can point: 9.4 mm, 41 mm, 1.2 cm, 2 3/8 in.
   * @param fine - hundredths, where two lengths would otherwise read alike
   */
  length(mm: number, unit: LengthUnit, fine = false): string {
    const size = Math.abs(mm);
    if (fine) return `${this.number(lengthIn(size, unit), 2)}${NBSP}${unit}`;
    if (unit === 'in') return `${this.#inches(size / MM_PER_INCH)}${NBSP}in`;
    const text = unit === 'cm' ? this.number(size / 10, size < 9.95 ? 2 : 1) : this.number(size, size < 9.95 ? 1 : 0);
    return `${size >= 1000 && unit === 'mm' ? this.whole(size) : text}${NBSP}${unit}`;
  }

  /** A length to go into a field: exact enough to be taken back, blanks as they are typed. */
  fieldLength(mm: number, unit: LengthUnit): string {
    const sixteenths = mm / MM_PER_INCH * 16;
    if (unit === 'in') {
      return Math.abs(sixteenths - Math.round(sixteenths)) < 0.001 && sixteenths > 0
        ? `${this.#inches(mm / MM_PER_INCH).replaceAll(NBSP, ' ')} in` : `${this.number(mm / MM_PER_INCH, 3)} in`;
    }
    return unit === 'cm' ? `${this.number(mm / 10, 2)} cm` : `${this.number(mm, 1)} mm`;
  }

  #inches(size: number): string {
    const per = size < 12 ? 16 : 4;
    const parts = Math.round(size * per);
    if (parts === 0) return this.number(size, 2);
    let [over, under] = [parts % per, per];
    while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
    return [Math.floor(parts / per) || '', over ? `${over}/${under}` : ''].filter(Boolean).join(NBSP);
  }

  /** `3.4 px`. */
  pixels(value: number): string {
    return `${value < 9.95 ? this.number(value, 1) : this.whole(value)}${NBSP}px`;
  }

  // —— settings ——

  /** `f/5.6`, `f/5,6`. */
  aperture(value: number): string { return this.typed(tight(writeAperture(value))); }

  /** `0.6 s`, `1/60 s`, `1 min 4 s`. */
  shutter(value: number): string { return this.typed(tight(writeShutter(value))); }

  /** `ISO 100`. */
  iso(value: number): string { return this.typed(tight(writeIso(value))); }

  /** One setting as prose has it. */
  setting(setting: Setting, value: number): string { return this[setting](value); }

  /** `Aperture`, as a label. */
  settingName(setting: Setting): string { return this.family.settings[setting]; }

  /** Stops with their sign and no unit: `+1 1/3`, `−0.34`. */
  signedStops(stops: number, decimals?: number): string {
    return tight(this.typed(writeStops(stops, decimals)));
  }

  /** A number of stops without a sign, with its unit: `1 1/3 stops`, `0.04 stop`. Thirds and halves where it is one. */
  stops(stops: number): string {
    const size = Math.abs(stops);
    const parts = [3, 2].some((per) => Math.abs(size * per - Math.round(size * per)) < 0.02 && size > 0.3);
    const amount = (parts ? writeStops(Math.round(size * 6) / 6) : writeStops(size, 2)).replace(/^\+/, '');
    return tight(this.family.stops(this.typed(amount), size));
  }

  /** Measured stops without a sign, in decimals, with their unit: `5.1 stops`. */
  measuredStops(stops: number, decimals = 1): string {
    const size = Math.abs(stops);
    return tight(this.family.stops(this.number(size, decimals), size));
  }

  // —— words ——

  /** Text as the core writes it for a field, with the decimal sign of the language. Readers take either. */
  typed(text: string): string {
    return this.#point === '.' ? text : text.replace(/(\d)\.(?=\d)/g, `$1${this.#point}`);
  }

  /** The words for a count: `say.plural(2, {one: 'frame', other: 'frames'})`. */
  plural(count: number, forms: Forms): string {
    return forms[this.#plurals.select(count) as keyof Forms] ?? forms.other;
  }

  /** `a, b and c`. */
  list(items: readonly string[], type: 'conjunction' | 'disjunction' = 'conjunction'): string {
    let format = this.#lists.get(type);
    // British English, as everything here is written: no comma before the last.
    if (!format) this.#lists.set(type, format = new Intl.ListFormat(this.language === 'en' ? 'en-GB' : this.language, {type}));
    return format.format(items);
  }

  /** What stands under a field whose text cannot be used. */
  problem({value, wanted}: Problem): string {
    return this.family.problem(String(value), this.wanted(wanted));
  }

  /** What would do instead, in this language. Text that the core did not write is in it already. */
  wanted(wanted: string): string {
    const numbers: string[] = [];
    const key = wanted.replace(NUMBERS, (piece) => {
      numbers.push(piece.startsWith('“') ? piece : this.typed(piece));
      return '{}';
    });
    return this.family.wanted[key]?.replace(/\{\}/g, () => numbers.shift() ?? '') ?? wanted;
  }
}

/** Numbers, settings and quoted text inside what the core wants, units and signs included. */
const NUMBERS = /“[^”]*”|(?:f\/|ISO |[-−+])?\d+(?:[.,/]\d+| \d\/\d)*(?:["″]| ?(?:mm|cm|in|px|s|min|%)(?![a-z]))?/g;
