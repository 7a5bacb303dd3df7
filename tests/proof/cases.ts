import {fixture, html, waitUntil} from '@open-wc/testing';
import '../../src/elements/all.js';
import type {LitElement} from 'lit';
import {shot} from '../photo/pictures.js';

/** Attributes of an element in a state worth looking at; the photo is opened once it stands there. */
export interface Case {
  readonly tag: string;
  /** Which state, in a few words. */
  readonly state: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly photo?: string;
  /** Light children, one line each. */
  readonly items?: readonly string[];
  /** Whether everything that can be unfolded is. */
  readonly unfolded?: boolean;
}

/** Invented: the Fenwick Painting Guild's lantern bearer, satchel past the front of the base and cloak past its back. */
export const BEARER = {
  'base-depth': '90 mm', 'overhang-front': '18 mm', 'overhang-front-height': '20 mm', 'overhang-back': '26 mm',
  'overhang-back-height': '45 mm', 'figure-height': '95 mm', 'tilt': '7',
} as const;
const LENS = {'focal-length': '60 mm', 'field-width': '187 mm', 'frame-width': '6000', 'picture-width': '1600'} as const;
const LAMPS = 'key 180x180 at -230,-200,300 aim 0,0,45 power 0; fill 420x420 at 360,-330,180 aim 0,0,45 power -1.5; flag 150x180 at 70,200,400';

/** Every element as it comes, at work, wide open, and with values that cannot be used. */
export const CASES: readonly Case[] = [
  {tag: 'stop-trade-dial', state: 'as it comes', attributes: {}},
  {tag: 'stop-trade-dial', state: 'at work', attributes: {'metered-aperture': 'f/2.8', 'metered-shutter': '1/25', 'aperture': 'f/11', 'shutter': '0"6'}, unfolded: true},
  {tag: 'stop-trade-dial', state: 'with ways out', attributes: {'metered-aperture': 'f/2.8', 'metered-shutter': '1/25', 'aperture': 'f/11', 'shutter': '1/6'}},
  {tag: 'stop-trade-dial', state: 'with problems', attributes: {aperture: 'eleven', shutter: 'soon', iso: '-0', correction: 'lots'}, unfolded: true},

  {tag: 'sharp-zone-bar', state: 'as it comes', attributes: {}},
  {tag: 'sharp-zone-bar', state: 'at work', attributes: {...BEARER, ...LENS, aperture: 'f/8', focus: '36 mm'}, unfolded: true},
  {tag: 'sharp-zone-bar', state: 'in inches', attributes: {...BEARER, ...LENS, aperture: 'f/22', unit: 'in'}},
  {tag: 'sharp-zone-bar', state: 'with problems', attributes: {'base-depth': 'deep', 'aperture': 'eleven', 'focus': 'there', 'tilt': '1e308'}, unfolded: true},

  {tag: 'tonal-chart-reader', state: 'as it comes', attributes: {}},
  {tag: 'tonal-chart-reader', state: 'at work', attributes: {crop: '20% 2% 60% 81%'}, photo: 'white-edge.jpg', unfolded: true},
  {tag: 'tonal-chart-reader', state: 'with a spot', attributes: {spot: '6% 8% 10% 10%', shown: 'red'}, photo: 'exposure-plus1.jpg'},
  {tag: 'tonal-chart-reader', state: 'with problems', attributes: {crop: 'the middle', aperture: 'eleven', spot: 'here'}, photo: 'exposure-minus2.jpg', unfolded: true},

  {tag: 'gray-card-check', state: 'as it comes', attributes: {}},
  {tag: 'gray-card-check', state: 'at work', attributes: {}, photo: 'card-warm.jpg', unfolded: true},
  {tag: 'gray-card-check', state: 'with a card not to be trusted', attributes: {}, photo: 'card-glare.jpg'},
  {tag: 'gray-card-check', state: 'with problems', attributes: {aperture: 'eleven', iso: 'fast'}, unfolded: true},

  {tag: 'backdrop-shade', state: 'as it comes', attributes: {}},
  {tag: 'backdrop-shade', state: 'at work', attributes: {...BEARER, 'lights': LAMPS, 'backdrop-distance': '300 mm', 'backdrop-reflectance': 'black card'}, unfolded: true},
  {tag: 'backdrop-shade', state: 'with problems', attributes: {'lights': 'a candle', 'backdrop-distance': 'far', 'backdrop-reflectance': 'dark'}, unfolded: true},

  {tag: 'settings-trail', state: 'as it comes', attributes: {}},
  {tag: 'settings-trail', state: 'at work', attributes: {}, items: ['f/2.8, 1/25 s', 'f/5.6, 1/6 s', 'f/11, 1/6 s'], unfolded: true},
  {tag: 'settings-trail', state: 'with problems', attributes: {steps: 'f/8 1/25\nno numbers here\nf/11 1/13'}, unfolded: true},

  {tag: 'shot-plan', state: 'as it comes', attributes: {}},
  {tag: 'shot-plan', state: 'at work', attributes: {...BEARER, 'figure-width': '80 mm', 'room': '1.2 m', 'focal-lengths': '60, 100 mm'}, unfolded: true},
  {tag: 'shot-plan', state: 'with problems', attributes: {'room': 'small', 'base-depth': 'deep', 'focal-lengths': 'long'}, unfolded: true},

  {tag: 'shot-sheet', state: 'as it comes', attributes: {}},
  {tag: 'shot-sheet', state: 'at work', attributes: {...BEARER, ...LENS, aperture: 'f/8', note: 'The lantern bearer, second evening.'}, unfolded: true},
  {tag: 'shot-sheet', state: 'with problems', attributes: {aperture: 'eleven', tilt: 'steep'}, unfolded: true},
];

export const TAGS: readonly string[] = [...new Set(CASES.map(({tag}) => tag))];

type Photographic = LitElement & {open?: (file: Blob) => Promise<boolean>};

/** Puts a case into a page of its own: so wide, so large a type, on such a paper. */
export async function stand(
  {tag, attributes, photo, items = [], unfolded = false}: Case,
  {width = 1000, size = 16, dark = false}: {readonly width?: number; readonly size?: number; readonly dark?: boolean} = {},
): Promise<Photographic> {
  const page = await fixture<HTMLElement>(html`<div></div>`);
  page.style.cssText = `inline-size: ${width}px; font: ${size}px/1.5 sans-serif; ${dark
    ? 'color-scheme: dark; background: #14130f; color: #eee' : 'color-scheme: light; background: #fff; color: #1d1a15'}`;
  const el = document.createElement(tag) as Photographic;
  for (const [name, value] of Object.entries(attributes)) el.setAttribute(name, value);
  if (items.length) {
    const list = document.createElement('ol');
    list.append(...items.map((text) => Object.assign(document.createElement('li'), {textContent: text})));
    el.append(list);
  }
  page.append(el);
  await el.updateComplete;
  if (photo) {
    await el.open?.(await shot(photo));
    await waitUntil(() => el.shadowRoot?.querySelector('.verdict')?.textContent?.trim(), `a verdict of ${tag}`, {timeout: 10_000});
  }
  await settled(el);
  if (unfolded) await unfold(el);
  return el;
}

/** Opens everything that can be unfolded, and waits for what is loaded only then. */
export async function unfold(el: LitElement): Promise<void> {
  for (let layer = 0; layer < 2; layer++) {
    for (const details of el.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await settled(el);
  }
}

/** Waits until nothing is on its way any more: a plan, a measured width, parts that are loaded late. */
export async function settled(el: LitElement): Promise<void> {
  await waitUntil(() => el.shadowRoot?.querySelector('[aria-busy=true]') === null, `${el.localName} rests`, {timeout: 15_000, interval: 20});
  for (let picture = 0; picture < 4; picture++) await new Promise(requestAnimationFrame);
  await el.updateComplete;
}

export const text = (node: Element | ShadowRoot | null | undefined): string => node?.textContent?.replace(/\s+/g, ' ').trim() ?? '';

/** A test says so once where an engine cannot be asked, instead of passing in silence. */
export const isChromium = navigator.userAgent.includes('Chrome/');
export const isWebKit = !isChromium && navigator.userAgent.includes('AppleWebKit');
