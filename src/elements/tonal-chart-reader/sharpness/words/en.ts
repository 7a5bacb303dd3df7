import type {Say} from '../../../shared/say.js';
import type {Change, Sharpness} from '../names.js';

export {family} from '../../../shared/words/en.js';

/** What is said of where a photo is sharp. Places and lengths come written: `A`, `34%`, `B` or `120 mm` on a ruler. */
export const words = (say: Say) => ({
  say,
  looking: 'Looking…',
  lookingSoFar: (percent: string) => `Looking… ${percent}`,

  // places
  onWay: (fraction: string) => `about ${fraction} of the way from A to B`,
  stretch: (from: string, to: string) => `from ${from} to ${to}`,
  at: (place: string) => `at ${place}`,

  // the answer
  sharp: (pieces: string) => `On the way from A to B it is sharp ${pieces}.`,
  sharpOnRuler: (pieces: string) => `Sharp ${pieces} on the ruler.`,
  sharpAll: 'As sharp from A to B as at its sharpest.',
  nothingKnown: 'Along this line there is nothing to judge sharpness by: a plain surface, or blur so wide that no detail is left. That is unknown, not soft.',
  noFocus: 'The focus cannot be placed on this line: blur has to be seen growing to both sides of it.',
  focusAt: (place: string) => `The focus lies ${place}.`,
  focusOnRuler: (place: string, give: string) => `The focus lies at ${place} on the ruler, give or take ${give}.`,
  focusFromFront: (place: string, distance: string, before: boolean, give: string) =>
    `The focus lies at ${place} on the ruler, ${distance} ${before ? 'in front of' : 'behind'} the base’s front edge, give or take ${give}.`,
  oneShot: 'Worked out from one shot. Detail that gets finer along the line pulls this a little; a second shot at another aperture takes that out.',
  bothShots: 'Worked out from both shots, so how fine the detail is does not matter.',

  // one shot against another
  thisShot: 'This shot',
  earlierShot: 'the earlier one',
  noGain: (shot: string, other: string) => `No gain: ${shot} is as sharp as ${other} wherever both can be judged.`,
  noDetail: 'There is no detail along this line that both shots can be judged by.',
  notWorth: (shot: string, other: string, part: string, pixels: string) =>
    `Not worth it: ${shot} is nowhere sharper than ${other}, and softer on ${part} of the line, by up to ${pixels}.`,
  worth: (shot: string, other: string, part: string, pixels: string, place: string) =>
    `Worth it: ${shot} is sharper than ${other} on ${part} of the line, most ${place}, where it has ${pixels} less blur.`,
  butSofter: (part: string, pixels: string) => `It is softer on ${part} of it, by up to ${pixels}.`,
  restAlike: 'Elsewhere there is no difference.',
  restMixed: 'Elsewhere there is no difference, or nothing to judge by.',
  restUnknown: 'The rest cannot be judged.',
  diffractionOver: (aperture: string, disc: string, limit: string) =>
    `At ${aperture} the small opening alone spreads every point to ${disc} (diffraction), more than the ${limit} that still look sharp. Closing further sharpens nothing that is in focus.`,
  diffractionWithin: (aperture: string, disc: string, limit: string) =>
    `At ${aperture} the small opening spreads every point to ${disc} (diffraction), which is within the ${limit} that look sharp.`,
  otherSize: 'The earlier shot has other pixels or shows another set: its sharpness cannot be set beside this one’s.',

  // the line
  line: {a: 'Line, end A', b: 'Line, end B'},
  endAt: (left: string, top: string) => `${left} from the left, ${top} from the top`,
  keys: 'Arrow keys move an end of the line, with Shift in small steps.',
  lay: 'Lay the line',
  frontToBack: 'Front to back, beside the base',
  across: 'Side to side',
  ruler: 'With a ruler lying along the line',
  rulerAt: {atA: 'Ruler at A', atMiddle: 'Ruler at the + halfway', atB: 'Ruler at B', atFront: 'Base’s front edge'},
  layOnRuler: 'The line belongs on a ruler that lies from front to back beside the base: move A and B onto it. With what the ruler reads at A and B the answer comes in lengths.',
  middleHint: 'far things look smaller: this takes it into account',
  reckoned: 'How much smaller far things look is worked out from the lens and the width of the frame. Read the ruler at the + halfway along the line, and it is measured instead.',
  wrongMiddle: 'The reading at the + has to lie between the two at the ends.',
  setFocus: (distance: string, before: boolean) => `Focus ${distance} ${before ? 'in front of' : 'behind'} the front edge`,
  setFocusFrom: (now: string) => `It is set to ${now} now. Use what this photo shows.`,
  focusDone: (distance: string, before: boolean) => `Done: the focus is set ${distance} ${before ? 'in front of' : 'behind'} the front edge.`,
  undo: 'Undo',

  // the curve
  softerUp: 'softer',
  curve: (least: string, most: string, unknown: string) =>
    `Blur along the line from A to B: ${least} at the sharpest, ${most} at the softest; ${unknown} of it unknown.`,
  curveNote: (limit: string, upTo: string) =>
    `Blur in pixels of the finished picture. Even the sharpest detail has a width of its own, so a place counts as sharp up to ${upTo}: the sharpest of the line and ${limit} of blur. Hatched: nothing there to judge by.`,

  // over the photo
  heat: 'Show it over the photo',
  heatSharp: 'This shot',
  heatChange: 'Against the earlier shot',
  legendNote: 'Judged against the sharpest tenth of the crop. Broad detail reads softer than fine detail just as sharp: compare like with like, or two shots.',
  heatNames: {sharp: 'among the sharpest', near: 'softer', soft: 'soft', unknown: 'unknown: no detail'} as Readonly<Record<Sharpness, string>>,
  changeNames: {
    sharper: 'sharper now', softer: 'softer now', alike: 'no change', unknown: 'unknown: no detail',
  } as Readonly<Record<Change, string>>,
});

export type SharpnessWords = ReturnType<typeof words>;
