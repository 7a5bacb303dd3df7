import {describe, expect, it, test} from 'vitest';
import {blurDisc} from '../../src/core/optics/blur.js';
import type {LensSetup} from '../../src/core/optics/lens.js';
import {pupilToSubject} from '../../src/core/optics/lens.js';
import type {Pixels} from '../../src/core/tone/pixels.js';
import {chartStrips, renderedShots, type RenderedCamera} from '../core/optics/rendered.js';
import {findLine, ownWidth, type ProfilePoint} from './edge-fit.js';
import {chart, picture, truthOf, type RulerMark} from './shots/picture.js';

/*
 * Blur in the pictures' own pixels. The pictures follow an ideal thin lens and contain no diffraction, so they are
 * compared with the defocus disc alone. Everything that measures stands here and in edge-fit.ts; the only thing of the
 * project that takes part is the prediction.
 */

/** Linear light of a code value. IEC 61966-2-1, written out here so that nothing but the prediction is the core's. */
const LINEAR = Float64Array.from({length: 256}, (_, code) =>
  (code / 255 <= 0.04045 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4));

const lightAt = ({data, width}: Pixels, x: number, y: number): number => {
  const at = 4 * (y * width + x);
  return 0.2126 * (LINEAR[data[at] as number] as number) + 0.7152 * (LINEAR[data[at + 1] as number] as number)
    + 0.0722 * (LINEAR[data[at + 2] as number] as number);
};

/**
 * The renderer's camera as the core takes it. One strip of dots was made with the image plane left at f: that is a lens
 * whose exit pupil lies far away, so its pupil ratio is all but infinite.
 */
const lensOf = (camera: RenderedCamera, farPupil = false): LensSetup => ({
  focalLength: camera.focal_length_mm, aperture: camera.f_number, magnification: camera.magnification,
  pupilRatio: farPupil ? 1e9 : 1,
});

/** px of blur the core predicts at a distance from the lens. */
function predictedBlur(camera: RenderedCamera, distance: number, farPupil = false): number {
  return blurDisc(lensOf(camera, farPupil), distance - camera.focus_distance_lens_mm) / camera.pixel_pitch_mm;
}

// —— dots ——

/** Second moment of a dot about its own middle, px², along one axis, without the pixel's own 1/12. */
function secondMoment(pixels: Pixels, [middleX, middleY]: readonly [number, number], radius: number): number {
  let [light, x1, y1, square] = [0, 0, 0, 0];
  for (let y = Math.floor(middleY - radius); y <= middleY + radius; y++) {
    for (let x = Math.floor(middleX - radius); x <= middleX + radius; x++) {
      const [dx, dy] = [x + 0.5 - middleX, y + 0.5 - middleY];
      if (Math.hypot(dx, dy) > radius) continue;
      const here = lightAt(pixels, x, y);
      light += here; x1 += here * dx; y1 += here * dy; square += here * (dx * dx + dy * dy);
    }
  }
  return (square / light - (x1 / light) ** 2 - (y1 / light) ** 2) / 2 - 1 / 12;
}

/** Around the largest a dot can be, px: what the filter spreads. */
const AROUND = 3;

describe('dots at known depths, measured in the chart’s pixels', () => {
  const strips = chartStrips().map((strip, at) => ({...strip, rect: chart.strips[at]?.strip_rect_px ?? [0, 0, 0, 0]}));

  it.each(strips.map((strip) => [strip.render, strip] as const))('are as large as the lens says, %s', async (render, {camera, dots, rect}) => {
    const pixels = await picture('depth-chart');
    const farPupil = render.includes('native');
    expect(pupilToSubject(lensOf(camera, farPupil))).toBeCloseTo(camera.focus_distance_lens_mm, 2);
    expect(dots).toHaveLength(14);
    for (const [at, dot] of dots.entries()) {
      const [x, y] = chart.strips.find((strip) => strip.render === render)?.dots[at]?.centre_px ?? [NaN, NaN];
      const predicted = predictedBlur(camera, dot.distance_mm, farPupil);
      const own = (dot as typeof dot & {readonly dot_image_px: number}).dot_image_px;
      const moment = secondMoment(pixels, [x, y + rect[1]], (predicted + own) / 2 + AROUND);
      // Both the dot and the blur are even discs: a quarter of the diameter is the standard deviation, and squares add.
      const whole = 4 * Math.sqrt(moment);
      expect(Math.abs(whole - Math.hypot(predicted, own)), `${dot.depth_mm} mm, dot and blur together`).toBeLessThan(0.05);
      // Under 1 px the blur is a small difference of large squares; the whole, above, is what can be measured.
      if (predicted < 1) continue;
      const blur = Math.sqrt(whole ** 2 - own ** 2);
      expect(Math.abs(blur - predicted), `${dot.depth_mm} mm`).toBeLessThan(predicted > 3 ? 0.01 * predicted + 0.02 : 0.1);
    }
  });
});

// —— graduations ——

/** Part of a long graduation that no shorter one reaches: from two thirds of its length on. */
const ALONE = 0.68;

/** Columns over which a graduation is averaged, at least. */
const LEAST_COLUMNS = 5;

/** The line explains nine tenths of what the profile does: there a graduation is resolved. */
const RESOLVED = 10;

/** Profile across a graduation, averaged along the part of it that stands alone and that its blurred ends do not reach. */
function profileAcross(pixels: Pixels, marks: readonly RulerMark[], at: number, blur: number): ProfilePoint[] {
  const [nearer, mark, further] = [marks[at - 1], marks[at], marks[at + 1]];
  if (!nearer || !mark || !further) return [];
  const [[start, row], [end]] = [mark.edge_px, mark.tick_inner_px];
  const from = Math.ceil(start + ALONE * (end - start) + blur / 2);
  const to = Math.floor(end - blur / 2 - 1);
  if (to - from < LEAST_COLUMNS) return [];
  const reach = Math.min(0.72 * Math.min(nearer.edge_px[1] - row, row - further.edge_px[1]), blur / 2 + 8);
  const points: ProfilePoint[] = [];
  for (let y = Math.max(0, Math.ceil(row - reach)); y <= Math.min(pixels.height - 1, row + reach); y++) {
    let sum = 0;
    for (let x = from; x <= to; x++) sum += lightAt(pixels, x, y);
    points.push([y + 0.5 - row, sum / (to - from + 1)]);
  }
  return points;
}

interface Measured {
  readonly mark: number;
  readonly predicted: number;
  readonly blur: number;
}

const cameraOf = (name: string): RenderedCamera =>
  renderedShots().find(({file}) => file === `${name}.jpg`)?.camera as RenderedCamera;

/**
 * Width of a graduation that is in focus: itself and the renderer's filter. Measured once, where the smallest opening was
 * used and the blur is below 0.1 px by anybody's formula.
 */
async function ownWidthOfLines(): Promise<number> {
  const marks = truthOf('aperture-f16').ruler_marks_px;
  const focused = marks.findIndex(({depth_from_lens_mm: away}) => predictedBlur(cameraOf('aperture-f16'), away) < 0.1);
  return ownWidth(profileAcross(await picture('aperture-f16'), marks, focused, 0));
}

/** Blur of every graduation that is resolved in a picture. */
async function graduations(name: string): Promise<readonly Measured[]> {
  const pixels = await picture(name);
  const [camera, marks] = [cameraOf(name), truthOf(name).ruler_marks_px];
  const predicted = marks.map(({depth_from_lens_mm: away}) => predictedBlur(camera, away));
  const own = await ownWidthOfLines();
  return marks.flatMap((mark, at): Measured[] => {
    const points = profileAcross(pixels, marks, at, predicted[at] as number);
    if (points.length < 8) return [];
    const found = findLine(points, own);
    return found && found.clearness > RESOLVED ? [{mark: mark.mark_mm, predicted: predicted[at] as number, blur: found.blur}] : [];
  });
}

const PICTURES = [
  'aperture-f2.8', 'aperture-f5.6', 'aperture-f8', 'aperture-f11', 'aperture-f16', 'deep-near', 'backdrop-key',
  'card-neutral', 'white-edge', 'exposure-plus1',
];

describe('graduations of the ruler, measured in the pictures', () => {
  /**
   * 15 % or 0.7 px, whichever is larger: the tolerance the pictures come with. Under 1.5 px of blur a graduation is
   * thinner than a row of pixels, and it depends on how it falls between two rows how wide it looks: 1 px there.
   */
  const tolerance = (predicted: number): number => (predicted < 1.5 ? 1 : Math.max(0.7, 0.15 * predicted));

  it.each(PICTURES)('are as blurred as predicted wherever they are resolved, %s', async (name) => {
    const found = await graduations(name);
    expect(found.length).toBeGreaterThan(1);
    for (const {mark, predicted, blur} of found) {
      expect(Math.abs(blur - predicted), `${mark} mm: ${blur} px, predicted ${predicted.toFixed(2)}`)
        .toBeLessThan(tolerance(predicted));
    }
  });

  test('taken together they are right within 5 %, soft ones among them', async () => {
    const found = (await Promise.all(PICTURES.map(graduations))).flat();
    const soft = found.filter(({predicted}) => predicted > 2);
    expect(soft.length).toBeGreaterThan(15);
    expect(Math.max(...soft.map(({predicted}) => predicted))).toBeGreaterThan(7);
    const [measured, expected] = [soft.reduce((sum, {blur}) => sum + blur, 0), soft.reduce((sum, {predicted}) => sum + predicted, 0)];
    expect(Math.abs(measured / expected - 1)).toBeLessThan(0.05);
  });

  it('would not pass with the blur of the next aperture', async () => {
    const found = (await graduations('aperture-f8')).filter(({predicted}) => predicted > 5);
    expect(found.length).toBeGreaterThan(0);
    // f/5.6 in place of f/8.
    for (const {predicted, blur} of found) expect(Math.abs(blur - predicted * 8 / 5.6)).toBeGreaterThan(0.15 * predicted * 8 / 5.6);
  });
});
