import {Problem} from '../core/problem.js';
import type {Crop} from '../core/tone/pixels.js';
import {wholeOf} from '../core/tone/pixels.js';
import type {Tally} from '../core/tone/tally.js';
import type {Opened, Order} from './desk.js';
import type {FileFacts} from './kind.js';
import {pageLine, workerLine} from './line.js';
import type {Line} from './line.js';
import {isPhotoProblem} from './problem.js';
import type {PhotoProblem} from './problem.js';
import type {Answer, Asked, Question} from './questions.js';
import type {PhotoSettings} from './settings.js';

/** An open photo. Its pixels are kept in a worker until it is closed. */
export interface Photo {
  /** Name of the file, '' when it has none (pasted). */
  readonly name: string;
  /** The file, for whoever wants to open it once more. */
  readonly file: Blob;
  /** Pixels across and down, the right way up. */
  readonly width: number;
  readonly height: number;
  /** What the file's metadata says; widths in it are before rotation. */
  readonly settings: PhotoSettings;
  /** What kind of file it was. */
  readonly facts: FileFacts;
  /** A copy to show, the right way up, at most 1600 pixels on its longer side. Closed with the photo. */
  readonly preview: ImageBitmap;
  /** Where the pixels are. `page`: no worker could be had, so everything takes turns with the page itself. */
  readonly where: 'worker' | 'page';
  /**
   * Counts the pixels of a crop, or of everything.
   * @throws {Problem} `crop` when nothing of it is on the photo, `photo` when it is closed
   */
  tally(crop?: Crop): Promise<Tally>;
  /**
   * Puts any of the {@link QUESTIONS}.
   * @param other - a second open photo, for questions about two
   * @throws {Problem} whatever the answer throws; `photo` when it is closed
   */
  ask<Q extends Question>(question: Q, asked: Asked<Q>, other?: Photo): Promise<Answer<Q>>;
  /** Lets go of the pixels and the preview. May be called twice. */
  close(): void;
}

/** How to open a file. */
export interface OpenOptions {
  /** Keeps the pixels in the page, where a worker is known not to be allowed. */
  readonly inPage?: boolean;
}

/** The one line of the page's photos, and how many photos are on it. */
interface SharedLine {
  readonly line: Promise<Line>;
  users: number;
}
const shared: Record<Line['where'], SharedLine | undefined> = {worker: undefined, page: undefined};
const numbers = new WeakMap<Photo, number>();
let lastNumber = 0;

/**
 * Opens a picture file: JPEG, PNG, WebP, AVIF, and whatever else this browser decodes. Nothing leaves the device.
 * An earlier photo is not touched: close it once the new one is there.
 * @param file - picked, dropped or pasted
 * @returns the photo, or what is wrong with the file; never rejects
 */
export async function openPhoto(file: Blob, {inPage = false}: OpenOptions = {}): Promise<Photo | PhotoProblem> {
  const desk = takeLine(inPage ? 'page' : 'worker');
  const photo = ++lastNumber;
  const leave = () => leaveLine(desk);
  try {
    const line = await desk.line;
    const opened = await send(line, {do: 'open', photo, file}) as Opened | PhotoProblem;
    if (!isPhotoProblem(opened)) return photoOn(line, photo, file, opened, leave);
    leave();
    return {...opened, name: nameOf(file)};
  } catch {
    // Only a worker that was stopped for want of memory comes here: the next photo gets a new one.
    shared[inPage ? 'page' : 'worker'] = undefined;
    leave();
    return {problem: 'too-large', name: nameOf(file), size: file.size, kind: 'unknown'};
  }
}

function nameOf(file: Blob): string {
  return 'name' in file && typeof file.name === 'string' ? file.name : '';
}

function photoOn(line: Line, number: number, file: Blob, opened: Opened, leave: () => void): Photo {
  const name = nameOf(file);
  let isOpen = true;
  const photo: Photo = {
    ...opened, name, file, where: line.where,
    tally: (crop = wholeOf(opened)) => photo.ask('tally', crop),
    async ask<Q extends Question>(question: Q, asked: Asked<Q>, other?: Photo) {
      const second = other && numbers.get(other);
      const closed = () => new Problem('photo', name, 'a photo that is open');
      if (!isOpen) throw closed();
      try {
        return await send(line, {do: 'ask', photo: number, question, asked, other: second}) as Answer<Q>;
      } catch (error) {
        // Closed while the answer was on its way: with the last photo its worker goes.
        throw isOpen ? error : closed();
      }
    },
    close() {
      if (!isOpen) return;
      isOpen = false;
      opened.preview.close();
      void line.send({do: 'close', photo: number});
      leave();
    },
  };
  numbers.set(photo, number);
  return photo;
}

async function send(line: Line, order: Order): Promise<unknown> {
  const reply = await line.send(order);
  if ('refused' in reply) throw new Problem(...reply.refused);
  if ('fault' in reply) throw new Error(reply.fault);
  return reply.answer;
}

function takeLine(where: Line['where']): SharedLine {
  const desk = shared[where] ??= {
    line: where === 'page' ? pageLine() : workerLine().then((line) => line ?? pageLine()), users: 0,
  };
  desk.users++;
  return desk;
}

/** After the last photo the worker goes, and its memory with it. */
function leaveLine(desk: SharedLine): void {
  if (--desk.users > 0) return;
  if (shared.worker === desk) shared.worker = undefined;
  if (shared.page === desk) shared.page = undefined;
  void desk.line.then((line) => line.end());
}
