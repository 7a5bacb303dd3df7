import {nearestClick} from '../../core/exposure/clicks.js';
import {softnessOf} from '../../core/optics/blur.js';
import {workingAperture} from '../../core/optics/lens.js';
import {axialToRuler, depthToCover} from '../../core/optics/outline.js';
import type {PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {GiveUp, Plan} from '../../core/optics/plan.js';
import type {Problem} from '../../core/problem.js';
import {diffractionInPixels} from '../../core/shot/framing.js';
import {wayChanges, wishChanges} from '../../core/shot/plan-job.js';
import type {Shot, ShotKey} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import type {Say} from '../shared/say.js';
import {FREE, tipHeight, valueOf, type Grip} from './handles.js';
import type {PlanWords} from './words/en.js';

/** A length with its sign. */
export const signedLength = (say: Say, mm: number, unit: LengthUnit): string => `${mm < -0.05 ? '−' : ''}${say.length(mm, unit)}`;

/** Focal lengths are in mm whatever else is. */
export const lensName = ({say}: PlanWords, mm: number): string => `${say.number(mm, 1)}\u00a0mm`;

/** A share of contrast; finer where there is next to none. */
export const contrastText = ({say}: PlanWords, contrast: number): string => say.percent(Math.max(0, contrast), contrast < 0.0995 ? 1 : 0);

export const framesText = (words: PlanWords, count: number): string => words.frames(count, words.say.whole(count));

const pixels = ({say}: PlanWords, count: number): string => `${say.whole(count)}\u00a0px`;

/** A place to point at. */
export function placeText(words: PlanWords, mark: number, unit: LengthUnit): string {
  if (Math.abs(mark) < 0.05) return words.atEdge;
  return mark < 0 ? words.beforeBase(words.say.length(mark, unit)) : words.behindEdge(words.say.length(mark, unit));
}

/** The printed f-number a body shows that counts close-up in; nothing where that is the marked one. */
export function shownAperture({say}: PlanWords, {lens}: Pick<PlanWay, 'lens'>, {apertureShown}: Shot): string | undefined {
  if (apertureShown === 'marked') return undefined;
  const working = workingAperture(lens.aperture, lens.magnification, lens.pupilRatio);
  const shown = say.aperture(nearestClick('aperture', working, 3).value);
  return shown === say.aperture(lens.aperture) ? undefined : shown;
}

/** `f/11 at 0.6 s`, in the terms of the body. */
function settingText(words: PlanWords, way: PlanWay, shot: Shot): string {
  const {say} = words;
  const [marked, shown] = [say.aperture(way.lens.aperture), shownAperture(words, way, shot)];
  return words.pair(shown ? words.shown(marked, shown) : marked, say.shutter(way.shutter.value));
}

const several = (job: PlanJob): boolean => job.lenses.length > 1;

// —— the verdict ——

/**
 * What a plan comes to, in a sentence.
 * @param way - the one that is drawn; none where the plan has none
 */
export function verdictText(words: PlanWords, plan: Plan, way: PlanWay | undefined, job: PlanJob, shot: Shot): string {
  if (!way) return impossible(words, plan, shot);
  const {say} = words;
  const airy = diffractionInPixels({...shot, ...wayChanges(way, shot)});
  const softness = softnessOf(airy, shot.blurLimit);
  const held = heldText(words, way, job, shot, softness === 'sharp');
  return softness === 'sharp' ? held : `${held} ${words.softened(softness === 'a-little', say.pixels(airy), say.pixels(shot.blurLimit))}`;
}

function heldText(words: PlanWords, way: PlanWay, job: PlanJob, shot: Shot, sharp: boolean): string {
  const {unit} = shot;
  const [setting, from] = [settingText(words, way, shot), words.say.length(way.cameraDistance, unit)];
  const lens = lensName(words, way.lens.focalLength);
  if (way.frames.length > 1) {
    const frames = framesText(words, way.frames.length);
    return several(job) ? words.sharpInFramesWith(sharp, lens, frames, setting, from) : words.sharpInFrames(sharp, frames, setting, from);
  }
  const focus = placeText(words, way.focus, unit);
  return several(job) ? words.sharpInOneWith(sharp, lens, setting, from, focus) : words.sharpInOne(sharp, setting, from, focus);
}

function impossible(words: PlanWords, {giveUp: [first], oneIsEnough}: Plan, shot: Shot): string {
  if (!first) return words.hopeless;
  return oneIsEnough ? words.giveUpOne(wishText(words, first, shot)[0]) : words.giveUpAll;
}

/** What the verdict rests on. */
export function reasonText(words: PlanWords, job: PlanJob, {unit}: Shot): string {
  const {say} = words;
  const depth = axialToRuler(depthToCover(job.outline, job.tilt).spread, job.tilt);
  return words.rests(
    say.length(depth, unit), `${say.whole(job.pictureWidth)} × ${pixels(words, job.pictureHeight)}`, say.pixels(job.blurPixels),
    leastText(words, job));
}

/** Contrast that the finest line keeps in every way. */
export const leastText = (words: PlanWords, {leastContrast = 0.3}: PlanJob): string => contrastText(words, leastContrast);

/** Said in place of numbers that cannot be. */
export function troubleText(words: PlanWords, {parameter, value, wanted}: Problem): string {
  return parameter === 'aperture' || parameter === 'shutter' ? words.nothingToSet(parameter)
    : words.noPlan(parameter, String(value), words.say.wanted(wanted));
}

/** The value of the shot that each wish is. */
const WISHED = {
  frames: 'mostFrames', 'picture-width': 'pictureWidth', 'blur-limit': 'blurLimit', contrast: 'leastContrast', shutter: 'shutterSlowest',
  room: 'room', margin: 'margin',
} as const satisfies Readonly<Record<GiveUp['wish'], ShotKey>>;

function wished(words: PlanWords, wish: GiveUp['wish'], value: number, unit: LengthUnit): string {
  const {say} = words;
  switch (wish) {
    case 'frames': return framesText(words, value);
    case 'picture-width': return pixels(words, value);
    case 'blur-limit': return `${say.number(value, 2)}\u00a0px`;
    case 'contrast': return contrastText(words, value);
    case 'shutter': return say.shutter(value);
    case 'room': return say.length(value, unit);
    case 'margin': return say.percent(value, 1);
  }
}

/** A wish given up as far as its button does it; then what is wished for now. */
export function wishText(words: PlanWords, giveUp: GiveUp, shot: Shot): readonly [what: string, now: string] {
  const {wish} = giveUp;
  const to = wishChanges(giveUp, shot)[WISHED[wish]] ?? 0;
  const text = (value: number): string => wished(words, wish, value, shot.unit);
  return [
    wish === 'margin' && to < 0.005 ? words.noMargin : words.wish(wish, text(to)),
    words.now(text(shot[WISHED[wish]]), wish === 'frames' || wish === 'shutter'),
  ];
}

// —— one way ——

/** What a way is called. */
export function wayTitle(words: PlanWords, {kind, frames, lens}: PlanWay, job: PlanJob): string {
  const title = words.way(kind, framesText(words, frames.length));
  return several(job) ? words.wayOf(title, lensName(words, lens.focalLength)) : title;
}

/** What is set, and from where. */
export function waySetting(words: PlanWords, way: PlanWay, shot: Shot): string {
  const [setting, distance] = [settingText(words, way, shot), words.say.length(way.cameraDistance, shot.unit)];
  return way.frames.length > 1 ? words.each(setting, distance) : words.from(setting, distance);
}

/**
 * What a way costs: against the metered setting, the place where the camera stands and the pixels that it has.
 * @param here - mm from the sensor mark to the focus plane now; where nobody said, the nearest place counts
 */
export function priceText(words: PlanWords, way: PlanWay, {metered, pixelsAcross}: PlanJob, unit: LengthUnit, here: number | undefined): string {
  const {price, lens, frames: {length: count}, shutter, cameraDistance} = way;
  const {say} = words;
  const clicks = Math.round(price.clicks);
  const time = (seconds: number): string => `${say.digits(seconds, seconds < 99.5 ? 2 : 3)}\u00a0s`;
  // What is not exposing is moving to the next frame and letting it come to rest.
  const settle = count > 1 ? price.seconds - count * shutter.value : 0;
  // Of what stands written elsewhere, so that it adds up.
  const back = here === undefined ? price.back : Math.round(cameraDistance) - Math.round(here);
  const cropped = Math.round(pixelsAcross) - Math.round(way.pixelsAcross);
  return [
    settle ? words.stackTime(time(price.seconds), say.whole(count), say.shutter(shutter.value), time(settle)) : say.shutter(shutter.value),
    clicks ? (lens.aperture > metered.aperture ? words.smaller : words.larger)(clicks, say.whole(clicks)) : '',
    back >= 1 ? words.back(say.length(back, unit), here !== undefined) : '',
    cropped >= 1 ? words.pixels(pixels(words, cropped)) : '',
    price.frames ? words.moreFrames(price.frames, say.whole(price.frames)) : '',
    price.otherLens ? words.otherLens : '',
  ].filter(Boolean).join(words.parting);
}

// —— the drawing ——

export function tiltText(words: PlanWords, tilt: number): string {
  return words.tilt(tilt === 0 ? 'level' : tilt > 0 ? 'down' : 'up', words.say.number(Math.abs(tilt), 1));
}

/** Over the focus plane. */
export const focusText = (words: PlanWords, way: PlanWay, {unit}: Shot): string =>
  (way.frames.length === 1 ? words.focusAt(signedLength(words.say, way.focus, unit)) : words.focusPlanes(words.say.whole(way.frames.length)));

/** Under the drawing. */
export function drawnText(words: PlanWords, way: PlanWay, job: PlanJob, broken: boolean, {unit}: Shot): string {
  const drawn = words.drawn(wayTitle(words, way, job), unit === 'in' ? words.inches : unit);
  return broken ? `${drawn} ${words.broken}` : drawn;
}

/** What a handle says of itself. */
export function gripText(words: PlanWords, grip: Grip, shot: Shot): string {
  const length = (mm: number): string => words.say.length(mm, shot.unit);
  const value = valueOf(grip, shot);
  switch (grip) {
    case 'overhang-front': case 'overhang-back': {
      const front = grip === 'overhang-front';
      return value ? words.overhang(length(value), front, length(tipHeight(shot, front ? 'Front' : 'Back'))) : words.noOverhang;
    }
    case 'top': return words.aboveTable(length(value));
    case 'tilt': return tiltText(words, value);
    case 'base-front': case 'base-back': return words.deep(length(value));
  }
}

export const gripTitle = (words: PlanWords, grip: Grip, shot: Shot): string =>
  words.gripTitle(words.grips[grip], gripText(words, grip, shot), words.free[FREE[grip]]);
