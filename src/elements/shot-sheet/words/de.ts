import type {Say} from '../../shared/say.js';
import {record} from '../record-words/de.js';
import type {SheetElementWords} from './en.js';

export {family} from '../../shared/words/de.js';

export const words = (say: Say): SheetElementWords => ({
  say,
  record,
  sheet: 'Aufnahmeprotokoll',

  noneKept: (now) => `${now}. Noch keine Aufnahme behalten.`,
  asKept: (now, count) => `${now}. Wie behalten in Aufnahme ${count}.`,
  since: (now, count, changes) => `${now}. Seit Aufnahme ${count}: ${changes}.`,
  sinceAndMore: (now, count, changes, rest) => `${now}. Seit Aufnahme ${count}: ${changes} und ${rest} weitere.`,
  changed: (label) => `${label} geändert`,
  change: (label, from, to) => `${label} ${from} → ${to}`,
  changeBy: (label, from, to, stops, brighter) => `${label} ${from} → ${to}, ${stops} ${brighter ? 'heller' : 'dunkler'}`,

  nothing: 'Noch wurde nichts angegeben: Was oben steht, ist nur angenommen.',
  missing: 'Noch nicht in diesem Protokoll. Jeder Teil erscheint, sobald er in einer verbundenen Prüfung eingestellt ist; was in einer noch zugeklappten steht, kommt mit deren erstem Aufklappen dazu:',
  missingParts: {
    camera: 'Objektiv und Bildfeld: in der Prüfung der Schärfe',
    figure: 'Größe der Figur: in der Prüfung der Schärfe',
    lamps: 'Lampen und Abschatter: in der Prüfung des Hintergrunds',
    backdrop: 'Hintergrund und sein Abstand: in der Prüfung des Hintergrunds',
    card: 'Graukarte: ihr Foto in der Prüfung der Graukarte öffnen',
  },
  name: 'Name dieser Aufnahme',
  nameHint: 'ohne Namen wird sie nummeriert',
  note: 'Notiz',
  picture: (title) => `Vorschaubild von ${title}`,
  thisShot: 'dieser Aufnahme',

  keep: 'Diese Aufnahme behalten',
  keptHead: 'Behaltene Aufnahmen, der Reihe nach',
  kept: (count) => `Als Aufnahme ${count} behalten.`,
  numbered: (count) => `Aufnahme ${count}`,
  first: 'Die erste, die behalten wurde.',
  same: 'Seit der Aufnahme davor hat sich nichts geändert.',
  putBack: 'Wieder einstellen',
  putBackOf: (count) => `Wieder einstellen: Aufnahme ${count}`,
  isBack: (count) => `Eingestellt wie in Aufnahme ${count}, in jeder verbundenen Prüfung.`,
  up: 'Nach vorn',
  upOf: (count) => `Nach vorn: Aufnahme ${count}`,
  down: 'Nach hinten',
  downOf: (count) => `Nach hinten: Aufnahme ${count}`,
  remove: 'Entfernen',
  removeOf: (count) => `Entfernen: Aufnahme ${count}`,
  added: (count) => say.plural(count, {one: 'Eine Aufnahme kam hinzu.', other: `${count} Aufnahmen kamen hinzu.`}),

  undo: (what) => `Rückgängig: ${what}`,
  acts: {
    keep: (count) => `Behalten von Aufnahme ${count}`,
    remove: (count) => `Entfernen von Aufnahme ${count}`,
    move: (count) => `Verschieben von Aufnahme ${count}`,
    putBack: (count) => `Einstellen von Aufnahme ${count}`,
    import: 'Hinzufügen von Aufnahmen',
    link: 'Öffnen eines Links',
    otherPage: 'Übernehmen der Aufnahmen eines anderen Fensters',
  },

  remember: 'Auf diesem Gerät merken',
  remembered: 'Auf diesem Gerät gemerkt, nirgends sonst. Noch einmal drücken, und sie sind vergessen.',
  forgotten: 'Dieses Gerät hat die Aufnahmen vergessen. Auf dieser Seite sind sie noch da.',
  full: 'Auf diesem Gerät ist kein Platz mehr für die Aufnahmen. Sie bleiben auf dieser Seite, bis sie geschlossen wird: zur Sicherheit eine Datei speichern.',
  blocked: 'Dieser Browser merkt sich nichts für diese Seite (privates Fenster oder gesperrter Speicher). Die Aufnahmen bleiben auf dieser Seite, bis sie geschlossen wird: zur Sicherheit eine Datei speichern.',

  linkTaken: 'Die Aufnahme aus dem Link ist eingestellt.',
  linkNewer: (version) => `Dieser Link kommt aus einer neueren Version (${version}). Was hier bekannt ist, wurde übernommen.`,
  linkUnknown: (name) => `„${name}“ im Link ist hier unbekannt. Der nächste Link gibt es weiter; alles andere wurde übernommen.`,
  linkUnreadable: (name, text, wanted) => `${name} „${text}“ im Link passt nicht; erwartet: ${wanted}. Es bleibt stehen, wie es eingegeben war; alles andere wurde übernommen.`,
  linkTooLong: (name, length) => `„${name}“ im Link ist ${length} Zeichen lang und wurde weggelassen; alles andere wurde übernommen.`,

  along: 'Link, Text, Karte, Datei und Druck',
  page: 'In eine eigene Seite einbauen',
});
