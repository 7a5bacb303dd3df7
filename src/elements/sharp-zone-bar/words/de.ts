import type {Say} from '../../shared/say.js';
import type {Whole, ZoneWords} from './en.js';

export {family} from '../../shared/words/de.js';

export const words = (say: Say): ZoneWords => ({
  say,
  atEdge: 'an der Vorderkante des Sockels',
  beforeBase: (length) => `${length} vor dem Sockel`,
  behindEdge: (length) => `${length} hinter der Vorderkante des Sockels`,

  sharp: (before, behind) => `Scharf von vorn bis hinten, mit ${before} Reserve vorn und ${behind} hinten.`,
  sharpWithoutEnd: (before) => `Scharf von vorn bis hinten, mit ${before} Reserve vorn und ohne Grenze hinten.`,
  softThroughout: 'Von vorn bis hinten im Fokus, aber alles ein wenig weich.',
  frontOutside: (length, of) => `Nicht scharf: Die vorderen ${length} ${OF[of]} liegen außerhalb des scharfen Bereichs.`,
  backOutside: (length, of) => `Nicht scharf: Die hinteren ${length} ${OF[of]} liegen außerhalb des scharfen Bereichs.`,
  bothOutside: (front, back, of) => `Nicht scharf: Die vorderen ${front} und die hinteren ${back} ${OF[of]} liegen außerhalb des scharfen Bereichs.`,
  missed: (length, before) => `Nicht scharf: Die ganze Figur liegt ${length} ${before ? 'vor' : 'hinter'} dem scharfen Bereich.`,

  zoneWithoutEnd: (place) => `Der scharfe Bereich beginnt ${place} und hat kein Ende.`,
  zoneBefore: (from, to) => `Der scharfe Bereich reicht von ${from} bis ${to} vor dem Sockel.`,
  zoneAcross: (from, to) => `Der scharfe Bereich reicht von ${from} vor dem Sockel bis ${to} hinter seiner Vorderkante.`,
  zoneBehind: (from, to) => `Der scharfe Bereich reicht von ${from} bis ${to} hinter der Vorderkante des Sockels.`,
  rests: (aperture, depth, limit, width) =>
    `${aperture} muss ${depth} Tiefe fassen, entlang des Tisches gemessen; scharf heißt: höchstens ${limit} Unschärfe in einem Bild von ${width} Breite.`,
  ends: (front, frontBlur, back, backBlur) => `Unschärfe ${front} ${frontBlur}, ${back} ${backBlur}.`,
  parts: {
    'base-front': 'an der Vorderkante', 'base-back': 'an der Hinterkante', 'overhang-front': 'an der vordersten Spitze',
    'overhang-back': 'an der hintersten Spitze', 'top': 'oben', 'point': 'am Punkt',
  },
  diffraction: (point, limit) =>
    `Eine so kleine Öffnung macht alles weich, auch was im Fokus ist: Durch Beugung wird ein Punkt ${point} breit, die Grenze ist ${limit}.`,
  tilted: 'Die Kamera ist geneigt: Längen gelten auf einem flachen Lineal auf dem Tisch, dort, wo die schrägen Ebenen der Zeichnung es treffen.',
  behindLens: 'Der vorderste Punkt läge hinter dem Objektiv. Die letzte mögliche Zeichnung bleibt stehen.',
  cannotBe: (parameter, value, wanted) =>
    `${parameter} kann nicht ${value} sein; erwartet: ${wanted}. Die letzte mögliche Zeichnung bleibt stehen.`,

  refocus: (place) => `Fokus ${place}`,
  stopDown: (aperture) => `Abblenden auf ${aperture}`,
  openUp: (aperture) => `Aufblenden auf ${aperture}`,
  moveBack: (length) => `Kamera ${length} zurücksetzen, dann beschneiden`,
  moveBackAndStopDown: (length, aperture) => `Kamera ${length} zurücksetzen, auf ${aperture} abblenden, dann beschneiden`,
  gives: 'Bringt',
  price: 'Kostet',
  set: 'Einstellen',
  allSharp: 'alles scharf',
  stillSharp: 'alles bleibt scharf',
  allInFocus: 'alles im Fokus',
  allBut: (length) => `alles im Fokus bis auf ${length} an den Enden`,
  samePicture: 'dasselbe Bild',
  softened: 'alles ein wenig weich, denn die Beugung überschreitet die Grenze',
  nothing: 'nichts',
  shutterUnchanged: 'Belichtungszeit bleibt',
  shutterInstead: (now, before) => `${now} statt ${before}`,
  isoSince: (iso) => `${iso}, denn weiter reicht die Belichtungszeit nicht`,
  gets: (stops, brighter) => `das Bild wird ${stops} ${brighter ? 'heller' : 'dunkler'}`,
  pixelsLeft: (left, needed) => `${left} bleiben über die Bildbreite, ${needed} werden gebraucht`,
  closeUpLess: (stops) => `${stops} heller, denn von dort kostet der Nahbereich weniger Licht`,
  frameWidth: (length) => `zurückgehen, bis ${length} eines Lineals quer in der Schärfeebene ins Bild passen`,
  focusAt: (place) => `Fokus ${place}`,
  apertureAlone: (needed, smallest) => `Nur mit der Blende: Nötig wäre ${needed}, das Objektiv schließt bis ${smallest}.`,
  apertureNever: 'Nur mit der Blende: Keine Öffnung ist klein genug.',
  distanceAlone: (by, but) => `Nur mit dem Abstand: ${by} zurück würden genügen, aber ${but}.`,
  tooFewPixels: (left, needed) => `es blieben nur ${left} von den ${needed}, die gebraucht werden`,
  beyondRoom: (away, room) => `die Kamera stünde ${away} vom Fokus entfernt und hat Platz für ${room}`,
  nearest: 'Keine einzelne Aufnahme fasst alles. Am nächsten kommt:',
  planWeighs: 'Diese Wege bringen nur die Enden in den scharfen Bereich. Ein Aufnahmeplan wägt auch Zeit, Kontrast und Pixel ab und kann Abstand und Blende anders wählen.',
  done: (what, verdict) => `Erledigt: ${what}. ${verdict}`,
  undo: 'Rückgängig',

  drawing: 'Seitenansicht über einem Lineal: Sockel, scharfer Bereich, Fokus und Unschärfe',
  handle: 'Fokus',
  front: 'vorn',
  back: 'hinten',
  camera: 'Kamera',
  focusMark: (length) => `Fokus ${length}`,
  limit: (pixels) => `Grenze ${pixels}`,
  blurCaption: 'Unschärfe, in Pixeln des fertigen Bildes',
  curve: 'Kurve unter dem Lineal',
  blur: 'Unschärfe',
  contrast: 'Kontrast',

  apertureWorking: 'Blende, wie angezeigt',
  markedAs: (aperture) => `graviert ${aperture}`,
  focalLength: 'Brennweite',
  fieldWidth: 'Bildfeldbreite',
  fieldWidthHint: 'füllt das Bild',
  baseDepth: 'Sockeltiefe',
  focus: 'Fokus',
  focusHint: 'hinter der Vorderkante',
  detailWanted: 'die Breite einer Linie, etwa 1 px oder 0,2 mm',

  folds: {
    figure: 'Figur: was über den Sockel ragt',
    camera: 'Kamera: Abstand, Sensor, Grenzen',
    picture: 'Fertiges Bild, Unschärfegrenze, Einheit',
    stack: 'Oder mehrere Aufnahmen für einen Fokus-Stack',
    distance: 'Was ein Schritt zurück bringt',
    rulerPhoto: 'Bildfeldbreite aus dem Foto eines Lineals',
    ownLimit: 'Die eigene Grenze, aus einer Linealaufnahme',
  },
});

const OF: Readonly<Record<Whole, string>> = {base: 'des Sockels', figure: 'der Figur'};
