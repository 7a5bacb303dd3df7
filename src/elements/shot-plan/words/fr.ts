import type {Say} from '../../shared/say.js';
import type {PlanWords} from './en.js';

export {family} from '../../shared/words/fr.js';

export const words = (say: Say): PlanWords => ({
  say,
  plan: 'Plan de prise de vue',

  sharpInOne: (sharp, setting, from, focus) => `${sharp ? 'Net' : 'Au point'} d’un bout à l’autre en une vue\u00a0: ${setting}, à ${from} de distance, mise au point ${focus}.`,
  sharpInOneWith: (sharp, lens, setting, from, focus) =>
    `${sharp ? 'Net' : 'Au point'} d’un bout à l’autre en une vue\u00a0: ${setting}, à ${from} de distance avec le ${lens}, mise au point ${focus}.`,
  sharpInFrames: (sharp, frames, setting, from) => `${sharp ? 'Net' : 'Au point'} d’un bout à l’autre en ${frames}\u00a0: ${setting} chacune, à ${from} de distance.`,
  sharpInFramesWith: (sharp, lens, frames, setting, from) =>
    `${sharp ? 'Net' : 'Au point'} d’un bout à l’autre en ${frames}\u00a0: ${setting} chacune, à ${from} de distance avec le ${lens}.`,
  softened: (little, point, limit) => `La diffraction ramollit tout${little ? ' un peu' : ''}\u00a0: un point s’étale sur ${point}, la limite est de ${limit}.`,
  pair: (aperture, shutter) => `${aperture} à ${shutter}`,
  shown: (aperture, shown) => `${aperture} (le boîtier affiche ${shown})`,
  frames: (count, written) => say.plural(count, {one: 'une vue', other: `${written}\u00a0vues`}),
  atEdge: 'sur le bord avant du socle',
  beforeBase: (length) => `${length} devant le socle`,
  behindEdge: (length) => `${length} derrière le bord avant du socle`,
  hopeless: 'Ces souhaits ne peuvent pas être satisfaits, quoi que l’on cède.',
  giveUpOne: (wish) => `Ces souhaits ne peuvent pas tous être satisfaits à la fois. La moindre concession\u00a0: «\u202f${wish}\u202f».`,
  giveUpAll: 'Ces souhaits ne peuvent pas tous être satisfaits, et céder sur un seul ne suffit pas. Ensemble, ces concessions suffisent\u00a0:',
  rests: (depth, picture, blur, contrast) => `${depth} de profondeur le long de la table à tenir dans une image de ${picture}. Net veut dire\u00a0: flou d’au plus ${
    blur}\u202f; le trait le plus fin, de cette largeur, garde au moins ${contrast} de son contraste.`,
  nothingToSet: (which) =>
    `Pas de plan\u00a0: entre les limites ${which === 'aperture' ? 'de l’ouverture' : 'de la vitesse'} il n’y a rien à régler. Le dernier bon plan reste.`,
  noPlan: (name, value, wanted) => `Pas de plan\u00a0: «\u202f${name}\u202f» vaut ${value}, il faut ${wanted}. Le dernier bon plan reste.`,

  ways: 'Solutions pour obtenir la netteté',
  weighs: (contrast) => `Classées selon le temps, les vues à fusionner, le recul, les pixels et le changement d’objectif\u202f; dans toutes, le trait le plus fin garde au moins ${
    contrast} de son contraste. La barre de zone nette ne s’occupe que des extrémités\u00a0: elle peut donc donner un autre réglage.`,
  way: (kind, frames) => ({
    stay: 'Aussi près que le cadre le permet', 'move-back': 'Plus loin, recadré', stack: `${frames}, fusionnées`,
  })[kind],
  wayOf: (way, lens) => `${way} (objectif ${lens})`,
  from: (setting, distance) => `${setting}, à ${distance} de distance`,
  each: (setting, distance) => `${setting} chacune, à ${distance} de distance`,
  set: 'réglé',
  pick: 'régler',
  further: 'Autres solutions',
  fewer: 'Les meilleures seulement',
  done: (what) => `Fait\u00a0: ${what}.`,
  undo: 'Annuler',

  price: (parts) => `Prix\u00a0: ${parts}`,
  parting: '\u202f; ',
  smaller: (clicks, written) => say.plural(clicks, {one: 'diaphragme fermé de 1 cran', other: `diaphragme fermé de ${written} crans`}),
  larger: (clicks, written) => say.plural(clicks, {one: 'diaphragme ouvert de 1 cran', other: `diaphragme ouvert de ${written} crans`}),
  stackTime: (seconds, frames, shutter, settle) => `${seconds} (${frames} × ${shutter}, et ${settle} de déplacement et de stabilisation entre les vues)`,
  back: (length, now) => `${length} plus en arrière ${now ? 'que maintenant' : 'que l’endroit le plus proche'}`,
  pixels: (pixels) => `${pixels} de largeur perdus au recadrage`,
  moreFrames: (count, written) => say.plural(count, {one: 'une vue de plus à fusionner', other: `${written} vues de plus à fusionner`}),
  otherLens: 'un changement d’objectif',

  giveUp: 'Ce qui peut céder',
  single: 'Ce que demanderait une seule vue',
  singleAny: 'Une seule de ces concessions suffit, et il n’y a rien à fusionner\u00a0:',
  singleAll: 'Toutes ces concessions ensemble, et il n’y a rien à fusionner\u00a0:',
  allTogether: 'Céder sur tout cela',
  wish: (wish, to) => ({
    frames: `Prendre jusqu’à ${to}`, 'picture-width': `La montrer sur ${to} de large`, 'blur-limit': `Accepter ${to} de flou`,
    contrast: `Ne laisser au trait le plus fin que ${to} de son contraste`, shutter: `Poser jusqu’à ${to}`,
    room: `Trouver ${to} de recul`, margin: `Ne laisser que ${to} de marge`,
  })[wish],
  noMargin: 'Ne laisser aucune marge',
  now: (value, most) => (most ? `au plus ${value} pour l’instant` : `${value} pour l’instant`),

  drawing: 'Vue de côté\u00a0: figurine, appareil et champ',
  noPlace: 'aucun emplacement trouvé',
  mark: 'distance de mise au point',
  camera: (distance, tilt) => `${distance}, ${tilt}`,
  tilt: (way, degrees) => (way === 'level' ? 'à l’horizontale' : `${degrees}° vers le ${way === 'down' ? 'bas' : 'haut'}`),
  focusAt: (length) => `mise au point à ${length}`,
  focusPlanes: (count) => `${count} plans de mise au point`,
  drawn: (way, unit) =>
    `À l’échelle\u00a0: «\u202f${way}\u202f». La règle compte les ${unit} le long de la table depuis le bord avant du socle\u202f; sa partie épaisse est nette.`,
  broken: 'À la coupure, une partie est omise\u00a0: l’appareil est plus loin.',
  inches: 'pouces',
  grips: {
    'overhang-front': 'Pointe la plus avancée', 'overhang-back': 'Pointe la plus reculée', top: 'Haut de la figurine', 'base-front': 'Bord avant du socle',
    'base-back': 'Bord arrière du socle', tilt: 'Appareil, plongée',
  },
  noOverhang: 'ne dépasse pas du socle\u202f; les flèches gauche et droite l’en font sortir',
  overhang: (length, front, height) => `dépasse le bord ${front ? 'avant' : 'arrière'} de ${length}, à ${height} de haut`,
  aboveTable: (length) => `${length} au-dessus de la table`,
  deep: (length) => `socle profond de ${length}`,
  free: {both: 'Gauche et droite pour le débord, haut et bas pour la hauteur', up: 'Haut et bas', along: 'Gauche et droite'},
  gripTitle: (name, value, hint) => `${name}\u00a0: ${value}. ${hint}.`,

  compare: 'Côte à côte',
  curve: 'Traits fins à chaque ouverture',
  rates: 'Ce qui compte, et combien',
  figure: 'La figurine en chiffres',
  cameraAndLens: 'Appareil, objectif et limites',
  sharp: 'Ce qui compte comme net, vues, unité',

  focalLengths: 'Focales',
  focalLengthsHint: 'disponibles, celle de l’objectif monté en premier',
  room: 'Recul possible',
  roomHint: 'du repère du capteur (⌀ sur le boîtier) au plan de mise au point, au plus',
  metered: 'Ouverture mesurée',
  meteredWorking: 'Mesurée, telle qu’affichée',
  meteredShutter: 'Vitesse mesurée',
  pictureWidth: 'Largeur d’image, px',
  pictureHeight: 'Hauteur d’image, px',
  margin: 'Marge',
  marginHint: 'de la largeur, de tous côtés',
});
