import type {Patch, Side} from '../../../../core/white/card.js';
import {photoWords} from '../../../shared/photo/words/fr.js';
import type {Say} from '../../../shared/say.js';
import type {Tint, Warmth} from '../light-speech.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/fr.js';

const NAMES = {white: 'Blanc', gray: 'Gris', black: 'Noir'} satisfies Record<Patch, string>;
const PATCH = {white: 'le blanc', gray: 'le gris', black: 'le noir'} satisfies Record<Patch, string>;
const ON = {white: 'la plage blanche', gray: 'la plage grise', black: 'la plage noire'} satisfies Record<Patch, string>;
const WARMTH = {warmer: 'plus chaud', cooler: 'plus froid'} satisfies Record<Warmth, string>;
const TINT = {greener: 'plus vert', pinker: 'plus rose'} satisfies Record<Tint, string>;
const SIDES = {left: 'à gauche', right: 'à droite', top: 'en haut', bottom: 'en bas', middle: 'au milieu'} satisfies Record<Side, string>;
const pressOn = (patch: Patch) => `Appuyer sur ${ON[patch]}, ou y déplacer le cadre ${NAMES[patch]}.`;
const unevenThen = (side: Side) => `La lumière est ${SIDES[side]} : détourner la charte de ce qu’elle reflète, ou sortir le cadre de l’ombre.`;
const uneven = (patch: Patch) => (share: string) => `${NAMES[patch]} irrégulier : ${share} entre sa partie la plus sombre et la plus claire.`;
const verb = (more: boolean) => (more ? 'plus fort' : 'plus faible');

const correct = (red: string, blue: string, neutral: boolean): string =>
  (neutral ? `il est neutre, sa couleur n’est pas à corriger\u00a0: rouge ×\u00a0${red} et bleu ×\u00a0${blue} ne se verraient pas` : `multiplier le rouge par ${red} et le bleu par ${blue}`);

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,
  opening: 'Lecture de la photo de la charte…',

  patches: NAMES,
  picture: 'La photo de la charte, avec un cadre sur chaque plage',
  frames: {white: 'Cadre sur la plage blanche', gray: 'Cadre sur la plage grise', black: 'Cadre sur la plage noire'},
  frameAt: (width, height, x, y) => `${width} sur ${height} px, à ${x} de la gauche, à ${y} du haut`,
  frameWaits: (width, height, x, y, patch) => `${width} sur ${height} px, à ${x} de la gauche, à ${y} du haut, pas encore sur ${ON[patch]}`,
  frameKeys: 'Les flèches déplacent le cadre, avec Maj elles en changent la taille ; Page précédente et Page suivante l’agrandissent et le réduisent.',
  looking: 'Recherche de la charte…',
  noneFound: 'Aucune charte grise trouvée dans cette photo : la marquer à la main, s’il y en a une.',
  pressOn: {white: pressOn('white'), gray: pressOn('gray'), black: pressOn('black')},
  closer: 'Montrer la charte de près',
  whole: 'Montrer toute la photo',
  again: 'Chercher de nouveau la charte',
  byNumbers: 'Cadres en chiffres',
  markField: {white: 'Blanc : gauche, haut, taille, px', gray: 'Gris : gauche, haut, taille, px', black: 'Noir : gauche, haut, taille, px'},
  markWanted: (width, height) => `gauche, haut, largeur et hauteur en px, comme 184, 823, 54 × 54, à l’intérieur de ${width} × ${height}`,

  misplaced: 'Les cadres ne vont pas du blanc au noir en passant par le gris : il n’y a pas encore de charte fiable dessous.',
  trusted: (red, blue, neutral) => `La charte est fiable : le gris est à sa place ; ${correct(red, blue, neutral)}.`,
  trustedOff: (stops, over, red, blue, neutral) =>
    `La charte est fiable : le gris est ${stops} ${over ? 'au-dessus' : 'au-dessous'} de sa place ; ${correct(red, blue, neutral)}.`,
  distrust: {
    grayBlack: 'Charte non fiable : une couleur de la plage grise est à 0. Donner plus de lumière ou poser plus longtemps, et refaire la photo.',
    grayClipped: 'Charte non fiable : le gris est écrêté au blanc. Exposer au moins deux IL et demi de moins, et refaire la photo.',
    whiteClipped: 'Charte non fiable : le blanc est écrêté.',
    uneven: (patch, share) => `Charte non fiable : ${PATCH[patch]} est irrégulier, ${share} de sa partie la plus sombre à la plus claire.`,
    glare: (lifted) => `Charte non fiable : ${lifted}, c’est un reflet. Tourner la charte jusqu’à ce que l’image de la lampe la quitte.`,
    veil: (lifted) => `Charte non fiable : ${lifted}, c’est un voile de lumière parasite. Abriter l’objectif, le nettoyer, et tourner un peu la charte.`,
  },
  lifted: (stops) => `le noir est relevé de ${stops} par rapport au gris`,
  liftedAbout: (stops) => `le noir est relevé d’environ ${stops} par rapport au gris`,
  liftedToGray: 'le noir n’est pas plus sombre que le gris',
  doubtLinked: 'Mais la lumière a changé depuis : ses gains ne valent peut-être pas pour la photo du diagramme des tons.',
  doubtNext: 'Mais des lampes ou des drapeaux ont changé depuis : ses gains ne valent peut-être pas pour la prochaine photo.',

  misplacedSeen: 'Mettre le cadre Blanc sur la plage blanche, Gris sur la grise et Noir sur la noire.',
  misplacedThen: 'S’ils y sont déjà, la charte reflète une lampe si fort que rien ne se lit : la tourner jusqu’à ce que la plage noire devienne sombre.',
  whiteClipped: (share) => `Le blanc est écrêté sur ${share} de la plage.`,
  whiteClippedUsable: 'Le gris donne tout de même les bons gains. Seule une lampe reflétée dans le blanc ne se verrait pas : pour l’exclure, refaire la photo de la charte avec un IL de moins.',
  whiteClippedElse: 'Exposer moins en refaisant la photo de la charte.',
  grayClipped: (share) => `Le gris est écrêté au blanc sur ${share} de la plage : il n’a plus de couleur à mesurer.`,
  grayClippedThen: 'Ôter d’abord le reflet de la charte ; si elle est seulement trop claire, exposer au moins deux IL et demi de moins.',
  grayBlack: (share) => `Une couleur du gris est à 0 sur ${share} de la plage : aucune multiplication ne la relève.`,
  grayBlackThen: 'Exposer plus.',
  glareThen: 'La charte reflète une lampe. L’incliner ou la tourner jusqu’à ce que la plage noire devienne sombre, vue de l’appareil.',
  veilThen: 'De la lumière parasite couvre la charte comme toute l’image. Abriter l’objectif de la lampe, chercher un voile sur le verre, et refaire la photo.',
  uneven: {white: uneven('white'), gray: uneven('gray'), black: uneven('black')},
  unevenThen: {
    left: unevenThen('left'), right: unevenThen('right'), top: unevenThen('top'), bottom: unevenThen('bottom'), middle: unevenThen('middle'),
  },
  exposed: (code, noWhite) => `${noWhite ? 'Le gris est bien exposé, le blanc ne l’est pas' : 'L’exposition est juste'} : le gris sort à ${code} sur 255.`,
  exposedThen: (share, code) => `Le gris à ${share} doit être à ${code} ; aucun cran d’un tiers d’IL ne l’en rapprocherait davantage.`,
  exposedOff: (stops, over, code, belongs) => `L’exposition est trop ${over ? 'forte' : 'faible'} de ${stops} : le gris sort à ${code} sur 255 au lieu de ${belongs}.`,
  lessLight: 'Moins de lumière y remédie :',
  moreLight: 'Plus de lumière y remédie :',

  table: 'Les trois plages',
  columns: {patch: 'Plage', codes: 'R V B sur 255', off: 'Écart', even: 'Irrégularité'},
  cutOff: 'écrêté',
  noLight: 'sans lumière',
  asItShould: 'à sa place',
  offBy: (stops, over) => `${stops} ${over ? 'au-dessus' : 'au-dessous'}`,
  unknown: 'inconnu',

  light: 'La lumière',
  castNone: 'Le gris sort neutre : ce qui reste de dominante ne se verrait pas.',
  castWarm: (warmth, stops) => `Le gris sort ${WARMTH[warmth]} que neutre, le rouge et le bleu à ${stops} l’un de l’autre.`,
  castTint: (tint) => `Le gris sort ${TINT[tint]} que neutre.`,
  castTintOfLamp: (tint) => `Le gris sort un peu ${TINT[tint]} que sous une lampe de même température de couleur.`,
  castBoth: (warmth, stops, tint) => `Le gris sort ${WARMTH[warmth]} que neutre, le rouge et le bleu à ${stops} l’un de l’autre, et ${TINT[tint]}.`,
  castBothOfLamp: (warmth, stops, tint) =>
    `Le gris sort ${WARMTH[warmth]} que neutre, le rouge et le bleu à ${stops} l’un de l’autre, et un peu ${TINT[tint]} que `
    + `sous une lampe de même température de couleur.`,
  noTemperature: 'C’est loin de la lumière du jour et de toute lampe à incandescence : une température de couleur ne dirait rien.',
  temperature: (kelvin, neutral) => `En température de couleur : environ ${kelvin}, alors que cette image est équilibrée pour ${neutral}.`,
  temperatureOff: (kelvin, neutral, mired, warmth) => `En température de couleur : environ ${kelvin} alors que cette image est équilibrée pour ${neutral}, ${mired} ${WARMTH[warmth]}.`,
  miredIs: 'Le mired est un million divisé par les kelvins : des écarts égaux paraissent à peu près égaux, et moins de 5 environ ne se voient pas, même côte à côte.',

  gains: 'Gains : par quoi multiplier',
  gainsAre: 'Ils multiplient des quantités de lumière, comme la balance des blancs d’une photo RAW. Les nombres de 0 à 255 d’une image finale n’en sont pas : multipliés ainsi, ils changeraient trop.',
  doubtful: 'Ces gains viennent d’une charte qui n’est pas fiable.',
  noGains: 'Il n’y a pas de gains à montrer : voir plus haut que faire.',
  greenHeld: 'Facteurs, vert inchangé',
  noneBelowOne: 'Facteurs, aucun sous 1',
  quotients: 'Vert sur rouge, sur bleu',
  copy: 'Copier',
  copied: (text) => `Copié : ${text}`,
  notCopied: 'Le presse-papiers n’est pas accessible ici. Les nombres sont sélectionnés : les copier au clavier ou par un appui long.',

  holdsNot: 'Ces gains ne valent peut-être pas pour la photo du diagramme des tons. Refaire une photo de la charte dans cette lumière.',
  holds: 'Les gains valent pour la photo du diagramme des tons : là où les deux images s’accordent, la lumière a la même couleur.',
  holdsUnknown: 'Rien de connu n’a changé depuis la photo de la charte, mais les deux images montrent des choses trop différentes pour le voir. Les gains valent tant que lampes, drapeaux et murs n’ont pas bougé.',
  holdsNotNext: 'Des lampes ou des drapeaux ont changé depuis la photo de la charte. Pour la prochaine photo, refaire une photo de la charte.',
  lampNamed: (name) => `« ${name} »`,
  lampNumber: (number) => `La lampe ${number}`,
  lampsNow: (now, then) => `Il y a maintenant ${now} ${now > 1 ? 'lampes' : 'lampe'} ; avec la charte il y en avait ${then}.`,
  flagsNow: (now, then) => `Il y a maintenant ${now} ${now > 1 ? 'drapeaux' : 'drapeau'} ; avec la charte il y en avait ${then}.`,
  lampMoved: (lamp, length) => `${lamp} : déplacement de ${length} depuis la photo de la charte.`,
  flagMoved: (number, length) => `Drapeau ${number} : déplacement de ${length} depuis la photo de la charte.`,
  lampPower: (lamp, stops, brighter) => `${lamp} : ${stops} ${brighter ? 'de plus' : 'de moins'} qu’avec la charte, par rapport à la première lampe.`,
  whiteBalance: 'La balance des blancs de l’appareil était réglée autrement.',
  litDifferently: (red, redMore, blue, blueMore) =>
    `La photo du diagramme des tons était éclairée autrement que la charte : par rapport au vert, le rouge est ${verb(redMore)} de ${red} et le bleu ${verb(blueMore)} de ${blue}.`,

  beforeAfter: 'Avant et après',
  previewOf: (name, share) => `${name}, telle que prise jusqu’à ${share} depuis la gauche, avec les gains à droite`,
  preview: (share) => `L’image, telle que prise jusqu’à ${share} depuis la gauche, avec les gains à droite`,
  wipe: 'Limite entre avant et après',
  wipeAt: (before, after) => `${before} avant, ${after} après`,
  before: 'avant',
  after: 'après',
  ofCard: 'la photo de la charte',
  ofPhoto: 'la photo du diagramme des tons',
  shown: 'Affiché sur',
  withExposure: 'exposition corrigée aussi',
});
