/** A page of somebody else's, written into a frame: its own style sheet, its own ideas. */
export interface HostPage {
  readonly frame: HTMLIFrameElement;
  readonly page: Window & typeof globalThis;
  readonly errors: string[];
}

/** Elements of the guild's scenario with everything they need in their attributes; `src` is the page's own affair. */
export const FIGURE = 'focal-length="60 mm" field-width="187 mm" base-depth="90 mm" overhang-front="18 mm" overhang-front-height="20 mm" '
  + 'overhang-back="26 mm" overhang-back-height="45 mm" figure-height="95 mm" tilt="7" focus="36 mm"';

/** Markup of each element, by tag. */
export const MARKUP: Readonly<Record<string, string>> = {
  'stop-trade-dial': '<stop-trade-dial metered-aperture="f/2.8" metered-shutter="1/25" aperture="f/8" shutter="0.3 s">f/8 at 0.3 s</stop-trade-dial>',
  'sharp-zone-bar': `<sharp-zone-bar aperture="f/8" ${FIGURE}>Sharp in the middle</sharp-zone-bar>`,
  'settings-trail': '<settings-trail><ol><li>f/2.8, 1/25 s</li><li>f/5.6, 1/6 s</li><li>f/11, 1/6 s</li></ol></settings-trail>',
  'shot-plan': `<shot-plan metered-aperture="f/8" metered-shutter="0.3 s" ${FIGURE} room="1.2 m">Ways to get all of it sharp</shot-plan>`,
  'backdrop-shade': `<backdrop-shade backdrop-distance="300 mm" ${FIGURE}>A gray that shows</backdrop-shade>`,
  'shot-sheet': `<shot-sheet aperture="f/8" shutter="0.3 s" ${FIGURE}>f/8, 0.3 s</shot-sheet>`,
  'tonal-chart-reader': '<tonal-chart-reader src="/site/shots/aperture-f8.jpg">The chart</tonal-chart-reader>',
  'gray-card-check': '<gray-card-check src="/site/shots/card-neutral.jpg">The card</gray-card-check>',
};

/**
 * Writes a page. Nothing is added to it: without a doctype it is read in quirks mode.
 * @param html - the whole document
 */
export function writePage(html: string, {width = 700, height = 900} = {}): HostPage {
  const frame = document.createElement('iframe');
  frame.style.cssText = `width:${width}px;height:${height}px;border:0;display:block`;
  document.body.append(frame);
  const page = frame.contentWindow as Window & typeof globalThis;
  const errors: string[] = [];
  page.document.open();
  page.addEventListener('error', (event) => { errors.push(event.message); });
  page.addEventListener('unhandledrejection', (event) => { errors.push(String(event.reason)); });
  page.document.write(html);
  page.document.close();
  return {frame, page, errors};
}

/** The line that brings an element to life, as built. */
export const scriptOf = (tag: string, query = ''): string => `<script type="module" src="/dist/standalone/${tag}.js${query}"></script>`;

/** All elements of a page that have come to life, once every one has said something. */
export async function awake({page}: HostPage, tags: readonly string[]): Promise<HTMLElement[]> {
  const elements = tags.flatMap((tag) => [...page.document.querySelectorAll<HTMLElement>(tag)]);
  const until = performance.now() + 8000;
  const draw = () => new Promise((resolve) => { page.requestAnimationFrame(() => page.requestAnimationFrame(resolve)); });
  // What was drawn for the width before is drawn once more for the width that is there; a photo may be read anew.
  for (await draw(); elements.some((element) => !verdictOf(element)); await draw()) {
    if (performance.now() > until) {
      throw new Error(`silent: ${elements.filter((element) => !verdictOf(element)).map(({localName}) => localName).join(', ')}`);
    }
  }
  return elements;
}

export const verdictOf = (element: Element): string =>
  element.shadowRoot?.querySelector('.verdict')?.textContent?.replace(/\s+/g, ' ').trim() ?? '';

/** Everything in an element's shadow that is displayed. */
export function shownIn(element: Element, selector: string): HTMLElement[] {
  return [...element.shadowRoot?.querySelectorAll<HTMLElement>(selector) ?? []].filter((found) => found.checkVisibility());
}
