import type {PhotoWords} from './en.js';

export const photoWords: PhotoWords = {
  choose: 'Wybierz zdjęcie',
  chooseOther: 'Wybierz inne zdjęcie',
  staysHere: 'Zdjęcie jest odczytywane na tym urządzeniu i nigdzie nie jest wysyłane.',
  opening: 'Wczytywanie zdjęcia…',

  named: (name) => `Plik „${name}”`,
  nameless: 'Podany plik',
  kinds: {
    avif: 'obraz AVIF', tiff: 'obraz TIFF', 'jpeg-xl': 'obraz JPEG XL', 'jpeg-2000': 'obraz JPEG 2000',
    layers: 'obraz z warstwami', video: 'film', document: 'dokument', drawing: 'rysunek wektorowy',
  },
  trouble: {
    empty: (file) => `${file} jest pusty. Skopiować go z aparatu jeszcze raz.`,
    unreadable: (file) => `${file} nie dał się odczytać: mógł zostać przeniesiony lub usunięty. Wybrać go jeszcze raz.`,
    raw: (file) => `${file} to RAW prosto z matrycy i nie ma jeszcze tonów. Wywołać go albo wybrać JPEG zapisany razem z nim.`,
    heic: (file) => `${file} jest w oszczędnym formacie telefonu (HEIC), którego ta przeglądarka nie otwiera. Ustawić w telefonie najbardziej zgodny format albo wyeksportować zdjęcie jako JPEG.`,
    'cut-short': (file) => `${file} urywa się przed końcem, jak po przerwanym kopiowaniu. Skopiować lub przesłać go jeszcze raz.`,
    damaged: (file) => `${file} jest uszkodzony i nie da się go pokazać. Skopiować go z aparatu jeszcze raz albo otworzyć gdzie indziej i wyeksportować jako JPEG.`,
  },
  notAPicture: (file, kind) => `${file} ${kind ? `to ${kind}` : 'nie zawiera rozpoznawalnego obrazu'}. Wybrać zdjęcie zapisane jako JPEG, PNG, WebP lub AVIF.`,
  unsupported: (file, kind) => `${file} to ${kind ?? 'obraz'}, ale ta przeglądarka go nie otwiera. Wyeksportować jako JPEG lub PNG.`,
  tooLarge: (file) => `${file} jest za duży dla pamięci. Wyeksportować w mniejszym rozmiarze.`,
  tooManyBytes: (file, megabytes) => `${file} jest za duży dla pamięci: ma ponad ${megabytes}. Wyeksportować w mniejszym rozmiarze.`,
  tooManyPixels: (file, size, megapixels) =>
    `${file} jest za duży dla pamięci: ma ${size}${megapixels ? `, a najwięcej może mieć ${megapixels} Mpx` : ''}. Wyeksportować w mniejszym rozmiarze.`,
  notLoaded: (src, status) =>
    `Zdjęcie pod adresem „${src}” nie wczytało się (${status ?? 'brak odpowiedzi'}). Wybrać własne albo sprawdzić adres.`,
  attribute: (name, problem) => `${name}: ${problem}`,

  wayOut: (from, to, held) => `${from} → ${to} przy ${held}`,
  wayStands: (to, held) => `${to} przy ${held}`,
  wayCost: (stops, brighter) => `O ${stops} ${brighter ? 'jaśniej' : 'ciemniej'} niż na tym zdjęciu`,
  wayCostNow: (stops, brighter, now, brighterNow) =>
    `O ${stops} ${brighter ? 'jaśniej' : 'ciemniej'} niż na tym zdjęciu i o ${now} ${brighterNow ? 'jaśniej' : 'ciemniej'} niż przy obecnych ustawieniach`,
  takenAt: (exposure) => `Zrobiono je przy ${exposure}.`,
  wayCloseUp: (stops, less) => `Z nowego miejsca zbliżenie zabiera o ${stops} ${less ? 'mniej' : 'więcej'} światła; to jest wliczone.`,
  wayEnds: (setting, stops, short) => `${setting}: dalej się nie da, ${short ? 'brakuje' : 'za dużo o'} ${stops}.`,
  wayRounds: (stops, brighter) => `Najbliższe ustawienie daje o ${stops} ${brighter ? 'jaśniej' : 'ciemniej'}.`,
  wayDone: (setting) => `Gotowe: następne ujęcie ma ustawione ${setting}.`,
  undo: 'Cofnij',
};
