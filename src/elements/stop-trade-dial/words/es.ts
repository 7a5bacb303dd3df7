import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {DialWords} from './en.js';

export {family} from '../../shared/words/es.js';

const LIMITS = 'Límites del objetivo y la cámara';

export const words = (say: Say): DialWords => ({
  say,
  dial: 'Dial de intercambio de pasos',
  hand: 'Diafragma y velocidad, la misma luz',
  pair: (aperture, shutter) => `${aperture} a ${shutter}`,
  triple: (pair, iso) => `${pair}, ${iso}`,
  isoHeld: (iso) => `${iso} fijo`,
  bodyShows: (shutter) => `cámara: ${shutter}`,

  facing: (pair) => `${pair}. Todas las parejas enfrentadas en el dial dan esta luz.`,
  sameLight: (now, then) => `${now} da la misma luz que ${then}.`,
  asAsked: (now, stops, brighter, then) => `${now} da ${stops} ${brighter ? 'más' : 'menos'} de luz que ${then}, como se pidió.`,
  offFromAsked: (now, stops, brighter) => `${now} queda ${stops} más ${brighter ? 'claro' : 'oscuro'} de lo pedido.`,
  offFrom: (now, stops, brighter, then) => `${now} queda ${stops} más ${brighter ? 'claro' : 'oscuro'} que ${then}.`,
  ends: (setting, at, now, stops, brighter) =>
    `${SETTING_FIRST[setting]} solo llega a ${at}: ${now} queda ${stops} demasiado ${brighter ? 'claro' : 'oscuro'}.`,
  rounded: (stops, brighter, pay) =>
    `${stops} más ${brighter ? 'claro' : 'oscuro'} de lo pedido: ${SETTING_IN_TEXT[pay]} está en su clic más cercano.`,
  closeUp: (stops, more) => `Desde aquí la distancia corta quita ${stops} ${more ? 'más' : 'menos'} de luz que donde se midió; ya se tiene en cuenta.`,
  closeUpByHand: (stops) => `La distancia corta quita ${stops} de luz que un fotómetro de mano no ve; ya se tiene en cuenta.`,

  blurShrinks: (percent) => `Lo desenfocado se ve menos borroso: cerca del ${percent} de su anchura.`,
  blurGrows: (times) => `Lo desenfocado se ve más borroso: unas ${times} veces más ancho.`,
  openLonger: (times) => `El obturador queda abierto unas ${times} veces más tiempo.`,
  openShorter: (percent) => `El obturador queda abierto menos tiempo: cerca del ${percent} del tiempo anterior.`,
  noise: (more, stops) => `${more ? 'Más' : 'Menos'} ruido: ${stops} de ISO.`,
  handsOff: (shutter) => `A ${shutter}, sin tocar la cámara: temporizador o disparador remoto.`,
  shock: 'Cerca de estos tiempos es cuando más se nota la vibración del obturador.',

  misread: (shutter, body, other, stops, brighter) =>
    `${shutter} aparece en la cámara como ${body}. Leído como ${other} quedaría ${stops} más ${brighter ? 'claro' : 'oscuro'}.`,
  taken: (text, value) => `«${text}» se leyó como ${value}.`,
  takeInstead: (value) => `Usar ${value} en su lugar`,

  set: (value) => `Poner ${value}`,
  bringsBack: 'devuelve la luz pedida',
  makesUpAll: 'lo compensa todo',
  stillMissing: (stops, missing) => `aún ${stops} de ${missing ? 'menos' : 'más'}`,
  moreLight: (times) => `${times} veces la luz sobre la figura`,
  lessLight: (percent) => `${percent} de la luz sobre la figura`,
  lampsNearer: (percent) => `lámparas al ${percent} de su distancia, como primer intento`,
  lampsAway: 'lámparas más lejos o atenuadas',
  done: (what) => `Hecho: ${what}.`,
  undo: 'Deshacer',
  within: (least, most) => `un valor de ${least} a ${most} (ver «${LIMITS}», más abajo)`,

  correction: 'Más claro (+), más oscuro (−)',
  correctionHint: 'en pasos; si el fotómetro marca −2, poner +2',
  darker: 'Un clic más oscuro',
  brighter: 'Un clic más claro',
  now: 'Ajuste actual',
  pay: 'Lo compensa',
  payHint: 'se mueve solo al cambiar otro',
  step: 'Clics de los diales',
  steps: {1: 'pasos enteros', 2: 'medios pasos', 3: 'tercios de paso'},
  start: 'Inicio: medido o probado',
  startHint: 'escrito de cualquier modo: f/2,8 1/25, f8 0"3 ISO 100, 1/25 f/8 +2',
  startWanted: 'un ajuste como f/2,8 1/25',
  startKept: (values) => `No se ha escrito y se conserva: ${values}.`,
  startHere: 'Empezar desde aquí',
  back: 'Volver al inicio',
  changes: 'Qué ha cambiado, y el camino',
  moved: (from, to) => `${from} → ${to}`,
  held: (value) => `sigue en ${value}`,
  byLight: (stops, brighter) => `${stops} más ${brighter ? 'claro' : 'oscuro'}`,
  noLight: 'la misma luz',
  closeUpName: 'Distancia corta',
  path: 'Paso a paso',
  limits: LIMITS,
  widest: 'Apertura máxima',
  smallest: 'Apertura mínima',
  fastest: 'Tiempo más corto',
  slowest: 'Tiempo más largo',
  lowest: 'ISO base',
  highest: 'ISO más alto usado',
});

const SETTING_IN_TEXT: Readonly<Record<Setting, string>> = {aperture: 'el diafragma', shutter: 'la velocidad', iso: 'el ISO'};
const SETTING_FIRST: Readonly<Record<Setting, string>> = {aperture: 'El diafragma', shutter: 'La velocidad', iso: 'El ISO'};
