import {photoWords} from '../../../shared/photo/words/es.js';
import type {Say} from '../../../shared/say.js';
import type {AimsWhy} from '../judgement.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/es.js';

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,

  keepFits: (room) => `Vale: no se ha perdido nada importante, y los tonos más claros quedan ${room} por debajo del blanco.`,
  yoursGlints: (colours, many, share) =>
    `A criterio propio: ${colours} ${many ? 'llegan' : 'llega'} al blanco solo en ${share} del encuadre, como un reflejo en un farol o en un ojo húmedo.`,
  yoursBlack: (share) => `A criterio propio: ${share} del encuadre es negro sin detalle, como puede serlo un fondo oscuro.`,
  keepBlack: (share) => `Vale: ${share} del encuadre es negro sin detalle, y las altas luces no dejan margen para aclararlo.`,
  againWhite: (stops, colours, many, share) =>
    `Repetir, ${stops} más oscura: ${colours} ${many ? 'están quemados' : 'está quemado'} en ${share} del encuadre.`,
  againBlack: (stops, share) => `Repetir, ${stops} más clara: ${share} del encuadre se pierde en el negro, y hay margen para aclararlo.`,
  againDark: (stops, intent) =>
    `Repetir, ${stops} más clara: ${intent === 'even' ? 'la imagen es más oscura que el gris medio' : 'la figura admite más luz'}.`,
  againBright: (stops) => `Repetir, ${stops} más oscura: la imagen es más clara que el gris medio.`,
  keepDark: 'Vale: la imagen es oscura, pero sus altas luces no dejan margen para aclararla.',
  keepBright: 'Vale: la imagen es clara, pero sus sombras no dejan margen para oscurecerla.',
  relight: (white, black) =>
    `Cambiar la luz y repetir: ${white} del encuadre está quemado y ${black} se pierde en el negro, ninguna exposición abarca las dos cosas.`,
  allBlack: 'Repetir con más luz: todo el encuadre es negro.',

  softer: 'Suavizar o mover la lámpara, o levantar las sombras con un reflector o una segunda lámpara.',
  beyondWhite: 'Cuánto pasa la luz del blanco no está en el archivo y se ha estimado: mirar de nuevo tras la próxima toma.',
  beyondBlack: 'Cuánto bajan las sombras no está en el archivo y se ha estimado: mirar de nuevo tras la próxima toma.',
  cropFirst: 'Si está en lo que se va a recortar, trazar antes el encuadre.',
  ifNoGlint: (stops) => `Si es piel, tela o pintura blanca, repetir ${stops} más oscura.`,
  ifFigure: (stops) => `Si es parte de la figura, repetir ${stops} más clara.`,
  fillLifts: 'Un reflector o una segunda lámpara levantaría las sombras; más exposición se pagaría en las altas luces.',
  roomNow: (now, after) => `Los tonos más claros quedan ${now} por debajo del blanco, y tras la corrección ${after}.`,
  roomBelow: (now, after) => `Los tonos más oscuros quedan ${now} por encima del negro, y tras la corrección ${after}.`,
  leansLeft: 'Ante un fondo oscuro es correcto que el gráfico se cargue a la izquierda.',
  middleFits: 'Media imagen es más oscura y media más clara que el gris medio, con medio paso de margen.',
  hiddenWhite: 'Un gráfico solo del brillo no lo mostraría.',
  hiddenBlack: (colours) => `En las partes más oscuras no queda nada de ${colours}, como en los colores saturados; más luz no lo recuperaría.`,

  cropAll: 'Se cuenta toda la imagen. Trazar el marco alrededor de lo que se va a conservar, para que no cuente lo que se recorta.',
  cropKeeps: (share) => `El encuadre conserva ${share} de la imagen.`,
  cropReads: (share, edge, now, whole) =>
    `El encuadre conserva ${share} de la imagen y tiene un color en ${edge === 'black' ? 'negro' : 'blanco'} en ${now}, frente a ${whole} en toda la imagen.`,
  cropMatters: (brief) => `Sin el encuadre, la respuesta sería: ${brief}.`,
  cropNoMatter: 'Sin él, la respuesta sería la misma.',
  brief: {
    keep: () => 'vale', yours: () => 'a criterio propio', relight: () => 'cambiar la luz',
    brighter: (stops) => `${stops} más clara`, darker: (stops) => `${stops} más oscura`,
  },
  transparent: 'En este encuadre no hay nada que contar: todo es transparente. Queda la última lectura.',

  picture: 'La foto, con el marco de lo que se conserva',
  frame: 'Marco del encuadre',
  spotFrame: 'Zona que se mide',
  frameKeys: 'Las flechas mueven el marco, con Mayús cambian su tamaño; Re Pág y Av Pág lo agrandan y lo reducen. Inicio conserva toda la imagen.',
  frameAt: (width, height, left, top) => `${width} por ${height}, a ${left} de la izquierda, a ${top} de arriba`,
  cropSize: (size, whole) => `${size} de ${whole}.`,
  cropWhole: (size) => `${size}, toda la imagen.`,
  ownCrop: 'La próxima toma está prevista desde otro lugar y con su propio encuadre; esta foto conserva el suyo.',
  keepAll: 'Conservarlo todo',
  byNumbers: 'Encuadre en números',
  sides: {left: 'Izquierda', top: 'Arriba', width: 'Anchura', height: 'Altura'},
  sizeWanted: (pixels) => `una parte de hasta el 100 %, o de 1 a ${pixels} px`,
  placeWanted: (pixels) => `una parte menor que el 100 %, o de 0 a ${pixels} px`,

  fromFile: (list) => `Del archivo: ${list}.`,
  notInFile: (list, many) => `No está en él: ${list}; ${many ? 'esos valores quedan' : 'ese valor queda'} como aquí.`,
  fileSilent: 'El archivo no dice cómo se hizo la foto: los ajustes que hay aquí se toman por los suyos.',
  lens: (length) => `objetivo de ${length}`,
  sensor: (width, about) => `sensor de ${about ? 'unos ' : ''}${width}`,
  missing: {aperture: 'diafragma', shutter: 'velocidad', iso: 'ISO', focalLength: 'distancia focal', sensorWidth: 'anchura del sensor'},

  chart: 'Gráfico de',
  shown: {colours: 'Colores', brightness: 'Brillo', red: 'Rojo', green: 'Verde', blue: 'Azul'},
  channels: {red: 'Rojo', green: 'Verde', blue: 'Azul', brightness: 'Brillo'},
  channelsInText: {red: 'rojo', green: 'verde', blue: 'azul', brightness: 'brillo'},
  letters: {red: 'R', green: 'V', blue: 'A', brightness: 'B'},
  intent: 'Imagen que se busca',
  intents: {'dark-backdrop': 'figura iluminada, fondo oscuro', even: 'equilibrada, en todos los tonos'},
  table: 'Cuánto se pierde dentro del encuadre, y qué margen queda, en pasos',
  columns: {channel: 'Color', black: 'En negro', below: 'Margen abajo', white: 'En blanco', above: 'Margen arriba'},
  anyColour: 'Algún color',
  black: 'negro',
  white: 'blanco',
  gray: 'carta gris',
  toBlack: (stops) => `${stops} pasos al negro`,
  toWhite: (stops) => `${stops} pasos al blanco`,
  lost: 'perdido',
  none: 'ninguno',
  noLight: 'sin luz',
  channelEdges: (channel, atBlack, atWhite, below, above) =>
    `${channel}: ${atBlack} en negro, ${atWhite} en blanco, margen abajo ${below}, arriba ${above}.`,
  scaleNote: 'Cifras grandes: pasos de luz por debajo del blanco. Pequeñas: el nivel que tiene ahí un píxel en el archivo, de 0 a 255. Cuatro veces más píxeles suben el doble, para que se vea lo pequeño.',
  dashed: 'A trazos: adónde va el gráfico si se sigue el consejo.',
  thin: 'Fino: la toma anterior.',

  measure: 'Medir una zona',
  isCard: 'La zona es la carta gris',
  noCard: 'Olvidar la carta gris',
  spotBlack: (value) => `La zona es negra: nivel ${value} de 255.`,
  spotOn: (measured, value) => `La zona es tan clara como ${measured ? 'la carta gris medida' : 'debe salir una carta gris'}: nivel ${value} de 255.`,
  spotOff: (stops, above, measured, value) =>
    `La zona está ${stops} por ${above ? 'encima' : 'debajo'} ${measured ? 'de la carta gris medida' : 'de una carta gris bien expuesta'}: nivel ${value} de 255.`,
  spotMean: (mean, spread, values) => `Devuelve ${mean} de la luz del blanco, con un margen de ${spread}. Rojo, verde y azul tienen los niveles ${values}.`,
  spotAtWhite: (share) => `${share} de ella está quemado, así que es más clara.`,
  spotAtBlack: (share) => `${share} de ella no tiene luz en alguno de los colores.`,

  aims: 'Dónde deben quedar las altas luces y las sombras de la figura',
  aimNames: {highlights: 'Altas luces en', shadows: 'Sombras al menos en', backdrop: 'El fondo llena'},
  aimHints: {highlights: 'nivel, 0 a 255', shadows: 'nivel, 0 a 255', backdrop: 'del encuadre'},
  valueWanted: 'un nivel de 1 a 254, las sombras por debajo de las altas luces',
  shareWanted: 'una parte menor que el 100 %',
  aimsUnknown: 'Las altas luces están quemadas en esta toma, así que nadie sabe dónde quedan: seguir antes el consejo, repetir y mirar aquí después.',
  aimsFit: (highlights, shadows, aim) =>
    `Tal como está, las altas luces quedan en ${highlights} y las sombras en ${shadows}: a menos de un tercio de paso de ${aim}.`,
  aimsAsk: (stops, brighter, highlights, shadows) =>
    `Este objetivo pide ${stops} ${brighter ? 'más' : 'menos'}: las altas luces quedan en ${highlights} y las sombras en ${shadows}.`,
  aimsDiffer: (answer, why) => `La respuesta de arriba va primero: ${answer}. ${AIMS_WHY[why]}`,
  shadowsShort: (stops, aim) =>
    `Las sombras quedan ${stops} por debajo de ${aim}: un reflector o una segunda lámpara las levanta; más exposición se pagaría en las altas luces.`,
  fromCard: 'La pintura más clara y la más oscura se calculan con la carta gris medida.',
  fromCrop: 'Leído en el encuadre. Para partir de una carta gris, medir una zona sobre ella e indicarlo.',

  beside: 'Comparar con una toma anterior',
  keepShot: 'Guardar esta toma para comparar la siguiente',
  kept: 'Esta toma está guardada. Al abrir la siguiente se comparan.',
  openEarlier: 'Elegir la toma anterior',
  away: 'Quitar la toma anterior',
  edgesTable: 'Perdido en la toma anterior → en esta',
  sameAs: 'Esta toma es tan clara como la anterior',
  shiftedBy: (stops, brighter) => `Esta toma es ${stops} más ${brighter ? 'clara' : 'oscura'} que la anterior`,
  shiftNear: (measured, clicks) => `${measured}, lo más cercano es ${clicks}. Los archivos no dicen qué se quería.`,
  shiftSmall: (measured) => `${measured}, menos de medio clic de tercio de paso. Los archivos no dicen qué se quería.`,
  shiftMeant: (measured, stops) => `${measured}, como corresponde a ${stops ?? 'la misma exposición'}.`,
  shiftOff: (measured, stops, brighter) =>
    `${measured}, cuando según los ajustes ${stops ? `debería ser ${stops} más ${brighter ? 'clara' : 'oscura'}` : 'no debería haber diferencia'}: también cambiaron las lámparas, el objetivo o el montaje.`,
  oneClick: 'un clic de un tercio de paso',
  otherShape: 'Las dos tomas tienen proporciones distintas: no es el mismo encuadre y no se pueden comparar.',
  otherSet: 'Las dos tomas no muestran el mismo montaje desde el mismo sitio: no hay una diferencia de brillo única entre ellas.',
  nothingInCommon: 'Ninguna parte del encuadre está libre de tonos perdidos en las dos tomas: no hay nada que comparar.',
  shiftSpread: (stops) => `Medido donde ninguna toma pierde tonos; dos tercios de la imagen coinciden en ±${stops}.`,
  shiftMoved: (share) => `${share} de lo comparable se movió o cambió y se dejó fuera.`,
  shiftColour: (colour, stops, stronger) =>
    `Frente al verde, el ${colour === 'red' ? 'rojo' : 'azul'} salió ${stops} más ${stronger ? 'fuerte' : 'débil'}: cambió el color de la luz o el balance de blancos.`,

  sharpness: '¿Dónde está nítida la foto?',
  looking: 'Buscando…',
});

const AIMS_WHY: Readonly<Record<AimsWhy, string>> = {
  fits: 'Este objetivo solo vale para otra toma, si la hay.',
  card: 'Tiene en cuenta hasta las altas luces más pequeñas de este encuadre; este objetivo parte de la pintura más clara que puede haber con esta luz, según la carta gris.',
  glints: 'Tiene en cuenta hasta las altas luces más pequeñas de este encuadre; este objetivo toma lo más brillante por reflejos y se guía por el resto.',
};
