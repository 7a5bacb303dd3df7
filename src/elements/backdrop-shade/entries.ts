import {html, nothing, type TemplateResult} from 'lit';
import {GRAY_CARD, REFLECTANCES} from '../../core/light/reflectances.js';
import type {NamedLamp} from '../../core/light/set-text.js';
import {cleanName} from '../../core/light/set-text.js';
import type {Point} from '../../core/light/space.js';
import {Problem} from '../../core/problem.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import {codeFromLinear} from '../../core/tone/light.js';
import {readLength, readNumber} from '../../core/units.js';
import {choiceField, textField, type TextField} from '../shared/fields.js';
import {fieldLength} from '../sharp-zone-bar/lengths.js';
import {facingAngles, facingFrom, flagOf, lampOf, withFlag, withLamp, type Thing} from './things.js';
import {MATERIALS, WORDS} from './words.js';

/** What the entries need of their element. */
export interface EntryHost {
  readonly shot: Shot;
  readonly field: (key: ShotKey, label: string, more?: Partial<TextField> & {readonly write?: () => string}) => TemplateResult;
  readonly act: (changes: Partial<Shot>) => void;
  readonly type: (key: ShotKey, text: string) => void;
  /** Texts of the chosen thing that could not be used, by field. */
  readonly wrong: ReadonlyMap<string, Problem>;
  /** Keeps a text that cannot be used, or forgets it. */
  readonly refuse: (id: string, problem: Problem | undefined) => void;
}

type LengthKey = 'backdropDistance' | 'figureWidth' | 'figureHeight' | 'baseDepth' | 'fieldWidth' | 'focalLength';

/** A length of the shot; a bare number means the unit that is shown. */
export function lengthOfShot({shot, field, type}: EntryHost, key: LengthKey, label: string): TemplateResult {
  return field(key, label, {
    write: () => fieldLength(shot[key], shot.unit),
    onType: (text) => { type(key, shot.unit !== 'mm' && readNumber(text) !== undefined ? `${text.trim()} ${shot.unit}` : text); },
  });
}

/** Wish, backdrop and table. */
export function backdropFields(host: EntryHost): TemplateResult {
  const {shot, act} = host;
  const material = Object.entries(REFLECTANCES).find(([, share]) => share === shot.backdropReflectance)?.[0] ?? 'own';
  const table = String(shot.lights.table);
  const tables = Object.entries(WORDS.tables);
  const share = (value: number): string => `${+(value * 100).toFixed(1)} %`;
  return html`
    ${host.field('backdropWish', WORDS.wishField, {hint: WORDS.wishHint(codeFromLinear(GRAY_CARD * 2 ** -shot.backdropWish)), inputmode: 'decimal', write: () => String(+shot.backdropWish.toFixed(2))})}
    ${lengthOfShot(host, 'backdropDistance', WORDS.distance)}
    ${choiceField({
      id: 'material', label: WORDS.material, value: material,
      options: [...Object.entries(MATERIALS), ...(material === 'own' ? [['own', WORDS.ownMaterial] as const] : [])],
      onChoose: (name) => { if (name in REFLECTANCES) act({backdropReflectance: REFLECTANCES[name as keyof typeof REFLECTANCES]}); },
    })}
    ${host.field('backdropReflectance', WORDS.reflects, {write: () => share(shot.backdropReflectance)})}
    ${choiceField({
      id: 'table', label: WORDS.table, value: table,
      options: [...tables, ...(tables.some(([value]) => value === table) ? [] : [[table, share(shot.lights.table)] as const])],
      onChoose: (value) => { act({lights: {...shot.lights, table: Number(value)}}); },
    })}`;
}

/** Sizes and places of the chosen thing, typed. */
export function thingFields(thing: Thing, host: EntryHost): TemplateResult {
  const {shot} = host;
  const lamp = lampOf(thing, shot);
  if (lamp) return lampFields(thing, lamp, host);
  const flag = flagOf(thing, shot);
  if (flag) {
    const [turn, lean] = facingAngles(flag.facing);
    const put = (change: Parameters<typeof withFlag>[1]): void => { host.act(withFlag(thing, change, shot)); };
    const degrees = (id: string, label: string, hint: string, value: number, use: (value: number) => void): TemplateResult =>
      numberField(host, {id, label, hint, value, least: -90, most: 90, wanted: WORDS.degreesWanted, use});
    return html`${placeFields(host, 'at', [WORDS.right, WORDS.back, WORDS.up], flag.position, (position) => { put({position}); })}
      ${sizeField(host, 'width', WORDS.width, flag.width, (width) => { put({width}); })}
      ${sizeField(host, 'height', WORDS.high, flag.height, (height) => { put({height}); })}
      ${degrees('turn', WORDS.turn, WORDS.angleHint, turn, (value) => { put({facing: facingFrom(value, lean)}); })}
      ${degrees('lean', WORDS.lean, WORDS.leanHint, lean, (value) => { put({facing: facingFrom(turn, value)}); })}`;
  }
  if (thing === 'figure') {
    return html`${lengthOfShot(host, 'figureWidth', WORDS.figureWidth)}${lengthOfShot(host, 'figureHeight', WORDS.figureHeight)}
      ${lengthOfShot(host, 'baseDepth', WORDS.baseDepth)}`;
  }
  if (thing === 'camera') {
    return html`${lengthOfShot(host, 'fieldWidth', WORDS.fieldWidth)}${lengthOfShot(host, 'focalLength', WORDS.focalLength)}
      ${host.field('tilt', WORDS.tilt, {write: () => `${+shot.tilt.toFixed(1)}°`})}`;
  }
  return html``;
}

function lampFields(thing: Thing, lamp: NamedLamp, host: EntryHost): TemplateResult {
  const put = (change: Partial<NamedLamp>): void => { host.act(withLamp(thing, change, host.shot)); };
  const {kind, width = 150, height = 150} = lamp;
  return html`
    ${textField({id: 'lamp-name', label: WORDS.name, text: lamp.name, onType: (text) => { put({name: cleanName(text)}); }})}
    ${numberField(host, {
      id: 'power', label: WORDS.power, hint: WORDS.powerHint, value: lamp.power, least: -30, most: 30, wanted: WORDS.powerWanted, use: (power) => { put({power}); },
    })}
    ${placeFields(host, 'at', [WORDS.right, WORDS.back, WORDS.up], lamp.position, (position) => { put({position}); })}
    ${kind === 'bulb' ? nothing
      : placeFields(host, 'aim', [WORDS.aimRight, WORDS.aimBack, WORDS.aimUp], lamp.aim, (aim) => { put({aim}); })}
    ${choiceField({
      id: 'kind', label: WORDS.kind, value: kind, options: Object.entries(WORDS.kinds) as [NamedLamp['kind'], string][],
      onChoose: (next) => { put({kind: next, width, height}); },
    })}
    ${kind === 'rectangle' || kind === 'disc'
      ? sizeField(host, 'width', kind === 'disc' ? WORDS.across : WORDS.width, width, (size) => { put({width: size}); }) : nothing}
    ${kind === 'rectangle' ? sizeField(host, 'height', WORDS.high, height, (size) => { put({height: size}); }) : nothing}`;
}

function placeFields(host: EntryHost, id: string, labels: readonly string[], place: Point, use: (place: Point) => void): TemplateResult[] {
  return labels.map((label, axis) => lengthField(host, `${id}-${axis}`, label, place[axis] as number, -20_000,
    (mm) => { use([0, 1, 2].map((at) => (at === axis ? mm : place[at])) as unknown as Point); }));
}

const sizeField = (host: EntryHost, id: string, label: string, size: number, use: (mm: number) => void): TemplateResult =>
  lengthField(host, id, label, size, 1, use);

function lengthField(host: EntryHost, id: string, label: string, value: number, least: number, use: (mm: number) => void): TemplateResult {
  const {unit} = host.shot;
  return heldField(host, {id, label, text: value ? fieldLength(value, unit) : `0 ${unit}`}, (text) => {
    const mm = readLength(id, text, unit);
    return mm instanceof Problem || (mm >= least && mm <= 20_000) ? mm : new Problem(id, text, `a length from ${least} to 20000 mm`);
  }, use);
}

function numberField(host: EntryHost, {id, label, hint, value, least, most, wanted, use}: {
  readonly id: string; readonly label: string; readonly hint: string; readonly value: number; readonly least: number; readonly most: number;
  readonly wanted: string; readonly use: (value: number) => void;
}): TemplateResult {
  return heldField(host, {id, label, hint, text: String(+value.toFixed(2) + 0).replace('-', '−')}, (text) => {
    const number = readNumber(text.replace(/\s*(°|stops?)\s*$/i, '')) ?? NaN;
    return number >= least && number <= most ? number : new Problem(id, text, wanted);
  }, use);
}

/** A field of the chosen thing: what cannot be used stays as typed, with the reason beside it. */
function heldField<T>(
  host: EntryHost, field: Pick<TextField, 'id' | 'label' | 'text' | 'hint'>, read: (text: string) => T | Problem, use: (value: T) => void,
): TemplateResult {
  const problem = host.wrong.get(field.id);
  return textField({
    ...field, text: problem ? String(problem.value) : field.text, problem,
    onType: (text) => {
      const value = read(text);
      host.refuse(field.id, value instanceof Problem ? new Problem(value.parameter, text, value.wanted) : undefined);
      if (!(value instanceof Problem)) use(value);
    },
  });
}
