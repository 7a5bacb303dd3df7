import {html, nothing, type TemplateResult} from 'lit';
import type {NamedLamp} from '../../core/light/set-text.js';
import {cleanName} from '../../core/light/set-text.js';
import type {Point} from '../../core/light/space.js';
import {Problem} from '../../core/problem.js';
import {readLength, readNumber} from '../../core/units.js';
import {choiceField, textField, type TextField} from '../shared/fields.js';
import {keptName, nameOf} from './speech.js';
import {facingAngles, facingFrom, flagOf, lampOf, withFlag, withLamp, type Thing} from './things.js';
import {lengthOfShot, type EntryHost} from './wish-view.js';

/** Sizes and places of the chosen thing, typed. */
export function thingFields(thing: Thing, host: EntryHost): TemplateResult {
  const {shot, words} = host;
  const lamp = lampOf(thing, shot);
  if (lamp) return lampFields(thing, lamp, host);
  const flag = flagOf(thing, shot);
  if (flag) {
    const [turn, lean] = facingAngles(flag.facing);
    const put = (change: Parameters<typeof withFlag>[1]): void => { host.act(withFlag(thing, change, shot)); };
    const degrees = (id: string, label: string, hint: string, value: number, use: (value: number) => void): TemplateResult =>
      numberField(host, {id, label, hint, value, least: -90, most: 90, wanted: words.degreesWanted, use});
    return html`${placeFields(host, 'at', [words.right, words.back, words.up], flag.position, (position) => { put({position}); })}
      ${sizeField(host, 'width', words.width, flag.width, (width) => { put({width}); })}
      ${sizeField(host, 'height', words.high, flag.height, (height) => { put({height}); })}
      ${degrees('turn', words.turn, words.turnHint, turn, (value) => { put({facing: facingFrom(value, lean)}); })}
      ${degrees('lean', words.lean, words.leanHint, lean, (value) => { put({facing: facingFrom(turn, value)}); })}`;
  }
  if (thing === 'figure') {
    return html`${lengthOfShot(host, 'figureWidth', words.figureWidth)}${lengthOfShot(host, 'figureHeight', words.figureHeight)}
      ${lengthOfShot(host, 'baseDepth', words.baseDepth)}`;
  }
  if (thing === 'camera') {
    return html`${lengthOfShot(host, 'fieldWidth', words.fieldWidth)}${lengthOfShot(host, 'focalLength', words.focalLength)}
      ${host.field('tilt', words.tilt, {write: () => `${words.say.number(shot.tilt, 1)}°`})}`;
  }
  return html``;
}

function lampFields(thing: Thing, lamp: NamedLamp, host: EntryHost): TemplateResult {
  const put = (change: Partial<NamedLamp>): void => { host.act(withLamp(thing, change, host.shot)); };
  const {words} = host;
  const {kind, width = 150, height = 150} = lamp;
  return html`
    ${textField({id: 'lamp-name', say: words.say, label: words.name, text: nameOf(words, thing, host.shot), onType: (text) => { put({name: cleanName(keptName(words, text))}); }})}
    ${numberField(host, {
      id: 'power', label: words.power, hint: words.powerHint, value: lamp.power, least: -30, most: 30, wanted: words.powerWanted, use: (power) => { put({power}); },
    })}
    ${placeFields(host, 'at', [words.right, words.back, words.up], lamp.position, (position) => { put({position}); })}
    ${kind === 'bulb' ? nothing
      : placeFields(host, 'aim', [words.aimRight, words.aimBack, words.aimUp], lamp.aim, (aim) => { put({aim}); })}
    ${choiceField({
      id: 'kind', label: words.kind, value: kind, options: Object.entries(words.kinds) as [NamedLamp['kind'], string][],
      onChoose: (next) => { put({kind: next, width, height}); },
    })}
    ${kind === 'rectangle' || kind === 'disc'
      ? sizeField(host, 'width', kind === 'disc' ? words.across : words.width, width, (size) => { put({width: size}); }) : nothing}
    ${kind === 'rectangle' ? sizeField(host, 'height', words.high, height, (size) => { put({height: size}); }) : nothing}`;
}

function placeFields(host: EntryHost, id: string, labels: readonly string[], place: Point, use: (place: Point) => void): TemplateResult[] {
  return labels.map((label, axis) => lengthField(host, `${id}-${axis}`, label, place[axis] as number, -20_000,
    (mm) => { use([0, 1, 2].map((at) => (at === axis ? mm : place[at])) as unknown as Point); }));
}

const sizeField = (host: EntryHost, id: string, label: string, size: number, use: (mm: number) => void): TemplateResult =>
  lengthField(host, id, label, size, 1, use);

function lengthField(host: EntryHost, id: string, label: string, value: number, least: number, use: (mm: number) => void): TemplateResult {
  const {say} = host.words;
  const {unit} = host.shot;
  return heldField(host, {id, label, text: value ? say.fieldLength(value, unit) : `0 ${unit}`}, (text) => {
    const mm = readLength(id, text, unit);
    return mm instanceof Problem || (mm >= least && mm <= 20_000) ? mm : new Problem(id, text, `a length from ${least} to 20000 mm`);
  }, use);
}

function numberField(host: EntryHost, {id, label, hint, value, least, most, wanted, use}: {
  readonly id: string; readonly label: string; readonly hint: string; readonly value: number; readonly least: number; readonly most: number;
  readonly wanted: string; readonly use: (value: number) => void;
}): TemplateResult {
  return heldField(host, {id, label, hint, text: host.words.say.number(value, 2)}, (text) => {
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
    ...field, say: host.words.say, text: problem ? String(problem.value) : field.text, problem,
    onType: (text) => {
      const value = read(text);
      host.refuse(field.id, value instanceof Problem ? new Problem(value.parameter, text, value.wanted) : undefined);
      if (!(value instanceof Problem)) use(value);
    },
  });
}
