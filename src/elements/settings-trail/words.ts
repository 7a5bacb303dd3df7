import type {TrailLink, TrailStep} from '../../core/exposure/judge-trail.js';
import type {Mend} from '../../core/exposure/mend-trail.js';
import type {Exposure, Setting} from '../../core/exposure/stops.js';
import {SETTINGS} from '../../core/exposure/stops.js';
import type {Trail} from '../../core/exposure/trail.js';
import {writeSetting, writeStops} from '../../core/exposure/write.js';

/** Stops that nobody would see in a picture and no dial can show. */
const UNSEEN = 0.015;

/** Numbers and their units stay on one line. */
const together = (text: string): string => text.replaceAll(' ', '\u00a0');

const NAMES: Readonly<Record<Setting, string>> = {aperture: 'aperture', shutter: 'time', iso: 'ISO'};

const listed = (words: readonly string[]): string => (
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function exposureWords({aperture, shutter, iso}: Exposure, withIso: boolean): string {
  const pair = `${writeSetting('aperture', aperture)} at ${together(writeSetting('shutter', shutter))}`;
  return withIso ? `${pair}, ${together(writeSetting('iso', iso))}` : pair;
}

/** Signed stops as a number: thirds and halves as fractions, others in decimals. */
export function signedStops(stops: number): string {
  if (Math.abs(stops) < UNSEEN) return '0';
  const per = [2, 3].find((parts) => Math.abs(stops * parts - Math.round(stops * parts)) < 0.05);
  return per && Math.abs(stops) > 0.3 ? writeStops(Math.round(stops * per) / per) : writeStops(stops, 2);
}

/** A number of stops without a sign: `1 1/3 stops`. */
function stopsWords(stops: number): string {
  return together(`${signedStops(Math.abs(stops)).replace('+', '')} ${Math.abs(stops) > 1.001 ? 'stops' : 'stop'}`);
}

function lightWords(stops: number): string {
  return Math.abs(stops) < UNSEEN ? 'the same light' : `${stopsWords(stops)} ${stops > 0 ? 'brighter' : 'darker'}`;
}

function wishWords({meant}: TrailLink): string {
  return typeof meant?.wish === 'number' ? lightWords(meant.wish) : `something ${meant?.wish ?? ''}`;
}

/** One step that does not do what was meant. `at` counts from 0. */
function offWords({steps, isoSaid}: Trail, at: number): string {
  const {exposure, link} = steps[at] ?? {};
  if (!exposure || !link) return '';
  const what = `Step ${at + 1} does not balance: ${exposureWords(exposure, isoSaid && link.cost.iso !== 0)} is`;
  if (link.meant?.wish === 0) return `${what} ${lightWords(link.light)} than step ${at}.`;
  return `${what} ${Math.abs(link.light) < UNSEEN ? 'as bright as' : `${lightWords(link.light)} than`} step ${at}; ${wishWords(link)} was meant.`;
}

/** What one mend would do for the trail. */
function mendSentence({broken}: Trail, {step, how, text, was, repairs}: Mend): string {
  const rest = repairs.length < broken.length ? '' : broken.length > 1 ? ': then all balances' : ': it would balance';
  const place = repairs.includes(step) && repairs.length === 1 ? '' : ` in step ${step + 1}`;
  if (how === 'needed') return `It would balance with ${text.replace(/^, /, '')}${place}.`;
  return `${text} was probably meant${place}, not ${was}${rest}.`;
}

function allWell({steps}: Trail, judged: number): string {
  const links = steps.flatMap(({link}) => link ?? []);
  if (judged === 0) return `${steps.length} steps. Nothing says what was meant of the light, so none is judged.`;
  if (judged < links.length) return `What was meant is said of ${judged} of ${links.length} changes, and it is what they do.`;
  const all = steps.length === 2 ? 'Both' : `All ${steps.length}`;
  return links.every(({meant}) => meant?.wish === 0) ? `${all} steps give the same light.` : `${all} steps do what was meant.`;
}

export function verdictWords(trail: Trail): string {
  const {steps, broken, mends} = trail;
  if (!steps.length) return 'Write or paste settings, and the stops between them are worked out.';
  if (steps.length === 1) return 'One setting found; a second is needed to compare it with.';
  const judged = steps.filter(({link}) => typeof link?.holds === 'boolean').length;
  const [first] = broken;
  const unread = steps.flatMap(({missing}, at) => (missing.length ? [at + 1] : []));
  const gaps = unread.length ? ` ${unread.length > 1 ? 'Steps' : 'Step'} ${listed(unread.map(String))} cannot be judged.` : '';
  if (first === undefined) return `${judged === 0 && unread.length ? 'Nothing to compare yet.' : allWell(trail, judged)}${gaps}`;
  const [mend] = mends;
  const count = broken.length > 1 ? `${broken.length} steps of ${steps.length} do not balance. ` : '';
  if (!mend) return `${count}${offWords(trail, first)}${gaps}`;
  const shown = mend.repairs.includes(mend.step) ? mend.step : mend.repairs[0] ?? first;
  return `${count}${offWords(trail, shown)} ${mendSentence(trail, mend)}${gaps}`;
}

/** What a mend writes, and what comes of it; `instead` when it stands in for the one before it. */
export function mendWords({step, was, text, how, stops, repairs}: Mend, instead: boolean): readonly [what: string, cost: string] {
  const plain = text.replace(/^, /, '');
  const why = how === 'seconds' ? 'seconds, not a fraction' : how === 'fraction' ? 'a fraction, not seconds'
    : how === 'point-lost' ? 'the point was lost' : how === 'needed' ? 'what the light asks for' : 'the same digits';
  const mended = repairs.length > 1 ? `; mends steps ${listed(repairs.map((at) => `${at + 1}`))}` : repairs[0] === step ? '' : `; mends step ${(repairs[0] ?? 0) + 1}`;
  return [`${instead ? 'Or step' : 'Step'} ${step + 1}: ${was ? `${plain} for ${was}` : `add ${plain}`}`, `${why}, ${lightWords(stops)}${mended}`];
}

/** What happened between two steps. `at` is the later one, from 0. */
export function linkWords(link: TrailLink, at: number): string {
  const {light, holds, meant} = link;
  const done = capital(lightWords(light));
  if (meant?.wish === 'other') return `${done} by the settings; the light itself was changed.`;
  if (!meant) return `${done}. Nothing says what was meant.`;
  if (!holds) return `${done} than step ${at}; ${wishWords(link)} was meant.`.replace('The same light than', 'The same light as');
  if (meant.by === 'before') return `${done}, as step ${at} asked.`;
  return meant.by === 'assumed' ? `${done}.` : `${done}, as meant.`;
}

/** Settings that changed and the light each brought: `aperture −2, time +2`. */
export function changeWords({cost}: TrailLink): string {
  const changed = SETTINGS.filter((setting) => Math.abs(cost[setting]) >= UNSEEN);
  return changed.length ? `${capital(changed.map((setting) => together(`${NAMES[setting]} ${signedStops(cost[setting])}`)).join(', '))}` : 'Nothing changed';
}

/** What a step leaves unsaid, and how what it says was taken. */
export function stepNotes(step: TrailStep, isoSaid: boolean): readonly string[] {
  const {carried, said, shutter} = step;
  const over = carried.filter((setting) => setting !== 'iso' || isoSaid).map((setting) => NAMES[setting]);
  return [
    over.length > 0 && over.length < (isoSaid ? 3 : 2) ? `${capital(listed(over))} as in the step before.` : '',
    shutter?.how === 'bare' ? `“${shutter.text}” taken as ${together(writeSetting('shutter', shutter.value))}.` : '',
    said?.taken === 'next' && said.next !== 'other' ? `“${said.text}” asks the next step for ${typeof said.next === 'number' ? lightWords(said.next) : `something ${said.next ?? ''}`}.` : '',
  ].filter(Boolean);
}

/** Why a step cannot be judged; empty when it can. */
export function stepProblem({missing, aperture, shutter, iso}: TrailStep): string {
  if (!aperture && !shutter && !iso) return 'No setting can be read here: wanted is something such as f/8 1/60.';
  return missing.length ? `No ${listed(missing.map((setting) => NAMES[setting]))} is said up to here, so nothing can be compared.` : '';
}

/** What looks like a setting in a step and is not in use. */
export function unreadWords({unread}: TrailStep): string {
  const words = unread.map(({text}) => `“${text}”`);
  return words.length ? `${listed(words)} ${words.length > 1 ? 'are' : 'is'} not in use: no setting, or one too many.` : '';
}

export function toleranceWords({tolerance}: Trail): string {
  const share = {2: 'half', 4: 'a quarter of', 6: 'a sixth of'}[Math.round(1 / tolerance)] ?? '';
  return `Up to ${share} a stop counts as nothing: half a click of the dial.`;
}

export function refusedWords(text: string, wanted: string, kept: boolean): string {
  const short = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  return `“${short}” does not read as ${wanted}.${kept ? ' The last good list stays in use.' : ''}`;
}

export const WORDS = {
  trail: 'Settings, step by step',
  light: 'light',
  depth: 'depth',
  signs: {true: '=', false: '≠', null: '·'},
  paste: 'Paste a lesson, or change this one',
  pasteLabel: 'Running text, or one setting a line',
  read: 'Read it',
  expect: 'Where nothing is said of the light',
  expects: {'same-light': 'the same light is meant', nothing: 'nothing is meant'},
  back: 'Back to the text as written',
  copy: 'Copy the list',
  copied: 'Copied',
  copyHere: 'Copying is not allowed here. Take the list from this field:',
  wanted: 'a setting such as f/8 1/60',
  expectWanted: 'same-light or nothing',
  dial: 'Put on the dial',
  dialOf: (step: number) => `Put on the dial: step ${step}`,
} as const;
