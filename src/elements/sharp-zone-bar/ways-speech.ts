import {softnessOf} from '../../core/optics/blur.js';
import {workingAperture} from '../../core/optics/lens.js';
import {diffractionInPixels} from '../../core/shot/framing.js';
import type {Shot} from '../../core/shot/shot.js';
import type {Way} from '../../core/shot/ways-out.js';
import type {Reading} from './reading.js';
import {acrossText, apertureText, placeText} from './speech.js';
import type {ZoneWords} from './words/en.js';

/** Light that rounding alone leaves over, and light worth a word, stops. */
const UNSEEN = 0.05;
const WORTH_SAYING = 0.15;

/** What a way is called on its button: what to do. */
export function wayTitle(words: ZoneWords, {kind, changes, back}: Way, shot: Shot): string {
  const aperture = apertureText(words, changes.aperture ?? shot.aperture, shot, changes.fieldWidth);
  const by = words.say.length(back, shot.unit);
  switch (kind) {
    case 'refocus': return words.refocus(placeText(words, changes.focus ?? 0, shot.unit));
    case 'stop-down': return words.stopDown(aperture);
    case 'open-up': return words.openUp(aperture);
    case 'move-back': return words.moveBack(by);
    case 'both': return words.moveBackAndStopDown(by, aperture);
  }
}

/** One line of what a way gives, costs or asks for. */
export interface WayLine {
  readonly label: string;
  readonly text: string;
}

/** A way in lines that can be run over with the eye. */
export function wayLines(words: ZoneWords, way: Way, shot: Shot): readonly WayLine[] {
  return [
    {label: words.gives, text: givesText(words, way, shot)},
    {label: words.price, text: priceText(words, way, shot)},
    {label: words.set, text: settingText(words, way, shot)},
  ].filter(({text}) => text);
}

const together = (parts: readonly string[]): string => parts.filter(Boolean).join('; ');

function givesText(words: ZoneWords, {kind, outside, back, changes}: Way, shot: Shot): string {
  const {say} = words;
  const airy = diffractionInPixels({...shot, ...changes});
  const softness = softnessOf(airy, shot.blurLimit);
  return together([
    outside > 0 ? words.allBut(say.length(outside, shot.unit))
      : softness !== 'sharp' ? words.allInFocus : kind === 'open-up' ? words.stillSharp : words.allSharp,
    back ? words.samePicture : '',
    softness === 'sharp' ? '' : words.softened(softness === 'a-little', say.pixels(airy), say.pixels(shot.blurLimit)),
  ]);
}

function priceText(words: ZoneWords, {kind, changes, back, pixelsLeft, rounding, light}: Way, shot: Shot): string {
  const {say} = words;
  const {shutter = shot.shutter, iso = shot.iso} = changes;
  return together([
    kind === 'refocus' ? words.nothing
      : shutter === shot.shutter ? words.shutterUnchanged : words.shutterInstead(say.shutter(shutter), say.shutter(shot.shutter)),
    iso !== shot.iso ? words.isoSince(say.iso(iso)) : '',
    Math.abs(rounding) > UNSEEN ? words.gets(say.stops(rounding), rounding > 0) : '',
    back ? words.pixelsLeft(acrossText(words, pixelsLeft), acrossText(words, shot.pictureWidth)) : '',
    light > WORTH_SAYING ? words.closeUpLess(say.stops(light)) : '',
  ]);
}

function settingText(words: ZoneWords, {kind, changes: {focus, fieldWidth}, back}: Way, {unit}: Shot): string {
  return together([
    back ? words.frameWidth(words.say.length(fieldWidth ?? 0, unit)) : '',
    focus !== undefined && kind !== 'refocus' ? words.focusAt(placeText(words, focus, unit)) : '',
  ]);
}

/** Why there are no more ways, a sentence each. */
export function deadEnds(words: ZoneWords, {ways: {tooSmall, tooFar, nearest}, shot}: Reading): readonly string[] {
  const {say} = words;
  const said: string[] = [];
  if (tooSmall !== undefined) {
    const shown = shot.apertureShown === 'marked' ? tooSmall : workingAperture(tooSmall, shot.sensorWidth / shot.fieldWidth, shot.pupilRatio);
    said.push(Number.isFinite(tooSmall) ? words.apertureAlone(`f/${say.number(shown)}`, apertureText(words, shot.apertureSmallest, shot)) : words.apertureNever);
  }
  if (tooFar) {
    said.push(words.distanceAlone(say.length(tooFar.step.by, shot.unit), say.list([
      ...tooFar.pixelsEnough ? [] : [words.tooFewPixels(acrossText(words, tooFar.pixelsLeft), acrossText(words, shot.pictureWidth))],
      ...tooFar.roomEnough ? [] : [words.beyondRoom(say.length(tooFar.step.sensorToSubject, shot.unit), say.length(shot.room, shot.unit))],
    ])));
  }
  if (nearest) said.push(words.nearest);
  return said;
}
