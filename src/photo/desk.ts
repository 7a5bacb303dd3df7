import {Problem} from '../core/problem.js';
import type {Breathe} from './decode.js';
import {develop} from './develop.js';
import type {FileFacts} from './kind.js';
import type {PhotoProblem} from './problem.js';
import {QUESTIONS} from './questions.js';
import type {Picture, Question} from './questions.js';
import type {PhotoSettings} from './settings.js';

/** A photo that was opened, without its pixels, which stay at the desk. */
export interface Opened {
  readonly width: number;
  readonly height: number;
  readonly preview: ImageBitmap;
  readonly facts: FileFacts;
  readonly settings: PhotoSettings;
}

/** What can be sent to a desk. Photos are known by numbers that the sender chooses. */
export type Order =
  | {readonly do: 'open'; readonly photo: number; readonly file: Blob}
  | {
    readonly do: 'ask'; readonly photo: number; readonly question: Question; readonly asked: unknown;
    readonly other: number | undefined;
  }
  | {readonly do: 'close'; readonly photo: number};

/** What comes back: an answer, a {@link Problem} of the core in its parts, or what went wrong inside. */
export type Reply =
  | {readonly answer: unknown}
  | {readonly refused: readonly [parameter: string, value: unknown, wanted: string]}
  | {readonly fault: string};

/** Keeps the pixels of open photos and answers questions about them, in a worker or in the page. */
export type Desk = (order: Order) => Promise<Reply>;

/** A desk with nothing on it. */
export function openDesk(breathe: Breathe): Desk {
  const pictures = new Map<number, Picture>();
  return async (order) => {
    try {
      return {answer: await carryOut(order, pictures, breathe)};
    } catch (error) {
      if (error instanceof Problem) return {refused: [error.parameter, plain(error.value), error.wanted]};
      return {fault: String(error)};
    }
  };
}

async function carryOut(order: Order, pictures: Map<number, Picture>, breathe: Breathe): Promise<unknown> {
  switch (order.do) {
    case 'open': return open(order.photo, order.file, pictures, breathe);
    case 'close': return void pictures.delete(order.photo);
    case 'ask': {
      const [picture, other] = [pictures.get(order.photo), order.other === undefined ? undefined : pictures.get(order.other)];
      if (!picture || (order.other !== undefined && !other)) throw new Problem('photo', 'closed', 'a photo that is open');
      // The types of a question and what was asked were matched where it was put: see Photo.ask.
      const answer = QUESTIONS[order.question] as (picture: Picture, asked: unknown, other?: Picture) => unknown;
      return answer(picture, order.asked, other);
    }
  }
}

async function open(
  photo: number, file: Blob, pictures: Map<number, Picture>, breathe: Breathe,
): Promise<Opened | PhotoProblem> {
  const developed = await develop(file, breathe);
  if ('problem' in developed) return developed;
  const {picture, ...rest} = developed;
  pictures.set(photo, picture);
  return {...rest, width: picture.pixels.width, height: picture.pixels.height};
}

/** A value that can be sent between threads. */
function plain(value: unknown): unknown {
  return typeof value === 'number' || typeof value === 'string' ? value : String(value);
}
