import type {Patch, Side} from '../../../../core/white/card.js';
import {photoWords} from '../../../shared/photo/words/de.js';
import type {Say} from '../../../shared/say.js';
import type {Tint, Warmth} from '../light-speech.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/de.js';

const FIELDS = {white: 'weißen', gray: 'grauen', black: 'schwarzen'} satisfies Record<Patch, string>;
const NAMES = {white: 'Weiß', gray: 'Grau', black: 'Schwarz'} satisfies Record<Patch, string>;
const WARMTH = {warmer: 'wärmer', cooler: 'kühler'} satisfies Record<Warmth, string>;
const TINT = {greener: 'grünlicher', pinker: 'magentastichiger'} satisfies Record<Tint, string>;
const SIDES = {left: 'links', right: 'rechts', top: 'oben', bottom: 'unten', middle: 'in der Mitte'} satisfies Record<Side, string>;
const unevenThen = (side: Side) => `Das Licht sitzt ${SIDES[side]}: Karte von dem wegdrehen, was sie spiegelt, oder den Rahmen aus dem Schatten schieben.`;
const uneven = (patch: Patch) => (share: string) => `${NAMES[patch]} ist ungleichmäßig: ${share} zwischen der dunkelsten und der hellsten Stelle.`;

const correct = (red: string, blue: string, neutral: boolean): string =>
  (neutral ? `es ist neutral und an der Farbe nichts zu korrigieren: Rot ×\u00a0${red} und Blau ×\u00a0${blue} wären nicht zu sehen` : `Rot mit ${red} und Blau mit ${blue} multiplizieren`);

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,
  opening: 'Die Kartenaufnahme wird gelesen …',

  patches: NAMES,
  picture: 'Die Kartenaufnahme mit einem Rahmen auf jedem Feld',
  frames: {white: 'Rahmen auf dem weißen Feld', gray: 'Rahmen auf dem grauen Feld', black: 'Rahmen auf dem schwarzen Feld'},
  frameAt: (width, height, x, y) => `${width} mal ${height} px, ${x} von links, ${y} von oben`,
  frameWaits: (width, height, x, y, patch) => `${width} mal ${height} px, ${x} von links, ${y} von oben, noch nicht auf dem ${FIELDS[patch]} Feld`,
  frameKeys: 'Pfeiltasten verschieben den Rahmen, mit der Umschalttaste ändern sie seine Größe; Bild auf und Bild ab vergrößern und verkleinern ihn.',
  looking: 'Die Karte wird gesucht …',
  noneFound: 'In dieser Aufnahme war keine Graukarte zu finden: von Hand markieren, falls eine da ist.',
  pressOn: {
    white: 'Auf das weiße Feld drücken oder den Rahmen Weiß darauf schieben.', gray: 'Auf das graue Feld drücken oder den Rahmen Grau darauf schieben.',
    black: 'Auf das schwarze Feld drücken oder den Rahmen Schwarz darauf schieben.',
  },
  closer: 'Die Karte von Nahem zeigen',
  whole: 'Die ganze Aufnahme zeigen',
  again: 'Die Karte noch einmal suchen',
  byNumbers: 'Rahmen in Zahlen',
  markField: {white: 'Weiß: links, oben, Größe, px', gray: 'Grau: links, oben, Größe, px', black: 'Schwarz: links, oben, Größe, px'},
  markWanted: (width, height) => `links, oben, Breite und Höhe in px, wie 184, 823, 54 × 54, innerhalb von ${width} × ${height}`,

  misplaced: 'Unter den Rahmen wird es nicht von Weiß über Grau zu Schwarz dunkler: Da liegt noch keine Karte, der zu trauen wäre.',
  trusted: (red, blue, neutral) => `Der Karte ist zu trauen: Grau sitzt, wo es hingehört; ${correct(red, blue, neutral)}.`,
  trustedOff: (stops, over, red, blue, neutral) =>
    `Der Karte ist zu trauen: Grau sitzt ${stops} ${over ? 'über' : 'unter'} seinem Platz; ${correct(red, blue, neutral)}.`,
  distrust: {
    grayBlack: 'Dieser Karte nicht trauen: Eine Farbe des grauen Felds steht bei 0. Mehr Licht geben oder länger belichten und neu aufnehmen.',
    grayClipped: 'Dieser Karte nicht trauen: Grau ist bei Weiß abgeschnitten. Mindestens zweieinhalb Blendenstufen knapper belichten und neu aufnehmen.',
    whiteClipped: 'Dieser Karte nicht trauen: Weiß ist abgeschnitten.',
    uneven: (patch, share) => `Dieser Karte nicht trauen: ${NAMES[patch]} ist ungleichmäßig, ${share} von der dunkelsten zur hellsten Stelle.`,
    glare: (lifted) => `Dieser Karte nicht trauen: ${lifted}, sie spiegelt. Die Karte drehen, bis das Spiegelbild der Lampe verschwindet.`,
    veil: (lifted) => `Dieser Karte nicht trauen: ${lifted} – ein Schleier aus Streulicht. Das Objektiv abschatten und putzen und die Karte etwas drehen.`,
  },
  lifted: (stops) => `Schwarz ist gegenüber Grau um ${stops} angehoben`,
  liftedAbout: (stops) => `Schwarz ist gegenüber Grau um etwa ${stops} angehoben`,
  liftedToGray: 'Schwarz ist nicht dunkler als Grau',
  doubtLinked: 'Doch das Licht hat sich seither geändert: Für das Foto im Tonwertdiagramm gelten die Faktoren womöglich nicht.',
  doubtNext: 'Doch Lampen oder Abschatter haben sich seither geändert: Für das nächste Foto gelten die Faktoren womöglich nicht.',

  misplacedSeen: 'Den Rahmen Weiß auf das weiße Feld setzen, Grau auf das graue, Schwarz auf das schwarze.',
  misplacedThen: 'Liegen sie schon dort, spiegelt die Karte eine Lampe so stark, dass nichts zu lesen ist: drehen, bis das schwarze Feld dunkel wird.',
  whiteClipped: (share) => `Weiß ist in ${share} des Felds abgeschnitten.`,
  whiteClippedUsable: 'Grau gibt trotzdem die richtigen Faktoren. Nur eine Lampe, die sich in Weiß spiegelt, wäre nicht zu sehen: Um das auszuschließen, die Karte noch einmal eine Blendenstufe knapper aufnehmen.',
  whiteClippedElse: 'Die Karte beim nächsten Mal knapper belichten.',
  grayClipped: (share) => `Grau ist in ${share} des Felds bei Weiß abgeschnitten: Es hat keine Farbe mehr, die zu messen wäre.`,
  grayClippedThen: 'Zuerst das Spiegelbild von der Karte nehmen; ist sie nur zu hell, mindestens zweieinhalb Blendenstufen knapper belichten.',
  grayBlack: (share) => `Eine Farbe von Grau steht in ${share} des Felds bei 0: Keine Multiplikation hebt sie an.`,
  grayBlackThen: 'Reichlicher belichten.',
  glareThen: 'Die Karte spiegelt eine Lampe. Neigen oder drehen, bis das schwarze Feld vom Standpunkt der Kamera aus dunkel wird.',
  veilThen: 'Streulicht liegt über Karte und Bild. Das Objektiv gegen die Lampe abschatten, nach Schleiern auf dem Glas sehen und neu aufnehmen.',
  uneven: {white: uneven('white'), gray: uneven('gray'), black: uneven('black')},
  unevenThen: {
    left: unevenThen('left'), right: unevenThen('right'), top: unevenThen('top'), bottom: unevenThen('bottom'), middle: unevenThen('middle'),
  },
  exposed: (code, noWhite) => `${noWhite ? 'Grau ist richtig belichtet, Weiß nicht' : 'Die Belichtung stimmt'}: Grau kommt bei ${code} von 255 heraus.`,
  exposedThen: (share, code) => `Grau mit ${share} gehört auf ${code}; keine Raste von einer Drittelstufe brächte es näher heran.`,
  exposedOff: (stops, over, code, belongs) => `Die Belichtung liegt ${stops} zu ${over ? 'hoch' : 'niedrig'}: Grau kommt bei ${code} von 255 heraus statt bei ${belongs}.`,
  lessLight: 'Weniger Licht bringt es in Ordnung:',
  moreLight: 'Mehr Licht bringt es in Ordnung:',

  table: 'Die drei Felder',
  columns: {patch: 'Feld', codes: 'R G B von 255', off: 'Abweichung', even: 'Schwankung'},
  cutOff: 'abgeschnitten',
  noLight: 'kein Licht',
  asItShould: 'wie es soll',
  offBy: (stops, over) => `${stops} ${over ? 'darüber' : 'darunter'}`,
  unknown: 'unbekannt',

  light: 'Das Licht',
  castNone: 'Grau kommt neutral heraus: Was an Farbstich bleibt, wäre nicht zu sehen.',
  castWarm: (warmth, stops) => `Grau kommt ${WARMTH[warmth]} als neutral heraus, Rot und Blau liegen ${stops} auseinander.`,
  castTint: (tint) => `Grau kommt ${TINT[tint]} als neutral heraus.`,
  castTintOfLamp: (tint) => `Grau kommt etwas ${TINT[tint]} heraus als bei einer Lampe dieser Farbtemperatur.`,
  castBoth: (warmth, stops, tint) => `Grau kommt ${WARMTH[warmth]} und ${TINT[tint]} als neutral heraus, Rot und Blau liegen ${stops} auseinander.`,
  castBothOfLamp: (warmth, stops, tint) =>
    `Grau kommt ${WARMTH[warmth]} als neutral heraus (Rot und Blau liegen ${stops} auseinander) und etwas ${TINT[tint]} als bei einer Lampe dieser Farbtemperatur.`,
  noTemperature: 'Es ist weit von Tageslicht und von jeder Glühlampe entfernt; eine Farbtemperatur würde nichts sagen.',
  temperature: (kelvin, neutral) => `Als Farbtemperatur: etwa ${kelvin}; abgeglichen ist dieses Bild auf ${neutral}.`,
  temperatureOff: (kelvin, neutral, mired, warmth) => `Als Farbtemperatur: etwa ${kelvin}, ${mired} ${WARMTH[warmth]} als die ${neutral}, auf die dieses Bild abgeglichen ist.`,
  miredIs: 'Mired ist eine Million geteilt durch die Kelvinzahl: Gleiche Schritte sehen etwa gleich groß aus, und weniger als etwa 5 sieht niemand, auch nicht nebeneinander.',

  gains: 'Faktoren zum Multiplizieren',
  gainsAre: 'Sie multiplizieren Lichtmengen, wie der Weißabgleich eines RAW-Fotos. Die Zahlen von 0 bis 255 in einem fertigen Bild sind keine Lichtmengen: So multipliziert, änderten sie sich zu stark.',
  doubtful: 'Diese Faktoren stammen von einer Karte, der nicht zu trauen ist.',
  noGains: 'Es gibt keine Faktoren zu zeigen: Oben steht, was zu tun ist.',
  greenHeld: 'Faktoren, Grün bleibt',
  noneBelowOne: 'Faktoren, keiner unter 1',
  quotients: 'Grün durch Rot, durch Blau',
  copy: 'Kopieren',
  copied: (text) => `Kopiert: ${text}`,
  notCopied: 'Die Zwischenablage ist hier nicht erreichbar. Die Zahlen sind markiert: mit der Tastatur oder langem Drücken kopieren.',

  holdsNot: 'Diese Faktoren gelten womöglich nicht für das Foto im Tonwertdiagramm. Die Karte in diesem Licht neu aufnehmen.',
  holds: 'Die Faktoren gelten für das Foto im Tonwertdiagramm: Wo die beiden Bilder übereinstimmen, hat das Licht dieselbe Farbe.',
  holdsUnknown: 'Es ist nichts bekannt, was sich seit der Kartenaufnahme geändert hätte, doch die beiden Bilder zeigen zu Verschiedenes, um es darin zu sehen. Die Faktoren gelten, sofern Lampen, Abschatter und Wände an ihrem Platz geblieben sind.',
  holdsNotNext: 'Lampen oder Abschatter haben sich seit der Kartenaufnahme geändert. Für das nächste Foto die Karte neu aufnehmen.',
  lampNamed: (name) => `„${name === 'key' ? 'Hauptlicht' : name === 'fill' ? 'Aufhellung' : name}“`,
  lampNumber: (number) => `Lampe ${number}`,
  lampsNow: (now, then) => `Jetzt ${now === 1 ? 'ist es 1 Lampe' : `sind es ${now} Lampen`}, bei der Kartenaufnahme ${then === 1 ? 'war es 1' : `waren es ${then}`}.`,
  flagsNow: (now, then) => `Jetzt ${now === 1 ? 'ist es 1 Abschatter' : `sind es ${now} Abschatter`}, bei der Kartenaufnahme ${then === 1 ? 'war es 1' : `waren es ${then}`}.`,
  lampMoved: (lamp, length) => `${lamp} wurde seit der Kartenaufnahme um ${length} verschoben.`,
  flagMoved: (number, length) => `Abschatter ${number} wurde seit der Kartenaufnahme um ${length} verschoben.`,
  lampPower: (lamp, stops, brighter) => `${lamp} ist gegenüber der ersten Lampe ${stops} ${brighter ? 'heller' : 'dunkler'} als bei der Kartenaufnahme.`,
  whiteBalance: 'Der Weißabgleich der Kamera war anders eingestellt.',
  litDifferently: (red, redMore, blue, blueMore) =>
    `Das Foto im Tonwertdiagramm war anders beleuchtet als die Karte: Gegenüber Grün ist Rot ${red} ${redMore ? 'stärker' : 'schwächer'} und Blau ${blue} ${blueMore ? 'stärker' : 'schwächer'}.`,

  beforeAfter: 'Vorher und nachher',
  previewOf: (name, share) => `${name}, bis ${share} von links wie aufgenommen, rechts davon mit den Faktoren`,
  preview: (share) => `Das Bild, bis ${share} von links wie aufgenommen, rechts davon mit den Faktoren`,
  wipe: 'Grenze zwischen Vorher und Nachher',
  wipeAt: (before, after) => `${before} vorher, ${after} nachher`,
  before: 'vorher',
  after: 'nachher',
  ofCard: 'die Kartenaufnahme',
  ofPhoto: 'das Foto im Tonwertdiagramm',
  shown: 'Gezeigt wird',
  withExposure: 'auch die Belichtung berichtigt',
});
