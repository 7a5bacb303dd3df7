import type {Difference} from '../../core/shot/difference.js';
import {labelOf} from '../../core/shot/labels.js';
import type {LinkNotice} from '../../core/shot/link.js';
import type {Shot} from '../../core/shot/shot.js';
import {valueWords, type MeasuredChange} from '../../core/shot/sheet.js';
import {writeStops} from '../../core/exposure/write.js';
import type {Forgetful} from './memory.js';

/** Numbers and their units stay on one line. */
const together = (text: string): string => text.replaceAll(' ', '\u00a0');

/** Stops that nobody would see in a picture. */
const UNSEEN = 0.015;

/** The beginning of someone's text, in quotes. */
export const quoted = (text: string): string => `“${text.length > 60 ? `${text.slice(0, 60)}…` : text}”`;

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

export const measuredWords = ({label, from, to}: MeasuredChange): string => `${label} ${from} → ${to}`;

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
export const pictureWords = (title: string): string => `Small picture of ${title}`;

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
  now: 'This one',
  page: 'Put it into a page of your own',
} as const;
