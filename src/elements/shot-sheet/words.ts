import type {Difference} from '../../core/shot/difference.js';
import {placeOf, type DocumentFault} from '../../core/shot/document.js';
import {labelOf} from '../../core/shot/labels.js';
import type {LinkNotice} from '../../core/shot/link.js';
import type {Shot} from '../../core/shot/shot.js';
import {valueWords, type SheetForm} from '../../core/shot/text.js';
import {writeStops} from '../../core/exposure/write.js';
import type {Forgetful} from './memory.js';

/** Numbers and their units stay on one line. */
const together = (text: string): string => text.replaceAll(' ', '\u00a0');

/** Stops that nobody would see in a picture. */
const UNSEEN = 0.015;

/** Longest piece of someone's text that a sentence repeats. */
const quoted = (text: string): string => `“${text.length > 60 ? `${text.slice(0, 60)}…` : text}”`;

function stopsWords(stops: number): string {
  const size = Math.abs(stops);
  const third = Math.abs(size * 3 - Math.round(size * 3)) < 0.02 || Math.abs(size * 2 - Math.round(size * 2)) < 0.02;
  const text = (third && size > 0.3 ? writeStops(Math.round(size * 6) / 6) : writeStops(size, 2)).replace(/^\+/, '');
  return `${together(`${text} ${size > 1.001 ? 'stops' : 'stop'}`)} ${stops > 0 ? 'brighter' : 'darker'}`;
}

/** One change: `Aperture f/8 → f/11, 1 stop darker`. Long values are named only. */
export function changeWords({key, from, to, stops}: Difference, unit: Shot['unit']): string {
  const [before, after] = [valueWords(key, from, unit), valueWords(key, to, unit)];
  if (key === 'note' || before.length + after.length > 60) return `${labelOf(key)} changed`;
  const seen = stops !== undefined && Number.isFinite(stops) && Math.abs(stops) > UNSEEN;
  return `${labelOf(key)} ${together(before || '–')} → ${together(after || '–')}${seen ? `, ${stopsWords(stops)}` : ''}`;
}

const MOST_NAMED = 2;

export function verdictWords(settings: string, last: {readonly count: number; readonly changes: readonly Difference[]} | null, unit: Shot['unit']): string {
  const now = together(settings).replaceAll(',\u00a0', ', ');
  if (!last) return `${now}. No shot is kept yet.`;
  if (!last.changes.length) return `${now}. As kept in shot ${last.count}.`;
  const named = last.changes.slice(0, MOST_NAMED).map((change) => changeWords(change, unit)).join('; ');
  const rest = last.changes.length - MOST_NAMED;
  return `${now}. Since shot ${last.count}: ${named}${rest > 0 ? ` and ${rest} more` : ''}.`;
}

export function noticeWords(notice: LinkNotice): string {
  switch (notice.kind) {
    case 'newer': return `This link comes from a later version (${notice.version}). What is known here was taken.`;
    case 'unknown': return `“${notice.name}” in the link means nothing here. It is handed on with the next link; everything else was taken.`;
    case 'unreadable': return `${notice.name} ${quoted(notice.text)} in the link does not read as ${notice.problem.wanted}. It is kept as typed; everything else was taken.`;
    case 'too-long': return `“${notice.name}” in the link is ${notice.length} characters long and was left out; everything else was taken.`;
  }
}

export function faultWords({fault, path, value, wanted}: DocumentFault, name: string): string {
  const file = name ? `“${name}”` : 'This text';
  switch (fault) {
    case 'no-json': return `${file} is damaged or no file of shots: it is not complete JSON. Nothing was changed.`;
    case 'foreign': return `${file} is JSON, but not a file of shots. Nothing was changed.`;
    case 'newer': return `${file} was made by a later version (${shown(value)}) than this page reads. Nothing was changed; reload the page or ask for an older file.`;
    case 'wrong': {
      const {shot, name: where} = placeOf(path);
      return `${file} cannot be taken: ${shot ? `${where || 'the shot'} of shot ${shot}` : where} is ${shown(value)}, wanted is ${wanted}. Nothing was changed.`;
    }
  }
}

function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  return quoted(typeof value === 'string' ? value : JSON.stringify(value));
}

export function forgetfulWords(why: Forgetful): string {
  return why === 'full'
    ? 'This device has no room left for the shots. They stay on this page until it is closed: save a file to be safe.'
    : 'This browser keeps nothing for this page (a private window, or storage is blocked). The shots stay on this page until it is closed: save a file to be safe.';
}

export const keptWords = (count: number): string => `Kept as shot ${count}.`;
export const importedWords = (count: number): string => (count === 1 ? 'One shot was added.' : `${count} shots were added.`);
export const undoWords = (what: string): string => `Undo: ${what}`;
export const removeWords = (count: number): string => `remove shot ${count}`;
export const moveWords = (count: number): string => `move shot ${count}`;
export const putBackWords = (count: number): string => `put shot ${count} on the bench`;
export const ofShot = (what: string, count: number): string => `${what}: shot ${count}`;
export const titleOf = (count: number): string => `Shot ${count}`;
export const optionWords = (count: number, title: string): string => `${count}. ${title}`;
export const longLinkWords = (length: number): string => `The link is ${length} characters long, more than a QR code holds. Copy it instead, or shorten the note.`;
export const snippetFallback = (settings: string): string => `${settings}.`;
export const pictureWords = (title: string): string => `Small picture of ${title}`;

export const FORMS: Readonly<Record<SheetForm, string>> = {text: 'Plain text', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'};

export const WORDS = {
  sheet: 'Shot sheet',
  nothing: 'Nothing was stated yet: what stands above is only assumed.',
  name: 'Name of this shot',
  namePlaceholder: 'without a name it is numbered',
  note: 'Note',
  keep: 'Keep this shot',
  kept: 'Kept shots, in order',
  first: 'The first one kept.',
  same: 'Nothing changed since the shot before.',
  putBack: 'Put on the bench',
  up: 'Earlier',
  down: 'Later',
  remove: 'Remove',
  remember: 'Remember on this device',
  remembered: 'Kept on this device, nowhere else. Press again and it forgets.',
  forgotten: 'This device has forgotten the shots. They are still on this page.',
  import: 'import',
  link: 'open a link',
  linkTaken: 'The shot of the link is on the bench.',
  memory: 'What this device kept',
  otherPage: 'take the shots of another window',
  along: 'Take it along: link, text, card, file, print',
  what: 'Which shot',
  now: 'This one',
  all: 'All kept',
  linkHead: 'Link',
  copyLink: 'Copy link',
  showQr: 'Show QR code',
  hideQr: 'Hide QR code',
  qr: 'QR code of the link to this shot',
  textHead: 'Text for places without script',
  cardHead: 'Card and paper',
  svg: 'Save SVG',
  png: 'Save PNG',
  noPng: 'This page does not let a PNG be drawn. The SVG has the same card.',
  print: 'Print on one page',
  noPrint: 'This page lets nothing be printed on its own. Save the SVG and print that.',
  fileHead: 'File',
  save: 'Save file',
  copyFile: 'Copy file as text',
  open: 'Open a file',
  paste: 'or paste its text here',
  take: 'Add these shots',
  page: 'Put it into a page of your own',
  tag: 'Element',
  tagSnippet: 'Tag with what is set',
  scriptSnippet: 'Script line, once a page',
  frameSnippet: 'In a frame, for places without scripts of your own',
  plainSnippet: 'Plain text, where nothing else works',
  copy: 'Copy',
  copied: 'Copied',
  copyHere: 'Copying is not allowed here. The text is selected: copy it by hand.',
} as const;
