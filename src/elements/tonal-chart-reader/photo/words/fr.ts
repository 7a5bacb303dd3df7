import {photoWords} from '../../../shared/photo/words/fr.js';
import type {Say} from '../../../shared/say.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/fr.js';

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,

  keepFits: (room) => `À garder : rien d’important n’est écrêté, et les tons les plus clairs sont à ${room} sous le blanc.`,
  yoursGlints: (colours, many, share) =>
    `Au choix : ${colours} ${many ? 'n’atteignent' : 'n’atteint'} le blanc que dans ${share} du cadre, comme un reflet sur une lanterne ou un œil humide.`,
  yoursBlack: (share) => `Au choix : ${share} du cadre est noir sans détail, comme peut l’être un fond sombre.`,
  keepBlack: (share) => `À garder : ${share} du cadre est noir sans détail, et les hautes lumières ne laissent pas de marge pour l’éclaircir.`,
  againWhite: (stops, colours, many, share) =>
    `À refaire, ${stops} plus sombre : ${colours} ${many ? 'sont écrêtés' : 'est écrêté'} au blanc dans ${share} du cadre.`,
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
  beyondWhite: 'Jusqu’où la lumière dépasse le blanc n’est pas dans le fichier et a été estimé : revoir après la prochaine vue.',
  beyondBlack: 'Jusqu’où descendent les ombres n’est pas dans le fichier et a été estimé : revoir après la prochaine vue.',
  ifNoGlint: (stops) => `Si c’est de la peau, du tissu ou de la peinture blanche, refaire ${stops} plus sombre.`,
  ifFigure: (stops) => `Si cela fait partie de la figurine, refaire ${stops} plus clair.`,
  fillLifts: 'Un réflecteur ou une seconde lampe déboucherait les ombres ; plus d’exposition se paierait dans les hautes lumières.',
  roomNow: (now, after) => `Les tons les plus clairs sont à ${now} sous le blanc, puis à ${after}.`,
  roomBelow: (now, after) => `Les tons les plus sombres sont à ${now} au-dessus du noir, puis à ${after}.`,
  leansLeft: 'Devant un fond sombre, un diagramme qui penche à gauche est juste.',
  middleFits: 'Une moitié de l’image est plus sombre et l’autre plus claire que le gris moyen, à un demi-IL près.',
  hiddenWhite: 'Un diagramme de la seule luminosité ne le montrerait pas.',
  hiddenBlack: (colours) => `Il ne reste pas de ${colours} dans les parties les plus sombres, comme dans les couleurs fortes ; plus de lumière n’y changerait rien.`,

  cropAll: 'Toute l’image est comptée. Tracer le cadre autour de ce qui sera gardé, pour que ce qui tombe au recadrage ne compte pas.',
  cropKeeps: (share) => `Le cadre garde ${share} de l’image.`,
  cropReads: (share, edge, now, whole) =>
    `Le cadre garde ${share} de l’image ; une couleur y est ${edge === 'black' ? 'au noir' : 'au blanc'} dans ${now}, contre ${whole} dans toute l’image.`,
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
  frameKeys: 'Les flèches déplacent le cadre, avec Maj elles le dimensionnent ; Page préc. et Page suiv. l’agrandissent et le réduisent. Début garde toute l’image.',
  frameAt: (width, height, left, top) => `${width} sur ${height}, à ${left} de la gauche, à ${top} du haut`,
  cropSize: (size, whole) => `${size} sur ${whole}.`,
  cropWhole: (size) => `${size}, toute l’image.`,
  keepAll: 'Tout garder',
  byNumbers: 'Cadre en chiffres',
  sides: {left: 'Gauche', top: 'Haut', width: 'Largeur', height: 'Hauteur'},
  sizeWanted: (pixels) => `une part jusqu’à 100 %, ou 1 à ${pixels} px`,
  placeWanted: (pixels) => `une part inférieure à 100 %, ou 0 à ${pixels} px`,

  fromFile: (list) => `D’après le fichier : ${list}.`,
  notInFile: (list, many) => `Absent du fichier : ${list} ; ${many ? 'ces valeurs restent réglées' : 'cette valeur reste réglée'} comme ici.`,
  fileSilent: 'Le fichier ne dit pas comment la photo a été prise : les réglages affichés ici passent pour les siens.',
  lens: (length) => `focale ${length}`,
  sensor: (width, about) => `capteur de ${about ? 'environ ' : ''}${width}`,
  missing: {aperture: 'ouverture', shutter: 'vitesse', iso: 'ISO', focalLength: 'focale', sensorWidth: 'largeur du capteur'},

  chart: 'Diagramme de',
  shown: {colours: 'Couleurs', brightness: 'Luminosité', red: 'Rouge', green: 'Vert', blue: 'Bleu'},
  channels: {red: 'Rouge', green: 'Vert', blue: 'Bleu', brightness: 'Luminosité'},
  channelsInText: {red: 'rouge', green: 'vert', blue: 'bleu', brightness: 'luminosité'},
  letters: {red: 'R', green: 'V', blue: 'B', brightness: 'L'},
  intent: 'L’image est voulue',
  intents: {'dark-backdrop': 'éclairée sur fond sombre', even: 'équilibrée, claire et sombre'},
  table: 'Ce qui est écrêté dans le cadre, et la marge qui reste, en IL',
  columns: {channel: 'Couleur', black: 'Au noir', below: 'Marge dessous', white: 'Au blanc', above: 'Marge dessus'},
  black: 'noir',
  white: 'blanc',
  gray: 'charte grise',
  toBlack: (stops) => `${stops} IL au noir`,
  toWhite: (stops) => `${stops} IL au blanc`,
  lost: 'écrêté',
  none: 'aucune',
  noLight: 'sans lumière',
  channelEdges: (channel, atBlack, atWhite, below, above) =>
    `${channel} : ${atBlack} au noir, ${atWhite} au blanc, marge dessous ${below}, dessus ${above}.`,
  scaleNote: 'Grands chiffres : IL de lumière sous le blanc. Petits : la valeur d’un pixel à cet endroit dans le fichier, de 0 à 255. Quatre fois plus de pixels montent deux fois plus haut, pour que le peu se voie.',
  dashed: 'En tirets : où va le diagramme si l’on suit le conseil.',
  thin: 'En fin : la vue précédente.',

  measure: 'Mesurer une zone',
  isCard: 'La zone est la charte grise',
  noCard: 'Oublier la charte grise',
  spotBlack: (value) => `La zone est noire : valeur ${value} sur 255.`,
  spotOn: (measured, value) => `La zone est aussi claire que ${measured ? 'la charte grise mesurée' : 'doit l’être une charte grise'} : valeur ${value} sur 255.`,
  spotOff: (stops, above, measured, value) =>
    `La zone est ${stops} ${above ? 'au-dessus' : 'au-dessous'} ${measured ? 'de la charte grise mesurée' : 'd’une charte grise bien exposée'} : valeur ${value} sur 255.`,
  spotMean: (mean, spread, values) => `Elle renvoie ${mean} de la lumière du blanc, à ${spread} près. Rouge, vert et bleu ont les valeurs ${values}.`,
  spotAtWhite: (share) => `${share} en est écrêté au blanc : elle est donc plus claire.`,
  spotAtBlack: (share) => `${share} en est sans lumière dans une des couleurs.`,

  aims: 'Où placer les clairs et les sombres de la figurine',
  aimNames: {highlights: 'Clairs à', shadows: 'Ombres dès', backdrop: 'Fond'},
  aimHints: {highlights: 'valeur, 0 à 255', shadows: 'valeur, 0 à 255', backdrop: 'du cadre'},
  valueWanted: 'une valeur de 1 à 254, les ombres sous les clairs',
  shareWanted: 'une part inférieure à 100 %',
  aimsUnknown: 'Les hautes lumières sont écrêtées dans cette vue, nul ne sait donc où elles sont : suivre d’abord le conseil, refaire la vue, puis revenir ici.',
  aimsFit: (highlights, shadows, aim) =>
    `Telles quelles, les hautes lumières sont à ${highlights} et les ombres à ${shadows} : à un tiers d’IL du but de ${aim}.`,
  aimsAsk: (stops, brighter, highlights, shadows) =>
    `Exposer ${stops} plus ${brighter ? 'clair' : 'sombre'} : les hautes lumières seront à ${highlights} et les ombres à ${shadows}.`,
  shadowsShort: (stops, aim) =>
    `Il manque ${stops} aux ombres pour atteindre ${aim} : un réflecteur ou une seconde lampe les débouche ; plus d’exposition se paierait dans les hautes lumières.`,
  fromCard: 'La peinture la plus claire et la plus sombre sont calculées d’après la charte grise mesurée.',
  fromCrop: 'Lu dans le cadre. Pour partir d’une charte grise, mesurer une zone sur elle et l’indiquer.',

  beside: 'À côté d’une vue précédente',
  keepShot: 'Garder cette vue pour comparer la suivante',
  kept: 'Cette vue est gardée. Ouvrir la suivante pour les comparer.',
  openEarlier: 'Choisir la vue précédente',
  away: 'Retirer la vue précédente',
  edgesTable: 'Écrêté dans la vue précédente → dans celle-ci',
  sameAs: 'Cette vue est aussi claire que la précédente',
  shiftedBy: (stops, brighter) => `Cette vue est ${stops} plus ${brighter ? 'claire' : 'sombre'} que la précédente`,
  shiftNear: (measured, clicks) => `${measured}, au plus près de ${clicks}. Les fichiers ne disent pas ce qui était voulu.`,
  shiftSmall: (measured) => `${measured}, moins d’un demi-cran de tiers. Les fichiers ne disent pas ce qui était voulu.`,
  shiftMeant: (measured, stops) => `${measured}, comme prévu avec ${stops ?? 'la même exposition'}.`,
  shiftOff: (measured, stops, brighter) =>
    `${measured}, alors que les réglages disent ${stops ? `${stops} plus ${brighter ? 'clair' : 'sombre'}` : 'sans différence'} : les lampes, l’objectif ou le décor ont changé aussi.`,
  oneClick: 'un cran d’un tiers d’IL',
  otherShape: 'Les deux vues n’ont pas les mêmes proportions : ce n’est pas le même cadrage, elles ne se comparent pas.',
  otherSet: 'Les deux vues ne montrent pas le même décor du même endroit : il n’y a pas un écart de luminosité unique entre elles.',
  nothingInCommon: 'Aucune partie du cadre n’est sans écrêtage dans les deux vues : il n’y a rien à comparer.',
  shiftSpread: (stops) => `Mesuré là où aucune des vues n’est écrêtée ; deux tiers de l’image concordent à ±${stops}.`,
  shiftMoved: (share) => `${share} de ce qui pouvait être comparé a bougé ou changé et n’a pas été compté.`,
  shiftColour: (colour, stops, stronger) =>
    `Par rapport au vert, le ${colour === 'red' ? 'rouge' : 'bleu'} est ${stops} plus ${stronger ? 'fort' : 'faible'} : la couleur de la lumière ou la balance des blancs a changé.`,

  sharpness: 'Où est-ce net ?',
  looking: 'Recherche…',
});
