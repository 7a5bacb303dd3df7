import type {Photo} from '../../../photo/open.js';
import {isPhotoProblem, type PhotoProblem} from '../../../photo/problem.js';

/** Whose photo it is: a reader's act is told to the page, a script's is not, and the page's own only fills in. */
export type OpenedBy = 'reader' | 'script' | 'page';

/** An address that gave no photo. */
export interface NotLoaded {
  readonly src: string;
  /** Status of the answer, `404`; without it there was no answer. */
  readonly status?: string;
}

/** Why there is no new photo. */
export type OpenTrouble = PhotoProblem | NotLoaded;

/** Opens photos one after the other; the last one asked for is the one that counts. */
export class Opener {
  /** Whether a photo is on its way. */
  busy = false;
  /** What was wrong with the last one. */
  trouble: OpenTrouble | undefined;
  #turn = 0;

  /**
   * @param taken - called with a photo that opened
   * @param changed - called when {@link busy} or {@link trouble} changed
   */
  constructor(
    private readonly taken: (photo: Photo, file: Blob, by: OpenedBy) => void, private readonly changed: () => void,
  ) {}

  /** @returns whether it opened */
  async open(file: Blob, by: OpenedBy): Promise<boolean> {
    const turn = this.#start();
    const opened = await openedFrom(file);
    if (turn !== this.#turn) {
      if ('close' in opened) opened.close();
      return false;
    }
    const isPhoto = 'close' in opened;
    this.#end(isPhoto ? undefined : opened);
    if (isPhoto) this.taken(opened, file, by);
    return isPhoto;
  }

  /** Opens what lies at an address of the page's own. */
  async load(src: string, base: string): Promise<boolean> {
    const turn = this.#start();
    const file = await fetched(src, base);
    if (turn !== this.#turn) return false;
    if (file instanceof Blob) return this.open(file, 'page');
    this.#end(file);
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

  #end(trouble: OpenTrouble | undefined): void {
    this.busy = false;
    this.trouble = trouble;
    this.changed();
  }
}

/** What opens photos is fetched with the first of them. */
async function openedFrom(file: Blob): Promise<Photo | OpenTrouble> {
  const opening = await import('../../../photo/open.js').catch(() => undefined);
  return opening ? opening.openPhoto(file) : {src: 'name' in file ? String(file.name) : ''};
}

/** The file at an address, or why there is none. */
async function fetched(src: string, base: string): Promise<File | NotLoaded> {
  try {
    const answer = await fetch(new URL(src, base));
    if (!answer.ok) return {src, status: String(answer.status)};
    const blob = await answer.blob();
    return new File([blob], src.replace(/[?#].*$/, '').split('/').at(-1) ?? '', {type: blob.type});
  } catch (error) {
    // An address that is none, or a network that gave nothing.
    if (!(error instanceof TypeError)) throw error;
    return {src};
  }
}

/** Tells a file that is no photo from an address that gave none. */
export const isFileTrouble = (trouble: OpenTrouble): trouble is PhotoProblem => isPhotoProblem(trouble);

/** A closed bitmap has no size. */
export function isClosed({preview}: Photo): boolean {
  return preview.width === 0;
}
