import type {Problem} from '../../core/problem.js';
import {writeStops, writeShutter, writeAperture} from '../../core/exposure/write.js';
import type {FlickerCheck} from '../../core/light/flicker.js';
import type {SetMove} from '../../core/light/suggest.js';
import type {Unexplained} from '../../core/light/backdrop.js';
import type {NamedLamp} from '../../core/light/set-text.js';
import type {Point} from '../../core/light/space.js';
import type {Exposure} from '../../core/exposure/stops.js';
import type {LengthUnit} from '../../core/units.js';
import {NBSP, length, percent, plain, tight} from '../sharp-zone-bar/lengths.js';
import {UNSEEN, type CloseCard, type DarkerMaterial, type LampOff, type Reading} from './reading.js';
import {facingAngles, flagOf, lampOf, numberOf, type Added, type Thing} from './things.js';
import type {Shot} from '../../core/shot/shot.js';

/** `5.1 stops`, sign left out; endless darkness is said by its own sentence. */
export const stops = (value: number): string => {
  const text = plain(Math.abs(value), 1);
  return `${text}${NBSP}${text === '0' || text === '1' || Math.abs(value) < 1 ? 'stop' : 'stops'}`;
};

const code = (value: number): string => plain(value, 0);

/** What a code looks like to the eye in a finished picture. Our choice of words. */
export function looks(value: number): string {
  if (value < 6) return 'black';
  if (value < 20) return 'near black';
  if (value < 45) return 'dark gray';
  if (value < 85) return 'a gray that shows';
  return value < 150 ? 'middle gray' : 'light gray';
}

export function verdict({brightest, darkest}: Reading): string {
  if (!Number.isFinite(brightest.belowGray)) return 'No light reaches the backdrop: code 0, black.';
  const {belowGray} = brightest;
  const where = belowGray >= 0 ? 'under' : 'over';
  const uneven = darkest.belowGray - belowGray > 0.3 ? ' at its brightest' : '';
  return `Backdrop ${stops(belowGray)} ${where} the gray card${uneven}: code ${code(brightest.code)}, reads as ${looks(brightest.code)}.`;
}

export function wishWords({short, shot, brightest}: Reading): string {
  if (short > UNSEEN) return `${stops(short)} short of the ${stops(shot.backdropWish)} you want.`;
  return Number.isFinite(brightest.belowGray) && short < -UNSEEN
    ? `As dark as you want it, with ${stops(short)} to spare.` : 'As dark as you want it.';
}

export function darkerWords({darker}: Reading): string {
  return darker ? `${MATERIALS[darker.material]} alone would give ${code(darker.code)}.` : '';
}

/** The same as a way out. */
export const swapWords = ({material, code: then}: DarkerMaterial, {brightest}: Reading): readonly [what: string, cost: string] =>
  [`Hang ${(MATERIALS[material] ?? '').toLowerCase()}`, `code ${code(then)} instead of ${code(brightest.code)}, the light as it is`];

/** Whether the figure keeps all of its light. */
export function keptWords({shares, lamps, set}: Reading): string {
  if (set.flags.length === 0) return '';
  const worst = shares.indexOf(Math.min(...shares));
  const lost = 1 - (shares[worst] ?? 1);
  if (lost < 1e-6) return 'The figure keeps all of its light.';
  return `A flag takes up to ${percent(Math.max(0.01, lost))} of the ${lamps[worst]?.name ?? ''} from part of the figure.`;
}

/** What an exposure besides the card’s does to the codes. */
export function offsetWords({offset}: Reading): string {
  if (Math.abs(offset) < UNSEEN) return 'Exposed so that a gray card beside the figure shows as code 118.';
  return `Exposed ${stops(offset)} ${offset > 0 ? 'brighter' : 'darker'} than metered: a gray card beside the figure shows that much `
    + `${offset > 0 ? 'above' : 'below'} code 118.`;
}

/** `230 mm left, 200 mm before, 300 mm up`, from the middle of the base. */
export function placeWords([x, y, z]: Point, unit: LengthUnit): string {
  const parts = [[x, 'right', 'left'], [y, 'behind', 'before'], [z, 'up', 'below']] as const;
  const said = parts.filter(([size]) => Math.abs(size) >= 0.5).map(([size, more, less]) => `${length(size, unit)} ${size > 0 ? more : less}`);
  return said.length ? said.join(', ') : 'at the figure';
}

export function nameOf(thing: Thing, shot: Shot): string {
  const lamp = lampOf(thing, shot);
  if (lamp) return lamp.name;
  if (flagOf(thing, shot)) return shot.lights.flags.length > 1 ? `flag ${numberOf(thing) + 1}` : 'flag';
  return {backdrop: 'backdrop', camera: 'camera', figure: 'figure'}[thing as 'backdrop' | 'camera' | 'figure'] ?? '';
}

export function handleWords(thing: Thing, shot: Shot, at: Point, view: 'plan' | 'side'): string {
  return `${nameOf(thing, shot)}, ${view === 'plan' ? 'from above' : 'from the side'}: ${placeWords(at, shot.unit)}. Arrow keys move it.`;
}

// —— searching ——

export function moveTitle(move: SetMove, shot: Shot): string {
  const {unit} = shot;
  if (move.thing === 'new-flag') {
    const card = move.set.flags.at(-1);
    if (!card) return '';
    const mm = (size: number): string => length(Math.round(size), unit);
    const near = move.to.map(Math.round) as unknown as Point;
    return `Stand a card of ${mm(card.width)} by ${mm(card.height)}, ${facingWords(card.facing)}, ${placeWords(near, unit)}, `
      + `against the ${shot.lights.lamps[move.index]?.name ?? ''}`;
  }
  const by = length(move.distance, unit);
  if (move.thing === 'backdrop') return `Move the backdrop ${by} back`;
  return `Move the ${nameOf(`${move.thing}${move.index}`, shot)} ${by} ${wayWords(move)}`;
}

function facingWords(facing: Point): string {
  const [turn, lean] = facingAngles(facing).map(Math.round) as [number, number];
  if (Math.abs(lean) > 84) return 'lying flat';
  const turned = Math.abs(turn) < 6 ? 'facing the camera' : `turned ${Math.abs(turn)}° to the ${turn > 0 ? 'right' : 'left'}`;
  return Math.abs(lean) < 6 ? `upright, ${turned}` : `leaning ${Math.abs(lean)}° to the ${lean > 0 ? 'camera' : 'backdrop'}, ${turned}`;
}

function wayWords({from, to}: SetMove): string {
  const way = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  const big = way.map(Math.abs).filter((size) => size > 0.5).length;
  if (big > 1) return Math.hypot(...to) < Math.hypot(...from) ? 'nearer' : 'away';
  if (Math.abs(way[0]) > 0.5) return way[0] > 0 ? 'to the right' : 'to the left';
  if (Math.abs(way[1]) > 0.5) return way[1] > 0 ? 'towards the backdrop' : 'towards the camera';
  return way[2] > 0 ? 'up' : 'down';
}

export function moveCost(move: SetMove, shot: Shot, restored: Exposure | null): string {
  const reached = `${stops(move.belowGray)} under the card`;
  const wished = move.belowGray < shot.backdropWish - UNSEEN ? ', still short of the wish' : '';
  const kept = move.keepsLight ? 'the figure keeps all of its light' : 'but a card then stands in the figure’s light';
  return `${reached}${wished}; ${kept}${paidWords(move.stops, restored)}`;
}

const paidWords = (stops: number, restored: Exposure | null): string => (restored
  ? `; the figure’s light changes by ${tight(writeStops(stops, 1))} stop, ${tight(writeShutter(restored.shutter))} restores it` : '');

export const offWords = ({lamp, belowGray, stops: change}: LampOff, {lamps}: Reading, restored: Exposure | null): readonly [what: string, cost: string] =>
  [`Do without the ${lamps[lamp]?.name ?? ''}: switch it off or cover it`, `${stops(belowGray)} under the card${paidWords(change, restored)}`];

export function restoreWords(pending: number, shutter: number): readonly [what: string, cost: string] {
  return [`Set ${tight(writeShutter(shutter))}`, `the figure now gets ${stops(pending)} ${pending > 0 ? 'more' : 'less'} light than when it was metered`];
}

export function noneWords(kind: 'flag' | 'moves'): string {
  return kind === 'flag'
    ? 'No card keeps a lamp off the backdrop without standing in the picture or in the figure’s light. Move the lamp or the backdrop.'
    : 'No single move does it. Try a card, a darker backdrop, or two moves.';
}

// —— a photo beside it ——

export function photoWords({stops: more, byLamp}: Unexplained, lamps: readonly NamedLamp[]): string {
  if (!Number.isFinite(more)) return 'By the plan no light reaches the backdrop: what the photo shows comes from a lamp that is not in it.';
  if (Math.abs(more) <= 0.2) return 'The photo agrees with the plan, within 0.2 stop.';
  const beside = `The photo’s backdrop is ${stops(more)} ${more > 0 ? 'brighter' : 'darker'} than the plan says.`;
  const ranked = byLamp.map((needed, lamp) => ({needed, lamp})).filter(({needed}) => needed !== null)
    .sort((a, b) => Math.abs(a.needed as number) - Math.abs(b.needed as number));
  const [first] = ranked;
  if (!first) return beside;
  const needed = first.needed as number;
  const likeliest = `Likeliest of the plan: the ${lamps[first.lamp]?.name ?? ''}, if it gave the backdrop ${stops(needed)} ${needed > 0 ? 'more' : 'less'}.`;
  const unknown = more > 0 && needed > 1 ? ' That is a lot: rather a window or a lamp that is not in the plan. Add it and look again.' : '';
  return `${beside} ${likeliest}${unknown}`;
}

// —— mains ——

export function flickerWords({mains, even, swing}: FlickerCheck, shutter: number): string {
  const time = tight(writeShutter(shutter));
  if (even) return `At ${time} lamps that pulse with ${mains}${NBSP}Hz mains come out even.`;
  const most = swing > 4 ? 'by several stops' : `by up to ${stops(swing)}`;
  return `At ${time} LED and tube lamps on ${mains}${NBSP}Hz mains can come out uneven, from shot to shot or in bands, ${most} if they go out between pulses.`;
}

export function evenWords(next: Exposure): readonly [what: string, cost: string] {
  return [`Set ${tight(writeShutter(next.shutter))}`, `${writeAperture(next.aperture)} for the same light`];
}

// —— cautions ——

/** Always shown. Common practice, no source. */
export const CAUTIONS: readonly string[] = [
  'Lamps get hot. Keep cloth, card, paper and boxes clear of them and never leave them burning alone; keep the distances the lamp’s maker gives.',
  'Weigh down stands and clamp cards so that nothing topples onto a lamp or the figure; lay cables where nobody trips.',
  'Do not look into bare LEDs or lamps, and shield them from others’ eyes.',
  'Keep to the rules of your place. Wiring and anything fixed to the mains is for those licensed to do it.',
];

export function closeWords({flag, lamp, gap}: CloseCard, {shot, lamps}: Reading): string {
  const name = lamps[lamp]?.name ?? '';
  const far = gap > 0 ? `only ${length(gap, shot.unit)} from the ${name}` : `at the face of the ${name}`;
  return `The ${nameOf(`flag${flag}`, shot)} stands ${far}. Move it away unless the lamp’s maker allows it.`;
}

export const MATERIALS: Readonly<Record<string, string>> = {
  'black-velvet': 'Black velvet', 'black-card': 'Black card', 'dark-gray-card': 'Dark gray card', 'gray-card': 'Gray card', 'white-card': 'White card',
};

export const ADDING: Readonly<Record<Added, readonly [button: string, name: string]>> = {
  lamp: ['A lamp', 'lamp'], window: ['A window', 'window'], ceiling: ['A ceiling lamp', 'ceiling lamp'], flag: ['A flag', 'flag'],
};

export const WORDS = {
  plate: 'Light on the backdrop', strip: 'The backdrop as it will look, with its code values', drawing: 'The set from above and from the side',
  above: 'from above', side: 'from the side', card: 'gray card', under: 'stops under the card, brightest of each column', wish: 'wish',
  shadows: 'Dark: full shadow of the lamp that a flag shades most. Hatched: its soft edge, where part of the lamp is seen.',
  find: 'Find a place for a card', move: 'Smallest move that does it', looking: 'Looking…', enough: 'It is dark enough already.',
  add: 'Add', things: 'Lamps, flags and the rest', takeAway: (name: string) => `Take the ${name} away`,
  wishField: 'Wanted under the card', wishHint: (value: number) => `stops: code ${code(value)}`, distance: 'Base to backdrop', material: 'Backdrop of',
  reflects: 'It throws back', ownMaterial: 'your own', table: 'Table top', tables: {0: 'left out', 0.04: 'black', 0.18: 'gray', 0.85: 'white'},
  name: 'Name', right: 'Right (+), left (−)', back: 'Behind (+), before (−)', up: 'Above the table', width: 'Width', high: 'Height', across: 'Diameter',
  power: 'Power', powerHint: 'stops against the others', aimRight: 'Aimed right', aimBack: 'Aimed behind', aimUp: 'Aimed above', kind: 'Face',
  kinds: {rectangle: 'rectangle', disc: 'round', small: 'small', bulb: 'bare bulb'},
  turn: 'Turned', lean: 'Leaning up', angleHint: 'degrees; 0 faces the camera', leanHint: 'degrees; 90 lies flat',
  photo: 'Compare with a photo', photoCode: 'Code of the backdrop at its brightest', photoHint: '0 to 255, from the chart of a photo of this set',
  photoTake: (value: number) => `Take code ${code(value)} from the photo`, photoWanted: 'a code from 0 to 255, above 0',
  mains: 'Mains lamps', mainsField: 'Mains', mainsNames: {50: '50 Hz', 60: '60 Hz'}, shutter: 'Shutter',
  setUp: 'Figure, camera and the set as text', text: 'The set as text', figureWidth: 'Figure, side to side', figureHeight: 'Figure’s height', baseDepth: 'Base, front to back',
  fieldWidth: 'Field width', focalLength: 'Focal length', tilt: 'Camera looks down', cautions: 'Before the lamps are on',
  degreesWanted: 'degrees from −90 to 90', powerWanted: 'a number of stops from −30 to 30',
  direct: 'The table top is left out: light that bounces off it is not counted.',
  bounced: 'Light off walls, figure and backdrop itself is not counted.',
  keys: 'Drag a dot, or move it with the arrow keys: 10 mm a step, 50 with Shift.',
} as const;

/** What keeps the set from being drawn anew. */
export const impossible = ({parameter, wanted}: Problem): string =>
  `This set cannot be worked out: ${parameter.replaceAll('-', ' ')} should be ${wanted}. The last picture stays.`;

/** A value without a field of its own that could not be used. */
export const refusedWords = ({parameter, value, wanted}: Problem): string =>
  `“${String(value)}” does not read as ${wanted} (${parameter}). The last good value stays in use.`;
