import {PLAN_RATES, type PlanJob} from '../../core/optics/plan-job.js';
import type {PlanWay} from '../../core/optics/plan-way.js';
import type {Shot} from '../../core/shot/shot.js';
import type {LengthUnit} from '../../core/units.js';
import type {Curve} from './curve.js';
import {contrastText, framesText, leastText, priceText, shownAperture, signedLength} from './speech.js';
import type {UnfoldedWords} from './book.js';
import type {Clarity} from './words/folds-en.js';

/** Contrast in a word. Where one word ends and the next begins is our judgement, no source. */
function clarityOf(contrast: number): Clarity {
  if (contrast >= 0.6) return 'crisp';
  if (contrast >= 0.4) return 'clear';
  if (contrast >= 0.2) return 'soft';
  return contrast >= 0.05 ? 'faint' : 'lost';
}

/** One line of the comparison. */
export interface Line {
  readonly key: keyof UnfoldedWords['lines'];
  readonly label: string;
  readonly text: string;
}

/** Focus planes written out before the rest is left to the eye. */
const MOST_MARKS = 12;

/** A way as lines that stand beside the same lines of the next. */
export function wayLines(words: UnfoldedWords, way: PlanWay, job: PlanJob, shot: Shot, here: number | undefined): readonly Line[] {
  const {say} = words;
  const {unit} = shot;
  const count = way.frames.length;
  const [marked, shown, shutter] = [say.aperture(way.lens.aperture), shownAperture(words, way, shot), say.shutter(way.shutter.value)];
  const texts: Readonly<Record<Line['key'], string>> = {
    aperture: shown ? words.bodyShows(marked, shown) : marked,
    shutter: count > 1 ? words.shutterEach(shutter) : shutter,
    camera: say.length(way.cameraDistance, unit),
    focus: marks(words, way.frames.slice(0, MOST_MARKS), unit, count > MOST_MARKS),
    field: say.length(way.fieldWidth, unit),
    zone: way.zone.to === Infinity ? words.zoneWithoutEnd(signedLength(say, way.zone.from, unit))
      : words.zone(bare(words, way.zone.from, unit), signedLength(say, way.zone.to, unit)),
    contrast: words.clarity(clarityOf(way.worst), contrastText(words, way.worst)),
    pixels: words.kept(say.whole(way.pixelsAcross), say.percent(way.keptShare)),
    frames: say.whole(count),
    price: priceText(words, way, job, unit, here),
    cost: `${say.whole(way.cost)}\u00a0s`,
  };
  return (Object.keys(texts) as Line['key'][]).map((key) => ({key, label: words.lines[key], text: texts[key]}));
}

/** A length that is followed by another of the same unit. */
const bare = ({say}: UnfoldedWords, mm: number, unit: LengthUnit): string => signedLength(say, mm, unit).replace(`\u00a0${unit}`, '');

/** Semicolons part them where the comma is a decimal one. */
function marks(words: UnfoldedWords, all: readonly number[], unit: LengthUnit, more: boolean): string {
  const parted = words.say.typed('0.1') === '0.1' ? ', ' : '; ';
  return `${all.map((mark) => bare(words, mark, unit)).join(parted)}${more ? ' …' : ''}\u00a0${unit}`;
}

/** Over the best click of the curve. */
export function bestText(words: UnfoldedWords, {best}: Curve, way: PlanWay): string {
  const [aperture, contrast] = [words.say.aperture(best.aperture), contrastText(words, best.worst)];
  return way.kind === 'stack' ? words.bestStack(aperture, framesText(words, best.frames), contrast) : words.best(aperture, contrast);
}

/** What the curve shows. */
export function curveText(words: UnfoldedWords, {points, best}: Curve, way: PlanWay, job: PlanJob): string {
  const {say} = words;
  const stack = way.kind === 'stack';
  const [top, contrast] = [say.aperture(best.aperture), contrastText(words, best.worst)];
  const here = words.curveText(stack, say.aperture(way.lens.aperture), contrastText(words, way.worst));
  if (best.aperture === way.lens.aperture && !stack) return `${here} ${words.noneBetter}`;
  return [
    here,
    stack ? words.worthMost(top, contrast, framesText(words, best.frames)) : words.better(top, contrast),
    stack && points.some(({worst}) => worst > best.worst) ? words.notWorth : '',
    words.wished(leastText(words, job)),
  ].filter(Boolean).join(' ');
}

/** What each part of a price counts, in seconds: amounts that a reader can picture. */
export function rateLines(words: UnfoldedWords, unit: LengthUnit): readonly (readonly [what: string, counts: string])[] {
  const {say, rate} = words;
  const [back, pixels] = [100, 1000];
  const lines: readonly (readonly [what: string, seconds: number])[] = [
    [rate.seconds, PLAN_RATES.seconds], [rate.clicks, PLAN_RATES.clicks], [rate.back(say.length(back, unit)), PLAN_RATES.back * back],
    [rate.pixels(`${say.whole(pixels)}\u00a0px`), PLAN_RATES.pixels * pixels], [rate.frames, PLAN_RATES.frames], [rate.otherLens, PLAN_RATES.otherLens],
  ];
  return lines.map(([what, seconds]) => [what, `${say.number(seconds, 1)}\u00a0s`]);
}
