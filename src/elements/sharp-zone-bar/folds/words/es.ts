import type {Say} from '../../../shared/say.js';
import {sensor} from '../../../shared/sensor/words/es.js';
import type {FoldWords} from './en.js';

export {family} from '../../../shared/words/es.js';

export const words = (say: Say): FoldWords => ({
  say,
  ...sensor,

  overhangFront: 'Más allá del borde delantero',
  overhangFrontHeight: '… a una altura de',
  overhangBack: 'Más allá del borde trasero',
  overhangBackHeight: '… a una altura de',
  figureHeight: 'Altura sobre la mesa',
  tilt: 'Picado de la cámara',
  distance: 'Distancia de enfoque',
  distanceHint: 'desde el ⌀ del cuerpo, donde está el sensor; ajusta la anchura del campo',
  room: 'Sitio para la cámara',
  roomHint: 'distancia máxima al plano de enfoque',
  apertureWidest: 'Apertura máxima',
  apertureSmallest: 'Apertura mínima',
  apertureShown: 'El cuerpo muestra el diafragma',
  marked: 'como está grabado',
  working: 'con la distancia corta incluida',
  pupilRatio: 'Relación de pupilas del objetivo',
  pupilRatioHint: 'tamaño de su apertura vista por detrás, dividido entre el de vista por delante; 1 si no se sabe',
  pictureWidth: 'Ancho final, píxeles',
  frameWidth: 'Ancho de la toma, píxeles',
  blurLimit: 'Límite de desenfoque, px finales',
  unit: 'Longitudes en',
  inches: 'pulgadas',
  kept: (width, pixels) => `El recorte conserva ${width} del ancho del sensor, ${pixels}.`,

  detail: 'Línea más fina',
  detailHint: '1 px, o 0,2 mm en la figura',
  lost: 'no queda nada',
  lostAt: 'perdida',
  contrastCaption: 'contraste de la línea más fina',
  tooFine: (width) => `Una línea de ${width} es demasiado fina para esta apertura: no queda nada de su contraste, ni siquiera en el plano de enfoque.`,
  keeps: (width, inFocus, front, frontKeeps, back, backKeeps) =>
    `Una línea de ${width} conserva ${inFocus} de su contraste en el plano de enfoque, ${frontKeeps} ${front}, ${backKeeps} ${back}.`,
  none: 'nada',

  frames: (aperture, count, places) => say.plural(count, {
    one: `Con ${aperture} basta una toma, enfocada detrás del borde delantero de la peana a: ${places}.`,
    other: `Con ${aperture} bastan ${count} tomas, cada zona nítida solapada con la siguiente en un cuarto o más. `
      + `Enfocar detrás del borde delantero de la peana, desde delante: ${places}.`,
  }),
  tooManyAt: (aperture) => `Con ${aperture} haría falta un número de tomas poco razonable.`,
  tooMany: 'Con cualquier diafragma haría falta un número de tomas poco razonable.',
  bestNow: 'Para las líneas finas, ningún diafragma es mejor desde aquí.',
  best: (aperture, count) => say.plural(count, {
    one: `Lo mejor para las líneas finas desde aquí: una toma a ${aperture}.`,
    other: `Lo mejor para las líneas finas desde aquí: ${count} tomas a ${aperture}. Un plan de la toma cuenta también el trabajo de cada una y puede pedir menos.`,
  }),
  stackTakes: (seconds, time, contrast) =>
    `Con ${seconds} entre tomas duran en total unos ${time}; donde es más débil, la línea más fina conserva ${contrast} de su contraste.`,
  setStack: (aperture, shutter) => `Ajustar ${aperture} y ${shutter} para ello`,

  back: 'Cámara hacia atrás',
  slide: 'Deslizar para ver lo que se gana al retroceder: la imagen se recorta a lo que muestra ahora.',
  worth: (stops, now, then) => `Vale ${stops} de profundidad de campo: la zona nítida pasa de ${now} a ${then}, con el mismo diafragma.`,
  worthWithoutEnd: (stops) => `Vale ${stops} de profundidad de campo: la zona nítida ya no acaba por detrás, con el mismo diafragma.`,
  costs: (share, left, needed) => `Cuesta ${share} de los píxeles a lo ancho: quedan ${left}, hacen falta ${needed}.`,
  reach: (length) => `Los píxeles alcanzan para ${length} hacia atrás.`,
  noReach: 'No sobran píxeles.',
  roomReach: (length) => `Hay sitio para retrasar la cámara ${length}.`,
  noRoom: 'No hay más sitio para la cámara.',
  goBack: (length) => `Retroceder ${length} y recortar`,
  goBackNowhere: 'Retroceder y recortar',

  rulerHow: 'Arrastrar los dos puntos hasta dos marcas. Ambas han de estar enfocadas y a la misma distancia de la cámara, en una regla puesta de través: '
    + 'a lo largo de una regla que se aleja de la cámara la escala cambia, y dos puntos no dicen cómo.',
  photoLinked: 'Aún no hay ninguna foto abierta. Abrir una en el gráfico de tonos de esta página: está enlazado con esta barra, y la foto aparece entonces aquí.',
  photoAlone: 'Cuando un gráfico de tonos de esta página esté enlazado con esta barra, la foto que esté abierta allí aparecerá aquí.',
  photo: 'Foto con dos puntos',
  points: ['Primer punto', 'Segundo punto'],
  at: (x, y) => `${x} píxeles desde la izquierda, ${y} desde arriba`,
  cropped: 'Esta foto no tiene la forma del sensor. Si se recortó, el campo sale demasiado estrecho: conviene usarla tal como salió de la cámara.',
  apart: 'Longitud entre los puntos',
  apartHint: 'leída en la regla',
  together: 'Los dos puntos están uno encima del otro. Apartar uno de ellos.',
  takesIn: (field, magnification) => `El encuadre abarca ${field} a lo ancho: un factor de ampliación de ${magnification}.`,
  isSet: 'Es lo que está ajustado.',
  setNow: (field, off, less) => `Ajustado ahora: ${field}, ${off} ${less ? 'menos' : 'más'}.`,
  useField: (field) => `Ajustar la anchura del campo a ${field}`,

  ownHow: 'Fotografiar con los ajustes de arriba una regla plana que se aleje de la cámara junto al borde delantero de la peana. '
    + 'Mirarla al tamaño final y leer lo que aún parece nítido.',
  zero: 'Marca en el borde delantero',
  nearest: 'La más cercana aún nítida',
  farthest: 'La más lejana aún nítida',
  farthestWanted: 'una marca más allá de la más cercana',
  ownLimit: (limit) => `El límite personal es ${limit}.`,
  focusWas: (place) => `El enfoque estaba ${place}, donde debía estar.`,
  focusWasOff: (place, off, behind) => `El enfoque estaba ${place}, ${off} ${behind ? 'detrás' : 'delante'} de donde debía estar.`,
  useOwn: 'Usar este límite y este enfoque a partir de ahora',
});
