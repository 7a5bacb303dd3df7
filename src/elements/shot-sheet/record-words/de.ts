import type {SheetWords} from '../../../core/shot/sheet-words.js';

/** What a record says in German. */
export const record: SheetWords = {
  headings: {
    exposure: 'Belichtung', camera: 'Kamera', figure: 'Figur', picture: 'Bild', light: 'Licht und Hintergrund', also: 'Außerdem eingestellt',
    setUp: 'Aufbau', measured: 'Gemessen', unused: 'Eingetippt, nicht in Gebrauch',
  },
  labels: {
    aperture: 'Blende', shutter: 'Belichtungszeit', iso: 'ISO', note: 'Notiz',
    meteredAperture: 'Gemessene Blende', meteredShutter: 'Gemessene Zeit', meteredIso: 'Gemessener ISO-Wert', correction: 'Gewünschte Korrektur, Blendenstufen',
    pay: 'Ausgleich durch', clicksPerStop: 'Schrittweite der Räder', apertureShown: 'Angezeigte Blende', meteredMagnification: 'Abbildungsmaßstab beim Messen',
    apertureWidest: 'Offenblende', apertureSmallest: 'Kleinste Blende', shutterFastest: 'Kürzeste Zeit', shutterSlowest: 'Längste Zeit',
    isoLowest: 'Basis-ISO', isoHighest: 'Höchster genutzter ISO-Wert',
    focalLength: 'Brennweite', pupilRatio: 'Pupillenmaßstab', sensorWidth: 'Sensorbreite', sensorHeight: 'Sensorhöhe',
    fieldWidth: 'Bildfeldbreite', frameWidth: 'Aufnahmebreite, px', crop: 'Ausschnitt', tilt: 'Neigung nach unten, Grad',
    focus: 'Fokus hinter der Vorderkante des Sockels', focalLengths: 'Vorhandene Objektive', closestFocus: 'Naheinstellgrenze',
    room: 'Platz für die Kamera', mostFrames: 'Höchstzahl der Aufnahmen',
    baseDepth: 'Sockeltiefe', overhangFront: 'Überhang vorn', overhangFrontHeight: 'Höhe des Überhangs vorn', overhangBack: 'Überhang hinten',
    overhangBackHeight: 'Höhe des Überhangs hinten', figureHeight: 'Höhe der Figur', figureWidth: 'Breite der Figur',
    pictureWidth: 'Bildbreite, px', pictureHeight: 'Bildhöhe, px', margin: 'Rand', blurLimit: 'Unschärfegrenze, px',
    leastContrast: 'Mindestkontrast', intent: 'Gedacht als', unit: 'Längen in',
    lights: 'Lampen', backdropDistance: 'Hintergrund hinter der Sockelmitte', backdropReflectance: 'Hintergrund',
    backdropWish: 'Hintergrund unter der Graukarte, Blendenstufen',
  },
  measured: {
    photo: 'Foto', taken: 'Aufgenommen', size: 'Größe, px', file: 'Laut Datei', atBlack: 'Bei Schwarz, irgendeine Farbe', atWhite: 'Bei Weiß, irgendeine Farbe',
    roomBelow: 'Spielraum bis Schwarz', roomAbove: 'Spielraum bis Weiß', card: 'Graukarte', cardOff: 'Grau der Karte', balance: 'Weißabgleich', spot: 'Gemessene Stelle',
  },
  quoted: (text) => `„${text}“`,

  intents: {'dark-backdrop': 'dunkel, vor dunklem Hintergrund', even: 'ausgewogen, über alle Tonwerte'},
  payers: {aperture: 'Blende', shutter: 'Belichtungszeit', iso: 'ISO'},
  clicks: {1: 'ganze Stufen', 2: 'halbe Stufen', 3: 'Drittelstufen'},
  apertures: {marked: 'wie auf dem Objektiv', working: 'Nahbereich eingerechnet'},
  materials: {
    'black velvet': 'schwarzer Samt', 'black card': 'schwarzer Karton', 'dark gray card': 'dunkelgrauer Karton', 'gray card': 'grauer Karton', 'white card': 'weißer Karton',
  },
  crop: (width, height, left, top) => `${width} der Breite und ${height} der Höhe, ab ${left} von links und ${top} von oben`,

  lampNames: {key: 'Hauptlicht', fill: 'Aufhellung'},
  faces: {
    rectangle: (width, height) => `Leuchtfläche ${width} mal ${height}`, disc: (across) => `runde Leuchtfläche, ${across} Durchmesser`,
    small: 'klein und gerichtet', bulb: 'nackte Glühbirne',
  },
  flag: (width, height) => `Abschatter ${width} mal ${height}`,
  table: (share) => `Tischplatte wirft ${share} zurück`,
  side: {
    right: (length) => `${length} rechts`, left: (length) => `${length} links`, behind: (length) => `${length} dahinter`, before: (length) => `${length} davor`,
    above: (length) => `${length} hoch`, below: (length) => `${length} unterhalb`,
  },
  atFigure: 'in der Sockelmitte',
  aimed: (place) => `gerichtet auf: ${place}`,
  power: (stops, more) => `${stops} ${more ? 'stärker' : 'schwächer'}`,

  sensorToFocus: 'Sensormarke bis Schärfeebene',
  sensorTaken: (distance, sensor) => `${distance} (Sensor mit ${sensor} Breite angenommen)`,
  lamp: (name) => `Lampe „${name}“`,
  fromAim: (distance) => `${distance} von ihrem Ziel`,

  underShare: (share) => `unter ${share}`,
  trusted: (trusted) => (trusted ? 'verlässlich' : 'nicht verlässlich'),
  photoTrusted: (photo, trusted) => `${photo}, ${trusted ? 'verlässlich' : 'nicht verlässlich'}`,
  asItShould: 'wie es sein soll',
  cardOff: (stops, bright) => `${stops} zu ${bright ? 'hell' : 'dunkel'}`,
  balance: (red, blue) => `Rot × ${red}, Grün × 1, Blau × ${blue}`,
  level: (code) => `Tonwert ${code} von 255`,
  levelAsCard: (code) => `Tonwert ${code} von 255, so hell wie die Graukarte`,
  levelFromCard: (code, stops, above) => `Tonwert ${code} von 255, ${stops} ${above ? 'über' : 'unter'} der Graukarte`,
};
