import type {Say} from '../../../shared/say.js';
import type {AlongWords} from './en.js';

export {family} from '../../../shared/words/es.js';

export const words = (say: Say): AlongWords => ({
  say,
  quoted: (text) => `«${text}»`,
  which: 'Qué toma',
  now: 'Esta',
  all: 'Todas las guardadas',
  option: (count, title) => `${count}. ${title}`,

  link: 'Enlace',
  copyLink: 'Copiar el enlace',
  linkShown: (start, length) => `${start}… (${length} caracteres; se copia entero)`,
  showQr: 'Mostrar el código QR',
  hideQr: 'Ocultar el código QR',
  qr: 'Código QR del enlace a esta toma',
  linkTooLong: (length) => `El enlace tiene ${length} caracteres, más de los que caben en un código QR. Copiarlo, o acortar la nota.`,

  text: 'Copiar como texto, para sitios sin scripts',
  forms: {text: 'Texto sin formato', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'},
  card: 'Tarjeta y papel',
  svg: 'Guardar SVG',
  png: 'Guardar PNG',
  noPng: 'Esta página no permite dibujar un PNG. El SVG tiene la misma tarjeta.',
  print: 'Imprimir en una página',
  printed: 'Ficha de la toma',
  noPrint: 'Esta página no permite imprimir la tarjeta sola. Guardar el SVG e imprimirlo.',

  file: 'Archivo',
  save: 'Guardar el archivo',
  copyFile: 'Copiar el archivo como texto',
  open: 'Abrir un archivo',
  paste: 'o pegar aquí su texto',
  take: 'Añadir estas tomas',
  thisText: 'Este texto',
  onDevice: '«Recordado en este dispositivo»',
  noJson: (file) => `${file} está dañado o no es un archivo de tomas: no es JSON completo. No se ha cambiado nada.`,
  foreign: (file) => `${file} es JSON, pero no un archivo de tomas. No se ha cambiado nada.`,
  newer: (file, version) =>
    `${file} se hizo con una versión posterior (${version}) a la que lee esta página. No se ha cambiado nada; recargar la página o pedir un archivo más antiguo.`,
  wrong: (file, where, found, wanted) => `${file} no se puede usar: ${where} (${found}); se espera: ${wanted}. No se ha cambiado nada.`,
  ofShot: (name, shot) => `${name} de la toma ${shot}`,
  shot: (shot) => `la toma ${shot}`,
  nothingThere: 'no está',
  unreadable: (file) => `${file} no se ha podido leer: quizá se haya movido, o es mucho más grande que cualquier archivo de tomas. No se ha cambiado nada.`,

  element: 'Elemento',
  snippets: {
    tag: 'Etiqueta con lo que está ajustado',
    script: 'Línea de script, una vez por página',
    frame: 'En un marco, donde se admiten marcos y no scripts',
    plain: 'Texto sin formato, donde no funciona otra cosa',
  },
  fallback: (settings) => `${settings}.`,
  copy: 'Copiar',
  copied: 'Copiado',
  copyHere: 'Aquí no se permite copiar. El texto está seleccionado: copiarlo a mano.',
});
