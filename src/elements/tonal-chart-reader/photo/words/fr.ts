import {photoWords} from '../../../shared/photo/words/fr.js';
import type {Say} from '../../../shared/say.js';
import type {AimsWhy} from '../judgement.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/fr.js';

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,

  keepFits: (room) => `À garder : rien d’important n’est écrêté, et les tons les plus clairs sont à ${room} sous le blanc.`,
  yoursGlints: (colours, many, share) =>
    `Au choix : ${colours} ${many ? 'n’atteignent' : 'n’atteint'} le blanc que sur ${share} du cadre, comme un reflet sur une lanterne ou un œil humide.`,
  yoursBlack: (share) => `Au choix : ${share} du cadre est noir sans détail, comme peut l’être un fond sombre.`,
  keepBlack: (share) => `À garder : ${share} du cadre est noir sans détail, et les hautes lumières ne laissent pas de marge pour l’éclaircir.`,
  againWhite: (stops, colours, many, share) =>
    `À refaire, ${stops} plus sombre : ${colours} ${many ? 'sont écrêtés' : 'est écrêté'} au blanc sur ${share} du cadre.`,
  againBlack: (stops, share) => `À refaire, ${stops} plus clair : ${share} du cadre est écrêté au noir, et il reste de la marge pour l’éclaircir.`,
  againDark: (stops, intent) =>
    `À refaire, ${stops} plus clair : ${intent === 'even' ? 'l’image est plus sombre que le gris moyen' : 'la figurine supporte plus de lumière'}.`,
  againBright: (stops) => `À refaire, ${stops} plus sombre : l’image est plus claire que le gris moyen.`,
  keepDark: 'À garder : l’image est sombre, mais ses hautes lumières ne laissent pas de marge pour l’éclaircir.',
  keepBright: 'À garder : l’image est claire, mais ses ombres ne laissent pas de marge pour l’assombrir.',
  relight: (white, black) =>
    `Changer la lumière et refaire : ${white} du cadre est écrêté au blanc et ${black} au noir, aucune exposition ne tient les deux.`,
  allBlack: 'À refaire avec plus de lumière : tout le cadre est noir.',

  softer: 'Adoucir ou déplacer la lampe, ou déboucher les ombres avec un réflecteur ou une seconde lampe.',
  beyondWhite: 'Jusqu’où la lumière dépasse le blanc n’est pas dans le fichier et a été estimé : revoir après la prochaine photo.',
  beyondBlack: 'Jusqu’où descendent les ombres n’est pas dans le fichier et a été estimé : revoir après la prochaine photo.',
  cropFirst: 'Si cela tombe au recadrage, tracer d’abord le cadre.',
  ifNoGlint: (stops) => `Si c’est de la peau, du tissu ou de la peinture blanche, refaire ${stops} plus sombre.`,
  ifFigure: (stops) => `Si cela fait partie de la figurine, refaire ${stops} plus clair.`,
  fillLifts: 'Un réflecteur ou une seconde lampe déboucherait les ombres ; plus d’exposition se paierait dans les hautes lumières.',
  roomNow: (now, after) => `Les tons les plus clairs sont à ${now} sous le blanc, et à ${after} après correction.`,
  roomBelow: (now, after) => `Les tons les plus sombres sont à ${now} au-dessus du noir, et à ${after} après correction.`,
  leansLeft: 'Devant un fond sombre, un diagramme qui penche à gauche est juste.',
  middleFits: 'Une moitié de l’image est plus sombre et l’autre plus claire que le gris moyen, à un demi-IL près.',
  hiddenWhite: 'Un diagramme de la seule luminosité ne le montrerait pas.',
  hiddenBlack: (colours) => `Dans les parties les plus sombres, plus rien ne reste en ${colours}, comme dans les couleurs saturées ; plus de lumière n’y changerait rien.`,

  cropAll: 'Toute l’image est comptée. Tracer le cadre autour de ce qui sera gardé, pour que ce qui tombe au recadrage ne compte pas.',
  cropKeeps: (share) => `Le cadre garde ${share} de l’image.`,
  cropReads: (share, edge, now, whole) =>
    `Le cadre garde ${share} de l’image ; une couleur y est ${edge === 'black' ? 'au noir' : 'au blanc'} sur ${now}, contre ${whole} dans toute l’image.`,
  cropMatters: (brief) => `Sans le cadre, la réponse serait : ${brief}.`,
  cropNoMatter: 'Sans lui, la réponse serait la même.',
  brief: {
    keep: () => 'à garder', yours: () => 'au choix', relight: () => 'changer la lumière',
    brighter: (stops) => `${stops} plus clair`, darker: (stops) => `${stops} plus sombre`,
  },
  transparent: 'Il n’y a rien à compter dans ce cadre : tout y est transparent. La dernière lecture reste.',

  picture: 'La photo, avec le cadre de ce qui sera gardé',
  frame: 'Cadre du recadrage',
  spotFrame: 'Zone mesurée',
  frameKeys: 'Les flèches déplacent le cadre, avec Maj elles en changent la taille ; Page préc. et Page suiv. l’agrandissent et le réduisent. Début garde toute l’image.',
  frameAt: (width, height, left, top) => `${width} sur ${height}, à ${left} de la gauche, à ${top} du haut`,
  cropSize: (size, whole) => `${size} sur ${whole}.`,
  cropWhole: (size) => `${size}, toute l’image.`,
  ownCrop: 'La prochaine photo est prévue d’un autre endroit avec son propre cadre ; cette photo garde le sien.',
  keepAll: 'Tout garder',
  byNumbers: 'Cadre en chiffres',
  sides: {left: 'Gauche', top: 'Haut', width: 'Largeur', height: 'Hauteur'},
  sizeWanted: (pixels) => `une part jusqu’à 100 %, ou 1 à ${pixels} px`,
  placeWanted: (pixels) => `une part inférieure à 100 %, ou 0 à ${pixels} px`,

  fromFile: (list) => `D’après le fichier : ${list}.`,
  notInFile: (list, many) => `Absent du fichier : ${list} ; ${many ? 'ces valeurs restent réglées' : 'cette valeur reste réglée'} comme ici.`,
  fileSilent: 'Le fichier ne dit pas comment la photo a été prise : les réglages affichés ici passent pour les siens.',
  lens: (length) => `focale ${length}`,
  sensor: (width, about) => `capteur de ${about ? 'environ ' : ''}${width}`,
  missing: {aperture: 'ouverture', shutter: 'vitesse', iso: 'ISO', focalLength: 'focale', sensorWidth: 'largeur du capteur'},

  chart: 'Diagramme de',
  shown: {colours: 'Couleurs', brightness: 'Luminosité', red: 'Rouge', green: 'Vert', blue: 'Bleu'},
  channels: {red: 'Rouge', green: 'Vert', blue: 'Bleu', brightness: 'Luminosité'},
  channelsInText: {red: 'rouge', green: 'vert', blue: 'bleu', brightness: 'luminosité'},
  letters: {red: 'R', green: 'V', blue: 'B', brightness: 'L'},
  intent: 'Image voulue',
  intents: {'dark-backdrop': 'figurine éclairée, fond sombre', even: 'équilibrée, sur tous les tons'},
  table: 'Ce qui est écrêté dans le cadre, et la marge qui reste, en IL',
  columns: {channel: 'Couleur', black: 'Au noir', below: 'Marge dessous', white: 'Au blanc', above: 'Marge dessus'},
  anyColour: 'Au moins une',
  black: 'noir',
  white: 'blanc',
  gray: 'charte grise',
  toBlack: (stops) => `à ${stops} IL du noir`,
  toWhite: (stops) => `à ${stops} IL du blanc`,
  lost: 'écrêté',
  none: 'aucune',
  noLight: 'sans lumière',
  channelEdges: (channel, atBlack, atWhite, below, above) =>
    `${channel} : ${atBlack} au noir, ${atWhite} au blanc, marge dessous ${below}, dessus ${above}.`,
  scaleNote: 'Grands chiffres : IL de lumière sous le blanc. Petits : la valeur d’un pixel à cet endroit dans le fichier, de 0 à 255. Quatre fois plus de pixels montent deux fois plus haut, pour que les petites quantités se voient.',
  dashed: 'Tirets : où va le diagramme si l’on suit le conseil.',
  thin: 'Trait fin : la photo précédente.',

  measure: 'Mesurer une zone',
  isCard: 'La zone est la charte grise',
  noCard: 'Oublier la charte grise',
  spotBlack: (value) => `La zone est noire : valeur ${value} sur 255.`,
  spotOn: (measured, value) => `La zone est aussi claire que ${measured ? 'la charte grise mesurée' : 'doit l’être une charte grise'} : valeur ${value} sur 255.`,
  spotOff: (stops, above, measured, value) =>
    `La zone est ${stops} ${above ? 'au-dessus' : 'au-dessous'} ${measured ? 'de la charte grise mesurée' : 'd’une charte grise bien exposée'} : valeur ${value} sur 255.`,
  spotMean: (mean, spread, values) => `Elle renvoie ${mean} de la lumière du blanc, à ${spread} près. Rouge, vert et bleu ont les valeurs ${values}.`,
  spotAtWhite: (share) => `${share} en est écrêté au blanc : elle est donc plus claire que cela.`,
  spotAtBlack: (share) => `${share} en est sans lumière dans l’une des couleurs.`,

  aims: 'Où placer les hautes lumières et les ombres de la figurine',
  aimNames: {highlights: 'Hautes lumières à', shadows: 'Ombres au moins à', backdrop: 'Le fond occupe'},
  aimHints: {highlights: 'valeur, 0 à 255', shadows: 'valeur, 0 à 255', backdrop: 'du cadre'},
  valueWanted: 'une valeur de 1 à 254, les ombres sous les hautes lumières',
  shareWanted: 'une part inférieure à 100 %',
  aimsUnknown: 'Les hautes lumières sont écrêtées dans cette photo, on ne sait donc pas où elles sont : suivre d’abord le conseil, refaire la photo, puis revenir ici.',
  aimsFit: (highlights, shadows, aim) =>
    `Telles quelles, les hautes lumières sont à ${highlights} et les ombres à ${shadows} : à moins d’un tiers d’IL du but de ${aim}.`,
  aimsAsk: (stops, brighter, highlights, shadows) =>
    `Ce but demande ${stops} de ${brighter ? 'plus' : 'moins'} : les hautes lumières seront à ${highlights} et les ombres à ${shadows}.`,
  aimsDiffer: (answer, why) => `La réponse tout en haut passe en premier : ${answer}. ${AIMS_WHY[why]}`,
  shadowsShort: (stops, aim) =>
    `Il manque ${stops} aux ombres pour atteindre ${aim} : un réflecteur ou une seconde lampe les débouche ; plus d’exposition se paierait dans les hautes lumières.`,
  fromCard: 'Les peintures la plus claire et la plus sombre sont calculées d’après la charte grise mesurée.',
  fromCrop: 'Lu dans le cadre. Pour partir d’une charte grise, mesurer une zone sur elle et l’indiquer.',

  beside: 'Comparer avec une photo précédente',
  keepShot: 'Garder cette photo pour comparer la suivante',
  kept: 'Cette photo est gardée. Ouvrir la suivante pour les comparer.',
  openEarlier: 'Choisir la photo précédente',
  away: 'Retirer la photo précédente',
  edgesTable: 'Écrêté dans la photo précédente → dans celle-ci',
  sameAs: 'Cette photo est aussi claire que la précédente',
  shiftedBy: (stops, brighter) => `Cette photo est ${stops} plus ${brighter ? 'claire' : 'sombre'} que la précédente`,
  shiftNear: (measured, clicks) => `${measured}, soit à peu près ${clicks}. Les fichiers ne disent pas ce qui était voulu.`,
  shiftSmall: (measured) => `${measured}, moins de la moitié d’un cran d’un tiers d’IL. Les fichiers ne disent pas ce qui était voulu.`,
  shiftMeant: (measured, stops) => `${measured}, comme le prévoyaient les réglages (${stops ?? 'même exposition'}).`,
  shiftOff: (measured, stops, brighter) =>
    `${measured}, alors que d’après les réglages ${stops ? `elle devrait être ${stops} plus ${brighter ? 'claire' : 'sombre'}` : 'il ne devrait y avoir aucune différence'} : les lampes, l’objectif ou le décor ont changé aussi.`,
  oneClick: 'un cran d’un tiers d’IL',
  otherShape: 'Les deux photos n’ont pas les mêmes proportions : ce n’est pas le même cadrage, elles ne se comparent pas.',
  otherSet: 'Les deux photos ne montrent pas le même décor du même endroit : il n’y a pas entre elles un écart de luminosité unique.',
  nothingInCommon: 'Aucune partie du cadre n’est sans écrêtage dans les deux photos : il n’y a rien à comparer.',
  shiftSpread: (stops) => `Mesuré là où aucune des photos n’est écrêtée ; deux tiers de l’image concordent à ±${stops}.`,
  shiftMoved: (share) => `${share} de ce qui pouvait être comparé a bougé ou changé et n’a pas été compté.`,
  shiftColour: (colour, stops, stronger) =>
    `Par rapport au vert, le ${colour === 'red' ? 'rouge' : 'bleu'} est plus ${stronger ? 'fort' : 'faible'} de ${stops} : la couleur de la lumière ou la balance des blancs a changé.`,

  sharpness: 'Où la photo est-elle nette ?',
  looking: 'Recherche…',
});

const AIMS_WHY: Readonly<Record<AimsWhy, string>> = {
  fits: 'Ce but ne vaut que pour une autre photo, s’il y en a une.',
  card: 'Elle tient compte des plus petites hautes lumières de ce cadre ; ce but se règle sur la peinture la plus claire possible dans cette lumière, d’après la charte grise.',
  glints: 'Elle tient compte des plus petites hautes lumières de ce cadre ; ce but prend le plus brillant pour des reflets et se règle sur le reste.',
};
