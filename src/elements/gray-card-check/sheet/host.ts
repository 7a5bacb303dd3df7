import type {CSSResult, TemplateResult} from 'lit';
import type {Problem} from '../../../core/problem.js';
import type {Shot} from '../../../core/shot/shot.js';
import type {Photo} from '../../../photo/open.js';
import type {CardShot, GrayCard} from '../reading.js';
import type {SheetWords} from './words/en.js';

/** The element as its sheet sees it: what lies there at this moment, and what can be asked of it. */
export interface SheetHost {
  readonly words: () => SheetWords;
  readonly shot: () => Shot;
  /** What was stated of the shot; the rest is assumed. */
  readonly stated: () => Partial<Shot>;
  readonly cardShot: () => CardShot | undefined;
  /** What the card shot says, as far as it was read. */
  readonly card: () => GrayCard | undefined;
  /** The photo in the tonal chart that is linked, while it is another than the card shot. */
  readonly linked: () => Photo | undefined;
  /** Whether a photo is on its way. */
  readonly isOpening: () => boolean;
  /** What the shot was before a way out was taken. */
  readonly setBefore: () => Partial<Shot> | undefined;

  readonly changed: () => void;
  /** Lays a card shot on the bench, and closes the one it replaces when that is another photo. */
  readonly lay: (shot: CardShot) => void;
  readonly judge: (card: GrayCard | undefined) => void;
  readonly act: (changes: Partial<Shot>) => void;
  /** Fills in without telling the page. */
  readonly fill: (changes: Partial<Shot>) => void;
  readonly takeWay: (changes: Partial<Shot>, before: Partial<Shot> | undefined) => void;
  readonly tell: (problem: Problem) => void;
  /** Ways to another card shot. */
  readonly ways: () => TemplateResult;
  readonly later: <M>(load: () => Promise<M>) => M | undefined | null;
  readonly wear: (styles: CSSResult) => void;
}
