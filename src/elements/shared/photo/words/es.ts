import type {PhotoWords} from './en.js';

export const photoWords: PhotoWords = {
  choose: 'Elegir una foto',
  chooseOther: 'Elegir otra foto',
  staysHere: 'Se lee en este dispositivo y no se envía a ningún sitio.',
  opening: 'Leyendo la foto…',

  named: (name) => `«${name}»`,
  nameless: 'El archivo recibido',
  kinds: {
    avif: 'un archivo AVIF', tiff: 'un archivo TIFF', 'jpeg-xl': 'un archivo JPEG XL', 'jpeg-2000': 'un archivo JPEG 2000',
    layers: 'una imagen con capas', video: 'un vídeo', document: 'un documento', drawing: 'un dibujo vectorial',
  },
  trouble: {
    empty: (file) => `${file} está vacío: no hay nada en el archivo. Copiarlo de nuevo de la cámara.`,
    unreadable: (file) => `${file} no se ha podido leer: puede que se haya movido o quitado. Elegirlo de nuevo.`,
    raw: (file) => `${file} es un archivo RAW, tal como sale del sensor, y aún no tiene tonos. Revelarlo, o elegir el JPEG que se guardó con él.`,
    heic: (file) => `${file} está en el formato compacto de un teléfono (HEIC), que este navegador no abre. Poner el teléfono en el formato más compatible, o exportar la foto como JPEG.`,
    'cut-short': (file) => `${file} se corta antes del final, como una copia interrumpida. Copiarlo o enviarlo de nuevo.`,
    damaged: (file) => `${file} está dañado por dentro y no se puede mostrar. Copiarlo de nuevo de la cámara, o abrirlo en otro sitio y exportarlo como JPEG.`,
  },
  notAPicture: (file, kind) => `${file} es ${kind ?? 'un archivo en el que no se reconoce ninguna imagen'}. Elegir una foto guardada como JPEG, PNG, WebP o AVIF.`,
  unsupported: (file, kind) => `${file} es ${kind ?? 'un archivo de imagen'} que este navegador no abre. Exportarlo como JPEG o PNG.`,
  tooLarge: (file) => `${file} es demasiado grande para la memoria. Exportarlo más pequeño.`,
  tooManyBytes: (file, megabytes) => `${file} es demasiado grande para la memoria: más de ${megabytes}. Exportarlo más pequeño.`,
  tooManyPixels: (file, size, megapixels) =>
    `${file} es demasiado grande para la memoria: ${size}${megapixels ? `, y el máximo son ${megapixels} megapíxeles` : ''}. Exportarlo más pequeño.`,
  notLoaded: (src, status) =>
    `La foto en «${src}» no se ha cargado (${status ?? 'sin respuesta'}). Elegir una propia, o comprobar la dirección.`,
  attribute: (name, problem) => `${name}: ${problem}`,

  wayOut: (from, to, held) => `${from} → ${to} con ${held}`,
  wayStands: (to, held) => `${to} con ${held}`,
  wayCost: (stops, brighter) => `${stops} más ${brighter ? 'clara' : 'oscura'} que esta foto`,
  wayCostNow: (stops, brighter, now, brighterNow) =>
    `${stops} más ${brighter ? 'clara' : 'oscura'} que esta foto, y ${now} más ${brighterNow ? 'clara' : 'oscura'} que con el ajuste actual`,
  takenAt: (exposure) => `Se hizo con ${exposure}.`,
  wayCloseUp: (stops, less) => `Desde el nuevo lugar, la distancia corta quita ${stops} ${less ? 'menos' : 'más'} de luz; está contado.`,
  wayEnds: (setting, stops, short) => `${setting}: no da más de sí, ${stops} de ${short ? 'menos' : 'más'}.`,
  wayRounds: (stops, brighter) => `El clic más cercano es ${stops} más ${brighter ? 'claro' : 'oscuro'}.`,
  wayDone: (setting) => `Hecho: la próxima toma queda en ${setting}.`,
  undo: 'Deshacer',
};
