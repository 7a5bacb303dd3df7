import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {DialWords} from './en.js';

export {family} from '../../shared/words/fr.js';

const LIMITS = 'Limites de l’objectif et du boîtier';

export const words = (say: Say): DialWords => ({
  say,
  dial: 'Cadran d’échange ouverture-vitesse',
  hand: 'Ouverture et vitesse, même lumière',
  pair: (aperture, shutter) => `${aperture} à ${shutter}`,
  triple: (pair, iso) => `${pair}, ${iso}`,
  isoHeld: (iso) => `${iso} fixe`,
  bodyShows: (shutter) => `affiché ${shutter}`,

  facing: (pair) => `${pair}. Toutes les paires qui se font face sur le cadran donnent cette lumière.`,
  sameLight: (now, then) => `${now} donne la même lumière que ${then}.`,
  asAsked: (now, stops, brighter, then) => `${now} donne ${stops} de lumière en ${brighter ? 'plus' : 'moins'} que ${then}, comme demandé.`,
  offFromAsked: (now, stops, brighter) => `${now} est ${stops} plus ${brighter ? 'clair' : 'sombre'} que demandé.`,
  offFrom: (now, stops, brighter, then) => `${now} est ${stops} plus ${brighter ? 'clair' : 'sombre'} que ${then}.`,
  ends: (setting, at, now, stops, brighter) => `${SETTING_FIRST[setting]} s’arrête à ${at}\u00a0: ${now} donne ${stops} ${brighter ? 'de trop' : 'de moins'}.`,
  rounded: (stops, brighter, pay) =>
    `${stops} plus ${brighter ? 'clair' : 'sombre'} que demandé\u00a0: ${SETTING_IN_TEXT[pay]} est au cran le plus proche.`,
  closeUp: (stops, more) =>
    `À cette distance, la prise de vue rapprochée coûte ${stops} de lumière ${more ? 'de plus' : 'de moins'} que là où la `
    + `mesure a été faite\u202f; c’est pris en compte.`,
  closeUpByHand: (stops) => `La prise de vue rapprochée coûte ${stops} de lumière qu’un posemètre à main ne voit pas\u202f; c’est pris en compte.`,

  blurShrinks: (percent) => `Ce qui est flou l’est moins\u00a0: environ ${percent} de la largeur.`,
  blurGrows: (times) => `Ce qui est flou l’est plus\u00a0: environ ${times} fois plus large.`,
  openLonger: (times) => `L’obturateur reste ouvert environ ${times} fois plus longtemps.`,
  openShorter: (percent) => `L’obturateur reste ouvert moins longtemps\u00a0: environ ${percent} du temps précédent.`,
  noise: (more, stops) => `${more ? 'Plus' : 'Moins'} de bruit\u00a0: ${stops} d’ISO.`,
  handsOff: (shutter) => `À ${shutter}, ne pas toucher l’appareil\u00a0: retardateur ou télécommande.`,
  shock: 'C’est autour de ces temps que les vibrations de l’obturateur se voient le plus.',

  misread: (shutter, body, other, stops, brighter) =>
    `${shutter} s’affiche ${body} sur un boîtier. Lu ${other}, ce serait ${stops} plus ${brighter ? 'clair' : 'sombre'}.`,
  taken: (text, value) => `«\u202f${text}\u202f» a été lu comme ${value}.`,
  takeInstead: (value) => `Prendre plutôt ${value}`,

  set: (value) => `Régler ${value}`,
  bringsBack: 'rend la lumière demandée',
  makesUpAll: 'compense tout',
  stillMissing: (stops, missing) => (missing ? `il manque encore ${stops}` : `encore ${stops} de trop`),
  moreLight: (times) => `${times} fois la lumière sur la figurine`,
  lessLight: (percent) => `${percent} de la lumière sur la figurine`,
  lampsNearer: (percent) => `lampes à ${percent} de leur distance, pour un premier essai`,
  lampsAway: 'lampes plus loin ou baissées',
  done: (what) => `Fait\u00a0: ${what}.`,
  undo: 'Annuler',
  within: (least, most) => `une valeur de ${least} à ${most} (voir «\u202f${LIMITS}\u202f» plus bas)`,

  correction: 'Plus clair (+), plus sombre (−)',
  correctionHint: 'en IL\u202f; un posemètre qui indique −2 demande +2',
  darker: 'Un cran plus sombre',
  brighter: 'Un cran plus clair',
  now: 'Réglage actuel',
  pay: 'Compensé par',
  payHint: 'se règle seul quand un autre change',
  step: 'Crans des molettes',
  steps: {1: 'IL entiers', 2: 'demi-IL', 3: 'tiers d’IL'},
  start: 'Départ\u00a0: mesuré ou essayé',
  startHint: 'sous n’importe quelle forme\u00a0: f/2,8 1/25, f8 0"3 ISO 100, 1/25 f/8 +2',
  startWanted: 'un réglage comme f/2,8 1/25',
  startKept: (values) => `Non saisi, donc conservé\u00a0: ${values}.`,
  startHere: 'Repartir d’ici',
  back: 'Revenir au départ',
  changes: 'Ce qui a changé, et le chemin',
  moved: (from, to) => `${from} → ${to}`,
  held: (value) => `reste à ${value}`,
  byLight: (stops, brighter) => `${stops} plus ${brighter ? 'clair' : 'sombre'}`,
  noLight: 'même lumière',
  closeUpName: 'Rapprochement',
  path: 'IL par IL',
  limits: LIMITS,
  widest: 'Pleine ouverture',
  smallest: 'Ouverture minimale',
  fastest: 'Temps le plus court',
  slowest: 'Temps le plus long',
  lowest: 'ISO de base',
  highest: 'ISO maximal utilisé',
});

const SETTING_IN_TEXT: Readonly<Record<Setting, string>> = {aperture: 'l’ouverture', shutter: 'la vitesse', iso: 'l’ISO'};
const SETTING_FIRST: Readonly<Record<Setting, string>> = {aperture: 'L’ouverture', shutter: 'La vitesse', iso: 'L’ISO'};
