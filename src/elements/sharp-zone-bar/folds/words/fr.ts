import type {Say} from '../../../shared/say.js';
import {sensor} from '../../../shared/sensor/words/fr.js';
import type {FoldWords} from './en.js';

export {family} from '../../../shared/words/fr.js';

export const words = (say: Say): FoldWords => ({
  say,
  ...sensor,

  overhangFront: 'Au-delà du bord avant',
  overhangFrontHeight: '… à une hauteur de',
  overhangBack: 'Au-delà du bord arrière',
  overhangBackHeight: '… à une hauteur de',
  figureHeight: 'Hauteur au-dessus de la table',
  tilt: 'Plongée de l’appareil',
  distance: 'Distance de mise au point',
  distanceHint: 'depuis le ⌀ du boîtier, où se trouve le capteur ; règle la largeur du champ',
  room: 'Recul possible',
  roomHint: 'distance maximale au plan de mise au point',
  apertureWidest: 'Pleine ouverture',
  apertureSmallest: 'Ouverture minimale',
  apertureShown: 'Le boîtier affiche l’ouverture',
  marked: 'telle que gravée',
  working: 'rapprochement compris',
  pupilRatio: 'Rapport des pupilles de l’objectif',
  pupilRatioHint: 'taille apparente de son ouverture vue de derrière, divisée par celle vue de devant ; 1 si inconnu',
  pictureWidth: 'Largeur finale, pixels',
  frameWidth: 'Largeur du cadre, pixels',
  blurLimit: 'Limite de flou, px finaux',
  unit: 'Longueurs en',
  inches: 'pouces',
  kept: (width, pixels) => `Le recadrage garde ${width} de la largeur du capteur, ${pixels}.`,

  detail: 'Trait le plus fin',
  detailHint: '1 px, ou 0,2 mm sur la figurine',
  lost: 'plus rien',
  lostAt: 'perdu',
  contrastCaption: 'contraste du trait le plus fin',
  tooFine: (width) => `Un trait de ${width} est trop fin pour cette ouverture : il ne reste rien de son contraste, même au point.`,
  keeps: (width, inFocus, front, frontKeeps, back, backKeeps) =>
    `Un trait de ${width} garde ${inFocus} de son contraste au point, ${frontKeeps} ${front}, ${backKeeps} ${back}.`,
  none: 'rien',

  frames: (aperture, count, places) => say.plural(count, {
    one: `À ${aperture}, une vue suffit, mise au point derrière le bord avant du socle à : ${places}.`,
    other: `À ${aperture}, ${count} vues suffisent, chaque zone nette recouvrant la suivante d’un quart ou plus. `
      + `Mise au point derrière le bord avant du socle, depuis l’avant : ${places}.`,
  }),
  tooManyAt: (aperture) => `À ${aperture}, il faudrait un nombre de vues déraisonnable.`,
  tooMany: 'Quelle que soit l’ouverture, il faudrait un nombre de vues déraisonnable.',
  bestNow: 'D’ici, aucune ouverture ne convient mieux aux traits fins.',
  best: (aperture, count) => say.plural(count, {
    one: `Le mieux pour les traits fins d’ici : une vue à ${aperture}.`,
    other: `Le mieux pour les traits fins d’ici : ${count} vues à ${aperture}. Un plan de prise de vue compte aussi le travail de chaque vue et peut en demander moins.`,
  }),
  stackTakes: (seconds, time, contrast) =>
    `Avec ${seconds} entre les vues, environ ${time} en tout ; là où il est le plus faible, le trait le plus fin garde ${contrast} de son contraste.`,
  setStack: (aperture, shutter) => `Régler ${aperture} et ${shutter} pour cela`,

  back: 'Reculer l’appareil de',
  slide: 'Faire glisser pour voir ce que vaut un pas en arrière : l’image est recadrée sur ce qu’elle montre maintenant.',
  worth: (stops, now, then) => `Vaut ${stops} de profondeur de champ : la zone nette passe de ${now} à ${then}, à la même ouverture.`,
  worthWithoutEnd: (stops) => `Vaut ${stops} de profondeur de champ : la zone nette ne finit plus derrière, à la même ouverture.`,
  costs: (share, left, needed) => `Coûte ${share} des pixels en largeur : il en reste ${left}, il en faut ${needed}.`,
  reach: (length) => `Les pixels permettent de reculer de ${length}.`,
  noReach: 'Il n’y a pas de pixels en réserve.',
  roomReach: (length) => `La place permet de reculer l’appareil de ${length}.`,
  noRoom: 'Il n’y a plus de place pour reculer l’appareil.',
  goBack: (length) => `Reculer de ${length} et recadrer`,
  goBackNowhere: 'Reculer et recadrer',

  rulerHow: 'Faire glisser les deux points sur deux graduations. Toutes deux doivent être au point, à la même distance de '
    + 'l’appareil, sur une règle posée en travers '
    + 'de la vue : le long d’une règle qui s’éloigne de l’appareil, l’échelle change, et deux points ne disent pas comment.',
  photoLinked: 'Aucune photo n’est encore ouverte. En ouvrir une dans le diagramme des tons de cette page : il est relié à cette barre, et la photo apparaît alors ici.',
  photoAlone: 'Dès qu’un diagramme des tons de cette page est relié à cette barre, la photo qui y est ouverte apparaît ici.',
  photo: 'Photo avec deux points',
  points: ['Premier point', 'Second point'],
  at: (x, y) => `${x} pixels depuis la gauche, ${y} depuis le haut`,
  cropped: 'Cette photo n’a pas la forme du capteur. Si elle a été recadrée, le champ calculé est trop étroit : utiliser la '
    + 'photo telle qu’elle est sortie de l’appareil.',
  apart: 'Longueur entre les points',
  apartHint: 'lue sur la règle',
  together: 'Les deux points se confondent. En écarter un.',
  takesIn: (field, magnification) => `Le cadre embrasse ${field} en largeur : un grandissement de ${magnification}.`,
  isSet: 'C’est ce qui est réglé.',
  setNow: (field, off, less) => `Réglé maintenant : ${field}, ${off} ${less ? 'de moins' : 'de plus'}.`,
  useField: (field) => `Régler la largeur du champ sur ${field}`,

  ownHow: 'Photographier avec les réglages ci-dessus une règle à plat qui s’éloigne de l’appareil en passant à côté du bord avant du socle. '
    + 'Regarder la photo à la taille finale et relever ce qui paraît encore net.',
  zero: 'Graduation au bord avant',
  nearest: 'La plus proche encore nette',
  farthest: 'La plus lointaine encore nette',
  farthestWanted: 'une graduation au-delà de la plus proche',
  ownLimit: (limit) => `La limite personnelle est de ${limit}.`,
  focusWas: (place) => `Le point était ${place}, là où il devait être.`,
  focusWasOff: (place, off, behind) => `Le point était ${place}, ${off} ${behind ? 'derrière' : 'devant'} l’endroit voulu.`,
  useOwn: 'Utiliser désormais cette limite et cette mise au point',
});
