import type {Say} from '../../../shared/say.js';
import type {SharpnessWords} from './en.js';

export {family} from '../../../shared/words/pl.js';

export const words = (say: Say): SharpnessWords => ({
  say,
  looking: 'Szukanie…',
  lookingSoFar: (percent) => `Szukanie… ${percent}`,

  onWay: (fraction) => `mniej więcej w ${fraction} drogi od A do B`,
  stretch: (from, to) => `od ${from} do ${to}`,
  at: (place) => `przy ${place}`,

  sharp: (pieces) => `Na drodze od A do B jest ostro ${pieces}.`,
  sharpOnRuler: (pieces) => `Ostro ${pieces} na linijce.`,
  sharpAll: 'Od A do B tak ostro jak w najostrzejszym miejscu.',
  nothingKnown: 'Wzdłuż tej linii nie ma po czym ocenić ostrości: gładka powierzchnia albo rozmycie tak duże, że nie widać szczegółów. To znaczy nieznane, a nie miękkie.',
  noFocus: 'Na tej linii nie da się wskazać płaszczyzny ostrości: rozmycie musi wyraźnie rosnąć po obu jej stronach.',
  focusAt: (place) => `Płaszczyzna ostrości leży ${place}.`,
  focusOnRuler: (place, give) => `Płaszczyzna ostrości leży przy ${place} na linijce, z dokładnością do ${give}.`,
  focusFromFront: (place, distance, before, give) =>
    `Płaszczyzna ostrości leży przy ${place} na linijce, ${distance} ${before ? 'przed przednią krawędzią' : 'za przednią krawędzią'} podstawki, z dokładnością do ${give}.`,
  oneShot: 'Wyznaczone z jednego ujęcia. Szczegóły coraz drobniejsze wzdłuż linii trochę to przesuwają; drugie ujęcie z inną przysłoną to usuwa.',
  bothShots: 'Wyznaczone z obu ujęć, więc drobność szczegółów nie ma znaczenia.',

  thisShot: 'To ujęcie',
  earlierShot: 'wcześniejsze',
  noGain: (shot, other) => `Bez zysku: ${shot} i ${other} są tak samo ostre wszędzie, gdzie da się ocenić oba.`,
  noDetail: 'Wzdłuż tej linii nie ma szczegółów, po których dałoby się ocenić oba ujęcia.',
  notWorth: (shot, other, part, pixels) =>
    `Nie warto: ${shot} nigdzie nie jest ostrzejsze niż ${other}, a na ${part} linii jest bardziej miękkie, nawet o ${pixels}.`,
  worth: (shot, other, part, pixels, place) =>
    `Warto: ${shot} jest ostrzejsze niż ${other} na ${part} linii, najbardziej ${place}, gdzie ma o ${pixels} mniej rozmycia.`,
  butSofter: (part, pixels) => `Na ${part} linii jest bardziej miękko, nawet o ${pixels}.`,
  restAlike: 'Poza tym nie ma różnicy.',
  restMixed: 'Poza tym nie ma różnicy albo nie ma czego ocenić.',
  restUnknown: 'Reszty nie da się ocenić.',
  diffractionOver: (aperture, disc, limit) =>
    `Przy ${aperture} sam mały otwór rozmywa każdy punkt do ${disc} (dyfrakcja), więcej niż ${limit}, które jeszcze wygląda ostro. Dalsze przymykanie nie wyostrzy niczego w płaszczyźnie ostrości.`,
  diffractionWithin: (aperture, disc, limit) =>
    `Przy ${aperture} mały otwór rozmywa każdy punkt do ${disc} (dyfrakcja), w granicach ${limit}, które wygląda ostro.`,
  otherSize: 'Wcześniejsze ujęcie ma inną liczbę pikseli lub pokazuje inną scenę: jego ostrości nie da się zestawić z tą.',

  line: {a: 'Linia, koniec A', b: 'Linia, koniec B'},
  endAt: (left, top) => `${left} od lewej, ${top} od góry`,
  keys: 'Strzałki przesuwają koniec linii, z klawiszem Shift małymi krokami.',
  lay: 'Ułóż linię',
  frontToBack: 'Od przodu w głąb, obok podstawki',
  across: 'W poprzek',
  ruler: 'Z linijką wzdłuż linii',
  rulerAt: {atA: 'Linijka przy A', atMiddle: 'Linijka przy + w środku', atB: 'Linijka przy B', atFront: 'Przód podstawki'},
  layOnRuler: 'Linia ma leżeć na linijce ułożonej obok podstawki od przodu w głąb: przesunąć na nią A i B. Po wpisaniu wskazań linijki przy A i B odpowiedź będzie w długościach.',
  middleHint: 'dalsze rzeczy wyglądają na mniejsze: to się tu uwzględnia',
  reckoned: 'O ile mniejsze wyglądają dalsze rzeczy, wyliczono z ogniskowej i szerokości pola. Po odczytaniu linijki przy + w środku linii będzie to zmierzone.',
  wrongMiddle: 'Odczyt przy + musi leżeć między odczytami na końcach.',
  setFocus: (distance, before) => `Ostrość ${distance} ${before ? 'przed przednią krawędzią' : 'za przednią krawędzią'}`,
  setFocusFrom: (now) => `Teraz ustawione jest ${now}. Przyjąć to, co pokazuje to zdjęcie.`,
  focusDone: (distance, before) => `Gotowe: ostrość ustawiona ${distance} ${before ? 'przed przednią krawędzią' : 'za przednią krawędzią'}.`,
  undo: 'Cofnij',

  softerUp: 'bardziej miękko',
  curve: (least, most, unknown) => `Rozmycie wzdłuż linii od A do B: ${least} w najostrzejszym, ${most} w najbardziej miękkim miejscu; ${unknown} nieznane.`,
  curveNote: (limit, upTo) =>
    `Rozmycie w pikselach gotowego zdjęcia. Nawet najostrzejszy szczegół ma własną szerokość, więc miejsce uchodzi za ostre do ${upTo}: tyle co w najostrzejszym miejscu linii i jeszcze ${limit} rozmycia. Kreskowane: nie ma czego ocenić.`,

  heat: 'Pokaż na zdjęciu',
  heatSharp: 'To ujęcie',
  heatChange: 'Względem wcześniejszego',
  legendNote: 'Oceniane względem najostrzejszej dziesiątej części kadru. Grube szczegóły wyglądają bardziej miękko niż drobne o tej samej ostrości: porównywać podobne z podobnym albo dwa ujęcia.',
  heatNames: {sharp: 'wśród najostrzejszych', near: 'bardziej miękkie', soft: 'miękkie', unknown: 'nieznane: brak szczegółów'},
  changeNames: {sharper: 'teraz ostrzej', softer: 'teraz bardziej miękko', alike: 'bez zmian', unknown: 'nieznane: brak szczegółów'},
});
