import type {Say} from '../../../shared/say.js';
import {sensor} from '../../../shared/sensor/words/pl.js';
import type {FoldWords} from './en.js';

export {family} from '../../../shared/words/pl.js';

export const words = (say: Say): FoldWords => ({
  say,
  ...sensor,

  overhangFront: 'Wystaje z przodu',
  overhangFrontHeight: '… na wysokości',
  overhangBack: 'Wystaje z tyłu',
  overhangBackHeight: '… na wysokości',
  figureHeight: 'Wysokość nad stołem',
  tilt: 'Aparat pochylony w dół o',
  distance: 'Od aparatu do płaszczyzny ostrości',
  distanceHint: 'od ⌀ na korpusie, gdzie leży matryca; ustawia szerokość pola',
  room: 'Miejsce na aparat',
  roomHint: 'najdalej od płaszczyzny ostrości',
  apertureWidest: 'Pełny otwór',
  apertureSmallest: 'Najmniejszy otwór',
  apertureShown: 'Aparat pokazuje przysłonę',
  marked: 'wygrawerowaną na obiektywie',
  working: 'z wliczonym zbliżeniem',
  pupilRatio: 'Stosunek źrenic obiektywu',
  pupilRatioHint: 'wielkość otworu widziana od tyłu podzielona przez widzianą od przodu; 1, gdy nieznana',
  pictureWidth: 'Szerokość gotowego obrazu, px',
  frameWidth: 'Szerokość klatki, px',
  blurLimit: 'Granica rozmycia, px gotowego obrazu',
  unit: 'Długości w',
  inches: 'cale',
  kept: (width, pixels) => `Kadr zachowuje ${width} szerokości matrycy, ${pixels}.`,

  detail: 'Najcieńsza linia',
  detailHint: '1 px lub 0,2 mm na figurce',
  lost: 'nic nie zostaje',
  lostAt: 'utracony',
  contrastCaption: 'kontrast najcieńszej linii',
  tooFine: (width) => `Linia szeroka na ${width} jest za cienka dla tego otworu: z jej kontrastu nie zostaje nic, nawet w ostrości.`,
  keeps: (width, inFocus, front, frontKeeps, back, backKeeps) =>
    `Linia szeroka na ${width} zachowuje ${inFocus} kontrastu w ostrości, ${frontKeeps} ${front}, ${backKeeps} ${back}.`,
  none: 'nic',

  frames: (aperture, count, places) => say.plural(count, {
    one: `Przy ${aperture} wystarczy jedno zdjęcie, ostrość za przednią krawędzią podstawki: ${places}.`,
    few: `Przy ${aperture} wystarczą ${count} zdjęcia; każda strefa ostrości zachodzi na następną o jedną czwartą lub więcej. `
      + `Ostrość za przednią krawędzią podstawki, od przodu: ${places}.`,
    other: `Przy ${aperture} wystarczy ${count} zdjęć; każda strefa ostrości zachodzi na następną o jedną czwartą lub więcej. `
      + `Ostrość za przednią krawędzią podstawki, od przodu: ${places}.`,
  }),
  tooManyAt: (aperture) => `Przy ${aperture} potrzeba by więcej zdjęć, niż ktokolwiek robi.`,
  tooMany: 'Przy każdej przysłonie potrzeba by więcej zdjęć, niż ktokolwiek robi.',
  bestNow: 'Stąd żadna przysłona nie jest lepsza dla cienkich linii.',
  best: (aperture, count) => say.plural(count, {
    one: `Stąd najlepiej dla cienkich linii: jedno zdjęcie przy ${aperture}.`,
    few: `Stąd najlepiej dla cienkich linii: ${count} zdjęcia przy ${aperture}. Plan ujęcia liczy też pracę przy każdym zdjęciu i może wziąć ich mniej.`,
    other: `Stąd najlepiej dla cienkich linii: ${count} zdjęć przy ${aperture}. Plan ujęcia liczy też pracę przy każdym zdjęciu i może wziąć ich mniej.`,
  }),
  stackTakes: (seconds, time, contrast) =>
    `Z przerwami po ${seconds} trwają razem około ${time}; tam, gdzie jest najsłabsza, najcieńsza linia zachowuje ${contrast} kontrastu.`,
  setStack: (aperture, shutter) => `Ustawić do tego ${aperture} i ${shutter}`,

  back: 'Aparat w tył o',
  slide: 'Suwak pokazuje, ile daje krok w tył: obraz zostaje przycięty do tego, co widać teraz.',
  worth: (stops, now, then) => `Daje ${stops} głębi ostrości: strefa ostrości rośnie z ${now} do ${then}, przy tej samej przysłonie.`,
  worthWithoutEnd: (stops) => `Daje ${stops} głębi ostrości: strefa ostrości nie kończy się już z tyłu, przy tej samej przysłonie.`,
  costs: (share, left, needed) => `Kosztuje ${share} pikseli na szerokość: zostaje ${left}, potrzeba ${needed}.`,
  reach: (length) => `Pikseli starczy na ${length} w tył.`,
  noReach: 'Nie ma pikseli w zapasie.',
  roomReach: (length) => `Miejsca na aparat starczy na ${length} w tył.`,
  noRoom: 'Nie ma więcej miejsca na aparat.',
  goBack: (length) => `Cofnąć o ${length} i przyciąć`,
  goBackNowhere: 'Cofnąć i przyciąć',

  rulerHow: 'Przeciągnąć dwa punkty na dwie kreski podziałki. Obie muszą być w ostrości, w tej samej odległości od aparatu, na linijce ułożonej w poprzek '
    + 'kadru: wzdłuż linijki, która oddala się od aparatu, skala się zmienia, a dwa punkty nie mówią, jak.',
  photoLinked: 'Nie otwarto jeszcze zdjęcia. Otworzyć je w wykresie tonów na tej stronie: jest połączony z tym paskiem, więc zdjęcie pojawi się wtedy tutaj.',
  photoAlone: 'Gdy wykres tonów na tej stronie będzie połączony z tym paskiem, otwarte w nim zdjęcie pojawi się tutaj.',
  photo: 'Zdjęcie z dwoma punktami',
  points: ['Pierwszy punkt', 'Drugi punkt'],
  at: (x, y) => `${x} px od lewej, ${y} px od góry`,
  cropped: 'To zdjęcie ma inne proporcje niż matryca. Jeśli je przycięto, pole wychodzi za wąskie: lepiej wziąć je takie, jakie wyszło z aparatu.',
  apart: 'Długość między punktami',
  apartHint: 'tak jak liczy linijka',
  together: 'Oba punkty leżą na sobie. Jeden z nich odsunąć.',
  takesIn: (field, magnification) => `Kadr obejmuje ${field} szerokości: skala odwzorowania ${magnification}.`,
  isSet: 'Tak jest ustawione.',
  setNow: (field, off, less) => `Teraz ustawione: ${field}, o ${off} ${less ? 'mniej' : 'więcej'}.`,
  useField: (field) => `Ustawić szerokość pola na ${field}`,

  ownHow: 'Sfotografować z ustawieniami powyżej płaską linijkę, która oddala się od aparatu, mijając przednią krawędź podstawki. '
    + 'Obejrzeć zdjęcie w gotowej wielkości i odczytać, co jeszcze wygląda ostro.',
  zero: 'Kreska na przedniej krawędzi',
  nearest: 'Najbliższa jeszcze ostra',
  farthest: 'Najdalsza jeszcze ostra',
  farthestWanted: 'kreska dalej niż najbliższa',
  ownLimit: (limit) => `Własna granica to ${limit}.`,
  focusWas: (place) => `Ostrość była ${place}, tam, gdzie miała być.`,
  focusWasOff: (place, off, behind) => `Ostrość była ${place}, ${off} ${behind ? 'za miejscem' : 'przed miejscem'}, w którym miała być.`,
  useOwn: 'Używać odtąd tej granicy i tej ostrości',
});
