import {Problem} from '../../../core/problem.js';
import type {Crop} from '../../../core/tone/pixels.js';
import type {Photo} from '../../../photo/open.js';

/** Sharpness of the crop in squares. */
export interface Heat {
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly crop: Crop;
  /** Blur disc of each square, row by row, px of the photo; `null` where nothing is known, `undefined` where nobody looked yet. */
  readonly blur: readonly (number | null | undefined)[];
  /** The same of the earlier shot. */
  readonly before: readonly (number | null | undefined)[] | undefined;
  /** Share that has been looked at, 0 to 1. */
  readonly done: number;
}

/** Squares across the wider side of the crop: large enough on a phone to tell one pattern from another. */
const CELLS = 44;
/** Smallest square that a reading fits in, px. */
const LEAST_CELL = 16;
/** Pixels a side that are asked for at a time: what the worker does in the turn of a few frames, so that a drag gets in between. */
const PIECE = 640;

/** A crop that is being dragged is not looked at before it has been still for so long, ms. */
const STILL_MS = 250;

/** What one heat is of. */
interface Subject {
  readonly photo: Photo;
  readonly earlier: Photo | undefined;
  readonly crop: Crop;
}

/** Looks at a crop piece by piece; the latest crop wins, and nothing is asked any more once it is stopped. */
export class HeatReader {
  heat: Heat | undefined;
  #subject: Subject | undefined;
  #turn = 0;

  /** @param changed - called when there is more to show */
  constructor(private readonly changed: () => void) {}

  follow(photo: Photo, earlier: Photo | undefined, crop: Crop): void {
    const is = this.#subject;
    if (is && photo === is.photo && earlier === is.earlier && crop.x === is.crop.x && crop.y === is.crop.y
      && crop.width === is.crop.width && crop.height === is.crop.height) return;
    void this.#look(++this.#turn, this.#subject = {photo, earlier, crop}, is?.photo === photo ? STILL_MS : 0);
  }

  stop(): void {
    this.#turn++;
    this.#subject = this.heat = undefined;
  }

  async #look(turn: number, {photo, earlier, crop}: Subject, quiet: number): Promise<void> {
    if (quiet > 0) await new Promise((resolve) => { setTimeout(resolve, quiet); });
    if (turn !== this.#turn) return;
    const cell = Math.max(LEAST_CELL, Math.ceil(Math.max(crop.width, crop.height) / CELLS));
    const [columns, rows] = [Math.ceil(crop.width / cell), Math.ceil(crop.height / cell)];
    const blur = new Array<number | null | undefined>(columns * rows).fill(undefined);
    const before = earlier && [...blur];
    const show = (done: number) => { this.heat = {cell, columns, rows, crop, blur: [...blur], before: before && [...before], done}; };
    const pieces = piecesOf(columns, rows, Math.max(1, Math.floor(PIECE / cell)));
    show(0);
    let shown = performance.now();
    try {
      for (const [at, piece] of pieces.entries()) {
        fill(blur, columns, await askPiece(photo, crop, cell, piece), piece);
        if (earlier && before && turn === this.#turn) fill(before, columns, await askPiece(earlier, crop, cell, piece), piece);
        if (turn !== this.#turn) return;
        const done = (at + 1) / pieces.length;
        // Drawing takes the page's time: a few times a second shows as much.
        if (done < 1 && performance.now() - shown < 200) continue;
        shown = performance.now();
        show(done);
        this.changed();
      }
    } catch (error) {
      // A photo that was closed meanwhile has nothing left to say.
      if (!(error instanceof Problem)) throw error;
    }
  }
}

interface Piece {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
}

function piecesOf(columns: number, rows: number, side: number): Piece[] {
  const pieces: Piece[] = [];
  for (let top = 0; top < rows; top += side) {
    for (let left = 0; left < columns; left += side) {
      pieces.push({left, top, columns: Math.min(side, columns - left), rows: Math.min(side, rows - top)});
    }
  }
  return pieces;
}

async function askPiece(photo: Photo, crop: Crop, cell: number, {left, top, columns, rows}: Piece): Promise<readonly (number | null)[]> {
  const [x, y] = [crop.x + left * cell, crop.y + top * cell];
  const part = {
    x, y, width: Math.min(columns * cell, crop.x + crop.width - x), height: Math.min(rows * cell, crop.y + crop.height - y),
  };
  return (await photo.ask('sharpnessGrid', {crop: part, cell})).blur;
}

function fill(all: (number | null | undefined)[], across: number, part: readonly (number | null)[], {left, top, columns}: Piece): void {
  part.forEach((value, at) => {
    all[(top + Math.floor(at / columns)) * across + left + at % columns] = value;
  });
}
