import {openPhoto, type Photo} from '../../photo/open.js';
import {isPhotoProblem} from '../../photo/problem.js';
import {NO_ANSWER, notLoaded, trouble} from './words-file.js';

/** Whose photo it is: a reader's act is told to the page, a script's is not, and the page's own only fills in. */
export type OpenedBy = 'reader' | 'script' | 'page';

/** Opens photos one after the other; the last one asked for is the one that counts. */
export class Opener {
  /** Whether a photo is on its way. */
  busy = false;
  /** What was wrong with the last one. */
  message = '';
  #turn = 0;

  /**
   * @param taken - called with a photo that opened
   * @param changed - called when {@link busy} or {@link message} changed
   */
  constructor(
    private readonly taken: (photo: Photo, file: Blob, by: OpenedBy) => void, private readonly changed: () => void,
  ) {}

  /** @returns whether it opened */
  async open(file: Blob, by: OpenedBy): Promise<boolean> {
    const turn = this.#start();
    const opened = await openPhoto(file);
    if (turn !== this.#turn) {
      if (!isPhotoProblem(opened)) opened.close();
      return false;
    }
    const isProblem = isPhotoProblem(opened);
    this.#end(isProblem ? trouble(opened) : '');
    if (!isProblem) this.taken(opened, file, by);
    return !isProblem;
  }

  /** Opens what lies at an address of the page's own. */
  async load(src: string, base: string): Promise<boolean> {
    const turn = this.#start();
    const file = await fetched(src, base);
    if (turn !== this.#turn) return false;
    if (file instanceof Blob) return this.open(file, 'page');
    this.#end(notLoaded(src, file));
    return false;
  }

  /** Wants none of those on their way. */
  stop(): void {
    this.#turn++;
    this.busy = false;
  }

  #start(): number {
    this.busy = true;
    this.changed();
    return ++this.#turn;
  }

  #end(message: string): void {
    this.busy = false;
    this.message = message;
    this.changed();
  }
}

/** The file at an address, or why there is none. */
async function fetched(src: string, base: string): Promise<File | string> {
  try {
    const answer = await fetch(new URL(src, base));
    if (!answer.ok) return String(answer.status);
    const blob = await answer.blob();
    return new File([blob], src.replace(/[?#].*$/, '').split('/').at(-1) ?? '', {type: blob.type});
  } catch (error) {
    // An address that is none, or a network that gave nothing.
    if (!(error instanceof TypeError)) throw error;
    return NO_ANSWER;
  }
}

/** A closed bitmap has no size. */
export function isClosed({preview}: Photo): boolean {
  return preview.width === 0;
}
