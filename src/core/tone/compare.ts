import {requireFinite} from '../problem.js';
import {agree} from './agreement.js';
import type {Agreement} from './agreement.js';
import {averageBlocks} from './blocks.js';
import type {Blocks} from './blocks.js';
import {LUMINANCE_WEIGHTS} from './light.js';
import {cropOnto, wholeOf} from './pixels.js';
import type {Crop, Pixels} from './pixels.js';

/** Blocks across the wider side, at most; a block is never smaller than {@link LEAST_BLOCK}. */
const MOST_BLOCKS = 192;
/** Pixels across a block: one block of a JPEG file, over which its rounding averages out. */
const LEAST_BLOCK = 8;
/** Linear light, about code 6, below which rounding to whole codes is worth more than 0.1 stop. */
const FLOOR = 0.002;
/** Stops from the agreed shift within which a block agrees. */
const REACH = 0.2;
/** Share of the weight that has to agree before two pictures are taken for the same set. */
const SAME_SHARE = 0.4;
/** Correlation of the blocks' brightness, in stops, that two pictures of the same set must reach. */
const SAME_PATTERN = 0.75;
/** Shapes of two frames that differ by more than this share are not the same framing. */
const SAME_SHAPE = 0.01;

/** Change at one edge of one channel's chart, shares of the pixels from 0 to 1. */
export interface EdgeChange {
  readonly before: number;
  readonly after: number;
}

/** A value for each channel. */
export interface PerChannel<Value> {
  readonly red: Value;
  readonly green: Value;
  readonly blue: Value;
}

/** How the second of two pictures differs in exposure from the first. */
export interface Comparison {
  /** Stops by which the second is brighter; negative = darker. `undefined` when they do not show the same set. */
  readonly shift: number | undefined;
  /** Half of the range of the middle 68 % of the blocks that agree, stops. */
  readonly spread: number;
  /** Share of the weight of comparable blocks that agrees with the shift, 0 to 1. The rest moved or changed. */
  readonly agreeing: number;
  /** Correlation of the two brightness patterns, −1 to 1. */
  readonly pattern: number;
  /** Why there is no shift: other frame shape, nothing comparable in both, or other things in the pictures. */
  readonly because: 'shape' | 'nothing-in-common' | 'other-set' | undefined;
  /** Shift of red and blue beyond that of green, stops: away from 0, the light or the white balance changed colour. */
  readonly colour: {readonly red: number; readonly blue: number} | undefined;
  /** Pixels of the first picture in blocks that could be compared. */
  readonly pixels: number;
  /** Share at 0 and at 255 before and after. */
  readonly atBlack: PerChannel<EdgeChange>;
  readonly atWhite: PerChannel<EdgeChange>;
}

/**
 * Exposure shift between two pictures of the same set, measured in linear light over blocks that are near clipping in
 * neither. A tone that fills the frame counts no more than its variety, so that a moved card or another backdrop does
 * not outvote the figure.
 * @param first - picture
 * @param second - picture of the same framing; may have another size
 * @param crop - part of the first to compare, cut to the picture; the same share of the second is taken
 * @throws {Problem} `crop` when nothing of it is on the picture
 */
export function compareShots(first: Pixels, second: Pixels, crop: Crop = wholeOf(first)): Comparison {
  const one = cropOnto(crop, first.width, first.height);
  const across = second.width / first.width;
  const down = second.height / first.height;
  const other = cropOnto({x: one.x * across, y: one.y * down, width: one.width * across, height: one.height * down},
    second.width, second.height);
  const wider = Math.min(Math.max(one.width, one.height), Math.max(other.width, other.height));
  const size = Math.max(LEAST_BLOCK, wider / MOST_BLOCKS) * Math.max(1, 1 / across, 1 / down);
  const columns = Math.max(1, Math.floor(one.width / size));
  const rows = Math.max(1, Math.floor(one.height / size));
  const before = averageBlocks(first, one, columns, rows);
  const after = averageBlocks(second, other, columns, rows);
  const sameShape = Math.abs(Math.log(across / down)) <= SAME_SHAPE;
  return {
    ...compareBlocks(before, after, sameShape),
    atBlack: edgeChanges(before, after, 0), atWhite: edgeChanges(before, after, 3),
  };
}

function compareBlocks(before: Blocks, after: Blocks, sameShape: boolean): Omit<Comparison, 'atBlack' | 'atWhite'> {
  const usable = usableBlocks(before, after);
  const weights = varietyWeights(before, usable);
  const voteOn = (brightness: (blocks: Blocks, block: number) => number): Agreement | undefined =>
    agree(Float64Array.from(usable, (block) => Math.log2(brightness(after, block) / brightness(before, block))), weights, REACH);
  const all = voteOn(blockLuminance);
  const pattern = correlation(usable, weights, before, after);
  const because = !sameShape ? 'shape' : !all ? 'nothing-in-common'
    : all.share < SAME_SHARE || pattern < SAME_PATTERN ? 'other-set' : undefined;
  const [red, green, blue] = [0, 1, 2].map((channel) =>
    voteOn((blocks, block) => blockLight(blocks, block, channel))?.value ?? 0) as [number, number, number];
  return {
    shift: because ? undefined : all?.value,
    spread: all?.spread ?? 0, agreeing: all?.share ?? 0, pattern, because,
    colour: because ? undefined : {red: red - green, blue: blue - green},
    pixels: Math.round(before.pixels * usable.length / (before.columns * before.rows)),
  };
}

function blockLight({light}: Blocks, block: number, channel: number): number {
  return light[block * 3 + channel] as number;
}

function blockLuminance(blocks: Blocks, block: number): number {
  return LUMINANCE_WEIGHTS.reduce((sum, weight, channel) => sum + weight * blockLight(blocks, block, channel), 0);
}

/** Blocks that neither come near white nor sink into rounding, in either picture. */
function usableBlocks(before: Blocks, after: Blocks): number[] {
  const blocks = Array.from({length: before.columns * before.rows}, (_, block) => block);
  return blocks.filter((block) => [before, after].every((picture) =>
    [0, 1, 2].every((channel) => blockLight(picture, block, channel) > FLOOR)));
}

/**
 * Weight of each block: blocks of like tone and colour share a weight that grows with the root of their number. A
 * backdrop is many blocks and few tones, a painted figure few blocks and many.
 */
function varietyWeights(picture: Blocks, usable: readonly number[]): Float64Array {
  const kinds = usable.map((block) => {
    const [red, green, blue] = [0, 1, 2].map((channel) => Math.log2(blockLight(picture, block, channel))) as
      [number, number, number];
    return [green, red - green, blue - green].map((stops) => Math.round(stops * 2)).join();
  });
  const alike = new Map<string, number>();
  for (const kind of kinds) alike.set(kind, (alike.get(kind) ?? 0) + 1);
  return Float64Array.from(kinds, (kind) => 1 / Math.sqrt(alike.get(kind) as number));
}

/** Weighted correlation of the blocks' brightness in stops; 0 when a picture has no pattern. */
function correlation(usable: readonly number[], weights: Float64Array, before: Blocks, after: Blocks): number {
  const [x, y] = [before, after].map((picture) => usable.map((block) => Math.log2(blockLuminance(picture, block)))) as
    [number[], number[]];
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: (at: number) => number): number =>
    usable.reduce((sum, _, at) => sum + (weights[at] as number) * of(at), 0) / total;
  const middleX = mean((at) => x[at] as number);
  const middleY = mean((at) => y[at] as number);
  const product = mean((at) => ((x[at] as number) - middleX) * ((y[at] as number) - middleY));
  const spread = mean((at) => ((x[at] as number) - middleX) ** 2) * mean((at) => ((y[at] as number) - middleY) ** 2);
  return spread > 0 ? product / Math.sqrt(spread) : 0;
}

function edgeChanges(before: Blocks, after: Blocks, from: number): PerChannel<EdgeChange> {
  const of = (channel: number): EdgeChange => ({
    before: (before.edges[from + channel] as number) / before.pixels,
    after: (after.edges[from + channel] as number) / after.pixels,
  });
  return {red: of(0), green: of(1), blue: of(2)};
}

/** A measured shift beside what it was meant to be. */
export interface ShiftVerdict {
  /** Whole thirds of a stop nearest to the measured shift; positive = brighter. */
  readonly thirds: number;
  /** Stops by which the shift misses what was meant, or the nearest third where nothing was said; positive = too bright. */
  readonly off: number;
  /** Whether it is what was meant: nearer to it than to any other click. */
  readonly asMeant: boolean;
}

/** Half of a third-stop click: past it another click is nearer. */
const HALF_CLICK = 1 / 6;

/**
 * Says whether a measured shift is the one that was intended.
 * @param shift - stops, as measured
 * @param meant - stops, as set on the dial; leave out when nothing is known
 * @throws {Problem} `shift` or `meant` when not a finite number
 */
export function judgeShift(shift: number, meant?: number): ShiftVerdict {
  requireFinite('shift', shift);
  if (meant !== undefined) requireFinite('meant', meant);
  const thirds = Math.round(shift * 3) + 0;
  const off = shift - (meant ?? thirds / 3);
  return {thirds, off, asMeant: Math.abs(off) < HALF_CLICK};
}
