import type {PhotoWords} from './en.js';

export const photoWords: PhotoWords = {
  choose: 'Choisir une photo',
  chooseOther: 'Choisir une autre photo',
  staysHere: 'Elle est lue dans ce navigateur et n’est envoyée nulle part.',
  opening: 'Lecture de la photo…',

  named: (name) => `« ${name} »`,
  nameless: 'Le fichier reçu',
  kinds: {
    avif: 'un fichier AVIF', tiff: 'un fichier TIFF', 'jpeg-xl': 'un fichier JPEG XL', 'jpeg-2000': 'un fichier JPEG 2000',
    layers: 'une image à calques', video: 'une vidéo', document: 'un document', drawing: 'un dessin vectoriel',
  },
  trouble: {
    empty: (file) => `${file} est vide : il n’y a rien dans le fichier. Le recopier depuis l’appareil.`,
    unreadable: (file) => `${file} n’a pas pu être lu : il a peut-être été déplacé ou retiré. Le choisir de nouveau.`,
    raw: (file) => `${file} est un fichier RAW, tel qu’il sort du capteur, et n’a pas encore de tons. Le développer, ou choisir le JPEG enregistré avec lui.`,
    heic: (file) => `${file} est au format compact d’un téléphone (HEIC), que ce navigateur n’ouvre pas. Régler le téléphone sur le format le plus compatible, ou exporter la photo en JPEG.`,
    'cut-short': (file) => `${file} s’arrête avant la fin, comme après une copie interrompue. Le copier ou l’envoyer de nouveau.`,
    damaged: (file) => `${file} est endommagé et ne peut pas être affiché. Le recopier depuis l’appareil, ou l’ouvrir ailleurs et l’exporter en JPEG.`,
  },
  notAPicture: (file, kind) => `${file} est ${kind ?? 'un fichier où aucune image n’est reconnue'}. Choisir une photo enregistrée en JPEG, PNG, WebP ou AVIF.`,
  unsupported: (file, kind) => `${file} est ${kind ?? 'un fichier image'} que ce navigateur n’ouvre pas. L’exporter en JPEG ou PNG.`,
  tooLarge: (file) => `${file} est trop grand pour la mémoire. L’exporter plus petit.`,
  tooManyBytes: (file, megabytes) => `${file} est trop grand pour la mémoire : plus de ${megabytes}. L’exporter plus petit.`,
  tooManyPixels: (file, size, megapixels) =>
    `${file} est trop grand pour la mémoire : ${size}${megapixels ? `, alors que le maximum est de ${megapixels} mégapixels` : ''}. L’exporter plus petit.`,
  notLoaded: (src, status) =>
    `La photo à l’adresse « ${src} » n’a pas été chargée (${status ?? 'aucune réponse'}). Choisir une photo personnelle, ou vérifier l’adresse.`,
  attribute: (name, problem) => `${name} : ${problem}`,

  wayOut: (from, to, held) => `${from} → ${to} à ${held}`,
  wayStands: (to, held) => `${to} à ${held}`,
  wayCost: (stops, brighter) => `${stops} plus ${brighter ? 'clair' : 'sombre'} que cette photo`,
  wayCostNow: (stops, brighter, now, brighterNow) =>
    `${stops} plus ${brighter ? 'clair' : 'sombre'} que cette photo, et ${now} plus ${brighterNow ? 'clair' : 'sombre'} que le réglage actuel`,
  takenAt: (exposure) => `Elle a été prise à ${exposure}.`,
  wayCloseUp: (stops, less) => `Depuis le nouvel endroit, le rapprochement fait perdre ${stops} de lumière de ${less ? 'moins' : 'plus'} ; c’est compté.`,
  wayEnds: (setting, stops, short) => `${setting} : impossible d’aller plus loin, ${short ? `il manque ${stops}` : `${stops} de trop`}.`,
  wayRounds: (stops, brighter) => `Le cran le plus proche est ${stops} plus ${brighter ? 'clair' : 'sombre'}.`,
  wayDone: (setting) => `Fait : la prochaine photo est réglée sur ${setting}.`,
  undo: 'Annuler',
};
