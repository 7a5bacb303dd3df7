import type {SheetWords} from '../../../core/shot/sheet-words.js';

/** What a record says in Polish. */
export const record: SheetWords = {
  headings: {
    exposure: 'Ekspozycja', camera: 'Aparat', figure: 'Figurka', picture: 'Zdjęcie', light: 'Światło i tło', also: 'Ustawiono też',
    setUp: 'Ustawienie na planie', measured: 'Zmierzono', unused: 'Wpisane, nieużywane',
  },
  labels: {
    aperture: 'Przysłona', shutter: 'Czas', iso: 'ISO', note: 'Notatka',
    meteredAperture: 'Przysłona z pomiaru', meteredShutter: 'Czas z pomiaru', meteredIso: 'ISO z pomiaru', correction: 'Żądana korekta, EV',
    pay: 'Wyrównuje', clicksPerStop: 'Skok pokręteł', apertureShown: 'Wyświetlana przysłona', meteredMagnification: 'Skala odwzorowania przy pomiarze',
    apertureWidest: 'Pełny otwór', apertureSmallest: 'Najmniejszy otwór', shutterFastest: 'Najkrótszy czas', shutterSlowest: 'Najdłuższy czas',
    isoLowest: 'Bazowe ISO', isoHighest: 'Najwyższe używane ISO',
    focalLength: 'Ogniskowa', pupilRatio: 'Stosunek źrenic', sensorWidth: 'Szerokość matrycy', sensorHeight: 'Wysokość matrycy',
    fieldWidth: 'Szerokość pola', frameWidth: 'Szerokość klatki, px', crop: 'Kadr', tilt: 'Pochylenie w dół, stopnie',
    focus: 'Ostrość za przednią krawędzią podstawki', focalLengths: 'Dostępne obiektywy', closestFocus: 'Minimalna odległość ostrzenia',
    room: 'Miejsce na aparat', mostFrames: 'Najwięcej zdjęć',
    baseDepth: 'Głębokość podstawki', overhangFront: 'Wystaje z przodu', overhangFrontHeight: 'Wysokość części wystającej z przodu', overhangBack: 'Wystaje z tyłu',
    overhangBackHeight: 'Wysokość części wystającej z tyłu', figureHeight: 'Wysokość figurki', figureWidth: 'Szerokość figurki',
    pictureWidth: 'Szerokość obrazu, px', pictureHeight: 'Wysokość obrazu, px', margin: 'Margines', blurLimit: 'Granica rozmycia, px',
    leastContrast: 'Najmniejszy kontrast', intent: 'Zamiar', unit: 'Długości w',
    lights: 'Lampy', backdropDistance: 'Tło za środkiem podstawki', backdropReflectance: 'Tło', backdropWish: 'Tło poniżej szarej karty, EV',
  },
  measured: {
    photo: 'Plik zdjęcia', taken: 'Wykonano', size: 'Rozmiar, px', file: 'Według pliku', atBlack: 'Przy czerni, którakolwiek barwa', atWhite: 'Przy bieli, którakolwiek barwa',
    roomBelow: 'Zapas do czerni', roomAbove: 'Zapas do bieli', card: 'Szara karta', cardOff: 'Szarość karty', balance: 'Balans bieli', spot: 'Zmierzone miejsce',
  },
  quoted: (text) => `„${text}”`,

  intents: {'dark-backdrop': 'ciemne, na ciemnym tle', even: 'wyrównane, w całym zakresie tonów'},
  payers: {aperture: 'przysłona', shutter: 'czas', iso: 'ISO'},
  clicks: {1: 'co 1 EV', 2: 'co 1/2 EV', 3: 'co 1/3 EV'},
  apertures: {marked: 'jak na obiektywie', working: 'z uwzględnieniem zbliżenia'},
  materials: {
    'black velvet': 'czarny aksamit', 'black card': 'czarny karton', 'dark gray card': 'ciemnoszary karton', 'gray card': 'szary karton', 'white card': 'biały karton',
  },
  crop: (width, height, left, top) => `${width} szerokości i ${height} wysokości, od ${left} z lewej i ${top} z góry`,

  lampNames: {key: 'główna', fill: 'wypełniająca'},
  faces: {
    rectangle: (width, height) => `powierzchnia świecąca ${width} na ${height}`, disc: (across) => `okrągła powierzchnia świecąca, średnica ${across}`,
    small: 'mała, ukierunkowana', bulb: 'goła żarówka',
  },
  flag: (width, height) => `flaga ${width} na ${height}`,
  table: (share) => `blat odbija ${share}`,
  side: {
    right: (length) => `${length} w prawo`, left: (length) => `${length} w lewo`, behind: (length) => `${length} w głąb`, before: (length) => `${length} do przodu`,
    above: (length) => `${length} w górę`, below: (length) => `${length} w dół`,
  },
  atFigure: 'na środku podstawki',
  aimed: (place) => `cel: ${place}`,
  power: (stops, more) => `o ${stops} ${more ? 'mocniej' : 'słabiej'}`,

  sensorToFocus: 'Od znacznika matrycy do płaszczyzny ostrości',
  sensorTaken: (distance, sensor) => `${distance} (przyjęto matrycę o szerokości ${sensor})`,
  lamp: (name) => `Lampa „${name}”`,
  fromAim: (distance) => `${distance} od punktu, na który jest skierowana`,

  underShare: (share) => `poniżej ${share}`,
  trusted: (trusted) => (trusted ? 'wiarygodna' : 'niewiarygodna'),
  photoTrusted: (photo, trusted) => `${photo}, ${trusted ? 'wiarygodna' : 'niewiarygodna'}`,
  asItShould: 'jak trzeba',
  cardOff: (stops, bright) => `o ${stops} za ${bright ? 'jasna' : 'ciemna'}`,
  balance: (red, blue) => `czerwony × ${red}, zielony × 1, niebieski × ${blue}`,
  level: (code) => `wartość ${code} z 255`,
  levelAsCard: (code) => `wartość ${code} z 255, tyle co szara karta`,
  levelFromCard: (code, stops, above) => `wartość ${code} z 255, o ${stops} ${above ? 'powyżej' : 'poniżej'} szarej karty`,
};
