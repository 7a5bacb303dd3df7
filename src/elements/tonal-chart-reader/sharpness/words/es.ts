import type {Say} from '../../../shared/say.js';
import type {SharpnessWords} from './en.js';

export {family} from '../../../shared/words/es.js';

export const words = (say: Say): SharpnessWords => ({
  say,
  looking: 'Buscando…',
  lookingSoFar: (percent) => `Buscando… ${percent}`,

  onWay: (fraction) => `hacia el ${fraction} del camino de A a B`,
  stretch: (from, to) => `de ${from} a ${to}`,
  at: (place) => `en ${place}`,

  sharp: (pieces) => `En el camino de A a B, la foto está nítida ${pieces}.`,
  sharpOnRuler: (pieces) => `Nítido ${pieces} en la regla.`,
  sharpAll: 'Tan nítido de A a B como en lo más nítido.',
  nothingKnown: 'En esta línea no hay por dónde juzgar la nitidez: una superficie lisa, o tanto desenfoque que no queda detalle. Eso es desconocido, no desenfocado.',
  noFocus: 'No se puede situar el plano de enfoque en esta línea: hay que ver crecer el desenfoque a ambos lados.',
  focusAt: (place) => `El plano de enfoque está ${place}.`,
  focusOnRuler: (place, give) => `El plano de enfoque está en ${place} de la regla, con ${give} de margen.`,
  focusFromFront: (place, distance, before, give) =>
    `El plano de enfoque está en ${place} de la regla, ${distance} ${before ? 'por delante' : 'por detrás'} del borde delantero de la peana, con ${give} de margen.`,
  oneShot: 'Calculado con una sola toma. El detalle que se afina a lo largo de la línea lo desvía un poco; una segunda toma con otro diafragma lo corrige.',
  bothShots: 'Calculado con las dos tomas, así que no importa lo fino que sea el detalle.',

  thisShot: 'esta toma',
  earlierShot: 'la anterior',
  noGain: (shot, other) => `Sin ganancia: ${shot} da tanta nitidez como ${other} allí donde se pueden juzgar las dos.`,
  noDetail: 'En esta línea no hay detalle con el que juzgar las dos tomas.',
  notWorth: (shot, other, part, pixels) =>
    `No compensa: ${shot} no da más nitidez que ${other} en ningún sitio, y da menos en ${part} de la línea, hasta ${pixels}.`,
  worth: (shot, other, part, pixels, place) =>
    `Compensa: ${shot} da más nitidez que ${other} en ${part} de la línea, sobre todo ${place}, con ${pixels} menos de desenfoque.`,
  butSofter: (part, pixels) => `Es menos nítida en ${part} de la línea, hasta ${pixels}.`,
  restAlike: 'En lo demás no hay diferencia.',
  restMixed: 'En lo demás no hay diferencia o nada que juzgar.',
  restUnknown: 'El resto no se puede juzgar.',
  diffractionOver: (aperture, disc, limit) =>
    `Con ${aperture}, la apertura pequeña ya extiende cada punto a ${disc} (difracción), más que los ${limit} que aún se ven nítidos. Cerrar más no da nitidez a nada de lo enfocado.`,
  diffractionWithin: (aperture, disc, limit) =>
    `Con ${aperture}, la apertura pequeña extiende cada punto a ${disc} (difracción), dentro de los ${limit} que se ven nítidos.`,
  otherSize: 'La toma anterior tiene otros píxeles o muestra otro montaje: su nitidez no se puede comparar con la de esta.',

  line: {a: 'Línea, extremo A', b: 'Línea, extremo B'},
  endAt: (left, top) => `a ${left} de la izquierda, a ${top} de arriba`,
  keys: 'Las flechas mueven un extremo de la línea, con Mayús poco a poco.',
  lay: 'Poner la línea',
  frontToBack: 'De delante atrás, junto a la peana',
  across: 'De lado a lado',
  ruler: 'Con una regla a lo largo de la línea',
  rulerAt: {atA: 'Regla en A', atMiddle: 'Regla en el + central', atB: 'Regla en B', atFront: 'Borde delantero de la peana'},
  layOnRuler: 'La línea debe ir sobre una regla tendida de delante atrás junto a la peana: llevar A y B hasta ella. Con lo que marca la regla en A y en B, la respuesta sale en longitudes.',
  middleHint: 'lo lejano se ve menor: así se tiene en cuenta',
  reckoned: 'Cuánto menor se ve lo lejano se calcula con la distancia focal y la anchura del campo. Leer la regla en el + del centro de la línea, y quedará medido.',
  wrongMiddle: 'La lectura en el + debe estar entre las de los extremos.',
  setFocus: (distance, before) => `Enfocar ${distance} ${before ? 'por delante' : 'por detrás'} del borde delantero`,
  setFocusFrom: (now) => `Ahora está en ${now}. Usar lo que muestra esta foto.`,
  focusDone: (distance, before) => `Hecho: el enfoque queda ${distance} ${before ? 'por delante' : 'por detrás'} del borde delantero.`,
  undo: 'Deshacer',

  softerUp: 'menos nítido',
  curve: (least, most, unknown) => `Desenfoque en la línea de A a B: ${least} en lo más nítido, ${most} en lo más blando; ${unknown} desconocido.`,
  curveNote: (limit, upTo) =>
    `Desenfoque en píxeles de la imagen final. Hasta el detalle más nítido tiene su propia anchura, así que un sitio cuenta como nítido hasta ${upTo}: lo más nítido de la línea y ${limit} de desenfoque. Rayado: nada que juzgar.`,

  heat: 'Mostrar sobre la foto',
  heatSharp: 'Esta toma',
  heatChange: 'Frente a la anterior',
  legendNote: 'Juzgado con la décima parte más nítida del encuadre. El detalle grueso parece menos nítido que el fino, aunque lo sea igual: comparar lo parecido, o dos tomas.',
  heatNames: {sharp: 'entre lo más nítido', near: 'menos nítido', soft: 'blando', unknown: 'desconocido: sin detalle'},
  changeNames: {sharper: 'ahora más nítido', softer: 'ahora menos nítido', alike: 'sin cambio', unknown: 'desconocido: sin detalle'},
});
