import type {Say} from '../../shared/say.js';
import type {PlanWords} from './en.js';

export {family} from '../../shared/words/fr.js';

export const words = (say: Say): PlanWords => ({
  say,
  plan: 'Plan de prise de vue',

  sharpInOne: (setting, from, focus) => `Net d’un bout à l’autre en une vue\u00a0: ${setting}, depuis ${from}, mise au point ${focus}.`,
  sharpInOneWith: (lens, setting, from, focus) =>
    `Net d’un bout à l’autre en une vue\u00a0: ${setting}, depuis ${from} avec le ${lens}, mise au point ${focus}.`,
  sharpInFrames: (frames, setting, from) => `Net d’un bout à l’autre en ${frames}\u00a0: ${setting} chacune, depuis ${from}.`,
  sharpInFramesWith: (lens, frames, setting, from) => `Net d’un bout à l’autre en ${frames}\u00a0: ${setting} chacune, depuis ${from} avec le ${lens}.`,
  pair: (aperture, shutter) => `${aperture} à ${shutter}`,
  shown: (aperture, shown) => `${aperture} (le boîtier affiche ${shown})`,
  frames: (count, written) => say.plural(count, {one: 'une vue', other: `${written}\u00a0vues`}),
  atEdge: 'sur le bord avant du socle',
  beforeBase: (length) => `${length} devant le socle`,
  behindEdge: (length) => `${length} derrière le bord avant du socle`,
  hopeless: 'Ces souhaits ne peuvent pas être satisfaits, même en cédant beaucoup.',
  giveUpOne: (wish) => `Tous ces souhaits ne vont pas ensemble. Ce qui coûte le moins\u00a0: «\u202f${wish}\u202f».`,
  giveUpAll: 'Tous ces souhaits ne vont pas ensemble, et en lâcher un seul ne suffit pas. Ensemble, ce sont\u00a0:',
  rests: (depth, picture, blur, contrast) => `${depth} de profondeur le long de la table à tenir dans une image de ${picture}. Net veut dire\u00a0: flou d’au plus ${
    blur}\u00a0; la ligne la plus fine, de cette largeur, garde au moins ${contrast} de son contraste.`,
  nothingToSet: (which) =>
    `Pas de plan\u00a0: entre les limites ${which === 'aperture' ? 'de l’ouverture' : 'de la vitesse'} il n’y a rien à régler. Le dernier bon plan reste.`,
  noPlan: (name, value, wanted) => `Pas de plan\u00a0: «\u202f${name}\u202f» vaut ${value}, il faut ${wanted}. Le dernier bon plan reste.`,

  ways: 'Comment obtenir la netteté',
  weighs: 'Classés selon le temps, les vues à fusionner, le recul, les pixels et le changement d’objectif\u00a0; les lignes fines restent claires dans tous. '
    + 'La barre de zone nette ne s’occupe que des extrémités\u00a0: elle peut donc donner un autre réglage.',
  way: (kind, frames) => ({
    stay: 'Aussi près que le cadre le permet', 'move-back': 'Plus loin, recadré', stack: `${frames}, fusionnées`,
  })[kind],
  wayOf: (way, lens) => `${way} (objectif ${lens})`,
  from: (setting, distance) => `${setting}, depuis ${distance}`,
  each: (setting, distance) => `${setting} chacune, depuis ${distance}`,
  set: 'réglé',
  pick: 'régler',
  further: 'Autres solutions',
  fewer: 'Les meilleures seulement',
  done: (what) => `Fait\u00a0: ${what}.`,
  undo: 'Annuler',

  price: (parts) => `Prix\u00a0: ${parts}`,
  parting: '\u00a0; ',
  smaller: (clicks, written) => say.plural(clicks, {one: 'diaphragme fermé de 1 cran', other: `diaphragme fermé de ${written} crans`}),
  larger: (clicks, written) => say.plural(clicks, {one: 'diaphragme ouvert de 1 cran', other: `diaphragme ouvert de ${written} crans`}),
  stackTime: (seconds, frames, shutter, settle) => `${seconds} (${frames} × ${shutter}, et ${settle} pour déplacer et laisser s’immobiliser entre les vues)`,
  back: (length) => `${length} de recul`,
  pixels: (pixels) => `${pixels} de largeur perdus au recadrage`,
  moreFrames: (count, written) => say.plural(count, {one: 'une vue de plus à fusionner', other: `${written} vues de plus à fusionner`}),
  otherLens: 'un changement d’objectif',

  giveUp: 'Ce qui peut céder',
  single: 'Ce que demanderait une seule vue',
  singleAny: 'Un seul de ces points suffit, et rien n’est à fusionner\u00a0:',
  singleAll: 'Tous ces points ensemble, et rien n’est à fusionner\u00a0:',
  allTogether: 'Céder sur tout cela',
  wish: (wish, to) => ({
    frames: `Prendre jusqu’à ${to}`, 'picture-width': `La montrer sur ${to} de large`, 'blur-limit': `Accepter ${to} de flou`,
    contrast: `Ne laisser à la ligne la plus fine que ${to} de son contraste`, shutter: `Poser jusqu’à ${to}`,
    room: `Faire de la place pour ${to}`, margin: `Ne laisser que ${to} de marge`,
  })[wish],
  noMargin: 'Ne laisser aucune marge',
  now: (value, most) => (most ? `au plus ${value} pour l’instant` : `${value} pour l’instant`),

  drawing: 'Vue de côté\u00a0: figurine, appareil et champ',
  noPlace: 'aucune place trouvée',
  mark: 'repère du capteur à la netteté',
  camera: (distance, tilt) => `${distance}, ${tilt}`,
  tilt: (way, degrees) => (way === 'level' ? 'à l’horizontale' : `${degrees}° vers le ${way === 'down' ? 'bas' : 'haut'}`),
  focusAt: (length) => `netteté à ${length}`,
  focusPlanes: (count) => `${count} plans de netteté`,
  drawn: (way, unit) =>
    `À l’échelle\u00a0: «\u202f${way}\u202f». La règle compte les ${unit} le long de la table depuis le bord avant du socle\u00a0; sa partie épaisse est nette.`,
  broken: 'À la coupure, une partie est omise\u00a0: l’appareil est plus loin.',
  inches: 'pouces',
  grips: {
    'overhang-front': 'Pointe la plus avancée', 'overhang-back': 'Pointe la plus reculée', top: 'Haut de la figurine', 'base-front': 'Bord avant du socle',
    'base-back': 'Bord arrière du socle', tilt: 'Appareil, plongée',
  },
  noOverhang: 'ne dépasse pas du socle\u00a0; gauche et droite la tirent dehors',
  overhang: (length, front, height) => `dépasse le bord ${front ? 'avant' : 'arrière'} de ${length}, à ${height} de haut`,
  aboveTable: (length) => `${length} au-dessus de la table`,
  deep: (length) => `socle profond de ${length}`,
  free: {both: 'Gauche et droite pour la portée, haut et bas pour la hauteur', up: 'Haut et bas', along: 'Gauche et droite'},
  gripTitle: (name, value, hint) => `${name}\u00a0: ${value}. ${hint}.`,

  compare: 'Côte à côte',
  curve: 'Lignes fines à chaque ouverture',
  rates: 'Ce qui compte, et combien',
  figure: 'La figurine en chiffres',
  cameraAndLens: 'Appareil, objectif et limites',
  sharp: 'Ce qui compte comme net, vues, unité',

  focalLengths: 'Focales',
  focalLengthsHint: 'disponibles, la montée en premier',
  room: 'Place du trépied',
  roomHint: 'du repère du capteur (⌀ sur le boîtier) à la netteté, au plus',
  metered: 'Ouverture mesurée',
  meteredWorking: 'Mesurée, telle qu’affichée',
  meteredShutter: 'Vitesse mesurée',
  pictureWidth: 'Largeur d’image, px',
  pictureHeight: 'Hauteur d’image, px',
  margin: 'Marge',
  marginHint: 'de la largeur, de tous côtés',
});
