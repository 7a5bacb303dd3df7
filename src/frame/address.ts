/** What the address of a frame asks for beside the shot. */
export interface FrameWishes {
  /** Language as an address may name one; `undefined` leaves the page's own. */
  readonly lang: string | undefined;
  readonly dir: 'ltr' | 'rtl';
  readonly theme: Theme;
  /** The element's own attributes, such as `steps`. */
  readonly attributes: ReadonlyMap<string, string>;
}

export type Theme = 'auto' | 'light' | 'dark';

/** Attributes that are no values of a shot, and so not in its link, by tag. */
const OWN_ATTRIBUTES: Readonly<Record<string, readonly string[]>> = {
  'settings-trail': ['steps', 'expect'],
  'tonal-chart-reader': ['src', 'earlier-src', 'spot', 'shown'],
  'gray-card-check': ['src'],
  'backdrop-shade': ['mains'],
  'sharp-zone-bar': ['detail'],
};

/** Scripts that are written from right to left; common practice, no source. */
const RIGHT_TO_LEFT = /^(Adlm|Arab|Hebr|Mand|Mend|Nkoo|Rohg|Samr|Syrc|Thaa|Yezi)$/;

/**
 * The wishes in the query of a frame's address: `?tag=stop-trade-dial&lang=de&theme=dark`. What cannot be used is as if
 * it were not there.
 * @param query - with or without `?`
 */
export function readWishes(tag: string, query: string): FrameWishes {
  const asked = new URLSearchParams(query);
  const lang = asked.get('lang') ?? '';
  const theme = asked.get('theme');
  return {
    ...readLanguage(lang),
    theme: readTheme(theme),
    attributes: new Map((OWN_ATTRIBUTES[tag] ?? []).flatMap((name) => {
      const value = asked.get(name);
      return value === null || (name.endsWith('src') && !isBeside(value)) ? [] : [[name, value] as const];
    })),
  };
}

/** Language and writing direction of a language tag; English ways for what is none. */
export function readLanguage(tag: string): Pick<FrameWishes, 'lang' | 'dir'> {
  try {
    const locale = new Intl.Locale(tag);
    const {script} = locale.maximize();
    return {lang: locale.baseName, dir: script && RIGHT_TO_LEFT.test(script) ? 'rtl' : 'ltr'};
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {lang: undefined, dir: 'ltr'};
  }
}

export function readTheme(text: unknown): Theme {
  return text === 'light' || text === 'dark' ? text : 'auto';
}

/** Whether an address stays in the frame's own folder, so that a link cannot make it ask anything of anybody else. */
function isBeside(address: string): boolean {
  return /^(?![./\\])[\w\-./]+$/.test(address) && !address.includes('..') && !address.includes('//');
}
