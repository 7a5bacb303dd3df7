import type {Say} from '../../../shared/say.js';
import type {AlongWords} from './en.js';

export {family} from '../../../shared/words/de.js';

export const words = (say: Say): AlongWords => ({
  say,
  quoted: (text) => `„${text}“`,
  which: 'Welche Aufnahme',
  now: 'Diese',
  all: 'Alle behaltenen',
  option: (count, title) => `${count}. ${title}`,

  link: 'Link',
  copyLink: 'Link kopieren',
  linkShown: (start, length) => `${start}… (${length} Zeichen; kopiert wird der ganze Link)`,
  showQr: 'QR-Code zeigen',
  hideQr: 'QR-Code verbergen',
  qr: 'QR-Code des Links zu dieser Aufnahme',
  linkTooLong: (length) => `Der Link ist ${length} Zeichen lang, mehr als ein QR-Code fasst. Stattdessen kopieren oder die Notiz kürzen.`,

  text: 'Als Text kopieren, für Orte ohne Skript',
  forms: {text: 'Reiner Text', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'},
  card: 'Karte und Papier',
  svg: 'SVG speichern',
  png: 'PNG speichern',
  noPng: 'Auf dieser Seite lässt sich kein PNG zeichnen. Das SVG hat dieselbe Karte.',
  print: 'Auf eine Seite drucken',
  printed: 'Aufnahmeprotokoll',
  noPrint: 'Auf dieser Seite lässt sich nichts einzeln drucken. Das SVG speichern und drucken.',

  file: 'Datei',
  save: 'Datei speichern',
  copyFile: 'Datei als Text kopieren',
  open: 'Datei öffnen',
  paste: 'oder ihren Text hier einfügen',
  take: 'Diese Aufnahmen hinzufügen',
  thisText: 'Dieser Text',
  onDevice: '„Auf diesem Gerät gemerkt“',
  noJson: (file) => `${file} ist beschädigt oder keine Datei mit Aufnahmen: kein vollständiges JSON. Nichts wurde geändert.`,
  foreign: (file) => `${file} ist JSON, aber keine Datei mit Aufnahmen. Nichts wurde geändert.`,
  newer: (file, version) =>
    `${file} stammt aus einer neueren Version (${version}), als diese Seite lesen kann. Nichts wurde geändert; die Seite neu laden oder um eine ältere Datei bitten.`,
  wrong: (file, where, found, wanted) => `${file} lässt sich nicht übernehmen: ${where} ist ${found}; erwartet: ${wanted}. Nichts wurde geändert.`,
  ofShot: (name, shot) => `${name} in Aufnahme ${shot}`,
  shot: (shot) => `Aufnahme ${shot}`,
  nothingThere: 'nicht vorhanden',
  unreadable: (file) => `${file} war nicht zu lesen: vielleicht verschoben oder viel größer als jede Datei mit Aufnahmen. Nichts wurde geändert.`,

  element: 'Element',
  snippets: {
    tag: 'Tag mit dem, was eingestellt ist',
    script: 'Skriptzeile, einmal je Seite',
    frame: 'Als Frame, wo Frames erlaubt sind und Skripte nicht',
    plain: 'Reiner Text, wo sonst nichts geht',
  },
  fallback: (settings) => `${settings}.`,
  copy: 'Kopieren',
  copied: 'Kopiert',
  copyHere: 'Kopieren ist hier nicht erlaubt. Der Text ist markiert: von Hand kopieren.',
});
