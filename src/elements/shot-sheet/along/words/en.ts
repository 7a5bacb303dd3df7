import type {Say} from '../../../shared/say.js';

export {family} from '../../../shared/words/en.js';

/** `file` comes in quotes, or as what was pasted is called. */
export const words = (say: Say) => ({
  say,
  quoted: (text: string) => `“${text}”`,
  which: 'Which shot',
  now: 'This one',
  all: 'All kept',
  option: (count: number, title: string) => `${count}. ${title}`,

  link: 'Link',
  copyLink: 'Copy link',
  linkShown: (start: string, length: number) => `${start}… (${length} characters; the whole of it is copied)`,
  showQr: 'Show QR code',
  hideQr: 'Hide QR code',
  qr: 'QR code of the link to this shot',
  linkTooLong: (length: number) => `The link is ${length} characters long, more than a QR code holds. Copy it instead, or shorten the note.`,

  text: 'Copy as text, for places without script',
  forms: {text: 'Plain text', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'},
  card: 'Card and paper',
  svg: 'Save SVG',
  png: 'Save PNG',
  noPng: 'This page does not let a PNG be drawn. The SVG has the same card.',
  print: 'Print on one page',
  printed: 'Shot sheet',
  noPrint: 'This page lets nothing be printed on its own. Save the SVG and print that.',

  file: 'File',
  save: 'Save file',
  copyFile: 'Copy file as text',
  open: 'Open a file',
  paste: 'or paste its text here',
  take: 'Add these shots',
  thisText: 'This text',
  onDevice: '“What this device kept”',
  noJson: (file: string) => `${file} is damaged or no file of shots: it is not complete JSON. Nothing was changed.`,
  foreign: (file: string) => `${file} is JSON, but not a file of shots. Nothing was changed.`,
  newer: (file: string, version: string) =>
    `${file} was made by a later version (${version}) than this page reads. Nothing was changed; reload the page or ask for an older file.`,
  wrong: (file: string, where: string, found: string, wanted: string) => `${file} cannot be taken: ${where} is ${found}, wanted is ${wanted}. Nothing was changed.`,
  ofShot: (name: string, shot: number) => `${name} of shot ${shot}`,
  shot: (shot: number) => `shot ${shot}`,
  nothingThere: 'missing',
  unreadable: (file: string) => `${file} could not be read: it may have been moved, or it is far larger than any file of shots. Nothing was changed.`,

  element: 'Element',
  snippets: {
    tag: 'Tag with what is set',
    script: 'Script line, once a page',
    frame: 'In a frame, where frames are taken and scripts are not',
    plain: 'Plain text, where nothing else works',
  },
  fallback: (settings: string) => `${settings}.`,
  copy: 'Copy',
  copied: 'Copied',
  copyHere: 'Copying is not allowed here. The text is selected: copy it by hand.',
});

export type AlongWords = ReturnType<typeof words>;
