/* eslint-disable @typescript-eslint/no-non-null-assertion -- every index is sixteen bits, or a component or block of the frame */

/** A component of a JPEG picture: brightness or one of two colours, often at half the resolution. */
export interface Component {
  readonly id: number;
  /** Blocks in each cell of the picture, across and down. */
  readonly across: number;
  readonly down: number;
  /** Number of its table of steps. */
  readonly steps: number;
  /** Blocks in a row of {@link Component.levels}. */
  readonly columns: number;
  /** First coefficient of each block, in steps: eight times the block's mean less 128. */
  readonly levels: Int32Array;
}

/** What the file's frame says. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly progressive: boolean;
  /** Cells across and down: what has one or more whole blocks of every component. */
  readonly columns: number;
  readonly rows: number;
  /** Most blocks of any component in a cell. */
  readonly across: number;
  readonly down: number;
  readonly components: readonly Component[];
}

/** A table that turns the next sixteen bits into a symbol (low byte) and the bits it takes (high byte, 0: none fits). */
export type Codes = Uint16Array;

/** One pass over the picture's blocks. */
export interface Scan {
  readonly components: readonly {readonly component: Component; readonly first: Codes; readonly rest: Codes}[];
  /** Cells between two restarts; 0: none. */
  readonly restart: number;
  /** Bit of the coefficients this pass ends with: 0 but for progressive files. */
  readonly bit: number;
  /** Whether an earlier pass brought the higher bits. */
  readonly refines: boolean;
}

/** The coded bits of a scan. */
interface Bits {
  /** Takes a symbol off; -1 when the bits are none. */
  readonly symbol: (codes: Codes) => number;
  readonly take: (count: number) => number;
  /** Leaves the bits up to the next restart out. */
  readonly restart: () => void;
  /** Place of the first byte that was not needed. */
  readonly place: () => number;
}

/**
 * Reads the first coefficient of every block in a scan; the others are passed over.
 * @param start - where the coded bits begin
 * @param breathe - called after each row of blocks
 * @returns where they end, or `undefined` when they make no sense
 */
export async function readScan(
  bytes: Uint8Array, start: number, frame: Frame, scan: Scan, breathe: () => Promise<void> | void,
): Promise<number | undefined> {
  const bits = bitsOf(bytes, start);
  const before = scan.components.map(() => 0);
  const alone = scan.components.length === 1 ? scan.components[0]!.component : undefined;
  // A component that comes alone comes block by block, without those that only fill the last cell.
  const columns = alone ? blocksOf(frame.width, alone.across, frame.across) : frame.columns;
  const rows = alone ? blocksOf(frame.height, alone.down, frame.down) : frame.rows;
  for (let cell = 0, left = scan.restart; cell < columns * rows; cell++, left--) {
    if (scan.restart > 0 && left === 0) {
      bits.restart();
      before.fill(0);
      left = scan.restart;
    }
    const [column, row] = [cell % columns, Math.floor(cell / columns)];
    for (let index = 0; index < before.length; index++) {
      const {component, first, rest} = scan.components[index]!;
      const [across, down] = alone ? [1, 1] : [component.across, component.down];
      for (let block = 0; block < across * down; block++) {
        const at = (row * down + Math.floor(block / across)) * component.columns + column * across + block % across;
        if (scan.refines) {
          component.levels[at]! |= bits.take(1) << scan.bit;
          continue;
        }
        const change = readLevel(bits, first);
        if (change === undefined || !(frame.progressive || passRest(bits, rest))) return undefined;
        before[index]! += change;
        component.levels[at] = before[index]! << scan.bit;
      }
    }
    if (column === columns - 1) await breathe();
  }
  return bits.place();
}

function blocksOf(pixels: number, share: number, whole: number): number {
  return Math.ceil(Math.ceil(pixels * share / whole) / 8);
}

/** Difference of a block's first coefficient from that of the block before. */
function readLevel(bits: Bits, codes: Codes): number | undefined {
  const size = bits.symbol(codes);
  if (size < 0 || size > 11) return undefined;
  const value = bits.take(size);
  return size > 0 && value < 2 ** (size - 1) ? value - 2 ** size + 1 : value;
}

/** Passes over the other 63 coefficients; false when the bits make no sense. */
function passRest(bits: Bits, codes: Codes): boolean {
  for (let at = 1; at < 64;) {
    const symbol = bits.symbol(codes);
    if (symbol < 0) return false;
    const size = symbol & 15;
    if (size === 0 && symbol !== 0xf0) return true;
    at += (symbol >> 4) + 1;
    bits.take(size);
  }
  return true;
}

function bitsOf(bytes: Uint8Array, start: number): Bits {
  let at = start;
  let held = 0;
  let count = 0;
  const fill = (): void => {
    for (; count <= 24; count += 8) {
      let byte = bytes[at] ?? 0xff;
      if (byte !== 0xff) at++;
      else if (bytes[at + 1] === 0) at += 2; // FF 00 stands for FF
      else byte = 0; // a marker or the end: noughts are as good as anything
      held = held << 8 | byte;
    }
  };
  return {
    symbol(codes) {
      if (count < 16) fill();
      const found = codes[(held >>> (count - 16)) & 0xffff]!;
      count -= found >>> 8;
      return found === 0 ? -1 : found & 255;
    },
    take(wanted) {
      if (count < wanted) fill();
      count -= wanted;
      return (held >>> count) & ((1 << wanted) - 1);
    },
    restart() {
      count = 0;
      while (at + 1 < bytes.length && !(bytes[at] === 0xff && bytes[at + 1]! >= 0xd0 && bytes[at + 1]! <= 0xd7)) at++;
      at += 2;
    },
    place: () => at,
  };
}

/**
 * Makes a table of codes.
 * @param body - how many codes there are of each length from 1 to 16 bits, then their symbols
 * Source: ITU-T T.81, annex C, from memory.
 */
export function codesFrom(body: Uint8Array): Codes {
  const codes = new Uint16Array(2 ** 16);
  let next = 0;
  let symbol = 16;
  for (let length = 1; length <= 16; length++) {
    const span = 2 ** (16 - length);
    for (let count = body[length - 1]!; count > 0; count--, next += span) {
      codes.fill(length << 8 | body[symbol++]!, next, next + span);
    }
  }
  return codes;
}
