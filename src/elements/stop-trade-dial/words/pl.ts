import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {DialWords} from './en.js';

export {family} from '../../shared/words/pl.js';

const LIMITS = 'Granice obiektywu i aparatu';

export const words = (say: Say): DialWords => ({
  say,
  dial: 'Tarcza zamiany przysłony i czasu',
  hand: 'Przysłona i czas, to samo światło',
  pair: (aperture, shutter) => `${aperture} przy ${shutter}`,
  triple: (pair, iso) => `${pair}, ${iso}`,
  isoHeld: (iso) => `${iso} stałe`,
  bodyShows: (shutter) => `aparat: ${shutter}`,

  facing: (pair) => `${pair}. Każda para naprzeciw siebie na tarczy daje tyle samo światła.`,
  sameLight: (now, then) => `${now} daje tyle samo światła co ${then}.`,
  asAsked: (now, stops, brighter, then) => `${now} daje o ${stops} ${brighter ? 'więcej' : 'mniej'} światła niż ${then}, tak jak miało być.`,
  offFromAsked: (now, stops, brighter) => `${now} daje o ${stops} ${brighter ? 'więcej' : 'mniej'} światła, niż trzeba.`,
  offFrom: (now, stops, brighter, then) => `${now} daje o ${stops} ${brighter ? 'więcej' : 'mniej'} światła niż ${then}.`,
  ends: (setting, at, now, stops, brighter) => `${SETTING_FIRST[setting]} kończy się na ${at}: ${now} wychodzi o ${stops} za ${brighter ? 'jasno' : 'ciemno'}.`,
  rounded: (stops, brighter, pay) => `O ${stops} ${brighter ? 'jaśniej' : 'ciemniej'}, niż trzeba: ${SETTING_IN_TEXT[pay]} ma najbliższą wartość z pokrętła.`,
  closeUp: (stops, more) => `Stąd zbliżenie zabiera o ${stops} ${more ? 'więcej' : 'mniej'} światła niż tam, gdzie mierzono; jest to wliczone.`,
  closeUpByHand: (stops) => `Zbliżenie zabiera ${stops} światła, czego światłomierz ręczny nie widzi; jest to wliczone.`,

  blurShrinks: (percent) => `To, co nieostre, rozmywa się mniej: do około ${percent} szerokości.`,
  blurGrows: (times) => `To, co nieostre, rozmywa się bardziej: około ${times}× szerzej.`,
  openLonger: (times) => `Migawka jest otwarta około ${times}× dłużej.`,
  openShorter: (percent) => `Migawka jest otwarta krócej: około ${percent} poprzedniego czasu.`,
  noise: (more, stops) => `${more ? 'Więcej' : 'Mniej'} szumu: ISO o ${stops} ${more ? 'wyżej' : 'niżej'}.`,
  handsOff: (shutter) => `Przy ${shutter} nie dotykać aparatu: samowyzwalacz albo pilot.`,
  shock: 'Przy takich czasach najbardziej widać drgania od samej migawki.',

  misread: (shutter, body, other, stops, brighter) =>
    `Czas ${shutter} aparat pokazuje jako ${body}. Odczytane jako ${other} byłoby o ${stops} ${brighter ? 'jaśniej' : 'ciemniej'}.`,
  taken: (text, value) => `„${text}” odczytano jako ${value}.`,
  takeInstead: (value) => `Przyjąć zamiast tego ${value}`,

  set: (value) => `Ustawić ${value}`,
  bringsBack: 'przywraca potrzebne światło',
  makesUpAll: 'wyrównuje wszystko',
  stillMissing: (stops, missing) => (missing ? `nadal brakuje ${stops}` : `nadal ${stops} za dużo`),
  moreLight: (times) => `${times}× więcej światła na figurce`,
  lessLight: (percent) => `${percent} światła na figurce`,
  lampsNearer: (percent) => `lampy bliżej, na ${percent} ich odległości – na pierwszą próbę`,
  lampsAway: 'lampy dalej albo przyciemnione',
  done: (what) => `Gotowe: ${what}.`,
  undo: 'Cofnij',
  within: (least, most) => `wartość od ${least} do ${most} (patrz niżej: „${LIMITS}”)`,

  correction: 'Jaśniej (+), ciemniej (−)',
  correctionHint: 'w EV; gdy światłomierz pokazuje 2 za mało, wpisać +2',
  darker: 'O jeden skok ciemniej',
  brighter: 'O jeden skok jaśniej',
  now: 'Ustawione teraz',
  pay: 'Wyrównuje światło',
  payHint: 'zmienia się samo, gdy zmienia się coś innego',
  step: 'Skok pokręteł',
  steps: {1: '1 EV', 2: '1/2 EV', 3: '1/3 EV'},
  start: 'Punkt wyjścia: pomiar lub próba',
  startHint: 'zapisane dowolnie: f/2,8 1/25, f8 0"3 ISO 100, 1/25 f/8 +2',
  startWanted: 'ustawienie takie jak f/2,8 1/25',
  startKept: (values) => `Nie wpisano, więc zostaje: ${values}.`,
  startHere: 'Zacznij stąd',
  back: 'Wróć do punktu wyjścia',
  changes: 'Co się zmieniło i jaką drogą',
  moved: (from, to) => `${from} → ${to}`,
  held: (value) => `nadal ${value}`,
  byLight: (stops, brighter) => `o ${stops} ${brighter ? 'jaśniej' : 'ciemniej'}`,
  noLight: 'tyle samo światła',
  closeUpName: 'Zbliżenie',
  path: 'Krok po kroku',
  limits: LIMITS,
  widest: 'Pełny otwór',
  smallest: 'Najmniejszy otwór',
  fastest: 'Najkrótszy czas',
  slowest: 'Najdłuższy czas',
  lowest: 'Bazowe ISO',
  highest: 'Najwyższe używane ISO',
});

const SETTING_IN_TEXT: Readonly<Record<Setting, string>> = {aperture: 'przysłona', shutter: 'czas', iso: 'ISO'};
const SETTING_FIRST: Readonly<Record<Setting, string>> = {aperture: 'Przysłona', shutter: 'Czas', iso: 'ISO'};
