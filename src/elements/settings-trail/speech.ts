import type {TrailLink, TrailStep} from '../../core/exposure/judge-trail.js';
import type {Mend} from '../../core/exposure/mend-trail.js';
import {SETTINGS, type Exposure, type Setting} from '../../core/exposure/stops.js';
import type {Trail} from '../../core/exposure/trail.js';
import {tight} from '../shared/say.js';
import type {TrailWords} from './words/en.js';

/** Why a step was off: how its digits were taken, or that no reading of them helps. */
export type Slip = 'seconds' | 'fraction' | 'point' | 'needed' | 'digits';

/** What a mend leaves: everything balances, the one step that did not, or some that still do not. */
export type Then = 'all' | 'it' | 'some';

/** Stops that nobody would see in a picture and no dial can show. */
const UNSEEN = 0.015;

const unseen = (stops: number): boolean => Math.abs(stops) < UNSEEN;

const capital = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1);

/** What a mend writes, as it is said. What is added to a step comes with the comma that parts it from what stands there. */
const plain = ({say}: TrailWords, {text}: Mend): string => say.typed(text.replace(/^, /, ''));

/** Names of settings inside a sentence. */
const named = ({say, names}: TrailWords, settings: readonly Setting[]): string => say.list(settings.map((setting) => names[setting]));

/** `f/11 at 0.6 s`, with the ISO where the trail says it. */
export function exposureWords(words: TrailWords, {aperture, shutter, iso}: Exposure, withIso: boolean): string {
  const pair = words.pair(words.say.aperture(aperture), words.say.shutter(shutter));
  return withIso ? words.triple(pair, words.say.iso(iso)) : pair;
}

/** Signed stops as a number: thirds and halves as fractions, others in decimals. */
export function signedStops({say}: TrailWords, stops: number): string {
  if (unseen(stops)) return '0';
  const per = [2, 3].find((parts) => Math.abs(stops * parts - Math.round(stops * parts)) < 0.05);
  return per && Math.abs(stops) > 0.3 ? say.signedStops(Math.round(stops * per) / per) : say.signedStops(stops, 2);
}

function lightWords(words: TrailWords, stops: number): string {
  if (unseen(stops)) return words.same;
  return stops > 0 ? words.brighter(words.say.stops(stops)) : words.darker(words.say.stops(stops));
}

function meantWords(words: TrailWords, {meant}: TrailLink): string {
  const wish = meant?.wish;
  if (wish === 'brighter' || wish === 'darker') return words.some[wish];
  return lightWords(words, typeof wish === 'number' ? wish : 0);
}

// —— the verdict ——

/** One step that does not do what was meant. `at` counts from 0. */
function offWords(words: TrailWords, {steps, isoSaid}: Trail, at: number): string {
  const {exposure, link} = steps[at] ?? {};
  if (!exposure || !link) return '';
  const setting = exposureWords(words, exposure, isoSaid && link.cost.iso !== 0);
  if (unseen(link.light)) return words.asBright(at + 1, setting, at, meantWords(words, link));
  const light = lightWords(words, link.light);
  return link.meant?.wish === 0 ? words.off(at + 1, setting, light, at) : words.offFromMeant(at + 1, setting, light, at, meantWords(words, link));
}

/** What one mend would do for the trail. */
function mendSentence(words: TrailWords, {broken}: Trail, mend: Mend): string {
  const {step, how, was, repairs} = mend;
  const place = repairs.includes(step) && repairs.length === 1 ? undefined : step + 1;
  const meant = tight(plain(words, mend));
  if (how === 'needed') return words.needed(meant, place);
  return words.slip(meant, tight(was), place, repairs.length < broken.length ? 'some' : broken.length > 1 ? 'all' : 'it');
}

function allWell(words: TrailWords, {steps}: Trail, judged: number): string {
  const links = steps.flatMap(({link}) => link ?? []);
  if (judged === 0) return words.noneJudged(steps.length);
  if (judged < links.length) return words.someAsMeant(judged, links.length);
  return links.every(({meant}) => meant?.wish === 0) ? words.allSame(steps.length) : words.allAsMeant(steps.length);
}

/** The first step that is wrong, and the slip that would explain it best. */
function brokenWords(words: TrailWords, trail: Trail, first: number): readonly string[] {
  const {steps, broken, mends} = trail;
  const count = broken.length > 1 ? words.severalOff(broken.length, steps.length) : '';
  const mend = mends.find(({repairs}) => repairs.includes(first));
  return [count, offWords(words, trail, first), mend ? mendSentence(words, trail, mend) : ''];
}

export function verdictWords(words: TrailWords, trail: Trail): string {
  const {steps, broken: [first]} = trail;
  if (!steps.length) return words.empty;
  if (steps.length === 1) return words.single;
  const judged = steps.filter(({link}) => typeof link?.holds === 'boolean').length;
  const unread = steps.flatMap(({missing}, at) => (missing.length ? [`${at + 1}`] : []));
  const found = first !== undefined ? brokenWords(words, trail, first)
    : [judged === 0 && unread.length ? words.nothingYet : allWell(words, trail, judged)];
  return [...found, unread.length ? words.cannotJudge(words.say.list(unread), unread.length) : ''].filter(Boolean).join(' ');
}

// —— mends ——

function slipOf({how}: Mend): Slip {
  if (how === 'seconds' || how === 'fraction' || how === 'needed') return how;
  return how === 'point-lost' ? 'point' : 'digits';
}

/** What a mend writes, and what comes of it; `instead` when it stands in for the one before it. */
export function mendWords(words: TrailWords, mend: Mend, instead: boolean): readonly [what: string, cost: string] {
  const {step, was, stops, repairs} = mend;
  const what = was ? (instead ? words.mendInstead : words.mend)(step + 1, plain(words, mend), was)
    : (instead ? words.addInstead : words.add)(step + 1, plain(words, mend));
  const [slip, light] = [words.slips[slipOf(mend)], lightWords(words, stops)];
  if (repairs.length === 1 && repairs[0] === step) return [what, words.mendCost(slip, light)];
  return [what, words.mendCostElsewhere(slip, light, words.say.list(repairs.map((at) => `${at + 1}`)), repairs.length)];
}

/** What a mend has done. */
export function mendedWords(words: TrailWords, mend: Mend): string {
  return mend.was ? words.mended(mend.step + 1, plain(words, mend), mend.was) : words.added(mend.step + 1, plain(words, mend));
}

// —— from step to step ——

/** What happened between two steps. `at` is the later one, from 0. */
export function linkWords(words: TrailWords, link: TrailLink, at: number): string {
  const {light, holds, meant} = link;
  const done = lightWords(words, light);
  const sentence = meant?.wish === 'other' ? words.linkOther(done)
    : !meant ? words.linkUnsaid(done)
    : !holds ? (unseen(light) ? words.linkSame(at, meantWords(words, link)) : words.linkOff(done, at, meantWords(words, link)))
    : meant.by === 'before' ? words.linkAsked(done, at)
    : meant.by === 'assumed' ? words.linkAssumed(done) : words.linkMeant(done);
  return capital(sentence);
}

/** Settings that changed and the light each brought: `Aperture −2, time +2`. */
export function changeWords(words: TrailWords, {cost}: TrailLink): string {
  const changed = SETTINGS.filter((setting) => !unseen(cost[setting]));
  if (!changed.length) return words.unchanged;
  return capital(changed.map((setting) => `${words.names[setting]}\u00a0${signedStops(words, cost[setting])}`).join(', '));
}

// —— a step ——

/** What a step leaves unsaid, and how what it says was taken. */
export function stepNotes(words: TrailWords, {carried, said, shutter}: TrailStep, isoSaid: boolean): readonly string[] {
  const notes: string[] = [];
  const over = carried.filter((setting) => setting !== 'iso' || isoSaid);
  if (over.length > 0 && over.length < (isoSaid ? 3 : 2)) notes.push(capital(words.carried(named(words, over))));
  if (shutter?.how === 'bare') notes.push(words.taken(shutter.text, words.say.shutter(shutter.value)));
  if (said?.taken === 'next' && said.next !== 'other' && said.next !== null) {
    notes.push(words.asksNext(said.text, typeof said.next === 'number' ? lightWords(words, said.next) : words.some[said.next]));
  }
  return notes;
}

/** Why a step cannot be judged, and what in it looks like a setting and is not in use; empty when all is well. */
export function stepProblem(words: TrailWords, {missing, aperture, shutter, iso, unread}: TrailStep): string {
  return [
    !aperture && !shutter && !iso ? words.noSetting : missing.length ? words.missing(named(words, missing)) : '',
    unread.length ? words.unread(words.say.list(unread.map(({text}) => words.quote(text))), unread.length) : '',
  ].filter(Boolean).join(' ');
}

// —— the dial, and text that was refused ——

/** What putting a step on the dial will replace. */
export function dialWillWords(words: TrailWords, start: Exposure, setting: Exposure, withIso: boolean): string {
  const [from, now] = [exposureWords(words, start, withIso), exposureWords(words, setting, withIso)];
  return from === now ? words.dialWillBoth(now) : words.dialWill(from, now);
}

/** What the dial was given. */
export function dialledWords(words: TrailWords, setting: Exposure, correction: number, withIso: boolean): string {
  const text = exposureWords(words, setting, withIso);
  return correction ? words.dialledAsking(text, lightWords(words, correction)) : words.dialled(text);
}

/** Longest piece of a text that is said back. */
const LONGEST_QUOTE = 60;

export function refusedWords(words: TrailWords, text: string, wanted: string, kept: boolean): string {
  const short = text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;
  return (kept ? words.refusedKept : words.refused)(short, wanted);
}
