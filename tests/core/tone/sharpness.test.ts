import fc from 'fast-check';
import {beforeAll, describe, expect, it} from 'vitest';
import {Problem} from '../../../src/core/problem.js';
import {focusAlong, focusBetween} from '../../../src/core/tone/focus-line.js';
import type {Pixels} from '../../../src/core/tone/pixels.js';
import {sharpnessAlong, sharpnessGrid} from '../../../src/core/tone/sharpness.js';
import type {Line, SharpnessPoint} from '../../../src/core/tone/sharpness.js';
import {compareSharpness} from '../../../src/core/tone/sharpness-change.js';
import {chart, cropOf, picture, pixelsOf, sharpOf, truthOf} from '../../reference/shots/picture.js';
import type {RulerMark} from '../../reference/shots/picture.js';
import {noise} from './plain.js';

/** Ground truth and tolerances: tests/reference/shots/shots.json and its README. */
const FOCUS_TOLERANCE_MM = 5;
const RANKED_FROM_PX = 0.7;

const APERTURES = ['aperture-f2.8', 'aperture-f5.6', 'aperture-f8', 'aperture-f11', 'aperture-f16'] as const;
const marks = truthOf('aperture-f8').ruler_marks_px;
const [first, last] = [marks[0], marks.at(-1)] as [RulerMark, RulerMark];

/** A line along the ruler; 0 = its edge, 1 = the inner ends of the long marks. The figures are printed at about 1.5. */
function rulerLine(across: number): Line {
  const at = ({edge_px: edge, tick_inner_px: inner}: RulerMark): [number, number] =>
    [edge[0] + across * (inner[0] - edge[0]), edge[1]];
  return {from: at(first), to: at(last)};
}

/** Millimetres on the ruler at a height in the picture, between two marks whose place is known. */
function millimetresAt(y: number): number {
  const next = marks.findIndex(({edge_px: edge}) => edge[1] <= y);
  const [before, after] = [marks[next - 1], marks[next]] as [RulerMark, RulerMark];
  return before.mark_mm + (after.mark_mm - before.mark_mm) * (before.edge_px[1] - y) / (before.edge_px[1] - after.edge_px[1]);
}

/** Diameter of the blur disc of the rendered thin lens at a mark, px. */
function renderedBlur(name: string, {depth_from_lens_mm: depth}: RulerMark): number {
  const {aperture_diameter_mm: diameter, focus_distance_lens_mm: focus, magnification, pixel_pitch_mm: pitch} = truthOf(name).camera;
  return diameter * Math.abs(depth - focus) / depth * magnification / pitch;
}

function nearest(points: readonly SharpnessPoint[], y: number): SharpnessPoint {
  return points.reduce((best, point) => (Math.abs(point.y - y) < Math.abs(best.y - y) ? point : best));
}

const focusTruth = truthOf('aperture-f8').scene.ruler.mark_mm_of.focus_plane;
const profiles = new Map<string, SharpnessPoint[]>();
const along = (name: string, across: number): SharpnessPoint[] => profiles.get(`${name} ${across}`) as SharpnessPoint[];

beforeAll(async () => {
  for (const name of APERTURES) {
    for (const across of [0, 1.2, 1.5, 1.8]) profiles.set(`${name} ${across}`, sharpnessAlong(await picture(name), rulerLine(across)));
  }
});

describe('focus along the ruler', () => {
  const pairs = APERTURES.flatMap((wide, at) => APERTURES.slice(at + 1).map((narrow) => [wide, narrow] as const));

  it.each(pairs)('is found from %s with %s', (wide, narrow) => {
    const focus = focusBetween(along(wide, 1.5), along(narrow, 1.5));
    expect(Math.abs(millimetresAt(focus!.y) - focusTruth)).toBeLessThan(FOCUS_TOLERANCE_MM);
  });

  it.each(APERTURES.slice(0, 4))('is found from %s alone, with the ruler’s perspective', (name) => {
    const scale = first.depth_from_lens_mm / last.depth_from_lens_mm;
    const focus = focusAlong(along(name, 1.5), scale);
    expect(Math.abs(millimetresAt(focus!.y) - focusTruth)).toBeLessThan(FOCUS_TOLERANCE_MM);
  });

  it.each([1.2, 1.5, 1.8])('does not hang on where across the ruler the line is drawn: %s', (across) => {
    const focus = focusBetween(along('aperture-f2.8', across), along('aperture-f8', across));
    expect(Math.abs(millimetresAt(focus!.y) - focusTruth)).toBeLessThan(FOCUS_TOLERANCE_MM);
  });

  it('is left open when the line has no detail, or lies all to one side', async () => {
    const plain = sharpnessAlong(await picture('aperture-f8'), {from: [60, 60], to: [300, 200]});
    expect(focusAlong(plain)).toBeUndefined();
    const beyond = along('aperture-f2.8', 1.5).filter(({y}) => millimetresAt(Math.min(first.edge_px[1] - 1e-6, y)) < 70);
    expect(beyond.length).toBeGreaterThan(20);
    expect(focusAlong(beyond)).toBeUndefined();
  });

  it('refuses readings of two different lines, and a scale of nothing', () => {
    const points = along('aperture-f8', 1.5);
    expect(() => focusBetween(points, points.slice(1))).toThrow(Problem);
    expect(() => focusAlong(points, 0)).toThrow(new Problem('scaleAtEnd', 0, 'a number above 0'));
  });

  it('lies where a parabola of squared blur has its foot', () => {
    fc.assert(fc.property(
      fc.double({min: 0.2, max: 0.8, noNaN: true}), fc.double({min: 15, max: 60, noNaN: true}), fc.double({min: 1, max: 3, noNaN: true}),
      (foot, rise, floor) => {
        const points = Array.from({length: 101}, (_, at) =>
          ({along: at / 100, x: at, y: 0, blur: Math.hypot(floor, rise * (at / 100 - foot))}));
        expect(Math.abs(focusAlong(points)!.along - foot)).toBeLessThan(0.005);
      },
    ), {numRuns: 30});
  });
});

describe('order of sharpness along the ruler', () => {
  it.each([0, 1.2, 1.5, 1.8])('is that of the apertures wherever their blur differs, line at %s', (across) => {
    const compared = marks.flatMap((mark) => APERTURES.slice(1).flatMap((narrow, at) => {
      const wide = APERTURES[at] as string;
      if (renderedBlur(wide, mark) - renderedBlur(narrow, mark) <= RANKED_FROM_PX) return [];
      const [soft, sharp] = [wide, narrow].map((name) => nearest(along(name, across), mark.edge_px[1]).blur) as
        [number | null, number | null];
      return soft === null || sharp === null ? [] : [{mark: mark.mark_mm, wide, narrow, right: soft > sharp}];
    }));
    expect(compared.filter(({right}) => !right)).toEqual([]);
    // Of 86 neighbours whose blur differs; the rest are so soft that the print is gone, and are said to be unknown.
    expect(compared.length).toBeGreaterThanOrEqual(40);
  });

  it('is told as the picture that is worth it, and where', () => {
    const {points, stretches} = compareSharpness(along('aperture-f8', 1.5), along('aperture-f16', 1.5));
    const wrong = points.filter(({along: at, sharper}) => {
      const y = first.edge_px[1] + at * (last.edge_px[1] - first.edge_px[1]);
      const mark = marks.reduce((best, one) => (Math.abs(one.edge_px[1] - y) < Math.abs(best.edge_px[1] - y) ? one : best));
      return sharper === 'first' && renderedBlur('aperture-f8', mark) - renderedBlur('aperture-f16', mark) > RANKED_FROM_PX;
    });
    expect(wrong).toEqual([]);
    expect(points.filter(({sharper}) => sharper === 'second').length).toBeGreaterThan(points.length / 3);
    expect(stretches[0]!.from).toBe(0);
    expect(stretches.at(-1)!.to).toBe(1);
    stretches.slice(1).forEach((stretch, at) => {
      expect(stretch.from).toBeGreaterThan(stretches[at]!.to);
      expect(stretch.sharper).not.toBe(stretches[at]!.sharper);
    });
  });

  it('says by how much, within the tolerance of the notes where the print is well resolved', () => {
    // 15 % or 0.7 px, the larger, is what edge widths hold to; the print here has strokes of 3 to 5 px: twice that.
    for (const mark of marks.filter(({mark_mm: mm}) => mm >= 40 && mm <= 120 && Math.abs(mm - focusTruth) > 15)) {
      const wide = nearest(along('aperture-f5.6', 1.5), mark.edge_px[1]);
      const narrow = nearest(along('aperture-f16', 1.5), mark.edge_px[1]);
      const added = -compareSharpness([wide], [narrow]).points[0]!.added!;
      const rendered = Math.sqrt(renderedBlur('aperture-f5.6', mark) ** 2 - renderedBlur('aperture-f16', mark) ** 2);
      expect(Math.abs(added - rendered)).toBeLessThan(Math.max(1.4, 0.3 * rendered));
    }
  });

  it('gives nothing where one of them is unknown, and refuses two different lines', () => {
    const point = {along: 0, x: 0, y: 0, blur: 3};
    expect(compareSharpness([point], [{...point, blur: null}]).points[0]).toMatchObject({added: null, sharper: null});
    expect(compareSharpness([point], [point]).points[0]).toMatchObject({added: 0, sharper: 'neither'});
    expect(() => compareSharpness([point], [])).toThrow(Problem);
  });
});

describe('blur of dots at known depths', () => {
  it.each(chart.strips.map(({render}, at) => [render, at] as const))('grows with the measured blur to both sides: %s', async (_, at) => {
    const {dots, strip_rect_px: [, top]} = chart.strips[at]!;
    const pixels = await picture('depth-chart');
    const readings = dots.map(({centre_px: [x, y], measured_blur_px: measured}) =>
      ({measured, read: sharpnessAlong(pixels, {from: [x, y + top], to: [x + 1, y + top]})[0]!.blur}));
    for (const one of readings) {
      for (const other of readings) {
        // Blur that is lost in the width of the dots themselves, some 9 px, cannot be ranked finely.
        if (one.read === null || other.read === null || one.measured < other.measured * 1.15 + 2.5) continue;
        expect(one.read).toBeGreaterThan(other.read);
      }
    }
    expect(readings.filter(({read}) => read !== null).length).toBeGreaterThan(10);
  });
});

describe('places without detail', () => {
  it.each(APERTURES)('the backdrop of %s is unknown, not soft', async (name) => {
    const {blur} = sharpnessGrid(await picture(name), {x: 32, y: 32, width: 320, height: 400});
    expect(blur.filter((value) => value !== null)).toEqual([]);
  });

  it('most of the figure is known', async () => {
    const {blur} = sharpnessGrid(await picture('aperture-f11'), {x: 560, y: 480, width: 260, height: 330});
    expect(blur.filter((value) => value !== null).length / blur.length).toBeGreaterThan(0.6);
  });

  it.each([0, 128, 255])('a plain picture of code %i is unknown', (code) => {
    const pixels: Pixels = {data: new Uint8ClampedArray(96 * 96 * 4).fill(code), width: 96, height: 96};
    expect(sharpnessGrid(pixels, {x: 0, y: 0, width: 96, height: 96}).blur.every((value) => value === null)).toBe(true);
  });

  it('grain alone is unknown, however strong', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 1e6}), fc.integer({min: 2, max: 60}), (seed, strength) => {
      const {blur} = sharpnessGrid(grainy(160, seed, strength), {x: 32, y: 32, width: 96, height: 96});
      expect(blur.every((value) => value === null)).toBe(true);
    }), {numRuns: 25});
  });

  it('a smooth run of light is unknown', () => {
    const pixels: Pixels = {data: new Uint8ClampedArray(200 * 200 * 4), width: 200, height: 200};
    for (let at = 0; at < 200 * 200; at++) pixels.data.fill(40 + (at % 200) * 0.8, at * 4, at * 4 + 3);
    const {blur} = sharpnessGrid(pixels, {x: 48, y: 48, width: 96, height: 96});
    expect(blur.every((value) => value === null)).toBe(true);
  });
});

describe('what blur does not hang on', () => {
  const crop = {x: 560, y: 480, width: 240, height: 240};

  it('contrast cancels', async () => {
    const pixels = await picture('exposure-plus1');
    const darker = await picture('aperture-f11');
    const [bright, dark] = [pixels, darker].map((one) => sharpnessGrid(one, crop).blur) as [(number | null)[], (number | null)[]];
    const known = bright.flatMap((value, at) => (value && dark[at] ? [value / dark[at]] : [])).sort((a, b) => a - b);
    expect(known.length).toBeGreaterThan(100);
    expect(known[Math.floor(known.length / 2)]).toBeCloseTo(1, 1);
    expect(known[Math.floor(known.length * 0.1)]).toBeGreaterThan(0.8);
    expect(known[Math.floor(known.length * 0.9)]).toBeLessThan(1.2);
  });

  it('grain does not pass for sharpness: the order of two apertures holds with grain over the wider one', async () => {
    const grain = grainy(1500, 7, 8);
    const clean = await picture('aperture-f5.6');
    const data = new Uint8ClampedArray(clean.data.length);
    for (let at = 0; at < data.length; at++) {
      data[at] = at % 4 === 3 ? 255 : (clean.data[at] as number) + (grain.data[at % grain.data.length] as number) - 128;
    }
    const noisy = sharpnessAlong({...clean, data}, rulerLine(1.5));
    const {points} = compareSharpness(noisy, along('aperture-f11', 1.5));
    const decided = points.filter(({sharper}) => sharper === 'first' || sharper === 'second');
    expect(decided.length).toBeGreaterThan(20);
    expect(decided.filter(({sharper}) => sharper === 'first').length / decided.length).toBeLessThan(0.05);
  });

  it('blur added by an independent library is read as added blur', async () => {
    // sharp blurs codes with a bell curve of the given deviation; at low contrast that is the same as blurring light.
    const pattern = lowContrastPattern();
    const before = sharpnessGrid(pattern, {x: 96, y: 96, width: 192, height: 192}).blur;
    for (const deviation of [1.5, 2.5, 4]) {
      const after = sharpnessGrid(await pixelsOf(sharpOf(pattern).blur(deviation)), {x: 96, y: 96, width: 192, height: 192}).blur;
      const added = after.flatMap((value, at) => (value && before[at] ? [Math.sqrt(Math.max(0, value ** 2 - before[at] ** 2)) / 4] : []));
      added.sort((a, b) => a - b);
      expect(added.length).toBeGreaterThan(80);
      expect(Math.abs(added[Math.floor(added.length / 2)]! / deviation - 1)).toBeLessThan(0.3);
    }
  });
});

describe('where readings are taken', () => {
  it('a line runs from end to end in even steps', async () => {
    const points = sharpnessAlong(await picture('aperture-f8'), {from: [600, 500], to: [700, 500]}, 10);
    expect(points.map(({x}) => x)).toEqual([600, 610, 620, 630, 640, 650, 660, 670, 680, 690, 700]);
    expect(points.every(({y}) => y === 500)).toBe(true);
  });

  it('a long slanted line reads as each of its spots does alone', async () => {
    const pixels = await picture('aperture-f8');
    const line = sharpnessAlong(pixels, {from: [140, 960], to: [1360, 240]}, 40);
    const known = line.filter(({blur}) => blur !== null);
    expect(known.length).toBeGreaterThan(8);
    for (const {x, y, blur} of known) {
      const alone = sharpnessAlong(pixels, {from: [x, y], to: [x + 1, y]})[0]!.blur;
      // Pieces begin on other pixels, so coarse scales are sampled elsewhere.
      if (alone !== null) expect(Math.abs(blur! / alone - 1)).toBeLessThan(0.25);
    }
  });

  it('a cell of the grid reads as the same spot on a line, wherever the grid begins', async () => {
    const pixels = await picture('aperture-f8');
    const {blur, columns, rows, cell} = sharpnessGrid(pixels, cropOf([600, 480, 160, 64]));
    expect([columns, rows, cell]).toEqual([10, 4, 16]);
    const line = sharpnessAlong(pixels, {from: [608, 488], to: [752, 488]}, 16);
    line.forEach(({blur: value}, at) => {
      const other = blur[at] as number | null;
      // Pieces begin on other pixels, so coarse scales are sampled elsewhere.
      if (value !== null && other !== null) expect(Math.abs(value / other - 1)).toBeLessThan(0.25);
    });
    expect(line.filter(({blur: value}) => value !== null).length).toBeGreaterThan(5);
  });

  it('covers an area that is no multiple of a cell, and one pixel', async () => {
    const grid = sharpnessGrid(await picture('aperture-f8'), {x: 1490, y: 990, width: 40, height: 40});
    expect([grid.columns, grid.rows, grid.blur.length]).toEqual([1, 1, 1]);
    expect(sharpnessGrid(noise(1, 1, 1), {x: 0, y: 0, width: 1, height: 1}).blur).toEqual([null]);
  });

  it.each([0, -4, NaN])('refuses a step or a cell of %s by name', (bad) => {
    expect(() => sharpnessAlong(noise(8, 8, 1), {from: [0, 0], to: [7, 7]}, bad)).toThrow(new Problem('step', bad, 'a number above 0'));
    expect(() => sharpnessGrid(noise(8, 8, 1), {x: 0, y: 0, width: 8, height: 8}, bad)).toThrow(new Problem('cell', bad, 'a number above 0'));
  });

  it('refuses a line off the picture', () => {
    expect(() => sharpnessAlong(noise(8, 8, 1), {from: [900, 900], to: [990, 900]})).toThrow(Problem);
  });
});

/** Gray with grain of the given deviation in codes, a sum of four random codes each. Invented. */
function grainy(side: number, seed: number, strength: number): Pixels {
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  let state = seed >>> 0;
  const random = (): number => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
  for (let at = 0; at < side * side; at++) {
    const bell = (random() + random() + random() + random() - 2) * Math.sqrt(3);
    data.fill(128 + bell * strength, at * 4, at * 4 + 3);
  }
  return {data, width: side, height: side};
}

/** Irregular strokes some 4 px wide in two near grays, at all angles: like print. Invented. */
function lowContrastPattern(): Pixels {
  const side = 384;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const wave = Math.sin(x / 13 + 2 * Math.sin(y / 29)) + Math.sin(y / 17 - 1.5 * Math.cos(x / 23));
      data.fill(Math.abs(wave) < 0.15 ? 110 : 150, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return {data, width: side, height: side};
}
