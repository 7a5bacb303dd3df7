import type {PhotoWords} from './en.js';

export const photoWords: PhotoWords = {
  choose: 'Wybierz zdjęcie',
  chooseOther: 'Wybierz inne zdjęcie',
  staysHere: 'Zdjęcie jest czytane na tym urządzeniu i nigdzie nie jest wysyłane.',
  opening: 'Czytanie zdjęcia…',

  named: (name) => `„${name}”`,
  nameless: 'Podany plik',
  kinds: {
    avif: 'plik AVIF', tiff: 'plik TIFF', 'jpeg-xl': 'plik JPEG XL', 'jpeg-2000': 'plik JPEG 2000',
    layers: 'obraz z warstwami', video: 'film', document: 'dokument', drawing: 'rysunek wektorowy',
  },
  trouble: {
    empty: (file) => `${file}: plik jest pusty. Skopiować go z aparatu jeszcze raz.`,
    unreadable: (file) => `${file}: nie udało się odczytać, plik mógł zostać przeniesiony lub usunięty. Wybrać go jeszcze raz.`,
    raw: (file) => `${file}: to plik raw, prosto z matrycy, i nie ma jeszcze tonów. Wywołać go albo wybrać JPEG zapisany razem z nim.`,
    heic: (file) => `${file}: to oszczędny format telefonu (HEIC), którego ta przeglądarka nie otwiera. Ustawić w telefonie najbardziej zgodny format albo wyeksportować zdjęcie jako JPEG.`,
    'cut-short': (file) => `${file}: plik urywa się przed końcem, jak po przerwanym kopiowaniu. Skopiować lub przesłać go jeszcze raz.`,
    damaged: (file) => `${file}: plik jest uszkodzony w środku i nie da się go pokazać. Skopiować go z aparatu jeszcze raz albo otworzyć gdzie indziej i wyeksportować jako JPEG.`,
  },
  notAPicture: (file, kind) => `${file}: to ${kind ?? 'plik, w którym nie widać żadnego obrazu'}. Wybrać zdjęcie zapisane jako JPEG, PNG, WebP lub AVIF.`,
  unsupported: (file, kind) => `${file}: to ${kind ?? 'plik z obrazem'}, a takich ta przeglądarka nie otwiera. Wyeksportować jako JPEG lub PNG.`,
  tooLarge: (file) => `${file}: plik jest za duży dla pamięci. Wyeksportować mniejszy.`,
  tooManyBytes: (file, megabytes) => `${file}: plik jest za duży dla pamięci, ma ponad ${megabytes}. Wyeksportować mniejszy.`,
  tooManyPixels: (file, size, megapixels) =>
    `${file}: plik jest za duży dla pamięci, ma ${size}${megapixels ? `, a najwięcej może mieć ${megapixels} Mpx` : ''}. Wyeksportować mniejszy.`,
  notLoaded: (src, status) =>
    `Zdjęcie pod adresem „${src}” się nie wczytało (${status ?? 'brak odpowiedzi'}). Wybrać własne albo sprawdzić adres.`,
  attribute: (name, problem) => `${name}: ${problem}`,

  wayOut: (from, to, held) => `${from} → ${to} przy ${held}`,
  wayStands: (to, held) => `${to} przy ${held}`,
  wayCost: (stops, brighter) => `${stops} ${brighter ? 'jaśniej' : 'ciemniej'} niż na tym zdjęciu`,
  takenAt: (exposure) => `Zrobiono je przy ${exposure}.`,
  wayEnds: (setting, stops, short) => `${setting}: dalej się nie da, ${short ? 'brakuje' : 'za dużo o'} ${stops}.`,
  wayRounds: (stops, brighter) => `Najbliższe kliknięcie daje ${stops} ${brighter ? 'jaśniej' : 'ciemniej'}.`,
  wayDone: (setting) => `Gotowe: następne ujęcie ma ustawione ${setting}.`,
  undo: 'Cofnij',
};
