import type {Patch, Side} from '../../../../core/white/card.js';
import {photoWords} from '../../../shared/photo/words/pl.js';
import type {Say} from '../../../shared/say.js';
import type {Tint, Warmth} from '../light-speech.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/pl.js';

const NAMES = {white: 'Biel', gray: 'Szarość', black: 'Czerń'} satisfies Record<Patch, string>;
const PATCH = {white: 'biel', gray: 'szarość', black: 'czerń'} satisfies Record<Patch, string>;
const FIELD = {white: 'białe', gray: 'szare', black: 'czarne'} satisfies Record<Patch, string>;
const ON = {white: 'białym', gray: 'szarym', black: 'czarnym'} satisfies Record<Patch, string>;
const WARMTH = {warmer: 'cieplejsza', cooler: 'chłodniejsza'} satisfies Record<Warmth, string>;
const WARMTHWARDS = {warmer: 'cieplej', cooler: 'chłodniej'} satisfies Record<Warmth, string>;
const TINT = {greener: 'bardziej zielona', pinker: 'bardziej purpurowa'} satisfies Record<Tint, string>;
const SIDES = {left: 'z lewej', right: 'z prawej', top: 'u góry', bottom: 'u dołu', middle: 'pośrodku'} satisfies Record<Side, string>;
const pressOn = (patch: Patch) => `Nacisnąć ${FIELD[patch]} pole albo przesunąć na nie ramkę ${NAMES[patch]}.`;
const unevenThen = (side: Side) => `Światło skupia się ${SIDES[side]}: odwrócić kartę od tego, co odbija, albo zsunąć ramkę z cienia.`;
const uneven = (patch: Patch) => (share: string) => `${NAMES[patch]} jest nierówna: ${share} między najciemniejszą a najjaśniejszą częścią.`;

const correct = (red: string, blue: string, neutral: boolean): string =>
  (neutral ? `jest neutralna i jej koloru nie trzeba korygować: czerwonego ×\u00a0${red} i niebieskiego ×\u00a0${blue} nie byłoby widać` : `kanał czerwony pomnożyć przez ${red}, a niebieski przez ${blue}`);

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,
  opening: 'Wczytywanie zdjęcia karty…',

  patches: NAMES,
  picture: 'Zdjęcie karty z ramką na każdym polu',
  frames: {white: 'Ramka na białym polu', gray: 'Ramka na szarym polu', black: 'Ramka na czarnym polu'},
  frameAt: (width, height, x, y) => `${width} na ${height} px, ${x} od lewej, ${y} od góry`,
  frameWaits: (width, height, x, y, patch) => `${width} na ${height} px, ${x} od lewej, ${y} od góry, jeszcze nie na ${ON[patch]} polu`,
  frameKeys: 'Strzałki przesuwają ramkę, z klawiszem Shift zmieniają jej rozmiar; Page Up i Page Down powiększają ją i zmniejszają.',
  looking: 'Szukanie karty…',
  noneFound: 'Na tym zdjęciu nie znaleziono szarej karty: zaznaczyć ją ręcznie, jeśli jest.',
  pressOn: {white: pressOn('white'), gray: pressOn('gray'), black: pressOn('black')},
  closer: 'Pokaż kartę z bliska',
  whole: 'Pokaż całe zdjęcie',
  again: 'Poszukaj karty jeszcze raz',
  byNumbers: 'Ramki w liczbach',
  markField: {white: 'Biel: od lewej, od góry, rozmiar, px', gray: 'Szarość: od lewej, od góry, rozmiar, px', black: 'Czerń: od lewej, od góry, rozmiar, px'},
  markWanted: (width, height) => `odległość od lewej i od góry, szerokość i wysokość w px, np. 184, 823, 54 × 54, w obrębie ${width} × ${height}`,

  misplaced: 'Pola pod ramkami nie ciemnieją od bieli przez szarość do czerni: nie ma tam jeszcze karty, której można ufać.',
  trusted: (red, blue, neutral) => `Karcie można ufać: szarość jest na swoim miejscu; ${correct(red, blue, neutral)}.`,
  trustedOff: (stops, over, red, blue, neutral) =>
    `Karcie można ufać: szarość leży o ${stops} ${over ? 'powyżej' : 'poniżej'} swojego miejsca; ${correct(red, blue, neutral)}.`,
  distrust: {
    grayBlack: 'Nie ufać tej karcie: jedna z barw szarego pola jest równa 0. Dać więcej światła albo dłuższy czas i zrobić zdjęcie jeszcze raz.',
    grayClipped: 'Nie ufać tej karcie: szarość jest przycięta do bieli. Naświetlić co najmniej o dwa i pół EV mniej i zrobić zdjęcie jeszcze raz.',
    whiteClipped: 'Nie ufać tej karcie: biel jest przycięta.',
    uneven: (patch, share) => `Nie ufać tej karcie: ${PATCH[patch]} jest nierówna, ${share} od najciemniejszej do najjaśniejszej części.`,
    glare: (lifted) => `Nie ufać tej karcie: ${lifted}, to odblask. Obracać kartę, aż odbicie lampy z niej zejdzie.`,
    veil: (lifted) => `Nie ufać tej karcie: ${lifted}, to zamglenie od rozproszonego światła. Osłonić obiektyw, oczyścić go i nieco obrócić kartę.`,
  },
  lifted: (stops) => `czerń jest podniesiona o ${stops} względem szarości`,
  liftedAbout: (stops) => `czerń jest podniesiona o około ${stops} względem szarości`,
  liftedToGray: 'czerń nie jest ciemniejsza od szarości',
  doubtLinked: 'Ale światło się od tego czasu zmieniło: jej wzmocnienia mogą nie pasować do zdjęcia z wykresu tonów.',
  doubtNext: 'Ale lampy lub flagi się od tego czasu zmieniły: jej wzmocnienia mogą nie pasować do następnego zdjęcia.',

  misplacedSeen: 'Ramkę Biel ustawić na białym polu, Szarość na szarym, a Czerń na czarnym.',
  misplacedThen: 'Jeśli już tam leżą, karta odbija lampę tak mocno, że nic nie da się odczytać: obracać, aż czarne pole pociemnieje.',
  whiteClipped: (share) => `Biel jest przycięta na ${share} pola.`,
  whiteClippedUsable: 'Szarość i tak daje właściwe wzmocnienia. Tylko lampy odbitej w bieli nie byłoby widać: aby ją wykluczyć, zrobić zdjęcie karty jeszcze raz, o 1 EV ciemniejsze.',
  whiteClippedElse: 'Następnym razem naświetlić kartę mniej.',
  grayClipped: (share) => `Szarość jest przycięta do bieli na ${share} pola: nie ma już barwy, którą można zmierzyć.`,
  grayClippedThen: 'Najpierw usunąć odbicie z karty; jeśli jest tylko za jasna, naświetlić co najmniej o dwa i pół EV mniej.',
  grayBlack: (share) => `Jedna z barw szarości jest równa 0 na ${share} pola: żadne mnożenie jej nie podniesie.`,
  grayBlackThen: 'Naświetlić więcej.',
  glareThen: 'Karta odbija lampę. Pochylać ją lub obracać, aż czarne pole pociemnieje widziane od strony aparatu.',
  veilThen: 'Rozproszone światło leży na karcie i na zdjęciu. Osłonić obiektyw od lampy, poszukać zamglenia na szkle i zrobić zdjęcie jeszcze raz.',
  uneven: {white: uneven('white'), gray: uneven('gray'), black: uneven('black')},
  unevenThen: {
    left: unevenThen('left'), right: unevenThen('right'), top: unevenThen('top'), bottom: unevenThen('bottom'), middle: unevenThen('middle'),
  },
  exposed: (code, noWhite) => `${noWhite ? 'Szarość jest naświetlona właściwie, biel nie' : 'Ekspozycja jest właściwa'}: szarość wychodzi na ${code} z 255.`,
  exposedThen: (share, code) => `Szarość ${share} powinna mieć ${code}; żaden skok o 1/3 EV jej do tego nie zbliży.`,
  exposedOff: (stops, over, code, belongs) => `Ekspozycja jest o ${stops} za ${over ? 'duża' : 'mała'}: szarość wychodzi na ${code} z 255 zamiast ${belongs}.`,
  lessLight: 'Naprawi to mniej światła:',
  moreLight: 'Naprawi to więcej światła:',

  table: 'Trzy pola',
  columns: {patch: 'Pole', codes: 'R G B z 255', off: 'Odchyłka', even: 'Nierówność'},
  cutOff: 'przycięta',
  noLight: 'bez światła',
  asItShould: 'na miejscu',
  offBy: (stops, over) => `o ${stops} ${over ? 'powyżej' : 'poniżej'}`,
  unknown: 'nie wiadomo',

  light: 'Światło',
  castNone: 'Szarość wychodzi neutralna: tego, co zostało z dominanty, nie byłoby widać.',
  castWarm: (warmth, stops) => `Szarość wychodzi ${WARMTH[warmth]} niż neutralna, kanały czerwony i niebieski dzieli ${stops}.`,
  castTint: (tint) => `Szarość wychodzi ${TINT[tint]} niż neutralna.`,
  castTintOfLamp: (tint) => `Szarość wychodzi nieco ${TINT[tint]} niż przy lampie o tej temperaturze barwowej.`,
  castBoth: (warmth, stops, tint) => `Szarość wychodzi ${WARMTH[warmth]} i ${TINT[tint]} niż neutralna, kanały czerwony i niebieski dzieli ${stops}.`,
  castBothOfLamp: (warmth, stops, tint) =>
    `Szarość wychodzi ${WARMTH[warmth]} niż neutralna (kanały czerwony i niebieski dzieli ${stops}) i nieco ${TINT[tint]} niż przy lampie o tej temperaturze barwowej.`,
  noTemperature: 'To światło jest dalekie od dziennego i od każdego żarowego, więc temperatura barwowa nic by nie mówiła.',
  temperature: (kelvin, neutral) => `Jako temperatura barwowa: około ${kelvin}; to zdjęcie jest zrównoważone na ${neutral}.`,
  temperatureOff: (kelvin, neutral, mired, warmth) =>
    `Jako temperatura barwowa: około ${kelvin}, o ${mired} ${WARMTHWARDS[warmth]} niż ${neutral}, na które zrównoważono to zdjęcie.`,
  miredIs: 'Mired to milion podzielony przez kelwiny: równe kroki wyglądają mniej więcej tak samo, a mniej niż około 5 nie widać nawet obok siebie.',

  gains: 'Wzmocnienia: przez ile mnożyć',
  gainsAre: 'Mnożą ilości światła, jak balans bieli zdjęcia RAW. Liczby od 0 do 255 w gotowym obrazie nie są ilościami światła: tak pomnożone zmieniłyby się za bardzo.',
  doubtful: 'Te wzmocnienia pochodzą z karty, której nie można ufać.',
  noGains: 'Nie ma wzmocnień do pokazania: co zrobić, napisano wyżej.',
  greenHeld: 'Mnożniki, zielony bez zmian',
  noneBelowOne: 'Mnożniki, żaden poniżej 1',
  quotients: 'Zielony do czerwonego, do niebieskiego',
  copy: 'Kopiuj',
  copied: (text) => `Skopiowano: ${text}`,
  notCopied: 'Schowek jest tu niedostępny. Liczby są zaznaczone: skopiować klawiaturą albo długim naciśnięciem.',

  holdsNot: 'Te wzmocnienia mogą nie pasować do zdjęcia z wykresu tonów. Zrobić zdjęcie karty w tym świetle jeszcze raz.',
  holds: 'Wzmocnienia pasują do zdjęcia z wykresu tonów: tam, gdzie oba zdjęcia się zgadzają, światło ma tę samą barwę.',
  holdsUnknown: 'Nie wiadomo o żadnej zmianie od zdjęcia karty, ale oba zdjęcia pokazują zbyt różne rzeczy, by było to na nich widać. Wzmocnienia pasują, dopóki lampy, flagi i ściany stały w miejscu.',
  holdsNotNext: 'Lampy lub flagi zmieniły się od zdjęcia karty. Do następnego zdjęcia sfotografować kartę jeszcze raz.',
  lampNamed: (name) => `„${name === 'key' ? 'główna' : name === 'fill' ? 'wypełniająca' : name}”`,
  lampNumber: (number) => `Lampa ${number}`,
  lampsNow: (now, then) => `Liczba lamp teraz: ${now}, przy zdjęciu karty: ${then}.`,
  flagsNow: (now, then) => `Liczba flag teraz: ${now}, przy zdjęciu karty: ${then}.`,
  lampMoved: (lamp, length) => `${lamp}: przesunięcie o ${length} od zdjęcia karty.`,
  flagMoved: (number, length) => `Flaga ${number}: przesunięcie o ${length} od zdjęcia karty.`,
  lampPower: (lamp, stops, brighter) => `${lamp}: o ${stops} ${brighter ? 'jaśniej' : 'ciemniej'} względem pierwszej lampy niż przy zdjęciu karty.`,
  whiteBalance: 'Balans bieli w aparacie był ustawiony inaczej.',
  litDifferently: (red, redMore, blue, blueMore) =>
    `Zdjęcie z wykresu tonów było inaczej oświetlone niż karta: względem zielonego kanał czerwony jest o ${red} ${redMore ? 'mocniejszy' : 'słabszy'}, a niebieski o ${blue} ${blueMore ? 'mocniejszy' : 'słabszy'}.`,

  beforeAfter: 'Przed i po',
  previewOf: (name, share) => `${name}, do ${share} od lewej jak na zdjęciu, na prawo ze wzmocnieniami`,
  preview: (share) => `Obraz, do ${share} od lewej jak na zdjęciu, na prawo ze wzmocnieniami`,
  wipe: 'Granica między „przed” a „po”',
  wipeAt: (before, after) => `${before} przed, ${after} po`,
  before: 'przed',
  after: 'po',
  ofCard: 'zdjęcie karty',
  ofPhoto: 'zdjęcie z wykresu tonów',
  shown: 'Podgląd',
  withExposure: 'z poprawioną ekspozycją',
});
