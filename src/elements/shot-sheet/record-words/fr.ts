import type {SheetWords} from '../../../core/shot/sheet-words.js';

/** What a record says in French. */
export const record: SheetWords = {
  headings: {
    exposure: 'Exposition', camera: 'Appareil', figure: 'Figurine', picture: 'Image', light: 'Lumière et fond', also: 'Également réglé',
    setUp: 'Mise en place', measured: 'Mesuré', unused: 'Saisi, non utilisé',
  },
  labels: {
    aperture: 'Ouverture', shutter: 'Temps de pose', iso: 'ISO', note: 'Note',
    meteredAperture: 'Ouverture mesurée', meteredShutter: 'Temps mesuré', meteredIso: 'ISO mesuré', correction: 'Correction voulue, IL',
    pay: 'Compensé par', clicksPerStop: 'Crans des molettes', apertureShown: 'Ouverture affichée', meteredMagnification: 'Grandissement à la mesure',
    apertureWidest: 'Pleine ouverture', apertureSmallest: 'Ouverture minimale', shutterFastest: 'Temps le plus court', shutterSlowest: 'Temps le plus long',
    isoLowest: 'ISO de base', isoHighest: 'ISO maximal utilisé',
    focalLength: 'Focale', pupilRatio: 'Grandissement pupillaire', sensorWidth: 'Largeur du capteur', sensorHeight: 'Hauteur du capteur',
    fieldWidth: 'Largeur du champ', frameWidth: 'Largeur du cadre, px', crop: 'Recadrage', tilt: 'Inclinaison vers le bas, degrés',
    focus: 'Mise au point derrière le bord avant du socle', focalLengths: 'Objectifs disponibles', closestFocus: 'Mise au point minimale',
    room: 'Recul possible', mostFrames: 'Vues au plus',
    baseDepth: 'Profondeur du socle', overhangFront: 'Débord à l’avant', overhangFrontHeight: 'Hauteur du débord avant', overhangBack: 'Débord à l’arrière',
    overhangBackHeight: 'Hauteur du débord arrière', figureHeight: 'Hauteur de la figurine', figureWidth: 'Largeur de la figurine',
    pictureWidth: 'Largeur de l’image, px', pictureHeight: 'Hauteur de l’image, px', margin: 'Marge', blurLimit: 'Limite de flou, px',
    leastContrast: 'Contraste minimal', intent: 'Intention', unit: 'Longueurs en',
    lights: 'Lampes', backdropDistance: 'Fond derrière le milieu du socle', backdropReflectance: 'Fond', backdropWish: 'Fond sous la charte grise, IL',
  },
  measured: {
    photo: 'Photo', taken: 'Prise le', size: 'Taille, px', file: 'D’après le fichier', atBlack: 'Au noir, au moins une couleur', atWhite: 'Au blanc, au moins une couleur',
    roomBelow: 'Marge jusqu’au noir', roomAbove: 'Marge jusqu’au blanc', card: 'Charte grise', cardOff: 'Gris de la charte', balance: 'Balance des blancs', spot: 'Point mesuré',
  },
  quoted: (text) => `«\u202f${text}\u202f»`,

  intents: {'dark-backdrop': 'sombre, devant un fond sombre', even: 'équilibrée, sur tous les tons'},
  payers: {aperture: 'ouverture', shutter: 'temps de pose', iso: 'ISO'},
  clicks: {1: 'IL entiers', 2: 'demi-IL', 3: 'tiers d’IL'},
  apertures: {marked: 'comme gravée sur l’objectif', working: 'rapprochement compris'},
  materials: {
    'black velvet': 'velours noir', 'black card': 'carton noir', 'dark gray card': 'carton gris foncé', 'gray card': 'carton gris', 'white card': 'carton blanc',
  },
  crop: (width, height, left, top) => `${width} de la largeur et ${height} de la hauteur, à partir de ${left} à gauche et de ${top} en haut`,

  lampNames: {key: 'principale', fill: 'appoint'},
  faces: {
    rectangle: (width, height) => `face de ${width} sur ${height}`, disc: (across) => `face ronde de ${across} de diamètre`,
    small: 'petite et dirigée', bulb: 'ampoule nue',
  },
  flag: (width, height) => `drapeau de ${width} sur ${height}`,
  table: (share) => `le plateau renvoie ${share}`,
  side: {
    right: (length) => `${length} à droite`, left: (length) => `${length} à gauche`, behind: (length) => `${length} derrière`, before: (length) => `${length} devant`,
    above: (length) => `${length} au-dessus`, below: (length) => `${length} au-dessous`,
  },
  atFigure: 'au milieu du socle',
  aimed: (place) => `visée\u00a0: ${place}`,
  power: (stops, more) => `${stops} ${more ? 'de plus' : 'de moins'}`,

  sensorToFocus: 'Distance de mise au point, depuis le capteur',
  sensorTaken: (distance, sensor) => `${distance} (capteur supposé large de ${sensor})`,
  lamp: (name) => `Lampe «\u202f${name}\u202f»`,
  fromAim: (distance) => `à ${distance} du point visé`,

  underShare: (share) => `moins de ${share}`,
  trusted: (trusted) => (trusted ? 'fiable' : 'non fiable'),
  photoTrusted: (photo, trusted) => `${photo}, ${trusted ? 'fiable' : 'non fiable'}`,
  asItShould: 'comme il faut',
  cardOff: (stops, bright) => `${stops} trop ${bright ? 'clair' : 'sombre'}`,
  balance: (red, blue) => `rouge × ${red}, vert × 1, bleu × ${blue}`,
  level: (code) => `valeur ${code} sur 255`,
  levelAsCard: (code) => `valeur ${code} sur 255, aussi clair que la charte grise`,
  levelFromCard: (code, stops, above) => `valeur ${code} sur 255, ${stops} ${above ? 'au-dessus' : 'au-dessous'} de la charte grise`,
};
