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
  brighter: (stops: string) => `${stops} jaśniej`,
  darker: (stops: string) => `${stops} ciemniej`,
  some: {brighter: 'nieco jaśniej', darker: 'nieco ciemniej'},

  empty: 'Po wpisaniu lub wklejeniu ustawień zostaną policzone różnice między nimi w EV.',
  single: 'Znaleziono jedno ustawienie; do porównania potrzebne jest drugie.',
  severalOff: (off: number, all: number) => `Nie zgadzają się ${off} z ${all} kroków.`,
  off: (step: number, setting: string, light: string, than: number) => `Krok ${step} się nie zgadza: ${setting} daje ${light} niż krok ${than}.`,
  offFromMeant: (step: number, setting: string, light: string, than: number, meant: string) =>
    `Krok ${step} się nie zgadza: ${setting} daje ${light} niż krok ${than}; miało być: ${meant}.`,
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
  pasteOwn: 'Tu wkleić własne ustawienia',

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
  back: 'Wróć do tekstu, jaki był',

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
    1: 'Do pół EV nie liczy się wcale: to pół kliknięcia pokrętła.',
    2: 'Do ćwierć EV nie liczy się wcale: to pół kliknięcia pokrętła.',
    3: 'Do jednej szóstej EV nie liczy się wcale: to pół kliknięcia pokrętła.',
  },
  depthIs: 'Głębia liczy, o ile EV przymknięto przysłonę: przy + ostre jest więcej od przodu do tyłu.',

  carried: (settings: string) => `${settings} jak w poprzednim kroku.`,
  taken: (text: string, value: string) => `„${text}” odczytano jako ${value}.`,
  asksNext: (text: string, light: string) => `„${text}” wymaga w następnym kroku: ${light}.`,
  noSetting: 'Nie ma tu ustawienia do odczytania; potrzebne jest coś takiego jak f/8 1/60.',
  missing: (settings: string) => `Dotąd nie podano: ${settings}. Nie ma więc czego porównać.`,
  unread: (texts: string, count: number) => (count > 1 ? `Nieużyte: ${texts}. To nie ustawienia albo jest ich za dużo.` : `Nieużyte: ${texts}. To nie ustawienie albo jest o jedno za dużo.`),

  dial: 'Na pokrętło',
  dialOf: (step: number) => `Na pokrętło: krok ${step}`,
  dialWill: (start: string, setting: string) =>
    `„Na pokrętło” czyni krok punktem wyjścia połączonego pokrętła, zamiast ${start}, i ustawia go, zamiast ${setting}. Można to cofnąć.`,
  dialWillBoth: (setting: string) =>
    `„Na pokrętło” czyni krok punktem wyjścia i ustawieniem połączonego pokrętła, zamiast ${setting}. Można to cofnąć.`,
  dialled: (setting: string) => `Gotowe: pokrętło wychodzi od ${setting}.`,
  dialledAsking: (setting: string, light: string) => `Gotowe: pokrętło wychodzi od ${setting}, ma być ${light}.`,

  copy: 'Kopiuj listę',
  copied: 'Skopiowano',
  copyHere: 'Kopiowanie jest tu niedozwolone. Lista jest w tym polu:',
  paste: 'Wklej lekcję lub zmień tę',
  pasteLabel: 'Tekst ciągły albo jedno ustawienie w wierszu',
  pasteHint: 'To, co powiedziano o świetle, jest czytane po angielsku: same light, one stop darker, +2.',
  read: 'Odczytaj',
  expect: 'Gdy nic nie powiedziano o świetle',
  expects: {'same-light': 'ma być tyle samo światła', nothing: 'nic nie jest zamierzone'},
  wanted: 'ustawienie takie jak f/8 1/60',
  expectWanted: 'same-light lub nothing',
  refused: (text: string, wanted: string) => `Nie da się odczytać „${text}”; potrzebne: ${wanted}.`,
  refusedKept: (text: string, wanted: string) => `Nie da się odczytać „${text}”; potrzebne: ${wanted}. Pozostaje ostatnia poprawna lista.`,
});
