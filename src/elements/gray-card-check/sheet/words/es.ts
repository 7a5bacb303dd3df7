import type {Patch, Side} from '../../../../core/white/card.js';
import {photoWords} from '../../../shared/photo/words/es.js';
import type {Say} from '../../../shared/say.js';
import type {Tint, Warmth} from '../light-speech.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/es.js';

const NAMES = {white: 'Blanco', gray: 'Gris', black: 'Negro'} satisfies Record<Patch, string>;
const PATCH = {white: 'blanco', gray: 'gris', black: 'negro'} satisfies Record<Patch, string>;
const WARMTH = {warmer: 'más cálido', cooler: 'más frío'} satisfies Record<Warmth, string>;
const TINT = {greener: 'más verde', pinker: 'más rosa'} satisfies Record<Tint, string>;
const SIDES = {left: 'a la izquierda', right: 'a la derecha', top: 'arriba', bottom: 'abajo', middle: 'en el medio'} satisfies Record<Side, string>;
const pressOn = (patch: Patch) => `Pulsar sobre el parche ${PATCH[patch]}, o llevar hasta él el marco ${NAMES[patch]}.`;
const unevenThen = (side: Side) => `La luz está ${SIDES[side]}: apartar la carta de lo que refleja, o sacar el marco de la sombra.`;
const uneven = (patch: Patch) => (share: string) => `El ${PATCH[patch]} es desigual: ${share} entre su parte más oscura y la más clara.`;

const correct = (red: string, blue: string, neutral: boolean): string =>
  (neutral ? `es neutro y su color no necesita corrección: rojo ×\u00a0${red} y azul ×\u00a0${blue} no se notarían` : `multiplicar el rojo por ${red} y el azul por ${blue}`);

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,
  opening: 'Leyendo la toma de la carta…',

  patches: NAMES,
  picture: 'La toma de la carta, con un marco en cada parche',
  frames: {white: 'Marco en el parche blanco', gray: 'Marco en el parche gris', black: 'Marco en el parche negro'},
  frameAt: (width, height, x, y) => `${width} por ${height} px, a ${x} de la izquierda, a ${y} de arriba`,
  frameWaits: (width, height, x, y, patch) => `${width} por ${height} px, a ${x} de la izquierda, a ${y} de arriba, aún no en el parche ${PATCH[patch]}`,
  frameKeys: 'Las flechas mueven el marco, con Mayús cambian su tamaño; Re Pág y Av Pág lo agrandan y lo reducen.',
  looking: 'Buscando la carta…',
  noneFound: 'No se encontró ninguna carta gris en esta toma: marcarla a mano, si la hay.',
  pressOn: {white: pressOn('white'), gray: pressOn('gray'), black: pressOn('black')},
  closer: 'Mostrar la carta de cerca',
  whole: 'Mostrar toda la toma',
  again: 'Buscar otra vez la carta',
  byNumbers: 'Marcos en números',
  markField: {white: 'Blanco: izquierda, arriba, tamaño, px', gray: 'Gris: izquierda, arriba, tamaño, px', black: 'Negro: izquierda, arriba, tamaño, px'},
  markWanted: (width, height) => `izquierda, arriba, ancho y alto en px, como 184, 823, 54 × 54, dentro de ${width} × ${height}`,

  misplaced: 'Los marcos no bajan de blanco a negro pasando por gris: debajo no hay todavía una carta de fiar.',
  trusted: (red, blue, neutral) => `La carta es de fiar: el gris está en su sitio; ${correct(red, blue, neutral)}.`,
  trustedOff: (stops, over, red, blue, neutral) =>
    `La carta es de fiar: el gris está ${stops} por ${over ? 'encima' : 'debajo'} de su sitio; ${correct(red, blue, neutral)}.`,
  distrust: {
    grayBlack: 'No fiarse de esta carta: un color del parche gris está a 0. Dar más luz o más tiempo y repetir la toma.',
    grayClipped: 'No fiarse de esta carta: el gris está quemado. Exponer al menos dos pasos y medio menos y repetir la toma.',
    whiteClipped: 'No fiarse de esta carta: el blanco está quemado.',
    uneven: (patch, share) => `No fiarse de esta carta: el ${PATCH[patch]} es desigual, ${share} de su parte más oscura a la más clara.`,
    glare: (lifted) => `No fiarse de esta carta: ${lifted}, es un reflejo. Girar la carta hasta que la imagen de la lámpara salga de ella.`,
    veil: (lifted) => `No fiarse de esta carta: ${lifted}, es un velo de luz parásita. Dar sombra al objetivo, limpiarlo y girar un poco la carta.`,
  },
  lifted: (stops) => `el negro está levantado ${stops} respecto al gris`,
  liftedAbout: (stops) => `el negro está levantado aproximadamente ${stops} respecto al gris`,
  liftedToGray: 'el negro no es más oscuro que el gris',
  doubtLinked: 'Pero la luz ha cambiado desde entonces: sus ganancias quizá no valgan para la foto del gráfico de tonos.',
  doubtNext: 'Pero lámparas o banderas han cambiado desde entonces: sus ganancias quizá no valgan para la próxima foto.',

  misplacedSeen: 'Poner el marco Blanco en el parche blanco, Gris en el gris y Negro en el negro.',
  misplacedThen: 'Si ya están ahí, la carta refleja una lámpara con tanta fuerza que no se lee nada: girarla hasta que el parche negro se oscurezca.',
  whiteClipped: (share) => `El blanco está quemado en el ${share} del parche.`,
  whiteClippedUsable: 'El gris da igualmente las ganancias correctas. Solo una lámpara reflejada en el blanco no se vería: para descartarla, repetir la toma de la carta con un paso menos.',
  whiteClippedElse: 'Exponer menos al repetir la toma de la carta.',
  grayClipped: (share) => `El gris está quemado en el ${share} del parche: no le queda color que medir.`,
  grayClippedThen: 'Quitar primero el reflejo de la carta; si solo está demasiado clara, exponer al menos dos pasos y medio menos.',
  grayBlack: (share) => `Un color del gris está a 0 en el ${share} del parche: ninguna multiplicación lo levanta.`,
  grayBlackThen: 'Exponer más.',
  glareThen: 'La carta refleja una lámpara. Inclinarla o girarla hasta que el parche negro se oscurezca visto desde la cámara.',
  veilThen: 'Hay luz parásita sobre la carta y la imagen por igual. Dar sombra al objetivo, buscar vaho en el cristal y repetir la toma.',
  uneven: {white: uneven('white'), gray: uneven('gray'), black: uneven('black')},
  unevenThen: {
    left: unevenThen('left'), right: unevenThen('right'), top: unevenThen('top'), bottom: unevenThen('bottom'), middle: unevenThen('middle'),
  },
  exposed: (code, noWhite) => `${noWhite ? 'El gris está bien expuesto, el blanco no' : 'La exposición es correcta'}: el gris sale en ${code} de 255.`,
  exposedThen: (share, code) => `El gris del ${share} va en ${code}; ningún clic de un tercio de paso lo acercaría.`,
  exposedOff: (stops, over, code, belongs) => `La exposición está ${stops} por ${over ? 'encima' : 'debajo'}: el gris sale en ${code} de 255 en vez de ${belongs}.`,
  lessLight: 'Se arregla con menos luz:',
  moreLight: 'Se arregla con más luz:',

  table: 'Los tres parches',
  columns: {patch: 'Parche', codes: 'R V A de 255', off: 'Desvío', even: 'Desigual en'},
  cutOff: 'quemado',
  noLight: 'sin luz',
  asItShould: 'en su sitio',
  offBy: (stops, over) => `${stops} por ${over ? 'encima' : 'debajo'}`,
  unknown: 'desconocido',

  light: 'La luz',
  castNone: 'El gris sale neutro: lo que queda de dominante no se vería.',
  castWarm: (warmth, stops) => `El gris sale ${WARMTH[warmth]} que neutro, con el rojo y el azul a ${stops} uno de otro.`,
  castTint: (tint) => `El gris sale ${TINT[tint]} que neutro.`,
  castTintOfLamp: (tint) => `El gris sale algo ${TINT[tint]} que bajo una lámpara de la misma temperatura de color.`,
  castBoth: (warmth, stops, tint) => `El gris sale ${WARMTH[warmth]} que neutro, con el rojo y el azul a ${stops} uno de otro, y ${TINT[tint]}.`,
  castBothOfLamp: (warmth, stops, tint) =>
    `El gris sale ${WARMTH[warmth]} que neutro, con el rojo y el azul a ${stops} uno de otro, y algo ${TINT[tint]} que bajo `
    + `una lámpara de la misma temperatura de color.`,
  noTemperature: 'Está lejos de la luz de día y de cualquier lámpara incandescente: una temperatura de color no diría nada.',
  temperature: (kelvin, neutral) => `Como temperatura de color: unos ${kelvin}, mientras que esta imagen está equilibrada para ${neutral}.`,
  temperatureOff: (kelvin, neutral, mired, warmth) => `Como temperatura de color: unos ${kelvin}, mientras que esta imagen está equilibrada para ${neutral}, ${mired} ${WARMTH[warmth]}.`,
  miredIs: 'El mired es un millón dividido entre los kelvin: diferencias iguales se ven más o menos iguales, y menos de unos '
    + '5 no se notan ni puestas una junto a otra.',

  gains: 'Ganancias: por cuánto multiplicar',
  gainsAre: 'Multiplican cantidades de luz, como el balance de blancos de una foto RAW. Los números de 0 a 255 de una imagen final no son cantidades de luz: multiplicados así cambiarían demasiado.',
  doubtful: 'Estas ganancias vienen de una carta que no es de fiar.',
  noGains: 'No hay ganancias que mostrar: arriba está qué hacer.',
  greenHeld: 'Factores, verde sin cambio',
  noneBelowOne: 'Factores, ninguno bajo 1',
  quotients: 'Verde entre rojo, entre azul',
  copy: 'Copiar',
  copied: (text) => `Copiado: ${text}`,
  notCopied: 'Aquí no hay acceso al portapapeles. Los números están seleccionados: copiarlos con el teclado o con una pulsación larga.',

  holdsNot: 'Estas ganancias quizá no valgan para la foto del gráfico de tonos. Repetir la toma de la carta con esta luz.',
  holds: 'Las ganancias valen para la foto del gráfico de tonos: donde las dos imágenes coinciden, la luz tiene el mismo color.',
  holdsUnknown: 'No se sabe de nada que haya cambiado desde la toma de la carta, pero las dos imágenes muestran cosas demasiado distintas para verlo en ellas. Las ganancias valen mientras lámparas, banderas y paredes no se hayan movido.',
  holdsNotNext: 'Lámparas o banderas han cambiado desde la toma de la carta. Para la próxima foto, repetir la toma de la carta.',
  lampNamed: (name) => `«${name}»`,
  lampNumber: (number) => `La lámpara ${number}`,
  lampsNow: (now, then) => `Ahora hay ${now} ${now === 1 ? 'lámpara' : 'lámparas'}; con la carta había ${then}.`,
  flagsNow: (now, then) => `Ahora hay ${now} ${now === 1 ? 'bandera' : 'banderas'}; con la carta había ${then}.`,
  lampMoved: (lamp, length) => `${lamp} se ha movido ${length} desde la toma de la carta.`,
  flagMoved: (number, length) => `La bandera ${number} se ha movido ${length} desde la toma de la carta.`,
  lampPower: (lamp, stops, brighter) => `${lamp} da ${stops} ${brighter ? 'más' : 'menos'} que con la carta, respecto a la primera lámpara.`,
  whiteBalance: 'El balance de blancos de la cámara estaba ajustado de otra manera.',
  litDifferently: (red, redMore, blue, blueMore) =>
    `La foto del gráfico de tonos tenía otra luz que la carta: respecto al verde, el rojo sale ${red} más ${redMore ? 'fuerte' : 'débil'} y el azul ${blue} más ${blueMore ? 'fuerte' : 'débil'}.`,

  beforeAfter: 'Antes y después',
  previewOf: (name, share) => `${name}, tal como se tomó hasta el ${share} desde la izquierda, con las ganancias a la derecha`,
  preview: (share) => `La imagen, tal como se tomó hasta el ${share} desde la izquierda, con las ganancias a la derecha`,
  wipe: 'Límite entre antes y después',
  wipeAt: (before, after) => `${before} antes, ${after} después`,
  before: 'antes',
  after: 'después',
  ofCard: 'la toma de la carta',
  ofPhoto: 'la foto del gráfico de tonos',
  shown: 'Mostrado en',
  withExposure: 'también la exposición corregida',
});
