import type {Flag} from './flag.js';
import type {Lamp} from './lamp.js';
import type {Point} from './space.js';
import {Problem} from '../problem.js';
import {readLength, readNumber} from '../units.js';

/** A lamp with what it is called: `key`, `window`. */
export interface NamedLamp extends Lamp {
  readonly name: string;
}

/** What lights a set and what keeps light away, without figure, backdrop and camera, which a shot says elsewhere. */
export interface Lights {
  readonly lamps: readonly NamedLamp[];
  readonly flags: readonly Flag[];
  /** Share of the light the table top throws back; 0 = left out. */
  readonly table: number;
}

/** Most lamps, and most flags, of one text; farthest place and largest size, mm. All far past any table. */
const MOST = 12;
const FARTHEST = 20_000;

const KINDS: readonly Lamp['kind'][] = ['bulb', 'small', 'disc', 'rectangle'];

/** Where a lamp is aimed that does not say so: the middle of a small figure, mm above its base. */
const AIM: Point = [0, 0, 45];

const EXAMPLE = 'such as “key 180x180 at -230,-200,300 aim 0,0,45 power 0; flag 150x180 at 70,200,400”';

/** Which way a word points: axis and sign. */
const WAYS: Readonly<Record<string, readonly [axis: 0 | 1 | 2, sign: 1 | -1]>> = {
  right: [0, 1], left: [0, -1], back: [1, 1], behind: [1, 1], front: [1, -1], before: [1, -1], up: [2, 1], high: [2, 1],
};

const FACINGS: Readonly<Record<string, Point>> = {
  camera: [0, 1, 0], front: [0, 1, 0], back: [0, 1, 0], side: [1, 0, 0], left: [1, 0, 0], right: [1, 0, 0], up: [0, 0, 1], down: [0, 0, 1],
};

/**
 * Lamps and flags as a person writes them, one after another with a semicolon or a new line between: a name, the kind
 * (`180x180` a soft box, panel or window; `round 200`; `small`, aimed and without size; `bulb`, to all sides), `at`, `aim`
 * and `power` in stops. A piece named `flag` or `card` is a flag, with a size, `at` and `facing`; `table 18%` gives the table
 * top its reflectance. Places are right, back and up from the middle of the figure's base: `-230,-200,300`, or
 * `230 left 200 front 300 up`; mm where no unit is written. Order of the parts after the size is free.
 * @returns the lights, or a {@link Problem} naming `lights` and the piece that cannot be read. Never throws.
 */
export function readLights(text: string): Lights | Problem {
  const lamps: NamedLamp[] = [];
  const flags: Flag[] = [];
  let table = 0;
  for (const piece of text.split(/[;\n]/).map((part) => part.trim()).filter(Boolean)) {
    const read = readPiece(piece);
    if (read === undefined) return new Problem('lights', text, `a lamp or flag in “${piece}”, ${EXAMPLE}`);
    if (typeof read === 'number') table = read;
    else if ('facing' in read) flags.push(read);
    else lamps.push(read);
  }
  const lights = {lamps, flags, table};
  const problem = refuseLights(lights);
  return problem ? new Problem('lights', text, problem.wanted) : lights;
}

/** What is wrong with lights that came from a script, if anything. */
export function refuseLights(lights: Lights): Problem | undefined {
  const problem = (wanted: string): Problem => new Problem('lights', 'these lights', wanted);
  const {lamps, flags, table} = lights ?? {};
  const areThings = (list: unknown): boolean => Array.isArray(list) && list.every((thing) => typeof thing === 'object' && thing !== null);
  if (!areThings(lamps) || !areThings(flags)) return problem(`lamps and flags ${EXAMPLE}`);
  if (lamps.length < 1 || lamps.length > MOST || flags.length > MOST) return problem(`one to ${MOST} lamps and at most ${MOST} flags`);
  if (!(table >= 0 && table <= 1)) return problem('a table top that throws back 0 to 100 % of its light');
  const isPlace = (place: unknown): boolean => Array.isArray(place) && place.length === 3
    && place.every((part) => Number.isFinite(part) && Math.abs(part as number) <= FARTHEST);
  const isSize = (size: number | undefined): boolean => size !== undefined && size >= 1 && size <= FARTHEST;
  const bad = lamps.find(({name, kind, position, aim, width, height, power}) =>
    cleanName(name) !== name || !KINDS.includes(kind) || !isPlace(position) || !isPlace(aim) || !(Math.abs(power) <= 30)
    || (kind !== 'bulb' && position.every((part, axis) => part === aim[axis]))
    || ((kind === 'disc' || kind === 'rectangle') && !isSize(width)) || (kind === 'rectangle' && !isSize(height)));
  if (bad) return problem(`a lamp with a size, a place and an aim apart from it, ${EXAMPLE}`);
  const sound = flags.every(({position, facing, width, height}) =>
    isPlace(position) && isPlace(facing) && facing.some((part) => part !== 0) && isSize(width) && isSize(height));
  return sound ? undefined : problem(`a flag with a size and a place, ${EXAMPLE}`);
}

/** Text that reads back as the same lights, to six digits: places a thousandth of a millimetre apart are the same. */
export function writeLights({lamps, flags, table}: Lights): string {
  return [
    ...lamps.map((lamp) => `${headOf(lamp)} at ${places(lamp.position)}${lamp.kind === 'bulb' ? '' : ` aim ${places(lamp.aim)}`} power ${digits(lamp.power)}`),
    ...flags.map(({position, facing, width, height}) => `flag ${digits(width)}x${digits(height)} at ${places(position)} facing ${places(facing)}`),
    ...(table > 0 ? [`table ${digits(table * 100)}%`] : []),
  ].join('; ');
}

/**
 * A name a lamp can bear in the text: what would be read as something else is left out.
 * @returns 1 to 30 characters
 */
export function cleanName(name: string): string {
  const words = String(name).replace(/[;,\s]+/g, ' ').split(' ')
    .filter((word) => word && !/^(at|aim|aimed|facing|power)$/i.test(word));
  while (/^(flag|card|table)$/i.test(words[0] ?? '')) words.shift();
  return words.join(' ').slice(0, 30).trim() || 'lamp';
}

const digits = (value: number): string => String(+value.toPrecision(6) + 0);
const places = (point: Point): string => point.map(digits).join(',');

function headOf({name, kind, width = 0, height = 0}: NamedLamp): string {
  if (kind === 'rectangle') return `${name} ${digits(width)}x${digits(height)}`;
  const word = kind === 'disc' ? 'round' : kind;
  const head = name === word ? word : `${name} ${word}`;
  return kind === 'disc' ? `${head} ${digits(width)}` : head;
}

function readPiece(piece: string): NamedLamp | Flag | number | undefined {
  const [head = '', ...rest] = piece.split(/(?<!\baimed)\s+(?=(?:at|aim|aimed at|facing|power)(?:\s|$))/i);
  const parts = new Map<string, string>();
  for (const part of rest) {
    const [, word = '', said = ''] = /^(aimed at|\w+)\s*(.*)$/is.exec(part) ?? [];
    const key = word.toLowerCase().replace('aimed at', 'aim');
    if (parts.has(key)) return undefined;
    parts.set(key, said.trim());
  }
  const share = /^table(?: top)?\s+(.+?)(\s*%)?$/i.exec(head);
  if (share) return rest.length ? undefined : +((readNumber(share[1] ?? '') ?? NaN) / (share[2] ? 100 : 1)).toPrecision(9);
  const at = readPlace(parts.get('at') ?? '');
  if (!at) return undefined;
  return /^(flag|card)(?=\s|$)/i.test(head) ? readFlag(head, at, parts) : readLamp(head, at, parts);
}

function readFlag(head: string, position: Point, parts: ReadonlyMap<string, string>): Flag | undefined {
  const size = readSize(head.replace(/^\w+\s*/, ''));
  const said = parts.get('facing') ?? 'camera';
  const facing = FACINGS[said.toLowerCase()] ?? readPlace(said);
  if (!size || size[0] || !facing || parts.has('aim') || parts.has('power')) return undefined;
  return {position, facing, width: size[1], height: size[2]};
}

function readLamp(head: string, position: Point, parts: ReadonlyMap<string, string>): NamedLamp | undefined {
  const aim = parts.has('aim') ? readPlace(parts.get('aim') ?? '') : AIM;
  const power = readNumber((parts.get('power') ?? '0').replace(/\s*stops?$/i, ''));
  if (!aim || power === undefined || parts.has('facing')) return undefined;
  const common = {position, aim, power};
  const size = readSize(head);
  if (size) return {name: cleanName(size[0]), kind: 'rectangle', ...common, width: size[1], height: size[2]};
  const round = /^(?:(.*)\s)?round\s+([\d.,]+\s*(?:[a-z]{1,2}|["″])?)$/i.exec(head);
  if (round) {
    const width = readLength('lights', round[2] ?? '');
    return width instanceof Problem ? undefined : {name: cleanName(round[1] || 'round'), kind: 'disc', ...common, width};
  }
  const bare = /^(?:(.*)\s)?(bulb|small)$/i.exec(head);
  if (!bare) return undefined;
  const kind = (bare[2] as string).toLowerCase() as 'bulb' | 'small';
  return {name: cleanName(bare[1] || kind), kind, ...common};
}

/** `key 180x180`, `window 60 x 90 cm`: what stands before the size, and the size. */
function readSize(head: string): readonly [name: string, width: number, height: number] | undefined {
  const found = /^(?:(.*?)\s+)?([\d.]+)\s*([a-z"″]*)\s*[x×]\s*([\d.]+\s*([a-z"″]*))$/i.exec(head);
  if (!found) return undefined;
  const [, name = '', across, unit, down = '', last] = found;
  const width = readLength('lights', `${across} ${unit || last || 'mm'}`);
  const height = readLength('lights', down);
  return width instanceof Problem || height instanceof Problem ? undefined : [name, width, height];
}

/** Three lengths, or lengths with the way each goes. A unit at the end counts for all. */
function readPlace(text: string): Point | undefined {
  const words = text.trim().match(/[+\-−–]?(?:\d+\.?\d*|\.\d+)\s*(?:(?:mm|cm|m|in|ft)\b|["″'′])?\s*[a-z]*/gi) ?? [];
  if (words.join('').replace(/\s/g, '') !== text.replace(/[\s,]/g, '')) return undefined;
  const unit = /(?:mm|cm|m|in|ft|["″'′])$/i.exec(text.trim())?.[0] ?? 'mm';
  const point: [number, number, number] = [0, 0, 0];
  const parts = words.map((word) => /^(\S*?[\d.])\s*(mm\b|cm\b|m\b|in\b|ft\b|["″'′])?\s*([a-z]*)$/i.exec(word.trim()));
  const named = parts.some((part) => part?.[3]);
  if (!named && parts.length !== 3) return undefined;
  for (const [index, part] of parts.entries()) {
    const mm = part ? readLength('lights', `${part[1]} ${part[2] ?? unit}`) : NaN;
    const way = named ? WAYS[part?.[3]?.toLowerCase() ?? ''] : [index as 0 | 1 | 2, 1] as const;
    if (mm instanceof Problem || !way) return undefined;
    point[way[0]] = way[1] * mm + 0;
  }
  return point;
}
