import type {Say} from '../../../shared/say.js';
import type {SharpnessWords} from './en.js';

export {family} from '../../../shared/words/fr.js';

export const words = (say: Say): SharpnessWords => ({
  say,
  looking: 'Recherche…',
  lookingSoFar: (percent) => `Recherche… ${percent}`,

  onWay: (fraction) => `vers ${fraction} du trajet de A à B`,
  stretch: (from, to) => `de ${from} à ${to}`,
  at: (place) => `à ${place}`,

  sharp: (pieces) => `Sur le trajet de A à B, la photo est nette ${pieces}.`,
  sharpOnRuler: (pieces) => `Net ${pieces} sur la règle.`,
  sharpAll: 'Aussi net de A à B qu’à l’endroit le plus net.',
  nothingKnown: 'Le long de cette ligne, rien ne permet de juger la netteté : une surface unie, ou un flou si large qu’aucun détail ne reste. C’est inconnu, pas flou.',
  noFocus: 'Le plan de mise au point ne peut être situé sur cette ligne : il faut voir le flou croître de part et d’autre.',
  focusAt: (place) => `Le plan de mise au point est ${place}.`,
  focusOnRuler: (place, give) => `Le plan de mise au point est à ${place} sur la règle, à ${give} près.`,
  focusFromFront: (place, distance, before, give) =>
    `Le plan de mise au point est à ${place} sur la règle, ${distance} ${before ? 'devant' : 'derrière'} le bord avant du socle, à ${give} près.`,
  oneShot: 'Tiré d’une seule photo. Un détail qui s’affine le long de la ligne le déplace un peu ; une seconde photo à une autre ouverture y remédie.',
  bothShots: 'Tiré des deux photos : la finesse des détails n’y joue donc pas.',

  thisShot: 'cette photo',
  earlierShot: 'la précédente',
  noGain: (shot, other) => `Aucun gain : ${shot} donne autant de netteté que ${other} partout où les deux peuvent être jugées.`,
  noDetail: 'Il n’y a pas, le long de cette ligne, de détail par lequel juger les deux photos.',
  notWorth: (shot, other, part, pixels) =>
    `Inutile : ${shot} ne donne nulle part plus de netteté que ${other}, et en donne moins sur ${part} de la ligne, jusqu’à ${pixels}.`,
  worth: (shot, other, part, pixels, place) =>
    `Cela vaut la peine : ${shot} donne plus de netteté que ${other} sur ${part} de la ligne, surtout ${place}, avec ${pixels} de flou en moins.`,
  butSofter: (part, pixels) => `La photo est plus molle sur ${part} de la ligne, jusqu’à ${pixels}.`,
  restAlike: 'Ailleurs, aucune différence.',
  restMixed: 'Ailleurs, aucune différence, ou rien à juger.',
  restUnknown: 'Le reste ne peut être jugé.',
  diffractionOver: (aperture, disc, limit) =>
    `À ${aperture}, la petite ouverture étale à elle seule chaque point sur ${disc} (diffraction), plus que les ${limit} qui paraissent encore nets. Fermer davantage ne rend rien plus net dans le plan de mise au point.`,
  diffractionWithin: (aperture, disc, limit) =>
    `À ${aperture}, la petite ouverture étale chaque point sur ${disc} (diffraction), dans la limite des ${limit} qui paraissent nets.`,
  otherSize: 'La photo précédente a d’autres pixels ou montre un autre décor : sa netteté ne peut pas être comparée à celle de cette photo.',

  line: {a: 'Ligne, bout A', b: 'Ligne, bout B'},
  endAt: (left, top) => `à ${left} de la gauche, à ${top} du haut`,
  keys: 'Les flèches déplacent un bout de la ligne, avec Maj par petits pas.',
  lay: 'Poser la ligne',
  frontToBack: 'D’avant en arrière, à côté du socle',
  across: 'D’un côté à l’autre',
  ruler: 'Avec une règle le long de la ligne',
  rulerAt: {atA: 'Règle en A', atMiddle: 'Règle au + du milieu', atB: 'Règle en B', atFront: 'Bord avant du socle'},
  layOnRuler: 'La ligne doit suivre une règle posée d’avant en arrière à côté du socle\u00a0: y amener A et B. Avec ce que la règle indique en A et en B, la réponse est donnée en longueurs.',
  middleHint: 'au loin tout paraît plus petit : ceci en tient compte',
  reckoned: 'De combien le lointain paraît plus petit est calculé d’après la focale et la largeur du champ. En lisant la règle au + du milieu de la ligne, on le mesure.',
  wrongMiddle: 'La lecture au + doit se trouver entre celles des deux bouts.',
  setFocus: (distance, before) => `Mise au point ${distance} ${before ? 'devant' : 'derrière'} le bord avant`,
  setFocusFrom: (now) => `Elle est réglée à ${now}. Prendre ce que montre cette photo.`,
  focusDone: (distance, before) => `Fait : la mise au point est réglée ${distance} ${before ? 'devant' : 'derrière'} le bord avant.`,
  undo: 'Annuler',

  softerUp: 'plus mou',
  curve: (least, most, unknown) => `Flou le long de la ligne de A à B : ${least} au plus net, ${most} au plus mou ; ${unknown} inconnu.`,
  curveNote: (limit, upTo) =>
    `Flou en pixels de l’image finale. Même le détail le plus net a sa propre largeur : un endroit passe pour net jusqu’à ${upTo}, soit le plus net de la ligne et ${limit} de flou. Hachuré : rien à juger.`,

  heat: 'Montrer sur la photo',
  heatSharp: 'Cette photo',
  heatChange: 'Face à la précédente',
  legendNote: 'Jugé d’après le dixième le plus net du cadre. Un détail large paraît plus mou qu’un détail fin tout aussi net : comparer ce qui se ressemble, ou deux photos.',
  heatNames: {sharp: 'parmi les plus nets', near: 'plus mou', soft: 'mou', unknown: 'inconnu : aucun détail'},
  changeNames: {sharper: 'maintenant plus net', softer: 'maintenant plus mou', alike: 'sans changement', unknown: 'inconnu : aucun détail'},
});
