import type {Say} from '../../../shared/say.js';
import type {SharpnessWords} from './en.js';

export {family} from '../../../shared/words/de.js';

export const words = (say: Say): SharpnessWords => ({
  say,
  looking: 'Wird gesucht …',
  lookingSoFar: (percent) => `Wird gesucht … ${percent}`,

  onWay: (fraction) => `etwa bei ${fraction} der Strecke von A nach B`,
  stretch: (from, to) => `von ${from} bis ${to}`,
  at: (place) => `bei ${place}`,

  sharp: (pieces) => `Auf der Strecke von A nach B ist es ${pieces} scharf.`,
  sharpOnRuler: (pieces) => `Scharf ${pieces} am Lineal.`,
  sharpAll: 'Von A bis B so scharf wie an der schärfsten Stelle.',
  nothingKnown: 'Auf dieser Linie gibt es nichts, woran sich Schärfe beurteilen ließe: eine glatte Fläche oder so viel Unschärfe, dass keine Einzelheit bleibt. Das heißt unbekannt, nicht unscharf.',
  noFocus: 'Die Schärfeebene lässt sich auf dieser Linie nicht bestimmen: Die Unschärfe müsste zu beiden Seiten sichtbar zunehmen.',
  focusAt: (place) => `Die Schärfeebene liegt ${place}.`,
  focusOnRuler: (place, give) => `Die Schärfeebene liegt am Lineal bei ${place}, auf ${give} genau.`,
  focusFromFront: (place, distance, before, give) =>
    `Die Schärfeebene liegt am Lineal bei ${place}, ${distance} ${before ? 'vor' : 'hinter'} der Vorderkante des Sockels, auf ${give} genau.`,
  oneShot: 'Aus einer Aufnahme ermittelt. Werden die Einzelheiten entlang der Linie feiner, verschiebt das den Wert ein wenig; eine zweite Aufnahme mit anderer Blende behebt das.',
  bothShots: 'Aus beiden Aufnahmen ermittelt; wie fein die Einzelheiten sind, spielt daher keine Rolle.',

  thisShot: 'Diese Aufnahme',
  earlierShot: 'die frühere',
  noGain: (shot, other) => `Kein Gewinn: ${shot} ist so scharf wie ${other}, wo sich beide beurteilen lassen.`,
  noDetail: 'Auf dieser Linie gibt es keine Einzelheiten, an denen sich beide Aufnahmen beurteilen ließen.',
  notWorth: (shot, other, part, pixels) =>
    `Lohnt sich nicht: ${shot} ist nirgends schärfer als ${other} und auf ${part} der Linie weicher, um bis zu ${pixels}.`,
  worth: (shot, other, part, pixels, place) =>
    `Lohnt sich: ${shot} ist auf ${part} der Linie schärfer als ${other}, am meisten ${place}, wo sie ${pixels} weniger Unschärfe hat.`,
  butSofter: (part, pixels) => `Auf ${part} der Linie ist sie weicher, um bis zu ${pixels}.`,
  restAlike: 'Sonst ist kein Unterschied.',
  restMixed: 'Sonst ist kein Unterschied oder nichts zu beurteilen.',
  restUnknown: 'Der Rest lässt sich nicht beurteilen.',
  diffractionOver: (aperture, disc, limit) =>
    `Bei ${aperture} weitet schon die kleine Öffnung jeden Punkt auf ${disc} (Beugung), mehr als die ${limit}, die noch scharf aussehen. Weiter abblenden macht nichts schärfer, was in der Schärfeebene liegt.`,
  diffractionWithin: (aperture, disc, limit) =>
    `Bei ${aperture} weitet die kleine Öffnung jeden Punkt auf ${disc} (Beugung), innerhalb der ${limit}, die scharf aussehen.`,
  otherSize: 'Die frühere Aufnahme hat eine andere Pixelzahl oder zeigt einen anderen Aufbau: Ihre Schärfe lässt sich mit dieser nicht vergleichen.',

  line: {a: 'Linie, Ende A', b: 'Linie, Ende B'},
  endAt: (left, top) => `${left} von links, ${top} von oben`,
  keys: 'Pfeiltasten bewegen ein Ende der Linie, mit der Umschalttaste in kleinen Schritten.',
  lay: 'Linie legen',
  frontToBack: 'Von vorn nach hinten, neben dem Sockel',
  across: 'Quer',
  ruler: 'Mit einem Lineal entlang der Linie',
  rulerAt: {atA: 'Lineal bei A', atMiddle: 'Lineal beim + in der Mitte', atB: 'Lineal bei B', atFront: 'Vorderkante Sockel'},
  layOnRuler: 'Die Linie gehört auf ein Lineal, das neben dem Sockel von vorn nach hinten liegt: A und B darauf schieben. Mit den Werten des Lineals bei A und B steht die Antwort in Längen da.',
  middleHint: 'Fernes sieht kleiner aus: Das wird so berücksichtigt',
  reckoned: 'Um wie viel kleiner Fernes aussieht, ist aus Brennweite und Bildfeldbreite errechnet. Wird das Lineal beim + in der Mitte der Linie abgelesen, wird es stattdessen gemessen.',
  wrongMiddle: 'Der Wert beim + muss zwischen denen an den Enden liegen.',
  setFocus: (distance, before) => `Fokus ${distance} ${before ? 'vor' : 'hinter'} die Vorderkante`,
  setFocusFrom: (now) => `Eingestellt ist jetzt ${now}. Übernehmen, was dieses Foto zeigt.`,
  focusDone: (distance, before) => `Erledigt: Der Fokus liegt ${distance} ${before ? 'vor' : 'hinter'} der Vorderkante.`,
  undo: 'Rückgängig',

  softerUp: 'weicher',
  curve: (least, most, unknown) => `Unschärfe entlang der Linie von A nach B: ${least} an der schärfsten, ${most} an der weichsten Stelle; ${unknown} davon unbekannt.`,
  curveNote: (limit, upTo) =>
    `Unschärfe in Pixeln des fertigen Bildes. Auch die schärfste Einzelheit hat eine eigene Breite, deshalb gilt eine Stelle bis ${upTo} als scharf: so viel wie an der schärfsten Stelle der Linie und dazu ${limit} Unschärfe. Schraffiert: nichts zu beurteilen.`,

  heat: 'Über dem Foto zeigen',
  heatSharp: 'Diese Aufnahme',
  heatChange: 'Gegenüber der früheren',
  legendNote: 'Gemessen am schärfsten Zehntel des Ausschnitts. Grobe Einzelheiten wirken weicher als feine, die genauso scharf sind: Gleiches mit Gleichem vergleichen oder zwei Aufnahmen.',
  heatNames: {sharp: 'unter den schärfsten', near: 'weicher', soft: 'weich', unknown: 'unbekannt: keine Einzelheiten'},
  changeNames: {sharper: 'jetzt schärfer', softer: 'jetzt weicher', alike: 'unverändert', unknown: 'unbekannt: keine Einzelheiten'},
});
