import {attributeOf} from '../core/shot/field.js';
import {readLink} from '../core/shot/link.js';
import type {ShotKey} from '../core/shot/shot.js';
import {EMPTY_STATE, type ShotState} from '../core/shot/state.js';
import {readLanguage, readTheme, readWishes} from './address.js';

/** Version of what frame and host say to each other. */
const PROTOCOL = 1;

/** Puts one element on the page as its address asks, follows the address, and tells the page around it how high it is. */
export function showFrame(tag: string): void {
  const place = document.querySelector('#check') ?? document.body;
  const {lang, dir, theme, attributes} = readWishes(tag, location.search);
  dress({lang, dir, theme});
  const element = document.createElement(tag);
  for (const [name, value] of attributes) element.setAttribute(name, value);
  let before = EMPTY_STATE;
  const follow = () => {
    const state = readLink(location.hash)?.state ?? EMPTY_STATE;
    lay(element, state, before);
    before = state;
  };
  follow();
  place.replaceChildren(element);
  addEventListener('hashchange', follow);
  speakWithHost(place);
}

function dress({lang, dir, theme}: {readonly lang?: string | undefined; readonly dir?: string; readonly theme?: string}): void {
  const root = document.documentElement;
  if (lang) root.lang = lang;
  if (dir) root.dir = dir;
  if (theme) root.dataset.theme = theme;
}

/** Gives the element what a link says, and takes back what the link before it said and this one does not. */
function lay(element: HTMLElement, state: ShotState, before: ShotState): void {
  const {shotKeys = []} = element.constructor as {readonly shotKeys?: readonly ShotKey[]};
  const properties = element as unknown as Record<string, unknown>;
  for (const key of shotKeys) {
    const name = attributeOf(key);
    const text = state.problems[key] && state.texts[key];
    if (state.values[key] !== undefined || before.values[key] !== undefined) {
      properties[key === 'focus' ? 'focusPlane' : key] = state.values[key];
    }
    // Text that was typed and is not in use comes last: the value it did not change stays.
    if (text !== undefined) element.setAttribute(name, text);
    else if (element.hasAttribute(name) && before.texts[key] !== undefined) element.removeAttribute(name);
  }
}

/**
 * To the host: `{lampblack: 1, height}` whenever the height changes, and when it asks. From the host, and nobody else:
 * `{lampblack: 1, ask: 'height'}`, `{lampblack: 1, theme, lang}`. Everything else is left alone.
 */
function speakWithHost(place: Element): void {
  if (parent === window) return;
  // Any page may show the frame, and a height is no secret: so it is told to whoever does.
  const tell = () => {
    const height = Math.ceil(place.getBoundingClientRect().bottom + scrollY);
    parent.postMessage({lampblack: PROTOCOL, height}, '*');
  };
  new ResizeObserver(tell).observe(place);
  addEventListener('message', ({source, data}: MessageEvent<unknown>) => {
    if (source !== parent || typeof data !== 'object' || !data) return;
    const said = data as {readonly lampblack?: unknown; readonly ask?: unknown; readonly theme?: unknown; readonly lang?: unknown};
    if (said.lampblack !== PROTOCOL) return;
    if (said.ask === 'height') tell();
    if (said.theme !== undefined) dress({theme: readTheme(said.theme)});
    if (typeof said.lang === 'string') dress(readLanguage(said.lang));
  });
}
