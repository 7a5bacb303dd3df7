import type {Say} from '../../shared/say.js';
import type {PlanWords} from './en.js';

export {family} from '../../shared/words/es.js';

export const words = (say: Say): PlanWords => ({
  say,
  plan: 'Plan de la toma',

  sharpInOne: (sharp, setting, from, focus) => `${sharp ? 'Nítido' : 'Enfocado'} de punta a punta en una toma: ${setting}, a ${from} de distancia, enfoque ${focus}.`,
  sharpInOneWith: (sharp, lens, setting, from, focus) =>
    `${sharp ? 'Nítido' : 'Enfocado'} de punta a punta en una toma: ${setting}, a ${from} de distancia con el ${lens}, enfoque ${focus}.`,
  sharpInFrames: (sharp, frames, setting, from) => `${sharp ? 'Nítido' : 'Enfocado'} de punta a punta en ${frames}: ${setting} cada una, a ${from} de distancia.`,
  sharpInFramesWith: (sharp, lens, frames, setting, from) =>
    `${sharp ? 'Nítido' : 'Enfocado'} de punta a punta en ${frames}: ${setting} cada una, a ${from} de distancia con el ${lens}.`,
  softened: (little, point, limit) => `La difracción lo ablanda todo${little ? ' un poco' : ''}: un punto mide ${point} de ancho, el límite es ${limit}.`,
  pair: (aperture, shutter) => `${aperture} a ${shutter}`,
  shown: (aperture, shown) => `${aperture} (la cámara muestra ${shown})`,
  frames: (count, written) => say.plural(count, {one: 'una toma', other: `${written}\u00a0tomas`}),
  atEdge: 'en el borde delantero de la peana',
  beforeBase: (length) => `${length} delante de la peana`,
  behindEdge: (length) => `${length} detrás del borde delantero de la peana`,
  hopeless: 'Estos deseos no pueden cumplirse, por mucho que se ceda.',
  giveUpOne: (wish) => `Estos deseos no pueden cumplirse todos a la vez. Lo que menos cuesta: «${wish}».`,
  giveUpAll: 'Estos deseos no pueden cumplirse todos, y no basta con ceder en uno solo. Juntas, estas concesiones bastan:',
  rests: (depth, picture, blur, contrast) => `Hay que abarcar ${depth} de profundidad a lo largo de la mesa en una imagen de ${picture}. Nítido significa: desenfoque de ${
    blur} como mucho; la línea más fina, de esa anchura, conserva al menos ${contrast} de su contraste.`,
  nothingToSet: (which) =>
    `Sin plan: entre los límites ${which === 'aperture' ? 'del diafragma' : 'de la velocidad'} no hay nada que ajustar. Sigue el último plan bueno.`,
  noPlan: (name, value, wanted) => `Sin plan: «${name}» es ${value}; se espera: ${wanted}. Sigue el último plan bueno.`,

  ways: 'Formas de que salga nítido',
  weighs: (contrast) => `Por orden de tiempo, tomas que fusionar, distancia, píxeles y cambio de objetivo; en todas ellas, la línea más fina conserva al menos ${
    contrast} de su contraste. La barra de zona nítida solo se ocupa de los extremos y por eso puede dar otro ajuste.`,
  way: (kind, frames) => ({
    stay: 'Tan cerca como deja el encuadre', 'move-back': 'Más lejos y recortado', stack: `${frames}, fusionadas`,
  })[kind],
  wayOf: (way, lens) => `${way} (objetivo de ${lens})`,
  from: (setting, distance) => `${setting}, a ${distance} de distancia`,
  each: (setting, distance) => `${setting} cada una, a ${distance} de distancia`,
  set: 'puesto',
  pick: 'poner',
  further: 'Otras formas',
  fewer: 'Solo las mejores',
  done: (what) => `Hecho: ${what}.`,
  undo: 'Deshacer',

  price: (parts) => `Precio: ${parts}`,
  parting: '; ',
  smaller: (clicks, written) => say.plural(clicks, {one: 'diafragma cerrado 1 clic', other: `diafragma cerrado ${written} clics`}),
  larger: (clicks, written) => say.plural(clicks, {one: 'diafragma abierto 1 clic', other: `diafragma abierto ${written} clics`}),
  stackTime: (seconds, frames, shutter, settle) => `${seconds} (${frames} × ${shutter}, y ${settle} de movimiento y reposo entre tomas)`,
  back: (length, now) => `${length} más atrás que ${now ? 'ahora' : 'el sitio más cercano'}`,
  pixels: (pixels) => `${pixels} de anchura recortados`,
  moreFrames: (count, written) => say.plural(count, {one: 'una toma más que fusionar', other: `${written} tomas más que fusionar`}),
  otherLens: 'un cambio de objetivo',

  giveUp: 'En qué ceder',
  single: 'Qué pediría una sola toma',
  singleAny: 'Basta con una de estas concesiones, y no hay nada que fusionar:',
  singleAll: 'Todas estas concesiones juntas, y no hay nada que fusionar:',
  allTogether: 'Ceder en todo esto',
  wish: (wish, to) => ({
    frames: `Hacer hasta ${to}`, 'picture-width': `Mostrarla con ${to} de ancho`, 'blur-limit': `Aceptar ${to} de desenfoque`,
    contrast: `Dejar a la línea más fina solo ${to} de su contraste`, shutter: `Exponer hasta ${to}`,
    room: `Hacer sitio hasta ${to}`, margin: `Dejar solo ${to} de margen`,
  })[wish],
  noMargin: 'No dejar margen',
  now: (value, most) => (most ? `ahora, como mucho ${value}` : `ahora, ${value}`),

  drawing: 'Vista lateral: figura, cámara y campo',
  noPlace: 'no hay sitio',
  mark: 'distancia de enfoque',
  camera: (distance, tilt) => `${distance}, ${tilt}`,
  tilt: (way, degrees) => (way === 'level' ? 'horizontal' : `${degrees}° hacia ${way === 'down' ? 'abajo' : 'arriba'}`),
  focusAt: (length) => `enfoque ${length}`,
  focusPlanes: (count) => `${count} planos de enfoque`,
  drawn: (way, unit) =>
    `A escala: «${way}». La regla cuenta ${unit} a lo largo de la mesa desde el borde delantero de la peana; su parte gruesa es nítida.`,
  broken: 'En el corte falta un tramo: la cámara está más lejos.',
  inches: 'pulgadas',
  grips: {
    'overhang-front': 'Punta más adelantada', 'overhang-back': 'Punta más atrasada', top: 'Parte alta de la figura', 'base-front': 'Borde delantero de la peana',
    'base-back': 'Borde trasero de la peana', tilt: 'Cámara, picado',
  },
  noOverhang: 'no sobresale de la peana; izquierda y derecha la sacan',
  overhang: (length, front, height) => `sobresale ${length} del borde ${front ? 'delantero' : 'trasero'}, a ${height} de altura`,
  aboveTable: (length) => `${length} sobre la mesa`,
  deep: (length) => `peana de ${length} de fondo`,
  free: {both: 'Izquierda y derecha para el saliente, arriba y abajo para la altura', up: 'Arriba y abajo', along: 'Izquierda y derecha'},
  gripTitle: (name, value, hint) => `${name}: ${value}. ${hint}.`,

  compare: 'Comparación',
  curve: 'Líneas finas en cada diafragma',
  rates: 'Cuánto cuenta cada cosa',
  figure: 'La figura en números',
  cameraAndLens: 'Cámara, objetivo y límites',
  sharp: 'Qué cuenta como nítido, tomas, unidad',

  focalLengths: 'Distancias focales',
  focalLengthsHint: 'disponibles, primero la del objetivo montado',
  room: 'Sitio para el trípode',
  roomHint: 'de la marca del sensor (⌀ en la cámara) al plano de enfoque, como mucho',
  metered: 'Diafragma medido',
  meteredWorking: 'Medido, como lo muestra la cámara',
  meteredShutter: 'Velocidad medida',
  pictureWidth: 'Ancho de imagen, px',
  pictureHeight: 'Alto de imagen, px',
  margin: 'Margen',
  marginHint: 'de la anchura, por todos los lados',
});
