import type {Breathe} from './decode.js';
import {startsWith, word16} from './bytes.js';
import {endOfScan, isFrame, PROFILE, standsAlone, START_OF_SCAN} from './jpeg.js';
import {codesFrom, readScan} from './jpeg-scan.js';
import type {Codes, Component, Frame} from './jpeg-scan.js';

/** Mean colours of a JPEG picture in cells of a few blocks each, as the file has them: before they are rounded to codes. */
export interface CellMeans {
  /** Pixels across and down, as stored. */
  readonly width: number;
  readonly height: number;
  /** Pixels of a cell: 8 or 16, rarely more. */
  readonly cellWidth: number;
  readonly cellHeight: number;
  /** Cells in a row. */
  readonly columns: number;
  /** Red, green and blue of each cell, codes; neither rounded nor cut off at 0 and 255. */
  readonly codes: Float32Array;
}

/** Everything that is read before the picture itself. */
interface Tables {
  readonly steps: Map<number, number>;
  readonly codes: Map<number, Codes>;
  restart: number;
  frame: Frame | undefined;
}

const RESTART = 0xdd;
const CODES = 0xc4;
const STEPS = 0xdb;
const PROFILE_MARKER = 0xe2;
/** The segment that says whether colours are brightness and two colours (1), and how it begins. */
const TRANSFORM_MARKER = 0xee;
const TRANSFORM = [0x41, 0x64, 0x6f, 0x62, 0x65];

/**
 * Reads the mean colours of a JPEG picture's cells from its coefficients. A decoder rounds brightness and colour of every
 * pixel to whole steps, which in a plain area all goes to the same side: up to two codes of blue. The file knows better.
 * @returns `undefined` for anything whose colours are not simply brightness and two colours in sRGB, in 8 bits: four
 *   inks, red, green and blue stored as they are, another profile; and for files that are damaged
 * Source: ITU-T T.81 and T.871, from memory.
 */
export async function readCellMeans(bytes: Uint8Array, breathe: Breathe): Promise<CellMeans | undefined> {
  const tables: Tables = {steps: new Map(), codes: new Map(), restart: 0, frame: undefined};
  for (let at = 2; at + 3 < bytes.length;) {
    const marker = bytes[at + 1] as number;
    if (bytes[at] !== 0xff || marker === 0xff) { at++; continue; }
    if (marker === 0xd9) break;
    if (marker === 0 || standsAlone(marker)) { at += 2; continue; }
    const end = at + 2 + word16(bytes, at + 2);
    const body = bytes.subarray(at + 4, end);
    if (marker !== START_OF_SCAN) {
      if (!note(tables, marker, body)) return undefined;
      at = end;
      continue;
    }
    const next = await passScan(bytes, end, body, tables, breathe);
    if (next === undefined) return undefined;
    at = next;
  }
  return tables.frame && meansOf(tables.frame, tables.steps);
}

/** Takes in what stands before the picture; false when it is not for us. */
function note(tables: Tables, marker: number, body: Uint8Array): boolean {
  if (marker === RESTART) tables.restart = word16(body, 0);
  if (marker === CODES) noteCodes(tables, body);
  if (marker === STEPS) noteSteps(tables, body);
  // Without a profile, or with one that has the name of sRGB, a picture is shown as it is.
  if (marker === PROFILE_MARKER && startsWith(body, PROFILE)) return isPlainProfile(body);
  if (marker === TRANSFORM_MARKER && startsWith(body, TRANSFORM)) return body[11] === 1;
  if (isFrame(marker)) {
    tables.frame = marker > 0xc2 ? undefined : frameFrom(body, marker === 0xc2);
    return tables.frame !== undefined;
  }
  return true;
}

function isPlainProfile(body: Uint8Array): boolean {
  return new TextDecoder('latin1').decode(body).replaceAll('\0', '').includes('sRGB');
}

function noteCodes({codes}: Tables, body: Uint8Array): void {
  for (let at = 0; at + 17 <= body.length;) {
    const symbols = body.subarray(at + 1, at + 17).reduce((sum, count) => sum + count, 0);
    codes.set(body[at] as number, codesFrom(body.subarray(at + 1, at + 17 + symbols)));
    at += 17 + symbols;
  }
}

/** Only the first step of each table is wanted. */
function noteSteps({steps}: Tables, body: Uint8Array): void {
  for (let at = 0; at < body.length;) {
    const [number, wide] = [(body[at] as number) & 15, (body[at] as number) > 15];
    steps.set(number, wide ? word16(body, at + 1) : body[at + 1] ?? 0);
    at += wide ? 129 : 65;
  }
}

/** Names of components that are red, green and blue themselves. */
const RED_GREEN_BLUE = [0x52, 0x47, 0x42];

function frameFrom(body: Uint8Array, progressive: boolean): Frame | undefined {
  const count = body[5] as number;
  const ids = Array.from({length: count}, (_, index) => body[6 + index * 3] as number);
  if (body[0] !== 8 || (count !== 1 && count !== 3) || startsWith(Uint8Array.from(ids), RED_GREEN_BLUE)) return undefined;
  const [height, width] = [word16(body, 1), word16(body, 3)];
  // A component that is alone has one block in a cell, whatever it says.
  const parts = ids.map((_, index) => (count === 1 ? 0x11 : body[7 + index * 3] as number));
  const across = Math.max(...parts.map((part) => part >> 4));
  const down = Math.max(...parts.map((part) => part & 15));
  if (width * height === 0 || parts.some((part) => part >> 4 === 0 || (part & 15) === 0) || across > 4 || down > 4) return undefined;
  const [columns, rows] = [Math.ceil(width / (8 * across)), Math.ceil(height / (8 * down))];
  const components = parts.map((part, index): Component => ({
    id: ids[index] as number, across: part >> 4, down: part & 15, steps: body[8 + index * 3] as number,
    columns: columns * (part >> 4), levels: new Int32Array(columns * (part >> 4) * rows * (part & 15)),
  }));
  return {width, height, progressive, columns, rows, across, down, components};
}

/** Reads a scan that has first coefficients, and passes over any other. */
async function passScan(
  bytes: Uint8Array, at: number, body: Uint8Array, {frame, codes, restart}: Tables, breathe: Breathe,
): Promise<number | undefined> {
  if (!frame) return undefined;
  const count = body[0] as number;
  const [lowest, bits] = [body[1 + count * 2] as number, body[3 + count * 2] as number];
  if (lowest > 0) return endOfScan(bytes, at);
  const none = new Uint16Array(2 ** 16);
  const components = Array.from({length: count}, (_, index) => {
    const [id, numbers] = [body[1 + index * 2], body[2 + index * 2] as number];
    return {
      component: frame.components.find((component) => component.id === id),
      first: codes.get(numbers >> 4) ?? none, rest: codes.get(16 + (numbers & 15)) ?? none,
    };
  });
  if (!components.every((part): part is typeof part & {component: Component} => part.component !== undefined)) return undefined;
  const place = await readScan(bytes, at, frame, {components, restart, bit: bits & 15, refines: bits > 15}, breathe);
  return place === undefined ? undefined : endOfScan(bytes, place);
}

function meansOf({width, height, columns, rows, across, down, components}: Frame, steps: Map<number, number>): CellMeans {
  const codes = new Float32Array(columns * rows * 3);
  for (let cell = 0; cell < columns * rows; cell++) {
    const [brightness, blueness, redness] = [0, 1, 2].map((index) => {
      const component = components[index];
      return component ? meanOf(component, steps.get(component.steps) ?? 0, cell % columns, Math.floor(cell / columns)) : 0;
    }) as [number, number, number];
    codes.set([
      128 + brightness + 1.402 * redness,
      128 + brightness - (0.114 * 1.772 * blueness + 0.299 * 1.402 * redness) / 0.587,
      128 + brightness + 1.772 * blueness,
    ], cell * 3);
  }
  return {width, height, cellWidth: 8 * across, cellHeight: 8 * down, columns, codes};
}

function meanOf({across, down, columns, levels}: Component, step: number, column: number, row: number): number {
  let sum = 0;
  for (let y = row * down; y < (row + 1) * down; y++) {
    for (let x = column * across; x < (column + 1) * across; x++) sum += levels[y * columns + x] as number;
  }
  return sum * step / (8 * across * down);
}
