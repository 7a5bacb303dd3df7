import type {SheetWords} from '../../../core/shot/sheet-words.js';

/** What a record says in Spanish. */
export const record: SheetWords = {
  headings: {
    exposure: 'Exposición', camera: 'Cámara', figure: 'Figura', picture: 'Imagen', light: 'Luz y fondo', also: 'También ajustado',
    setUp: 'Montaje', measured: 'Medido', unused: 'Escrito, sin usar',
  },
  labels: {
    aperture: 'Diafragma', shutter: 'Velocidad', iso: 'ISO', note: 'Nota',
    meteredAperture: 'Diafragma medido', meteredShutter: 'Velocidad medida', meteredIso: 'ISO medido', correction: 'Corrección pedida, pasos',
    pay: 'Lo compensa', clicksPerStop: 'Clics de los diales', apertureShown: 'Diafragma indicado', meteredMagnification: 'Ampliación al medir',
    apertureWidest: 'Apertura máxima', apertureSmallest: 'Apertura mínima', shutterFastest: 'Tiempo más corto', shutterSlowest: 'Tiempo más largo',
    isoLowest: 'ISO base', isoHighest: 'ISO más alto usado',
    focalLength: 'Distancia focal', pupilRatio: 'Aumento pupilar', sensorWidth: 'Ancho del sensor', sensorHeight: 'Alto del sensor',
    fieldWidth: 'Anchura del campo', frameWidth: 'Ancho del encuadre, px', crop: 'Encuadre final', tilt: 'Inclinación hacia abajo, grados',
    focus: 'Enfoque tras el borde delantero de la peana', focalLengths: 'Objetivos disponibles', closestFocus: 'Enfoque mínimo',
    room: 'Sitio para la cámara', mostFrames: 'Tomas como mucho',
    baseDepth: 'Fondo de la peana', overhangFront: 'Saliente delantero', overhangFrontHeight: 'Altura del saliente delantero', overhangBack: 'Saliente trasero',
    overhangBackHeight: 'Altura del saliente trasero', figureHeight: 'Alto de la figura', figureWidth: 'Ancho de la figura',
    pictureWidth: 'Ancho de la imagen, px', pictureHeight: 'Alto de la imagen, px', margin: 'Margen', blurLimit: 'Límite de desenfoque, px',
    leastContrast: 'Contraste mínimo', intent: 'Intención', unit: 'Longitudes en',
    lights: 'Lámparas', backdropDistance: 'Fondo tras el centro de la peana', backdropReflectance: 'Fondo', backdropWish: 'Fondo bajo la carta gris, pasos',
  },
  measured: {
    photo: 'Foto', taken: 'Tomada', size: 'Tamaño, px', file: 'Según el archivo', atBlack: 'En negro, algún color', atWhite: 'En blanco, algún color',
    roomBelow: 'Margen hasta el negro', roomAbove: 'Margen hasta el blanco', card: 'Carta gris', cardOff: 'Gris de la carta', balance: 'Balance de blancos', spot: 'Punto medido',
  },
  quoted: (text) => `«${text}»`,

  intents: {'dark-backdrop': 'oscura, ante un fondo oscuro', even: 'equilibrada, en toda la gama de tonos'},
  payers: {aperture: 'el diafragma', shutter: 'la velocidad', iso: 'el ISO'},
  clicks: {1: 'pasos enteros', 2: 'medios pasos', 3: 'tercios de paso'},
  apertures: {marked: 'como está grabado en el objetivo', working: 'con la distancia corta incluida'},
  materials: {
    'black velvet': 'terciopelo negro', 'black card': 'cartulina negra', 'dark gray card': 'cartulina gris oscura', 'gray card': 'cartulina gris', 'white card': 'cartulina blanca',
  },
  crop: (width, height, left, top) => `${width} del ancho y ${height} del alto, desde ${left} por la izquierda y ${top} por arriba`,

  lampNames: {key: 'principal', fill: 'relleno'},
  faces: {
    rectangle: (width, height) => `cara de ${width} por ${height}`, disc: (across) => `cara redonda de ${across} de diámetro`,
    small: 'pequeña y dirigida', bulb: 'bombilla desnuda',
  },
  flag: (width, height) => `bandera de ${width} por ${height}`,
  table: (share) => `el tablero devuelve ${share}`,
  side: {
    right: (length) => `${length} a la derecha`, left: (length) => `${length} a la izquierda`, behind: (length) => `${length} detrás`, before: (length) => `${length} delante`,
    above: (length) => `${length} arriba`, below: (length) => `${length} abajo`,
  },
  atFigure: 'en el centro de la peana',
  aimed: (place) => `apunta a: ${place}`,
  power: (stops, more) => `${stops} ${more ? 'más' : 'menos'}`,

  sensorToFocus: 'Distancia de enfoque, desde el sensor',
  sensorTaken: (distance, sensor) => `${distance} (se supone un sensor de ${sensor} de ancho)`,
  lamp: (name) => `Lámpara «${name}»`,
  fromAim: (distance) => `a ${distance} de donde apunta`,

  underShare: (share) => `menos de ${share}`,
  trusted: (trusted) => (trusted ? 'fiable' : 'no fiable'),
  photoTrusted: (photo, trusted) => `${photo}, ${trusted ? 'fiable' : 'no fiable'}`,
  asItShould: 'como debe ser',
  cardOff: (stops, bright) => `${stops} demasiado ${bright ? 'claro' : 'oscuro'}`,
  balance: (red, blue) => `rojo × ${red}, verde × 1, azul × ${blue}`,
  level: (code) => `nivel ${code} de 255`,
  levelAsCard: (code) => `nivel ${code} de 255, tan claro como la carta gris`,
  levelFromCard: (code, stops, above) => `nivel ${code} de 255, ${stops} por ${above ? 'encima' : 'debajo'} de la carta gris`,
};
