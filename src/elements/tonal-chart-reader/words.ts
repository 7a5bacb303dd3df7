import type {Problem} from '../../core/problem.js';
import type {Exposure, Setting} from '../../core/exposure/stops.js';
import type {Trade, TradeLimit} from '../../core/exposure/trade.js';
import {writeAperture, writeIso, writeShutter, writeStops} from '../../core/exposure/write.js';
import type {CropShare} from '../../core/shot/shot.js';
import type {Advice} from '../../core/tone/advice.js';
import type {ChannelEdges, Edges} from '../../core/tone/clipping.js';
import type {CropChange} from '../../core/tone/cropped.js';
import type {Crop} from '../../core/tone/pixels.js';
import {COLOUR_CHANNELS, type Channel} from '../../core/tone/tally.js';

/** No-break space: a number and its unit stay on one line. */
const S = '\u00a0';

export const CHANNEL_NAMES: Readonly<Record<Channel, string>> = {
  red: 'Red', green: 'Green', blue: 'Blue', brightness: 'Brightness',
};

export const CHANNEL_LETTERS: Readonly<Record<Channel, string>> = {red: 'R', green: 'G', blue: 'B', brightness: 'L'};

/** `1.4 %`; small shares keep a digit that is not 0, and what is there is never written as nothing. */
export function share(part: number, short = false): string {
  const percent = part * 100;
  if (percent === 0) return short ? '0' : `0${S}%`;
  if (percent < 0.01) return short ? '<0.1%' : `<${S}0.01${S}%`;
  if (percent > 99.9 && percent < 100) return `over 99.9${S}%`;
  const digits = percent < 0.1 ? percent.toFixed(2) : percent < 10 ? percent.toFixed(1) : String(Math.round(percent));
  return `${digits}${short ? '' : S}%`;
}

/** A figure of the scale, with a true minus. */
export function writeFigure(number: number): string {
  return String(number).replace('-', '−');
}

/** Measured stops, without a sign. */
export function stops(amount: number): string {
  const text = Math.abs(amount).toFixed(1);
  if (text === '0.0') return `under 0.1${S}stop`;
  return `${text}${S}${text === '1.0' ? 'stop' : 'stops'}`;
}

/** Room to an edge, as a table has it. */
export function room(amount: number): string {
  // Black all over has no light that an exposure could multiply.
  return amount === 0 ? 'none' : Number.isFinite(amount) ? stops(amount) : 'no light';
}

/** Whole thirds, without a sign: `2/3 stop`, `1 1/3 stops`. */
export function thirds(count: number): string {
  const size = Math.abs(count);
  return `${writeStops(size / 3).replace('+', '').replace(' ', S)}${S}${size > 3 ? 'stops' : 'stop'}`;
}

const moreOrLess = (count: number): string => `${thirds(count)} ${count > 0 ? 'more' : 'less'}`;

const lower = (channel: Channel): string => CHANNEL_NAMES[channel].toLowerCase();

/** What to do with the exposure, and the one fact that says so. */
export function verdict(advice: Advice, edges: Edges): string {
  const {reason, channel, room} = advice;
  switch (reason) {
    case 'both-lost':
      return `Both edges are cut off, ${share(edges.anyAtWhite)} at white and ${share(edges.brightness.atBlack)} at black: no exposure holds this light.`;
    case 'white-lost':
      return `${whiteLost(channel, edges)} of the crop: expose ${moreOrLess(advice.thirds)}.`;
    case 'black-lost':
      return advice.thirds > 0
        ? `${share(advice.share)} of the crop is cut off at black and there is room to lift it: expose ${moreOrLess(advice.thirds)}.`
        : `${share(advice.share)} of the crop is cut off at black, and the highlights leave no room to lift it.`;
    case 'too-dark':
      return advice.thirds > 0 ? `The ${advice.intent === 'even' ? 'middle of the chart' : 'figure'} can take more light: expose ${moreOrLess(advice.thirds)}.`
        : 'The picture is dark, and its highlights leave no room to lift it.';
    case 'too-bright':
      return advice.thirds < 0 ? `The middle of the chart lies high: expose ${moreOrLess(advice.thirds)}.`
        : 'The picture is bright, and its shadows leave no room to lower it.';
    case 'fits':
      return `Keep this exposure: nothing that counts is cut off, and the ${brightest(channel, edges)} ${stops(room)} below white.`;
  }
}

/** Why, and what it rests on. */
export function reasonFor(advice: Advice, edges: Edges): string {
  return [whyOf(advice, edges), hidden(edges)].filter(Boolean).join(' ');
}

function whyOf({reason, intent, channel, room, roomAfter, thirds: count}: Advice, edges: Edges): string {
  const leans = intent === 'dark-backdrop' ? ' Before a dark backdrop a chart that leans left is right.' : '';
  switch (reason) {
    case 'both-lost':
      return 'Soften or move the lamp, or lift the shadows with a reflector or a second lamp, then shoot again.';
    case 'white-lost':
      return 'How far the light reaches past white is not in the file and had to be estimated: shoot again and look.';
    case 'black-lost':
      return count > 0 ? 'How deep the shadows go is not in the file and had to be estimated: shoot again and look.'
        : 'A reflector or a second lamp would lift them; more exposure would cost the highlights.';
    case 'too-dark':
      return `The ${brightest(channel, edges)} ${stops(room)} below white as shot${count > 0 ? `, and ${stops(roomAfter)} below it after.` : '.'}${leans}`;
    case 'too-bright':
      return `The median is over middle gray by more than half a stop. The darkest tones lie ${stops(room)} above black${count < 0 ? `, and ${stops(roomAfter)} above it after.` : '.'}`;
    case 'fits':
      return intent === 'dark-backdrop' ? leans.trim() : 'The median lies within half a stop of middle gray.';
  }
}

/** What is cut off at white, and how much of it. */
function whiteLost(channel: Channel, edges: Edges): string {
  const lost = COLOUR_CHANNELS.filter((colour) => edges[colour].whiteLost);
  const most = share(edges[channel].atWhite);
  if (lost.length < 2) return `${CHANNEL_NAMES[channel]} is cut off at white in ${most}`;
  const alike = lost.every((colour) => edges[colour].atWhite === edges[channel].atWhite);
  return `${colours(lost)} are cut off at white${alike ? '' : `, ${lower(channel)}`} in ${most}`;
}

/** The brightest there is: of one colour, or of all where they are alike. */
function brightest(channel: Channel, edges: Edges): string {
  return COLOUR_CHANNELS.every((colour) => edges[colour].brightest === edges[channel].brightest) ? 'brightest tones lie'
    : `brightest ${lower(channel)} lies`;
}

/** Colours that are lost although brightness is not. */
function hidden({hiddenAtWhite, hiddenAtBlack}: Edges): string {
  if (hiddenAtWhite.length > 0) {
    return `${colours(hiddenAtWhite)} ${hiddenAtWhite.length > 1 ? 'clip' : 'clips'} at white though brightness does not: a chart of brightness alone would hide it.`;
  }
  if (hiddenAtBlack.length > 0) {
    return `${colours(hiddenAtBlack)} ${hiddenAtBlack.length > 1 ? 'reach' : 'reaches'} 0 though brightness does not, as strong colours do; more light would not bring it back.`;
  }
  return '';
}

/** `Red, green and blue`. */
function colours([first, ...rest]: readonly Channel[]): string {
  const names = [...(first ? [CHANNEL_NAMES[first]] : []), ...rest.map(lower)];
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** What the crop did to the reading. */
export function cropSentence({kept, matters, inside, whole, adviceWithout}: CropChange): string {
  if (kept > 0.9995) return 'The whole picture is counted. Draw the frame round what will be kept: what lies outside should not speak.';
  const at = Math.abs(inside.anyAtBlack - whole.anyAtBlack) > Math.abs(inside.anyAtWhite - whole.anyAtWhite) ? 'black' : 'white';
  const [now, then] = at === 'white' ? [inside.anyAtWhite, whole.anyAtWhite] : [inside.anyAtBlack, whole.anyAtBlack];
  const reading = share(now) === share(then) ? `The crop keeps ${share(kept)} of the picture`
    : `The crop keeps ${share(kept)} of the picture and has ${share(now)} with a colour at ${at}, where the whole picture has ${share(then)}`;
  return matters ? `${reading}. Without it the advice would be: ${brief(adviceWithout)}.` : `${reading}. The advice would be the same without it.`;
}

/** An advice in a few words. */
function brief({thirds: count, reason}: Advice): string {
  if (count !== 0) return moreOrLess(count);
  return reason === 'fits' ? 'keep this exposure' : reason === 'both-lost' ? 'no exposure holds it' : 'no exposure helps';
}

const WRITE: Readonly<Record<Setting, (value: number) => string>> = {
  aperture: writeAperture, shutter: writeShutter, iso: writeIso,
};

const setting = (name: Setting, value: number): string => WRITE[name](value).replaceAll(' ', S);

/** An exposure in the order people say it. */
export function exposure({aperture, shutter, iso}: Exposure): string {
  return `${setting('aperture', aperture)}, ${setting('shutter', shutter)}, ${setting('iso', iso)}`;
}

/** The setting an advice leads to: `1/4 s → 0.4 s at f/11`. */
export function wayOut(from: Exposure, to: Exposure, pay: Setting): string {
  const held = (['aperture', 'shutter', 'iso'] as const).filter((name) => name !== pay && (name !== 'iso' || pay === 'aperture'));
  const [first, last] = [setting(pay, from[pay]), setting(pay, to[pay])];
  const at = held.map((name) => setting(name, to[name])).join(', ');
  return first === last ? `${last} at ${at}` : `${first} → ${last} at ${at}`;
}

/** What the way out brings, against the photo. */
export function wayCost(count: number, {from, to, limit, rounding}: Trade): string {
  const change = `${thirds(count)} ${count > 0 ? 'brighter' : 'darker'} than this photo`;
  const moved = from.aperture !== to.aperture && from.shutter !== to.shutter ? `, which was taken at ${exposure(from)}` : '';
  const rest = limit ? `${limitSentence(limit)}` : Math.abs(rounding) > 0.05 ? `, with ${stops(rounding)} of rounding` : '';
  return `${change}${moved}${rest}`;
}

const LIMIT_NAMES: Readonly<Record<Setting, string>> = {aperture: 'aperture', shutter: 'shutter', iso: 'ISO'};

function limitSentence({setting: name, short}: TradeLimit): string {
  return `, as far as the ${LIMIT_NAMES[name]} goes: ${stops(short)} ${short > 0 ? 'short' : 'too much'}`;
}

export const WORDS = {
  element: 'Tonal chart of a photo',
  invite: 'Drop a photo here, paste one or choose a file: you will see what is cut off at black and white inside the part you keep, and how many thirds of a stop to change.',
  stays: 'It is read on this device and goes nowhere.',
  open: 'Choose a photo',
  openOther: 'Choose another photo',
  opening: 'Reading the photo…',
  dropNow: 'Let go to read this photo',
  picture: 'The photo, with the frame of what will be kept',
  frame: 'Crop frame',
  spot: 'Spot that is measured',
  frameKeys: 'Arrow keys move the frame, with Shift they size it; Page Up and Page Down grow and shrink it. Home keeps the whole picture.',
  whole: 'Keep it all',
  byNumbers: 'Crop by numbers',
  sides: {left: 'Left', top: 'Top', width: 'Width', height: 'Height'},
  chart: 'Show the chart of',
  shown: {colours: 'Colours', brightness: 'Brightness', red: 'Red', green: 'Green', blue: 'Blue'},
  intent: 'The picture is meant as',
  intents: {'dark-backdrop': 'a lit figure, dark backdrop', even: 'even, as much light as dark'},
  table: 'Both edges, inside the crop',
  columns: {channel: 'Channel', black: 'At 0', below: 'Room below', white: 'At 255', above: 'Room above'},
  black: 'black',
  white: 'white',
  gray: 'gray card',
  lost: 'cut off',
  done: 'The bench is set to what this photo asks for:',
  transparent: 'There is nothing to count in this crop: all of it is transparent. The last reading stays.',
} as const;

/** The chart in a sentence, for those who do not see it. */
export function chartSentence(edges: readonly ChannelEdges[]): string {
  return edges.map(({channel, atBlack, atWhite, roomAbove, roomBelow}) =>
    `${CHANNEL_NAMES[channel]}: ${share(atBlack)} at black, ${share(atWhite)} at white, room below ${room(roomBelow)}, above ${room(roomAbove)}`).join('. ');
}

/** Where the frame is, as a slider says it. */
export function frameText({left, top, width, height}: CropShare): string {
  const per = (part: number) => `${Math.round(part * 100)}${S}%`;
  return `${per(width)} by ${per(height)}, ${per(left)} from the left, ${per(top)} from the top`;
}

/** The crop as it is written under the photo. */
export function cropText({width, height}: Crop, picture: {readonly width: number; readonly height: number}): string {
  const size = `${width}${S}×${S}${height}${S}px`;
  return width === picture.width && height === picture.height ? `${size}, all of it` : `${size} of ${picture.width}${S}×${S}${picture.height}`;
}

/** What else a share of the crop's side comes to. */
export function sidePixels(part: number, pixels: number): string {
  return `${Math.round(part * pixels)}${S}px`;
}

/** A share as it is typed. */
export function sideText(part: number): string {
  return `${+(part * 100).toFixed(2)}${S}%`;
}

/** Why text or a value for the shot is not used. */
export function refused(name: string, {value, wanted}: Problem): string {
  const given = typeof value === 'string' || typeof value === 'number' ? `“${value}”` : 'What was set';
  return `${name}: ${given} does not read as ${wanted}. The last good value stays in use.`;
}

/** How the drawing is to be read. */
export function scaleNote(moved: boolean, before: boolean): string {
  return `Stops of light below white, sRGB codes under them; heights grow with the root of the share.${moved ? ' Dashed: where the chart goes with the advice.' : ''}${before ? ' Thin: the earlier shot.' : ''}`;
}
