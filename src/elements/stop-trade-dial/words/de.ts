import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {DialWords} from './en.js';

export {family} from '../../shared/words/de.js';

const LIMITS = 'Grenzen von Objektiv und Kamera';

export const words = (say: Say): DialWords => ({
  say,
  dial: 'Einstellrad zum Tauschen von Blendenstufen',
  hand: 'Blende und Belichtungszeit, gleiches Licht',
  pair: (aperture, shutter) => `${aperture} bei ${shutter}`,
  triple: (pair, iso) => `${pair}, ${iso}`,
  isoHeld: (iso) => `${iso} bleibt`,
  bodyShows: (shutter) => `Anzeige ${shutter}`,

  facing: (pair) => `${pair}. Jedes Paar, das sich auf dem Rad gegenübersteht, gibt dieses Licht.`,
  sameLight: (now, then) => `${now} gibt das gleiche Licht wie ${then}.`,
  asAsked: (now, stops, brighter, then) => `${now} gibt ${stops} ${brighter ? 'mehr' : 'weniger'} Licht als ${then}, wie gewünscht.`,
  offFromAsked: (now, stops, brighter) => `${now} ist ${stops} ${brighter ? 'heller' : 'dunkler'} als gewünscht.`,
  offFrom: (now, stops, brighter, then) => `${now} ist ${stops} ${brighter ? 'heller' : 'dunkler'} als ${then}.`,
  ends: (setting, at, now, stops, brighter) => `${SETTING_FIRST[setting]} endet bei ${at}: ${now} wird ${stops} zu ${brighter ? 'hell' : 'dunkel'}.`,
  rounded: (stops, brighter, pay) =>
    `${stops} ${brighter ? 'heller' : 'dunkler'} als gewünscht: ${SETTING_FIRST[pay]} steht auf der nächstgelegenen Raste.`,
  closeUp: (stops, more) =>
    `Von hier kostet der Nahbereich ${stops} ${more ? 'mehr' : 'weniger'} Licht als dort, wo gemessen wurde; das ist eingerechnet.`,
  closeUpByHand: (stops) => `Der Nahbereich kostet ${stops} Licht, was ein Handbelichtungsmesser nicht sieht; das ist eingerechnet.`,

  blurShrinks: (percent) => `Was unscharf ist, verschwimmt weniger: nur etwa ${percent} so breit.`,
  blurGrows: (times) => `Was unscharf ist, verschwimmt mehr: etwa ${times}‑mal so breit.`,
  openLonger: (times) => `Der Verschluss ist etwa ${times}‑mal so lange offen.`,
  openShorter: (percent) => `Der Verschluss ist kürzer offen: etwa ${percent} so lange.`,
  noise: (more, stops) => `${more ? 'Mehr' : 'Weniger'} Rauschen: ISO ${stops} ${more ? 'höher' : 'niedriger'}.`,
  handsOff: (shutter) => `Bei ${shutter} die Kamera nicht berühren: Selbstauslöser oder Fernauslöser.`,
  shock: 'Bei solchen Zeiten zeigt sich die Erschütterung durch den Verschluss am stärksten.',

  misread: (shutter, body, other, stops, brighter) =>
    `${shutter} zeigt die Kamera als ${body}. Als ${other} gelesen, wäre das ${stops} ${brighter ? 'heller' : 'dunkler'}.`,
  taken: (text, value) => `„${text}“ wurde als ${value} gelesen.`,
  takeInstead: (value) => `Stattdessen ${value} nehmen`,

  set: (value) => `${value} einstellen`,
  bringsBack: 'stellt das gewünschte Licht wieder her',
  makesUpAll: 'gleicht alles aus',
  stillMissing: (stops, missing) => `noch ${stops} zu ${missing ? 'wenig' : 'viel'}`,
  moreLight: (times) => `${times}‑mal so viel Licht auf der Figur`,
  lessLight: (percent) => `${percent} des Lichts auf der Figur`,
  lampsNearer: (percent) => `Lampen auf ${percent} ihres Abstands, als erste Schätzung`,
  lampsAway: 'Lampen weiter weg oder gedimmt',
  done: (what) => `Erledigt: ${what}.`,
  undo: 'Rückgängig',
  within: (least, most) => `ein Wert von ${least} bis ${most} (siehe unten „${LIMITS}“)`,

  correction: 'Heller (+), dunkler (−)',
  correctionHint: 'Blendenstufen; zeigt der Belichtungsmesser 2 zu wenig, dann +2',
  darker: 'Eine Raste dunkler',
  brighter: 'Eine Raste heller',
  now: 'Jetzt eingestellt',
  pay: 'Gleicht das Licht aus',
  payHint: 'stellt sich selbst nach, wenn ein anderer Wert geändert wird',
  step: 'Schrittweite der Räder',
  steps: {1: 'ganze Stufen', 2: 'halbe Stufen', 3: 'Drittelstufen'},
  start: 'Ausgangspunkt: gemessen oder probiert',
  startHint: 'in jeder Schreibweise: f/2,8 1/25, f8 0"3 ISO 100, 1/25 f/8 +2',
  startWanted: 'eine Einstellung wie f/2,8 1/25',
  startKept: (values) => `Nicht eingetippt, also beibehalten: ${values}.`,
  startHere: 'Von hier ausgehen',
  back: 'Zurück zum Ausgangspunkt',
  changes: 'Was sich geändert hat, und der Weg dorthin',
  moved: (from, to) => `${from} → ${to}`,
  held: (value) => `bleibt ${value}`,
  byLight: (stops, brighter) => `${stops} ${brighter ? 'heller' : 'dunkler'}`,
  noLight: 'gleich viel Licht',
  closeUpName: 'Nahbereich',
  path: 'Stufe um Stufe',
  limits: LIMITS,
  widest: 'Offenblende',
  smallest: 'Kleinste Blende',
  fastest: 'Kürzeste Zeit',
  slowest: 'Längste Zeit',
  lowest: 'Basis-ISO',
  highest: 'Höchster genutzter ISO-Wert',
});

const SETTING_FIRST: Readonly<Record<Setting, string>> = {aperture: 'Die Blende', shutter: 'Die Belichtungszeit', iso: 'ISO'};
