import type {Say} from '../../shared/say.js';
import type {PlanWords} from './en.js';

export {family} from '../../shared/words/de.js';

export const words = (say: Say): PlanWords => ({
  say,
  plan: 'Aufnahmeplan',

  sharpInOne: (sharp, setting, from, focus) => `${sharp ? 'Scharf' : 'Im Fokus'} von Spitze zu Spitze in einer Aufnahme: ${setting}, aus ${from} Entfernung, Fokus ${focus}.`,
  sharpInOneWith: (sharp, lens, setting, from, focus) =>
    `${sharp ? 'Scharf' : 'Im Fokus'} von Spitze zu Spitze in einer Aufnahme: ${setting}, aus ${from} Entfernung mit ${lens} Brennweite, Fokus ${focus}.`,
  sharpInFrames: (sharp, frames, setting, from) => `${sharp ? 'Scharf' : 'Im Fokus'} von Spitze zu Spitze in ${frames}: je ${setting}, aus ${from} Entfernung.`,
  sharpInFramesWith: (sharp, lens, frames, setting, from) =>
    `${sharp ? 'Scharf' : 'Im Fokus'} von Spitze zu Spitze in ${frames}: je ${setting}, aus ${from} Entfernung mit ${lens} Brennweite.`,
  softened: (little, point, limit) => `Die Beugung macht alles ${little ? 'ein wenig ' : ''}weich: Ein Punkt wird ${point} breit, die Grenze ist ${limit}.`,
  pair: (aperture, shutter) => `${aperture} bei ${shutter}`,
  shown: (aperture, shown) => `${aperture} (die Kamera zeigt ${shown})`,
  frames: (count, written) => say.plural(count, {one: '1\u00a0Aufnahme', other: `${written}\u00a0Aufnahmen`}),
  atEdge: 'auf der Vorderkante des Sockels',
  beforeBase: (length) => `${length} vor dem Sockel`,
  behindEdge: (length) => `${length} hinter der Vorderkante des Sockels`,
  hopeless: 'Diese Wünsche lassen sich nicht erfüllen, so weit man sie auch zurücknimmt.',
  giveUpOne: (wish) => `Nicht alle diese Wünsche gehen zugleich. Am wenigsten kostet: „${wish}“.`,
  giveUpAll: 'Nicht alle diese Wünsche lassen sich erfüllen, und auf einen allein zu verzichten genügt nicht. Auf alle diese zu verzichten genügt:',
  rests: (depth, picture, blur, contrast) => `Zu fassen: ${depth} Tiefe entlang des Tisches in einem Bild von ${picture}. Scharf heißt: höchstens ${
    blur} Unschärfe darin; die feinste Linie, ebenso breit, behält mindestens ${contrast} ihres Kontrasts.`,
  nothingToSet: (which) =>
    `Kein Plan: Zwischen den Grenzen der ${which === 'aperture' ? 'Blende' : 'Belichtungszeit'} gibt es nichts einzustellen. Der letzte gute Plan bleibt.`,
  noPlan: (name, value, wanted) => `Kein Plan: „${name}“ ist ${value}; erwartet: ${wanted}. Der letzte gute Plan bleibt.`,

  ways: 'Wege zur Schärfe',
  weighs: (contrast) => `Geordnet nach Zeit, Zahl der Aufnahmen, Abstand, Pixeln und Objektivwechsel; bei allen behält die feinste Linie mindestens ${
    contrast} ihres Kontrasts. Der Schärfebalken holt nur die Enden in den scharfen Bereich und kann daher eine andere Einstellung nennen.`,
  way: (kind, frames) => ({
    stay: 'So nah, wie das Bildfeld es erlaubt', 'move-back': 'Weiter weg und beschnitten', stack: `${frames}, verrechnet`,
  })[kind],
  wayOf: (way, lens) => `${way} (${lens} Brennweite)`,
  from: (setting, distance) => `${setting}, aus ${distance} Entfernung`,
  each: (setting, distance) => `je ${setting}, aus ${distance} Entfernung`,
  set: 'eingestellt',
  pick: 'einstellen',
  further: 'Weitere Wege',
  fewer: 'Nur die besten',
  done: (what) => `Erledigt: ${what}.`,
  undo: 'Rückgängig',

  price: (parts) => `Preis: ${parts}`,
  parting: '; ',
  smaller: (clicks, written) => say.plural(clicks, {one: 'Blende um 1 Raste kleiner', other: `Blende um ${written} Rasten kleiner`}),
  larger: (clicks, written) => say.plural(clicks, {one: 'Blende um 1 Raste größer', other: `Blende um ${written} Rasten größer`}),
  stackTime: (seconds, frames, shutter, settle) => `${seconds} (${frames} × ${shutter} und ${settle} zum Verstellen und Ausschwingen dazwischen)`,
  back: (length, now) => `${length} weiter weg als ${now ? 'jetzt' : 'am nächstgelegenen Platz'}`,
  pixels: (pixels) => `${pixels} der Breite abgeschnitten`,
  moreFrames: (count, written) => say.plural(count, {one: '1 Aufnahme mehr zu verrechnen', other: `${written} Aufnahmen mehr zu verrechnen`}),
  otherLens: 'ein Objektivwechsel',

  giveUp: 'Worauf sich verzichten ließe',
  single: 'Was eine einzige Aufnahme verlangt',
  singleAny: 'Eines davon genügt, und es ist nichts zu verrechnen:',
  singleAll: 'Alles davon zusammen, und es ist nichts zu verrechnen:',
  allTogether: 'Auf all das verzichten',
  wish: (wish, to) => ({
    frames: `Bis zu ${to} zulassen`, 'picture-width': `Nur ${to} breit zeigen`, 'blur-limit': `${to} Unschärfe zulassen`,
    contrast: `Der feinsten Linie nur ${to} ihres Kontrasts lassen`, shutter: `Bis zu ${to} belichten`,
    room: `Platz für ${to} schaffen`, margin: `Nur ${to} Rand lassen`,
  })[wish],
  noMargin: 'Keinen Rand lassen',
  now: (value, most) => (most ? `jetzt höchstens ${value}` : `jetzt ${value}`),

  drawing: 'Seitenansicht: Figur, Kamera und Blickfeld',
  noPlace: 'kein Platz gefunden',
  mark: 'Sensormarke bis Fokus',
  camera: (distance, tilt) => `${distance}, ${tilt}`,
  tilt: (way, degrees) => (way === 'level' ? 'waagerecht' : `${degrees}° nach ${way === 'down' ? 'unten' : 'oben'}`),
  focusAt: (length) => `Fokus ${length}`,
  focusPlanes: (count) => `${count} Schärfeebenen`,
  drawn: (way, unit) => `Maßstäblich gezeichnet: „${way}“. Das Lineal zählt ${unit} entlang des Tisches ab der Vorderkante des Sockels; sein dicker Teil ist scharf.`,
  broken: 'An der Bruchlinie ist ein Stück ausgelassen: Die Kamera steht weiter weg.',
  inches: 'Zoll',
  grips: {
    'overhang-front': 'Vorderste Spitze', 'overhang-back': 'Hinterste Spitze', top: 'Oberkante der Figur', 'base-front': 'Vorderkante des Sockels',
    'base-back': 'Hinterkante des Sockels', tilt: 'Kamera, Blick nach unten',
  },
  noOverhang: 'ragt nicht über den Sockel hinaus; mit links und rechts lässt sie sich herausziehen',
  overhang: (length, front, height) => `${length} über die ${front ? 'Vorder' : 'Hinter'}kante hinaus, ${height} hoch`,
  aboveTable: (length) => `${length} über dem Tisch`,
  deep: (length) => `Sockel ${length} tief`,
  free: {both: 'Links und rechts für den Überhang, auf und ab für die Höhe', up: 'Auf und ab', along: 'Links und rechts'},
  gripTitle: (name, value, hint) => `${name}: ${value}. ${hint}.`,

  compare: 'Nebeneinander',
  curve: 'Feine Linien bei jeder Blende',
  rates: 'Was wie viel zählt',
  figure: 'Figur in Zahlen',
  cameraAndLens: 'Kamera, Objektiv und Grenzen',
  sharp: 'Was als scharf gilt, Aufnahmen, Einheit',

  focalLengths: 'Brennweiten',
  focalLengthsHint: 'vorhandene, die angesetzte zuerst',
  room: 'Platz fürs Stativ',
  roomHint: 'von der Sensormarke (⌀ am Gehäuse) bis zum Fokus, höchstens',
  metered: 'Gemessene Blende',
  meteredWorking: 'Gemessene Blende, wie angezeigt',
  meteredShutter: 'Gemessene Zeit',
  pictureWidth: 'Bildbreite, px',
  pictureHeight: 'Bildhöhe, px',
  margin: 'Rand',
  marginHint: 'der Breite, auf allen Seiten',
});
