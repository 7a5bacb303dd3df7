import type {Say} from '../../../shared/say.js';
import {sensor} from '../../../shared/sensor/words/de.js';
import type {FoldWords} from './en.js';

export {family} from '../../../shared/words/de.js';

export const words = (say: Say): FoldWords => ({
  say,
  ...sensor,

  overhangFront: 'Überhang vorn',
  overhangFrontHeight: '… in einer Höhe von',
  overhangBack: 'Überhang hinten',
  overhangBackHeight: '… in einer Höhe von',
  figureHeight: 'Höhe über dem Tisch',
  tilt: 'Kamera nach unten geneigt um',
  distance: 'Kamera bis Fokus',
  distanceHint: 'vom ⌀ am Gehäuse, wo der Sensor liegt; bestimmt die Bildfeldbreite',
  room: 'Platz für die Kamera',
  roomHint: 'größter möglicher Abstand vom Fokus',
  apertureWidest: 'Offenblende',
  apertureSmallest: 'Kleinste Blende',
  apertureShown: 'Die Kamera zeigt Blenden',
  marked: 'wie graviert',
  working: 'Nahbereich eingerechnet',
  pupilRatio: 'Pupillenmaßstab des Objektivs',
  pupilRatioHint: 'wie groß seine Öffnung von hinten aussieht, geteilt durch die Größe von vorn; 1, wenn unbekannt',
  pictureWidth: 'Breite des fertigen Bildes, px',
  frameWidth: 'Aufnahmebreite, px',
  blurLimit: 'Unschärfegrenze, px im fertigen Bild',
  unit: 'Längen in',
  inches: 'Zoll',
  kept: (width, pixels) => `Der Ausschnitt behält ${width} der Sensorbreite, ${pixels}.`,

  detail: 'Feinste Linie',
  detailHint: '1 px, oder 0,2 mm auf der Figur',
  lost: 'nichts übrig',
  lostAt: 'verloren',
  contrastCaption: 'Kontrast der feinsten Linie',
  tooFine: (width) => `Eine Linie von ${width} ist für diese Öffnung zu fein: Von ihrem Kontrast bleibt nichts, auch nicht im Fokus.`,
  keeps: (width, inFocus, front, frontKeeps, back, backKeeps) =>
    `Eine Linie von ${width} behält im Fokus ${inFocus} ihres Kontrasts, ${front} ${frontKeeps}, ${back} ${backKeeps}.`,
  none: 'nichts',

  frames: (aperture, count, places) => say.plural(count, {
    one: `Bei ${aperture} genügt eine Aufnahme. Fokus hinter der Vorderkante des Sockels: ${places}.`,
    other: `Bei ${aperture} genügen ${count} Aufnahmen, deren scharfe Bereiche sich um ein Viertel oder mehr überlappen. `
      + `Fokus hinter der Vorderkante des Sockels, von vorn an: ${places}.`,
  }),
  tooManyAt: (aperture) => `Bei ${aperture} wären mehr Aufnahmen nötig, als irgendwer macht.`,
  tooMany: 'Bei jeder Blende wären mehr Aufnahmen nötig, als irgendwer macht.',
  bestNow: 'Für feine Linien ist von hier aus keine Blende besser.',
  best: (aperture, count) => say.plural(count, {
    one: `Für feine Linien von hier aus am besten: eine Aufnahme bei ${aperture}.`,
    other: `Für feine Linien von hier aus am besten: ${count} Aufnahmen bei ${aperture}. Ein Aufnahmeplan rechnet auch die Arbeit je Aufnahme ein und kommt mitunter mit weniger aus.`,
  }),
  stackTakes: (seconds, time, contrast) =>
    `Mit ${seconds} dazwischen dauern sie zusammen etwa ${time}; wo sie am schwächsten ist, behält die feinste Linie ${contrast} ihres Kontrasts.`,
  setStack: (aperture, shutter) => `Dafür ${aperture} und ${shutter} einstellen`,

  back: 'Kamera zurück um',
  slide: 'Der Schieber zeigt, was ein Schritt zurück bringt: Das Bild wird auf das beschnitten, was es jetzt zeigt.',
  worth: (stops, now, then) => `Bringt ${stops} Schärfentiefe: Der scharfe Bereich wächst von ${now} auf ${then}, bei gleicher Blende.`,
  worthWithoutEnd: (stops) => `Bringt ${stops} Schärfentiefe: Der scharfe Bereich endet hinten nicht mehr, bei gleicher Blende.`,
  costs: (share, left, needed) => `Kostet ${share} der Pixel in der Breite: ${left} bleiben, ${needed} werden gebraucht.`,
  reach: (length) => `Die Pixel reichen für ${length} zurück.`,
  noReach: 'Es sind keine Pixel übrig.',
  roomReach: (length) => `Der Platz für die Kamera reicht für ${length} zurück.`,
  noRoom: 'Weiter zurück ist kein Platz für die Kamera.',
  goBack: (length) => `${length} zurückgehen und beschneiden`,
  goBackNowhere: 'Zurückgehen und beschneiden',

  rulerHow: 'Die beiden Punkte auf zwei Teilstriche ziehen. Beide müssen gleich weit von der Kamera entfernt im Fokus liegen, auf einem Lineal quer zur '
    + 'Blickrichtung: Auf einem Lineal, das von der Kamera wegläuft, ändert sich der Maßstab, und zwei Punkte verraten nicht, wie.',
  photoLinked: 'Noch ist kein Foto geöffnet. Im Tonwertdiagramm dieser Seite eines öffnen: Es ist mit diesem Schärfebalken verbunden, und das Foto erscheint dann hier.',
  photoAlone: 'Sobald ein Tonwertdiagramm auf dieser Seite mit diesem Schärfebalken verbunden ist, erscheint hier das Foto, das dort geöffnet ist.',
  photo: 'Foto mit zwei Punkten',
  points: ['Erster Punkt', 'Zweiter Punkt'],
  at: (x, y) => `${x} Pixel von links, ${y} von oben`,
  cropped: 'Dieses Foto hat ein anderes Seitenverhältnis als der Sensor. Wenn es beschnitten wurde, kommt das Bildfeld zu schmal heraus: besser so nehmen, wie es aus der Kamera kam.',
  apart: 'Länge zwischen den Punkten',
  apartHint: 'wie das Lineal sie zählt',
  together: 'Die beiden Punkte liegen aufeinander. Einen davon wegziehen.',
  takesIn: (field, magnification) => `Das Bild fasst ${field} in der Breite: ein Abbildungsmaßstab von ${magnification}.`,
  isSet: 'So ist es eingestellt.',
  setNow: (field, off, less) => `Jetzt eingestellt: ${field}, ${off} ${less ? 'weniger' : 'mehr'}.`,
  useField: (field) => `Bildfeldbreite auf ${field} stellen`,

  ownHow: 'Mit den Einstellungen oben ein flaches Lineal fotografieren, das an der Vorderkante des Sockels vorbei von der Kamera wegläuft. '
    + 'Die Aufnahme in fertiger Größe ansehen und ablesen, was noch scharf aussieht.',
  zero: 'Teilstrich an der Vorderkante',
  nearest: 'Nächster scharfer Teilstrich',
  farthest: 'Fernster scharfer Teilstrich',
  farthestWanted: 'ein Teilstrich hinter dem nächsten',
  ownLimit: (limit) => `Die eigene Grenze liegt bei ${limit}.`,
  focusWas: (place) => `Der Fokus lag ${place}, also da, wo er liegen sollte.`,
  focusWasOff: (place, off, behind) => `Der Fokus lag ${place}, ${off} ${behind ? 'hinter' : 'vor'} der Stelle, an der er liegen sollte.`,
  useOwn: 'Diese Grenze und diesen Fokus ab jetzt verwenden',
});
