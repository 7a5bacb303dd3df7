import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {Slip, Then} from '../speech.js';
import type {TrailWords} from './en.js';

export {family} from '../../shared/words/de.js';

export const words = (say: Say): TrailWords => ({
  say,
  trail: 'Einstellungen, Schritt für Schritt',
  pair: (aperture: string, shutter: string) => `${aperture} bei ${shutter}`,
  triple: (pair: string, iso: string) => `${pair}, ${iso}`,
  names: {aperture: 'Blende', shutter: 'Zeit', iso: 'ISO'} satisfies Record<Setting, string>,
  quote: (text: string) => `„${text}“`,

  same: 'gleich hell',
  brighter: (stops: string) => `${stops} heller`,
  darker: (stops: string) => `${stops} dunkler`,
  some: {brighter: 'etwas heller', darker: 'etwas dunkler'},

  empty: 'Einstellungen eintippen oder einfügen: Die Blendenstufen dazwischen werden ausgerechnet.',
  single: 'Eine Einstellung gefunden; zum Vergleich fehlt eine zweite.',
  severalOff: (off: number, all: number) => `${off} von ${all} Schritten gehen nicht auf.`,
  off: (step: number, setting: string, light: string, than: number) => `Schritt ${step} geht nicht auf: ${setting} ist ${light} als Schritt ${than}.`,
  offFromMeant: (step: number, setting: string, light: string, than: number, meant: string) =>
    `Schritt ${step} geht nicht auf: ${setting} ist ${light} als Schritt ${than}; gemeint war: ${meant}.`,
  asBright: (step: number, setting: string, as: number, meant: string) =>
    `Schritt ${step} geht nicht auf: ${setting} ist so hell wie Schritt ${as}; gemeint war: ${meant}.`,
  needed: (text: string, step?: number) => `Es ginge auf mit ${text}${step ? ` in Schritt ${step}` : ''}.`,
  slip: (text: string, was: string, step: number | undefined, then: Then) =>
    `${step ? `In Schritt ${step} war` : 'Gemeint war'} wohl ${text}${step ? ' gemeint' : ''}, nicht ${was}${{all: ': Dann ginge alles auf', it: ': Dann ginge es auf', some: ''}[then]}.`,
  allSame: (steps: number) => `${steps === 2 ? 'Beide' : `Alle ${steps}`} Schritte geben gleich viel Licht.`,
  allAsMeant: (steps: number) => `${steps === 2 ? 'Beide' : `Alle ${steps}`} Schritte tun, was gemeint war.`,
  someAsMeant: (judged: number, all: number) => `Bei ${judged} von ${all} Änderungen steht, was gemeint war, und das tun sie auch.`,
  noneJudged: (steps: number) => `${steps} Schritte. Nirgends steht, was mit dem Licht gemeint war; darum wird keiner beurteilt.`,
  nothingYet: 'Noch nichts zu vergleichen.',
  cannotJudge: (steps: string, count: number) => (count > 1 ? `Die Schritte ${steps} lassen sich nicht beurteilen.` : `Schritt ${steps} lässt sich nicht beurteilen.`),

  example: 'Beispiel',
  pasteOwn: 'Eigene Einstellungen hier einfügen',

  mend: (step: number, text: string, was: string) => `Schritt ${step}: ${text} statt ${was}`,
  mendInstead: (step: number, text: string, was: string) => `Oder Schritt ${step}: ${text} statt ${was}`,
  add: (step: number, text: string) => `Schritt ${step}: ${text} ergänzen`,
  addInstead: (step: number, text: string) => `Oder Schritt ${step}: ${text} ergänzen`,
  slips: {
    seconds: 'Sekunden, kein Bruch', fraction: 'ein Bruch, keine Sekunden', point: 'das Komma ging verloren',
    needed: 'gibt das Licht, das gemeint war', digits: 'dieselben Ziffern',
  } satisfies Record<Slip, string>,
  mendCost: (slip: string, light: string) => `${slip}, ${light}`,
  mendCostElsewhere: (slip: string, light: string, steps: string, count: number) =>
    `${slip}, ${light}; berichtigt ${count > 1 ? 'die Schritte' : 'Schritt'} ${steps}`,
  mended: (step: number, text: string, was: string) => `Erledigt: In Schritt ${step} steht jetzt ${text} statt ${was}.`,
  added: (step: number, text: string) => `Erledigt: In Schritt ${step} steht jetzt ${text}.`,
  undo: 'Rückgängig',
  back: 'Zurück zum ursprünglichen Text',

  light: 'Licht',
  depth: 'Tiefe',
  signs: {true: '=', false: '≠', null: '·'},
  linkOther: (light: string) => `${light} nach den Einstellungen; das Licht selbst wurde verändert.`,
  linkUnsaid: (light: string) => `${light}. Was gemeint war, steht nirgends.`,
  linkOff: (light: string, than: number, meant: string) => `${light} als Schritt ${than}; gemeint war: ${meant}.`,
  linkSame: (as: number, meant: string) => `so hell wie Schritt ${as}; gemeint war: ${meant}.`,
  linkAsked: (light: string, by: number) => `${light}, wie Schritt ${by} es verlangt.`,
  linkAssumed: (light: string) => `${light}.`,
  linkMeant: (light: string) => `${light}, wie gemeint.`,
  unchanged: 'Nichts geändert',
  tolerance: {
    1: 'Unterschiede bis zu einer halben Blendenstufe zählen nicht: Das ist eine halbe Raste des Einstellrads.',
    2: 'Unterschiede bis zu einer viertel Blendenstufe zählen nicht: Das ist eine halbe Raste des Einstellrads.',
    3: 'Unterschiede bis zu einer sechstel Blendenstufe zählen nicht: Das ist eine halbe Raste des Einstellrads.',
  },
  depthIs: 'Tiefe zählt die Blendenstufen, um die abgeblendet wurde: Bei + ist von vorn bis hinten mehr scharf.',

  carried: (settings: string) => `${settings} wie im Schritt davor.`,
  taken: (text: string, value: string) => `„${text}“ wurde als ${value} gelesen.`,
  asksNext: (text: string, light: string) => `„${text}“ verlangt vom nächsten Schritt: ${light}.`,
  noSetting: 'Hier ist keine Einstellung zu lesen; erwartet wird etwas wie f/8 1/60.',
  missing: (settings: string) => `Bis hierher nicht genannt: ${settings}. Darum ist nichts zu vergleichen.`,
  unread: (texts: string, count: number) => `${texts} ${count > 1 ? 'bleiben' : 'bleibt'} ungenutzt: keine Einstellung oder eine zu viel.`,

  dial: 'Aufs Einstellrad',
  dialOf: (step: number) => `Aufs Einstellrad: Schritt ${step}`,
  dialWill: (start: string, setting: string) =>
    `„Aufs Einstellrad“ macht einen Schritt zum Ausgangspunkt des Einstellrads auf dieser Seite, anstelle von ${start}, und stellt ihn ein, anstelle von ${setting}. Das lässt sich rückgängig machen.`,
  dialWillBoth: (setting: string) =>
    `„Aufs Einstellrad“ macht einen Schritt zu Ausgangspunkt und Einstellung des Einstellrads auf dieser Seite, anstelle von ${setting}. Das lässt sich rückgängig machen.`,
  dialled: (setting: string) => `Erledigt: Das Einstellrad geht von ${setting} aus.`,
  dialledAsking: (setting: string, light: string) => `Erledigt: Das Einstellrad geht von ${setting} aus; verlangt ist: ${light}.`,

  copy: 'Liste kopieren',
  copied: 'Kopiert',
  copyHere: 'Kopieren ist hier nicht erlaubt. Die Liste steht in diesem Feld:',
  paste: 'Eine Anleitung einfügen oder diese ändern',
  pasteLabel: 'Fließtext oder eine Einstellung je Zeile',
  pasteHint: 'Angaben zum Licht werden auf Englisch gelesen: same light, one stop darker, +2.',
  read: 'Einlesen',
  expect: 'Wo nichts über das Licht steht',
  expects: {'same-light': 'ist gleiches Licht gemeint', nothing: 'ist nichts gemeint'},
  wanted: 'eine Einstellung wie f/8 1/60',
  expectWanted: 'same-light oder nothing',
  refused: (text: string, wanted: string) => `„${text}“ passt hier nicht; erwartet: ${wanted}.`,
  refusedKept: (text: string, wanted: string) => `„${text}“ passt hier nicht; erwartet: ${wanted}. Die letzte gültige Liste bleibt.`,
});
