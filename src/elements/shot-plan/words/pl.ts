import type {Say} from '../../shared/say.js';
import type {PlanWords} from './en.js';

export {family} from '../../shared/words/pl.js';

export const words = (say: Say): PlanWords => ({
  say,
  plan: 'Plan ujęcia',

  sharpInOne: (sharp, setting, from, focus) => `${sharp ? 'Ostre' : 'W zakresie ostrości'} od końca do końca na jednym zdjęciu: ${setting}, z odległości ${from}, ostrość ${focus}.`,
  sharpInOneWith: (sharp, lens, setting, from, focus) =>
    `${sharp ? 'Ostre' : 'W zakresie ostrości'} od końca do końca na jednym zdjęciu: ${setting}, z odległości ${from} obiektywem ${lens}, ostrość ${focus}.`,
  sharpInFrames: (sharp, frames, setting, from) => `${sharp ? 'Ostre' : 'W zakresie ostrości'} od końca do końca po złożeniu (${frames}): każde ${setting}, z odległości ${from}.`,
  sharpInFramesWith: (sharp, lens, frames, setting, from) =>
    `${sharp ? 'Ostre' : 'W zakresie ostrości'} od końca do końca po złożeniu (${frames}): każde ${setting}, z odległości ${from} obiektywem ${lens}.`,
  softened: (little, point, limit) => `Dyfrakcja ${little ? 'nieco ' : ''}zmiękcza całość: punkt jest szeroki na ${point}, granica to ${limit}.`,
  pair: (aperture, shutter) => `${aperture} przy ${shutter}`,
  shown: (aperture, shown) => `${aperture} (aparat pokazuje ${shown})`,
  frames: (count, written) => say.plural(count, {one: '1\u00a0zdjęcie', few: `${written}\u00a0zdjęcia`, other: `${written}\u00a0zdjęć`}),
  atEdge: 'na przedniej krawędzi podstawki',
  beforeBase: (length) => `${length} przed podstawką`,
  behindEdge: (length) => `${length} za przednią krawędzią podstawki`,
  hopeless: 'Tych życzeń nie da się spełnić nawet przy największych ustępstwach.',
  giveUpOne: (wish) => `Nie da się spełnić wszystkich życzeń naraz. Najmniej kosztuje: „${wish}”.`,
  giveUpAll: 'Nie da się spełnić wszystkich życzeń, a ustąpienie w jednym nie wystarczy. Wystarczy ustąpić we wszystkich tych:',
  rests: (depth, picture, blur, contrast) => `Do objęcia ${depth} głębi wzdłuż stołu na obrazie ${picture}. Ostre znaczy: rozmyte najwyżej na ${
    blur}; najcieńsza linia takiej szerokości zachowuje co najmniej ${contrast} kontrastu.`,
  nothingToSet: (which) => `Brak planu: w granicach ${which === 'aperture' ? 'przysłony' : 'czasu'} nie ma czego ustawić. Zostaje ostatni dobry plan.`,
  noPlan: (name, value, wanted) => `Brak planu: „${name}” to ${value}; potrzebne: ${wanted}. Zostaje ostatni dobry plan.`,

  ways: 'Sposoby na ostrość',
  weighs: (contrast) => `W kolejności według czasu, zdjęć do złożenia, oddalenia, pikseli i zmiany obiektywu; we wszystkich najcieńsza linia zachowuje co najmniej ${
    contrast} kontrastu. Pasek strefy ostrości dba tylko o końce, dlatego może podać inne ustawienie.`,
  way: (kind, frames) => ({
    stay: 'Tak blisko, jak pozwala kadr', 'move-back': 'Dalej, z przycięciem', stack: `${frames} do złożenia`,
  })[kind],
  wayOf: (way, lens) => `${way} (obiektyw ${lens})`,
  from: (setting, distance) => `${setting}, z odległości ${distance}`,
  each: (setting, distance) => `każde ${setting}, z odległości ${distance}`,
  set: 'ustawione',
  pick: 'ustaw',
  further: 'Inne sposoby',
  fewer: 'Tylko najlepsze',
  done: (what) => `Gotowe: ${what}.`,
  undo: 'Cofnij',

  price: (parts) => `Cena: ${parts}`,
  parting: '; ',
  smaller: (clicks, written) => say.plural(clicks, {
    one: 'przysłona przymknięta o 1 skok', few: `przysłona przymknięta o ${written} skoki`, other: `przysłona przymknięta o ${written} skoków`,
  }),
  larger: (clicks, written) => say.plural(clicks, {
    one: 'przysłona otwarta szerzej o 1 skok', few: `przysłona otwarta szerzej o ${written} skoki`, other: `przysłona otwarta szerzej o ${written} skoków`,
  }),
  stackTime: (seconds, frames, shutter, settle) => `${seconds} (${frames} × ${shutter} oraz ${settle} na przestawianie i wygaśnięcie drgań między zdjęciami)`,
  back: (length, now) => `o ${length} dalej niż ${now ? 'teraz' : 'z najbliższego miejsca'}`,
  pixels: (pixels) => `odcięte ${pixels} szerokości`,
  moreFrames: (count, written) => say.plural(count, {
    one: 'o 1 zdjęcie więcej do złożenia', few: `o ${written} zdjęcia więcej do złożenia`, other: `o ${written} zdjęć więcej do złożenia`,
  }),
  otherLens: 'zmiana obiektywu',

  giveUp: 'W czym ustąpić',
  single: 'Czego wymagałoby jedno zdjęcie',
  singleAny: 'Wystarczy jedno z poniższych i niczego nie trzeba składać:',
  singleAll: 'Wszystko to razem i niczego nie trzeba składać:',
  allTogether: 'Ustąpić we wszystkim',
  wish: (wish, to) => ({
    frames: `Dopuścić najwyżej: ${to}`, 'picture-width': `Pokazać w szerokości ${to}`, 'blur-limit': `Dopuścić ${to} rozmycia`,
    contrast: `Zostawić najcieńszej linii tylko ${to} kontrastu`, shutter: `Naświetlać do ${to}`,
    room: `Zrobić miejsce na ${to}`, margin: `Zostawić tylko ${to} marginesu`,
  })[wish],
  noMargin: 'Nie zostawiać marginesu',
  now: (value, most) => (most ? `teraz najwyżej ${value}` : `teraz ${value}`),

  drawing: 'Widok z boku: figurka, aparat i pole widzenia',
  noPlace: 'nie znaleziono miejsca',
  mark: 'od znacznika matrycy do ostrości',
  camera: (distance, tilt) => `${distance}, ${tilt}`,
  tilt: (way, degrees) => (way === 'level' ? 'poziomo' : `${degrees}° w ${way === 'down' ? 'dół' : 'górę'}`),
  focusAt: (length) => `ostrość ${length}`,
  focusPlanes: (count) => `płaszczyzny ostrości: ${count}`,
  drawn: (way, unit) =>
    `W skali: „${way}”. Linijka liczy ${unit} wzdłuż stołu od przedniej krawędzi podstawki, a jej gruba część jest ostra.`,
  broken: 'W miejscu przerwy pominięto odcinek: aparat stoi dalej.',
  inches: 'cale',
  grips: {
    'overhang-front': 'Skrajny punkt z przodu', 'overhang-back': 'Skrajny punkt z tyłu', top: 'Czubek figurki', 'base-front': 'Przednia krawędź podstawki',
    'base-back': 'Tylna krawędź podstawki', tilt: 'Aparat, pochylenie w dół',
  },
  noOverhang: 'nie wystaje poza podstawkę; w lewo i w prawo można go wysunąć',
  overhang: (length, front, height) => `wystaje ${length} poza ${front ? 'przednią' : 'tylną'} krawędź, na wysokości ${height}`,
  aboveTable: (length) => `${length} nad stołem`,
  deep: (length) => `podstawka głęboka na ${length}`,
  free: {both: 'W lewo i w prawo: zasięg, w górę i w dół: wysokość', up: 'W górę i w dół', along: 'W lewo i w prawo'},
  gripTitle: (name, value, hint) => `${name}: ${value}. ${hint}.`,

  compare: 'Obok siebie',
  curve: 'Cienkie linie przy każdej przysłonie',
  rates: 'Co ile się liczy',
  figure: 'Figurka w liczbach',
  cameraAndLens: 'Aparat, obiektyw i granice',
  sharp: 'Co uchodzi za ostre, zdjęcia, jednostka',

  focalLengths: 'Ogniskowe',
  focalLengthsHint: 'dostępne, założona jako pierwsza',
  room: 'Miejsce na statyw',
  roomHint: 'od znacznika matrycy (⌀ na korpusie) do płaszczyzny ostrości, najwyżej',
  metered: 'Przysłona z pomiaru',
  meteredWorking: 'Przysłona z pomiaru, jak na aparacie',
  meteredShutter: 'Czas z pomiaru',
  pictureWidth: 'Szerokość obrazu, px',
  pictureHeight: 'Wysokość obrazu, px',
  margin: 'Margines',
  marginHint: 'szerokości, ze wszystkich stron',
});
