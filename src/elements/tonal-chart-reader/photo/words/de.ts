import {photoWords} from '../../../shared/photo/words/de.js';
import type {Say} from '../../../shared/say.js';
import type {AimsWhy} from '../judgement.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/de.js';

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,

  keepFits: (room) => `Behalten: Nichts Wichtiges ist abgeschnitten, die hellsten Töne liegen ${room} unter Weiß.`,
  yoursGlints: (colours, many, share) =>
    `Ermessenssache: ${colours} ${many ? 'erreichen' : 'erreicht'} nur in ${share} des Ausschnitts Weiß, wie ein Glanzlicht auf einer Laterne oder einem feuchten Auge.`,
  yoursBlack: (share) => `Ermessenssache: ${share} des Ausschnitts sind schwarz ohne Zeichnung, wie es ein dunkler Hintergrund sein darf.`,
  keepBlack: (share) => `Behalten: ${share} des Ausschnitts sind schwarz ohne Zeichnung, und die Lichter lassen keinen Spielraum zum Aufhellen.`,
  againWhite: (stops, colours, many, share) =>
    `Neu aufnehmen, ${stops} dunkler: ${colours} ${many ? 'sind' : 'ist'} in ${share} des Ausschnitts bei Weiß abgeschnitten.`,
  againBlack: (stops, share) =>
    `Neu aufnehmen, ${stops} heller: ${share} des Ausschnitts sind bei Schwarz abgeschnitten, und es ist Spielraum zum Aufhellen.`,
  againDark: (stops, intent) =>
    `Neu aufnehmen, ${stops} heller: ${intent === 'even' ? 'Das Bild ist dunkler als Mittelgrau' : 'Die Figur verträgt mehr Licht'}.`,
  againBright: (stops) => `Neu aufnehmen, ${stops} dunkler: Das Bild ist heller als Mittelgrau.`,
  keepDark: 'Behalten: Das Bild ist dunkel, doch seine Lichter lassen keinen Spielraum zum Aufhellen.',
  keepBright: 'Behalten: Das Bild ist hell, doch seine Schatten lassen keinen Spielraum zum Abdunkeln.',
  relight: (white, black) =>
    `Licht ändern und neu aufnehmen: ${white} des Ausschnitts sind bei Weiß und ${black} bei Schwarz abgeschnitten, keine Belichtung fasst beides.`,
  allBlack: 'Mit mehr Licht neu aufnehmen: Der Ausschnitt ist überall schwarz.',

  softer: 'Das Licht weicher machen oder die Lampe versetzen; oder die Schatten mit einem Reflektor oder einer zweiten Lampe aufhellen.',
  beyondWhite: 'Wie weit das Licht über Weiß hinausreicht, steht nicht in der Datei und ist geschätzt: nach der nächsten Aufnahme noch einmal ansehen.',
  beyondBlack: 'Wie tief die Schatten reichen, steht nicht in der Datei und ist geschätzt: nach der nächsten Aufnahme noch einmal ansehen.',
  cropFirst: 'Liegt das dort, wo weggeschnitten wird, zuerst den Ausschnitt ziehen.',
  ifNoGlint: (stops) => `Ist es Haut, Stoff oder weiße Farbe, ${stops} dunkler neu aufnehmen.`,
  ifFigure: (stops) => `Gehört es zur Figur, ${stops} heller neu aufnehmen.`,
  fillLifts: 'Ein Reflektor oder eine zweite Lampe würde die Schatten aufhellen; mehr Belichtung ginge auf Kosten der Lichter.',
  roomNow: (now, after) => `Die hellsten Töne liegen ${now} unter Weiß, danach ${after}.`,
  roomBelow: (now, after) => `Die dunkelsten Töne liegen ${now} über Schwarz, danach ${after}.`,
  leansLeft: 'Vor dunklem Hintergrund ist ein linkslastiges Diagramm richtig.',
  middleFits: 'Die eine Hälfte des Bildes ist dunkler, die andere heller als Mittelgrau, auf eine halbe Blendenstufe genau.',
  hiddenWhite: 'Ein Diagramm der Helligkeit allein würde es nicht zeigen.',
  hiddenBlack: (colours) => `In den dunkelsten Teilen ist kein ${colours} mehr, wie bei kräftigen Farben üblich; mehr Licht brächte es nicht zurück.`,

  cropAll: 'Das ganze Bild wird gezählt. Den Rahmen um das ziehen, was bleiben soll, damit nicht mitzählt, was weggeschnitten wird.',
  cropKeeps: (share) => `Der Ausschnitt behält ${share} des Bildes.`,
  cropReads: (share, edge, now, whole) =>
    `Der Ausschnitt behält ${share} des Bildes; eine Farbe bei ${edge === 'black' ? 'Schwarz' : 'Weiß'} haben darin ${now}, im ganzen Bild ${whole}.`,
  cropMatters: (brief) => `Ohne den Ausschnitt wäre die Antwort: ${brief}.`,
  cropNoMatter: 'Ohne ihn wäre die Antwort dieselbe.',
  brief: {
    keep: () => 'behalten', yours: () => 'Ermessenssache', relight: () => 'Licht ändern',
    brighter: (stops) => `${stops} heller`, darker: (stops) => `${stops} dunkler`,
  },
  transparent: 'In diesem Ausschnitt ist nichts zu zählen: Alles darin ist durchsichtig. Das letzte Ergebnis bleibt stehen.',

  picture: 'Das Foto mit dem Rahmen um das, was bleibt',
  frame: 'Rahmen des Ausschnitts',
  spotFrame: 'Messfeld',
  frameKeys: 'Pfeiltasten bewegen den Rahmen, mit der Umschalttaste ändern sie seine Größe; Bild auf und Bild ab vergrößern und verkleinern ihn. Pos1 behält das ganze Bild.',
  frameAt: (width, height, left, top) => `${width} mal ${height}, ${left} von links, ${top} von oben`,
  cropSize: (size, whole) => `${size} von ${whole}.`,
  cropWhole: (size) => `${size}, das ganze Bild.`,
  ownCrop: 'Die nächste Aufnahme ist von anderer Stelle mit eigenem Ausschnitt geplant; dieses Foto behält seinen.',
  keepAll: 'Alles behalten',
  byNumbers: 'Ausschnitt in Zahlen',
  sides: {left: 'Links', top: 'Oben', width: 'Breite', height: 'Höhe'},
  sizeWanted: (pixels) => `ein Anteil bis 100 % oder 1 bis ${pixels} px`,
  placeWanted: (pixels) => `ein Anteil unter 100 % oder 0 bis ${pixels} px`,

  fromFile: (list) => `Aus der Datei: ${list}.`,
  notInFile: (list, many) => `Nicht darin: ${list}; ${many ? 'diese Werte bleiben' : 'dieser Wert bleibt'}, wie hier eingestellt.`,
  fileSilent: 'Die Datei sagt nicht, wie das Foto entstand: Die hier stehenden Einstellungen gelten als die des Fotos.',
  lens: (length) => `Brennweite ${length}`,
  sensor: (width, about) => `Sensorbreite ${about ? 'etwa ' : ''}${width}`,
  missing: {aperture: 'Blende', shutter: 'Belichtungszeit', iso: 'ISO', focalLength: 'Brennweite', sensorWidth: 'Sensorbreite'},

  chart: 'Diagramm zeigen für',
  shown: {colours: 'Farben', brightness: 'Helligkeit', red: 'Rot', green: 'Grün', blue: 'Blau'},
  channels: {red: 'Rot', green: 'Grün', blue: 'Blau', brightness: 'Helligkeit'},
  channelsInText: {red: 'Rot', green: 'Grün', blue: 'Blau', brightness: 'Helligkeit'},
  letters: {red: 'R', green: 'G', blue: 'B', brightness: 'H'},
  intent: 'Das Bild ist gedacht als',
  intents: {'dark-backdrop': 'Figur vor dunklem Hintergrund', even: 'ausgewogen hell und dunkel'},
  table: 'Was im Ausschnitt abgeschnitten ist und wie viele Blendenstufen Spielraum bleiben',
  columns: {channel: 'Farbe', black: 'Bei Schwarz', below: 'Spielraum unten', white: 'Bei Weiß', above: 'Spielraum oben'},
  anyColour: 'Irgendeine',
  black: 'schwarz',
  white: 'weiß',
  gray: 'Graukarte',
  toBlack: (stops) => `${stops} Stufen bis Schwarz`,
  toWhite: (stops) => `${stops} Stufen bis Weiß`,
  lost: 'abgeschnitten',
  none: 'keiner',
  noLight: 'kein Licht',
  channelEdges: (channel, atBlack, atWhite, below, above) =>
    `${channel}: ${atBlack} bei Schwarz, ${atWhite} bei Weiß, Spielraum unten ${below}, oben ${above}.`,
  scaleNote: 'Große Zahlen: Blendenstufen unter Weiß. Kleine: der Tonwert eines Pixels dort in der Datei, 0 bis 255. Viermal so viele Pixel stehen doppelt so hoch, damit auch Kleines zu sehen ist.',
  dashed: 'Gestrichelt: wohin das Diagramm rückt, wenn man dem Rat folgt.',
  thin: 'Dünn: die frühere Aufnahme.',

  measure: 'Stelle messen',
  isCard: 'Die Stelle ist die Graukarte',
  noCard: 'Graukarte vergessen',
  spotBlack: (value) => `Die Stelle ist schwarz: Tonwert ${value} von 255.`,
  spotOn: (measured, value) => `Die Stelle ist so hell wie ${measured ? 'die gemessene Graukarte' : 'eine richtig belichtete Graukarte'}: Tonwert ${value} von 255.`,
  spotOff: (stops, above, measured, value) =>
    `Die Stelle liegt ${stops} ${above ? 'über' : 'unter'} ${measured ? 'der gemessenen Graukarte' : 'einer richtig belichteten Graukarte'}: Tonwert ${value} von 255.`,
  spotMean: (mean, spread, values) => `Sie gibt ${mean} des Lichts von Weiß zurück, mit ${spread} Streuung. Rot, Grün und Blau haben die Tonwerte ${values}.`,
  spotAtWhite: (share) => `${share} davon sind bei Weiß abgeschnitten, sie ist also heller.`,
  spotAtBlack: (share) => `${share} davon haben in einer der Farben kein Licht mehr.`,

  aims: 'Wo Lichter und Schatten der Figur liegen sollen',
  aimNames: {highlights: 'Lichter bei', shadows: 'Schatten mindestens', backdrop: 'Hintergrund füllt'},
  aimHints: {highlights: 'Tonwert 0 bis 255', shadows: 'Tonwert 0 bis 255', backdrop: 'des Ausschnitts'},
  valueWanted: 'ein Tonwert von 1 bis 254, Schatten unter den Lichtern',
  shareWanted: 'ein Anteil unter 100 %',
  aimsUnknown: 'Die Lichter sind in dieser Aufnahme abgeschnitten, niemand weiß also, wo sie liegen: erst dem Rat folgen, neu aufnehmen und dann hier nachsehen.',
  aimsFit: (highlights, shadows, aim) =>
    `Wie aufgenommen liegen die Lichter bei ${highlights} und die Schatten bei ${shadows}: höchstens eine Drittelstufe vom Ziel ${aim} entfernt.`,
  aimsAsk: (stops, brighter, highlights, shadows) =>
    `Dieses Ziel verlangt ${stops} ${brighter ? 'mehr' : 'weniger'}: Dann liegen die Lichter bei ${highlights} und die Schatten bei ${shadows}.`,
  aimsDiffer: (answer, why) => `Die Antwort ganz oben geht vor: ${answer}. ${AIMS_WHY[why]}`,
  shadowsShort: (stops, aim) =>
    `Den Schatten fehlen ${stops} bis ${aim}: Ein Reflektor oder eine zweite Lampe hellt sie auf; mehr Belichtung ginge auf Kosten der Lichter.`,
  fromCard: 'Hellste und dunkelste Farbe sind aus der gemessenen Graukarte errechnet.',
  fromCrop: 'Aus dem Ausschnitt gelesen. Soll stattdessen eine Graukarte gelten, eine Stelle auf ihr messen und als Graukarte angeben.',

  beside: 'Neben einer früheren Aufnahme',
  keepShot: 'Diese Aufnahme zum Vergleich merken',
  kept: 'Diese Aufnahme ist gemerkt. Wird die nächste geöffnet, werden beide verglichen.',
  openEarlier: 'Frühere Aufnahme wählen',
  away: 'Frühere Aufnahme entfernen',
  edgesTable: 'Abgeschnitten in der früheren Aufnahme → in dieser',
  sameAs: 'Diese Aufnahme ist genauso hell wie die frühere',
  shiftedBy: (stops, brighter) => `Diese Aufnahme ist ${stops} ${brighter ? 'heller' : 'dunkler'} als die frühere`,
  shiftNear: (measured, clicks) => `${measured}, am nächsten liegt ${clicks}. Was gewollt war, steht nicht in den Dateien.`,
  shiftSmall: (measured) => `${measured}, weniger als eine halbe Drittelstufen-Raste. Was gewollt war, steht nicht in den Dateien.`,
  shiftMeant: (measured, stops) => `${measured}, wie es sein soll (${stops ?? 'gleiche Belichtung'}).`,
  shiftOff: (measured, stops, brighter) =>
    `${measured}; nach den Einstellungen wäre es ${stops ? `${stops} ${brighter ? 'heller' : 'dunkler'}` : 'kein Unterschied'}: Auch an Lampen, Objektiv oder Aufbau hat sich etwas geändert.`,
  oneClick: 'eine Drittelstufen-Raste',
  otherShape: 'Die beiden Aufnahmen haben verschiedene Seitenverhältnisse: Es ist nicht derselbe Ausschnitt, sie lassen sich nicht vergleichen.',
  otherSet: 'Die beiden Aufnahmen zeigen nicht denselben Aufbau von derselben Stelle: Es gibt keinen einheitlichen Helligkeitsunterschied.',
  nothingInCommon: 'Kein Teil des Ausschnitts ist in beiden Aufnahmen ohne abgeschnittene Töne: Es gibt nichts zu vergleichen.',
  shiftSpread: (stops) => `Gemessen, wo keine der Aufnahmen abgeschnitten ist; zwei Drittel des Bildes stimmen auf ±${stops} überein.`,
  shiftMoved: (share) => `${share} des Vergleichbaren haben sich bewegt oder verändert und blieben außer Acht.`,
  shiftColour: (colour, stops, stronger) =>
    `Gegenüber Grün ist ${colour === 'red' ? 'Rot' : 'Blau'} ${stops} ${stronger ? 'stärker' : 'schwächer'}: Die Farbe des Lichts oder der Weißabgleich hat sich geändert.`,

  sharpness: 'Wo ist es scharf?',
  looking: 'Wird gesucht …',
});

const AIMS_WHY: Readonly<Record<AimsWhy, string>> = {
  fits: 'Dieses Ziel gilt nur für eine weitere Aufnahme, falls es eine gibt.',
  card: 'Sie achtet auch auf die kleinsten Lichter dieses Ausschnitts; dieses Ziel richtet sich nach der hellsten Farbe, die es in diesem Licht laut Graukarte geben kann.',
  glints: 'Sie achtet auch auf die kleinsten Lichter dieses Ausschnitts; dieses Ziel hält das Allerhellste für Glanzlichter und richtet sich nach dem Rest.',
};
