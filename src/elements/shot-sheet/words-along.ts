import {placeOf, type DocumentFault} from '../../core/shot/document.js';
import type {SheetForm} from '../../core/shot/text.js';
import {quoted} from './words.js';

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

export const optionWords = (count: number, title: string): string => `${count}. ${title}`;
export const unreadableWords = (name: string): string => `“${name}” could not be read: it may have been moved, or it is far larger than any file of shots. Nothing was changed.`;
export const longLinkWords = (length: number): string => `The link is ${length} characters long, more than a QR code holds. Copy it instead, or shorten the note.`;
export const snippetFallback = (settings: string): string => `${settings}.`;

export const FORMS: Readonly<Record<SheetForm, string>> = {text: 'Plain text', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'};

export const ALONG = {
  what: 'Which shot',
  now: 'This one',
  all: 'All kept',
  linkHead: 'Link',
  copyLink: 'Copy link',
  showQr: 'Show QR code',
  hideQr: 'Hide QR code',
  qr: 'QR code of the link to this shot',
  textHead: 'Copy as text, for places without script',
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
  tag: 'Element',
  tagSnippet: 'Tag with what is set',
  scriptSnippet: 'Script line, once a page',
  frameSnippet: 'In a frame, where frames are taken and scripts are not',
  plainSnippet: 'Plain text, where nothing else works',
  copy: 'Copy',
  copied: 'Copied',
  copyHere: 'Copying is not allowed here. The text is selected: copy it by hand.',
} as const;
