import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {Slip, Then} from '../speech.js';
import type {TrailWords} from './en.js';

export {family} from '../../shared/words/pl.js';

export const words = (say: Say): TrailWords => ({
  say,
  trail: 'Ustawienia, krok po kroku',
  pair: (aperture: string, shutter: string) => `${aperture} przy ${shutter}`,
  triple: (pair: string, iso: string) => `${pair}, ${iso}`,
  names: {aperture: 'przysłona', shutter: 'czas', iso: 'ISO'} satisfies Record<Setting, string>,
  quote: (text: string) => `„${text}”`,

  same: 'tak samo jasno',
  brighter: (stops: string) => `o ${stops} jaśniej`,
  darker: (stops: string) => `o ${stops} ciemniej`,
  some: {brighter: 'nieco jaśniej', darker: 'nieco ciemniej'},

  empty: 'Po wpisaniu lub wklejeniu ustawień zostaną policzone różnice między nimi w EV.',
  single: 'Znaleziono jedno ustawienie; do porównania potrzebne jest drugie.',
  severalOff: (off: number, all: number) => say.plural(off, {few: `Nie zgadzają się ${off} z ${all} kroków.`, other: `Nie zgadza się ${off} z ${all} kroków.`}),
  off: (step: number, setting: string, light: string, than: number) => `Krok ${step} się nie zgadza: ${setting} to ${light} niż w kroku ${than}.`,
  offFromMeant: (step: number, setting: string, light: string, than: number, meant: string) =>
    `Krok ${step} się nie zgadza: ${setting} to ${light} niż w kroku ${than}; miało być: ${meant}.`,
  asBright: (step: number, setting: string, as: number, meant: string) =>
    `Krok ${step} się nie zgadza: ${setting} daje tyle samo światła co krok ${as}; miało być: ${meant}.`,
  needed: (text: string, step?: number) => `Zgadzałoby się z ${text}${step ? ` w kroku ${step}` : ''}.`,
  slip: (text: string, was: string, step: number | undefined, then: Then) =>
    `${step ? `W kroku ${step} chodziło` : 'Chodziło'} pewnie o ${text}, nie o ${was}${{all: ': wtedy zgadza się wszystko', it: ': wtedy by się zgadzało', some: ''}[then]}.`,
  allSame: (steps: number) => (steps === 2 ? 'Oba kroki dają tyle samo światła.'
    : say.plural(steps, {few: `Wszystkie ${steps} kroki dają tyle samo światła.`, other: `Wszystkie kroki (${steps}) dają tyle samo światła.`})),
  allAsMeant: (steps: number) => (steps === 2 ? 'Oba kroki robią to, co zamierzono.'
    : say.plural(steps, {few: `Wszystkie ${steps} kroki robią to, co zamierzono.`, other: `Wszystkie kroki (${steps}) robią to, co zamierzono.`})),
  someAsMeant: (judged: number, all: number) => `Zamiar podano przy ${judged} z ${all} zmian i zgadza się z nimi.`,
  noneJudged: (steps: number) => `Liczba kroków: ${steps}. Nigdzie nie podano zamiaru co do światła, więc żaden nie jest oceniany.`,
  nothingYet: 'Na razie nie ma czego porównać.',
  cannotJudge: (steps: string, count: number) => (count > 1 ? `Kroków ${steps} nie da się ocenić.` : `Kroku ${steps} nie da się ocenić.`),

  example: 'Przykład',
  pasteOwn: 'Wklej tu własne ustawienia',

  mend: (step: number, text: string, was: string) => `Krok ${step}: ${text} zamiast ${was}`,
  mendInstead: (step: number, text: string, was: string) => `Albo krok ${step}: ${text} zamiast ${was}`,
  add: (step: number, text: string) => `Krok ${step}: dopisać ${text}`,
  addInstead: (step: number, text: string) => `Albo krok ${step}: dopisać ${text}`,
  slips: {
    seconds: 'sekundy, nie ułamek', fraction: 'ułamek, nie sekundy', point: 'zgubiony przecinek',
    needed: 'daje zamierzone światło', digits: 'te same cyfry',
  } satisfies Record<Slip, string>,
  mendCost: (slip: string, light: string) => `${slip}, ${light}`,
  mendCostElsewhere: (slip: string, light: string, steps: string, count: number) =>
    `${slip}, ${light}; poprawia ${count > 1 ? 'kroki' : 'krok'} ${steps}`,
  mended: (step: number, text: string, was: string) => `Gotowe: w kroku ${step} jest teraz ${text} zamiast ${was}.`,
  added: (step: number, text: string) => `Gotowe: w kroku ${step} jest teraz ${text}.`,
  undo: 'Cofnij',
  back: 'Wróć do pierwotnego tekstu',

  light: 'światło',
  depth: 'głębia',
  signs: {true: '=', false: '≠', null: '·'},
  linkOther: (light: string) => `${light} według ustawień; zmieniono samo światło.`,
  linkUnsaid: (light: string) => `${light}. Zamiaru nie podano.`,
  linkOff: (light: string, than: number, meant: string) => `${light} niż w kroku ${than}; miało być: ${meant}.`,
  linkSame: (as: number, meant: string) => `tyle samo światła co w kroku ${as}; miało być: ${meant}.`,
  linkAsked: (light: string, by: number) => `${light}, jak wymaga krok ${by}.`,
  linkAssumed: (light: string) => `${light}.`,
  linkMeant: (light: string) => `${light}, zgodnie z zamiarem.`,
  unchanged: 'Nic się nie zmieniło',
  tolerance: {
    1: 'Różnice do 1/2 EV się nie liczą: to pół skoku pokrętła.',
    2: 'Różnice do 1/4 EV się nie liczą: to pół skoku pokrętła.',
    3: 'Różnice do 1/6 EV się nie liczą: to pół skoku pokrętła.',
  },
  depthIs: 'Głębia liczy, o ile EV przymknięto przysłonę: przy + ostre jest więcej od przodu do tyłu.',

  carried: (settings: string) => `${settings} jak w poprzednim kroku.`,
  taken: (text: string, value: string) => `„${text}” odczytano jako ${value}.`,
  asksNext: (text: string, light: string) => `„${text}” wymaga w następnym kroku: ${light}.`,
  noSetting: 'Nie ma tu ustawienia do odczytania; potrzebne jest na przykład f/8 1/60.',
  missing: (settings: string) => `Dotąd nie podano: ${settings}. Nie ma więc czego porównać.`,
  unread: (texts: string, count: number) => (count > 1 ? `Nieużyte: ${texts}. To nie ustawienia albo jest ich za dużo.` : `Nieużyte: ${texts}. To nie ustawienie albo jest o jedno za dużo.`),

  dial: 'Na tarczę',
  dialOf: (step: number) => `Na tarczę: krok ${step}`,
  dialWill: (start: string, setting: string) =>
    `„Na tarczę” czyni krok punktem wyjścia tarczy na tej stronie, zamiast ${start}, i ustawia go, zamiast ${setting}. Można to cofnąć.`,
  dialWillBoth: (setting: string) =>
    `„Na tarczę” czyni krok punktem wyjścia i ustawieniem tarczy na tej stronie, zamiast ${setting}. Można to cofnąć.`,
  dialled: (setting: string) => `Gotowe: punkt wyjścia tarczy to ${setting}.`,
  dialledAsking: (setting: string, light: string) => `Gotowe: punkt wyjścia tarczy to ${setting}; ma być ${light}.`,

  copy: 'Kopiuj listę',
  copied: 'Skopiowano',
  copyHere: 'Kopiowanie nie jest tu dozwolone. Lista jest w tym polu:',
  paste: 'Wklej poradnik lub zmień ten',
  pasteLabel: 'Tekst ciągły albo po jednym ustawieniu w wierszu',
  pasteHint: 'Uwagi o świetle są odczytywane po angielsku: same light, one stop darker, +2.',
  read: 'Odczytaj',
  expect: 'Gdy nic nie powiedziano o świetle',
  expects: {'same-light': 'ma być tyle samo światła', nothing: 'nic nie jest zamierzone'},
  wanted: 'ustawienie takie jak f/8 1/60',
  expectWanted: 'same-light lub nothing',
  refused: (text: string, wanted: string) => `„${text}” tu nie pasuje; potrzebne: ${wanted}.`,
  refusedKept: (text: string, wanted: string) => `„${text}” tu nie pasuje; potrzebne: ${wanted}. Pozostaje ostatnia poprawna lista.`,
});
