import type {Say} from '../../shared/say.js';
import {record} from '../record-words/es.js';
import type {SheetElementWords} from './en.js';

export {family} from '../../shared/words/es.js';

export const words = (say: Say): SheetElementWords => ({
  say,
  record,
  sheet: 'Ficha de la toma',

  noneKept: (now) => `${now}. Aún no hay tomas guardadas.`,
  asKept: (now, count) => `${now}. Como en la toma ${count}.`,
  since: (now, count, changes) => `${now}. Desde la toma ${count}: ${changes}.`,
  sinceAndMore: (now, count, changes, rest) => `${now}. Desde la toma ${count}: ${changes} y ${rest} más.`,
  changed: (label) => `${label}: ha cambiado`,
  change: (label, from, to) => `${label} ${from} → ${to}`,
  changeBy: (label, from, to, stops, brighter) => `${label} ${from} → ${to}, ${stops} más ${brighter ? 'claro' : 'oscuro'}`,

  nothing: 'Aún no se ha indicado nada: lo que figura arriba es solo una suposición.',
  missing: 'Aún no está en esta ficha. Cada parte aparece en cuanto se ajusta en una comprobación enlazada; lo que hay en una aún plegada llega al abrirla por primera vez:',
  missingParts: {
    camera: 'Objetivo y campo: en la comprobación de la nitidez',
    figure: 'Tamaño de la figura: en la comprobación de la nitidez',
    lamps: 'Lámparas y banderas: en la comprobación del fondo',
    backdrop: 'Fondo y su distancia: en la comprobación del fondo',
    card: 'Carta gris: abrir su foto en la comprobación de la carta',
  },
  name: 'Nombre de esta toma',
  nameHint: 'sin nombre, se numera',
  note: 'Nota',
  picture: (title) => `Imagen pequeña de ${title}`,
  thisShot: 'esta toma',

  keep: 'Guardar esta toma',
  keptHead: 'Tomas guardadas, por orden',
  kept: (count) => `Guardada como toma ${count}.`,
  numbered: (count) => `Toma ${count}`,
  first: 'La primera guardada.',
  same: 'Nada ha cambiado desde la toma anterior.',
  putBack: 'Volver a estos ajustes',
  putBackOf: (count) => `Volver a estos ajustes: toma ${count}`,
  isBack: (count) => `Ajustado como en la toma ${count}, en todas las comprobaciones enlazadas.`,
  up: 'Antes',
  upOf: (count) => `Antes: toma ${count}`,
  down: 'Después',
  downOf: (count) => `Después: toma ${count}`,
  remove: 'Quitar',
  removeOf: (count) => `Quitar: toma ${count}`,
  added: (count) => say.plural(count, {one: 'Se ha añadido una toma.', other: `Se han añadido ${count} tomas.`}),

  undo: (what) => `Deshacer: ${what}`,
  acts: {
    keep: (count) => `toma ${count} guardada`,
    remove: (count) => `toma ${count} quitada`,
    move: (count) => `toma ${count} movida`,
    putBack: (count) => `vuelta a la toma ${count}`,
    import: 'tomas añadidas',
    link: 'enlace abierto',
    otherPage: 'tomas traídas de otra ventana',
  },

  remember: 'Recordar en este dispositivo',
  remembered: 'Guardadas en este dispositivo y en ningún otro sitio. Al pulsar otra vez, las olvida.',
  forgotten: 'Este dispositivo ha olvidado las tomas. Siguen en esta página.',
  full: 'A este dispositivo no le queda sitio para las tomas. Siguen en esta página hasta que se cierre: por seguridad, guardar un archivo.',
  blocked: 'Este navegador no guarda nada para esta página (ventana privada o almacenamiento bloqueado). Las tomas siguen en esta página hasta que se cierre: por seguridad, guardar un archivo.',

  linkTaken: 'Los ajustes del enlace están puestos.',
  linkNewer: (version) => `Este enlace viene de una versión posterior (${version}). Se ha tomado lo que aquí se conoce.`,
  linkUnknown: (name) => `«${name}» en el enlace no significa nada aquí. Se pasa al siguiente enlace; todo lo demás se ha tomado.`,
  linkUnreadable: (name, text, wanted) => `${name} «${text}» en el enlace no sirve; se espera: ${wanted}. Queda tal como se escribió; todo lo demás se ha tomado.`,
  linkTooLong: (name, length) => `«${name}» en el enlace tiene ${length} caracteres y se ha dejado fuera; todo lo demás se ha tomado.`,

  along: 'Enlace, texto, tarjeta, archivo y papel',
  page: 'Ponerlo en una página propia',
});
