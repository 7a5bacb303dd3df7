import type {PhotoWords} from './en.js';

export const photoWords: PhotoWords = {
  choose: 'Foto wählen',
  chooseOther: 'Anderes Foto wählen',
  staysHere: 'Es wird auf diesem Gerät gelesen und nirgendwohin geschickt.',
  opening: 'Das Foto wird gelesen …',

  named: (name) => `„${name}“`,
  nameless: 'Die Datei',
  kinds: {
    avif: 'eine AVIF-Datei', tiff: 'eine TIFF-Datei', 'jpeg-xl': 'eine JPEG-XL-Datei', 'jpeg-2000': 'eine JPEG-2000-Datei',
    layers: 'ein Bild mit Ebenen', video: 'ein Film', document: 'ein Dokument', drawing: 'eine Vektorgrafik',
  },
  trouble: {
    empty: (file) => `${file} ist leer: Es steht nichts darin. Noch einmal von der Kamera kopieren.`,
    unreadable: (file) => `${file} war nicht zu lesen, wurde vielleicht verschoben oder entfernt. Noch einmal wählen.`,
    raw: (file) => `${file} ist eine RAW-Datei, direkt vom Sensor, und hat noch keine Tonwerte. Erst entwickeln oder das JPEG wählen, das dazu gespeichert wurde.`,
    heic: (file) => `${file} liegt im platzsparenden Format eines Smartphones (HEIC) vor, das dieser Browser nicht öffnet. Am Smartphone das kompatibelste Format einstellen oder das Foto als JPEG exportieren.`,
    'cut-short': (file) => `${file} endet zu früh, wie nach einem abgebrochenen Kopiervorgang. Noch einmal kopieren oder senden.`,
    damaged: (file) => `${file} ist beschädigt und lässt sich nicht zeigen. Noch einmal von der Kamera kopieren oder anderswo öffnen und als JPEG exportieren.`,
  },
  notAPicture: (file, kind) => `${file} ist ${kind ?? 'kein erkennbares Bild'}. Ein Foto wählen, das als JPEG, PNG, WebP oder AVIF gespeichert ist.`,
  unsupported: (file, kind) => `${file} ist ${kind ?? 'eine Bilddatei'}; dieser Browser öffnet so etwas nicht. Als JPEG oder PNG exportieren.`,
  tooLarge: (file) => `${file} ist zu groß für den Speicher. Kleiner exportieren.`,
  tooManyBytes: (file, megabytes) => `${file} ist zu groß für den Speicher: mehr als ${megabytes}. Kleiner exportieren.`,
  tooManyPixels: (file, size, megapixels) =>
    `${file} ist zu groß für den Speicher: ${size}${megapixels ? `, möglich sind höchstens ${megapixels} Megapixel` : ''}. Kleiner exportieren.`,
  notLoaded: (src, status) =>
    `Das Foto unter „${src}“ ließ sich nicht laden (${status ?? 'keine Antwort von dort'}). Ein eigenes wählen oder die Adresse prüfen.`,
  attribute: (name, problem) => `${name}: ${problem}`,

  wayOut: (from, to, held) => `${from} → ${to} bei ${held}`,
  wayStands: (to, held) => `${to} bei ${held}`,
  wayCost: (stops, brighter) => `${stops} ${brighter ? 'heller' : 'dunkler'} als dieses Foto`,
  wayCostNow: (stops, brighter, now, brighterNow) =>
    `${stops} ${brighter ? 'heller' : 'dunkler'} als dieses Foto und ${now} ${brighterNow ? 'heller' : 'dunkler'} als jetzt eingestellt`,
  takenAt: (exposure) => `Es entstand mit ${exposure}.`,
  wayCloseUp: (stops, less) => `Vom neuen Standort aus gehen im Nahbereich ${stops} ${less ? 'weniger' : 'mehr'} Licht verloren; das ist eingerechnet.`,
  wayEnds: (setting, stops, short) => `${setting}: weiter geht es nicht, ${stops} ${short ? 'zu wenig' : 'zu viel'}.`,
  wayRounds: (stops, brighter) => `Die nächstgelegene Raste ist ${stops} ${brighter ? 'heller' : 'dunkler'}.`,
  wayDone: (setting) => `Erledigt: Für die nächste Aufnahme ist ${setting} eingestellt.`,
  undo: 'Rückgängig',
};
