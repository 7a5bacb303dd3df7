import {photoWords} from '../../../shared/photo/words/pl.js';
import type {Say} from '../../../shared/say.js';
import type {AimsWhy} from '../judgement.js';
import type {SheetWords} from './en.js';

export {family} from '../../../shared/words/pl.js';

export const words = (say: Say): SheetWords => ({
  ...photoWords,
  say,

  keepFits: (room) => `Zostawić: nic ważnego nie jest przycięte, a najjaśniejsze tony leżą o ${room} poniżej bieli.`,
  yoursGlints: (colours, many, share) =>
    `Do uznania: ${colours} ${many ? 'dochodzą' : 'dochodzi'} do bieli tylko w ${share} kadru, jak odblask na latarni lub wilgotnym oku.`,
  yoursBlack: (share) => `Do uznania: ${share} kadru jest czarne bez szczegółów, jak bywa z ciemnym tłem.`,
  keepBlack: (share) => `Zostawić: ${share} kadru jest czarne bez szczegółów, a światła nie zostawiają zapasu, by je rozjaśnić.`,
  againWhite: (stops, colours, many, share) =>
    `Powtórzyć o ${stops} ciemniej: ${colours} ${many ? 'są przycięte' : 'jest przycięty'} przy bieli w ${share} kadru.`,
  againBlack: (stops, share) => `Powtórzyć o ${stops} jaśniej: ${share} kadru jest przycięte przy czerni, a jest zapas, by je rozjaśnić.`,
  againDark: (stops, intent) =>
    `Powtórzyć o ${stops} jaśniej: ${intent === 'even' ? 'zdjęcie jest ciemniejsze niż średnia szarość' : 'figurka zniesie więcej światła'}.`,
  againBright: (stops) => `Powtórzyć o ${stops} ciemniej: zdjęcie jest jaśniejsze niż średnia szarość.`,
  keepDark: 'Zostawić: zdjęcie jest ciemne, ale światła nie zostawiają zapasu, by je rozjaśnić.',
  keepBright: 'Zostawić: zdjęcie jest jasne, ale cienie nie zostawiają zapasu, by je przyciemnić.',
  relight: (white, black) =>
    `Zmienić światło i powtórzyć: ${white} kadru jest przycięte przy bieli, a ${black} przy czerni, żadna ekspozycja nie obejmie obu.`,
  allBlack: 'Powtórzyć z większą ilością światła: cały kadr jest czarny.',

  softer: 'Zmiękczyć światło lub przesunąć lampę albo rozjaśnić cienie blendą lub drugą lampą.',
  beyondWhite: 'Tego, jak daleko światło wychodzi poza biel, nie ma w pliku i trzeba było to oszacować: sprawdzić po następnym ujęciu.',
  beyondBlack: 'Tego, jak głęboko schodzą cienie, nie ma w pliku i trzeba było to oszacować: sprawdzić po następnym ujęciu.',
  cropFirst: 'Jeśli leży to tam, gdzie będzie odcięte, najpierw zaznaczyć kadr.',
  ifNoGlint: (stops) => `Jeśli to skóra, tkanina lub biała farba, powtórzyć o ${stops} ciemniej.`,
  ifFigure: (stops) => `Jeśli to część figurki, powtórzyć o ${stops} jaśniej.`,
  fillLifts: 'Blenda lub druga lampa rozjaśni cienie; większa ekspozycja odbyłaby się kosztem świateł.',
  roomNow: (now, after) => `Najjaśniejsze tony leżą teraz o ${now} poniżej bieli, a po zmianie o ${after}.`,
  roomBelow: (now, after) => `Najciemniejsze tony leżą teraz o ${now} powyżej czerni, a po zmianie o ${after}.`,
  leansLeft: 'Przy ciemnym tle wykres przesunięty w lewo jest prawidłowy.',
  middleFits: 'Połowa zdjęcia jest ciemniejsza, a połowa jaśniejsza niż średnia szarość, z dokładnością do pół EV.',
  hiddenWhite: 'Sam wykres jasności by tego nie pokazał.',
  hiddenBlack: (colours) => `W najciemniejszych miejscach brakuje barw (${colours}), jak to w mocnych kolorach; więcej światła ich nie przywróci.`,

  cropAll: 'Liczone jest całe zdjęcie. Zaznaczyć ramką to, co zostanie, aby nie liczyć tego, co będzie odcięte.',
  cropKeeps: (share) => `Kadr obejmuje ${share} zdjęcia.`,
  cropReads: (share, edge, now, whole) =>
    `Kadr obejmuje ${share} zdjęcia i dochodzi w jakiejś barwie do ${edge === 'black' ? 'czerni' : 'bieli'} w ${now}, a całe zdjęcie w ${whole}.`,
  cropMatters: (brief) => `Bez kadru odpowiedź brzmiałaby: ${brief}.`,
  cropNoMatter: 'Bez niego odpowiedź byłaby ta sama.',
  brief: {
    keep: () => 'zostawić', yours: () => 'do uznania', relight: () => 'zmienić światło',
    brighter: (stops) => `o ${stops} jaśniej`, darker: (stops) => `o ${stops} ciemniej`,
  },
  transparent: 'W tym kadrze nie ma czego liczyć: wszystko jest przezroczyste. Zostaje ostatni odczyt.',

  picture: 'Zdjęcie z ramką tego, co zostanie',
  frame: 'Ramka kadru',
  spotFrame: 'Mierzone miejsce',
  frameKeys: 'Strzałki przesuwają ramkę, z klawiszem Shift zmieniają jej rozmiar; Page Up i Page Down ją powiększają i zmniejszają. Home obejmuje całe zdjęcie.',
  frameAt: (width, height, left, top) => `${width} na ${height}, ${left} od lewej, ${top} od góry`,
  cropSize: (size, whole) => `${size} z ${whole}.`,
  cropWhole: (size) => `${size}, całe zdjęcie.`,
  ownCrop: 'Następne ujęcie ma powstać z innego miejsca i z własnym kadrem; to zdjęcie zachowuje swój.',
  keepAll: 'Zostaw całość',
  byNumbers: 'Kadr w liczbach',
  sides: {left: 'Od lewej', top: 'Od góry', width: 'Szerokość', height: 'Wysokość'},
  sizeWanted: (pixels) => `część do 100% lub od 1 do ${pixels} px`,
  placeWanted: (pixels) => `część poniżej 100% lub od 0 do ${pixels} px`,

  fromFile: (list) => `Z pliku: ${list}.`,
  notInFile: (list, many) => `Brak w pliku: ${list}; ${many ? 'te wartości zostają' : 'ta wartość zostaje'} jak tutaj.`,
  fileSilent: 'Plik nie mówi, jak zrobiono zdjęcie: za jego ustawienia przyjęto te, które są tutaj.',
  lens: (length) => `ogniskowa ${length}`,
  sensor: (width, about) => `szerokość matrycy ${about ? 'około ' : ''}${width}`,
  missing: {aperture: 'przysłona', shutter: 'czas', iso: 'ISO', focalLength: 'ogniskowa', sensorWidth: 'szerokość matrycy'},

  chart: 'Wykres dla',
  shown: {colours: 'Barwy', brightness: 'Jasność', red: 'Czerwony', green: 'Zielony', blue: 'Niebieski'},
  channels: {red: 'Czerwony', green: 'Zielony', blue: 'Niebieski', brightness: 'Jasność'},
  channelsInText: {red: 'czerwony', green: 'zielony', blue: 'niebieski', brightness: 'jasność'},
  letters: {red: 'R', green: 'G', blue: 'B', brightness: 'J'},
  intent: 'Zamierzone zdjęcie',
  intents: {'dark-backdrop': 'figurka na ciemnym tle', even: 'wyważone, tyle jasnego co ciemnego'},
  table: 'Ile jest przycięte w kadrze i ile zostało zapasu w EV',
  columns: {channel: 'Barwa', black: 'Przy czerni', below: 'Zapas w dół', white: 'Przy bieli', above: 'Zapas w górę'},
  anyColour: 'Którakolwiek',
  black: 'czerń',
  white: 'biel',
  gray: 'szara karta',
  toBlack: (stops) => `${stops} EV do czerni`,
  toWhite: (stops) => `${stops} EV do bieli`,
  lost: 'przycięte',
  none: 'brak',
  noLight: 'bez światła',
  channelEdges: (channel, atBlack, atWhite, below, above) =>
    `${channel}: ${atBlack} przy czerni, ${atWhite} przy bieli, zapas w dół ${below}, w górę ${above}.`,
  scaleNote: 'Duże liczby: EV poniżej bieli. Małe: wartość piksela w tym miejscu w pliku, od 0 do 255. Cztery razy więcej pikseli sięga dwa razy wyżej, żeby było widać drobiazgi.',
  dashed: 'Linia przerywana: dokąd przesunie się wykres, jeśli pójść za radą.',
  thin: 'Cienka linia: wcześniejsze ujęcie.',

  measure: 'Zmierz miejsce',
  isCard: 'To miejsce to szara karta',
  noCard: 'Zapomnij o szarej karcie',
  spotBlack: (value) => `To miejsce jest czarne: wartość ${value} z 255.`,
  spotOn: (measured, value) => `To miejsce jest tak jasne jak ${measured ? 'zmierzona szara karta' : 'dobrze naświetlona szara karta'}: wartość ${value} z 255.`,
  spotOff: (stops, above, measured, value) =>
    `To miejsce leży o ${stops} ${above ? 'powyżej' : 'poniżej'} ${measured ? 'zmierzonej szarej karty' : 'dobrze naświetlonej szarej karty'}: wartość ${value} z 255.`,
  spotMean: (mean, spread, values) => `Odbija ${mean} światła bieli, z rozrzutem ${spread}. Czerwony, zielony i niebieski mają wartości ${values}.`,
  spotAtWhite: (share) => `${share} z tego jest przycięte przy bieli, więc jest ono jaśniejsze.`,
  spotAtBlack: (share) => `${share} z tego nie ma już światła w jednej z barw.`,

  aims: 'Gdzie mają leżeć światła i cienie figurki',
  aimNames: {highlights: 'Światła przy', shadows: 'Cienie co najmniej', backdrop: 'Tło zajmuje'},
  aimHints: {highlights: 'wartość 0–255', shadows: 'wartość 0–255', backdrop: 'kadru'},
  valueWanted: 'wartość od 1 do 254, cienie poniżej świateł',
  shareWanted: 'część poniżej 100%',
  aimsUnknown: 'Światła są na tym ujęciu przycięte, więc nie wiadomo, gdzie leżą: najpierw pójść za radą, powtórzyć ujęcie i dopiero wtedy zajrzeć tutaj.',
  aimsFit: (highlights, shadows, aim) =>
    `Na tym ujęciu światła leżą przy ${highlights}, a cienie przy ${shadows}: nie dalej niż 1/3 EV od celu ${aim}.`,
  aimsAsk: (stops, brighter, highlights, shadows) =>
    `Ten cel wymaga ${stops} ${brighter ? 'więcej' : 'mniej'}: światła będą wtedy przy ${highlights}, a cienie przy ${shadows}.`,
  aimsDiffer: (answer, why) => `Pierwszeństwo ma odpowiedź na górze: ${answer}. ${AIMS_WHY[why]}`,
  shadowsShort: (stops, aim) =>
    `Cieniom brakuje ${stops} do ${aim}: rozjaśni je blenda lub druga lampa; większa ekspozycja odbyłaby się kosztem świateł.`,
  fromCard: 'Najjaśniejsza i najciemniejsza farba są wyliczone ze zmierzonej szarej karty.',
  fromCrop: 'Odczytane z kadru. Aby oprzeć się na szarej karcie, zmierzyć na niej miejsce i to zaznaczyć.',

  beside: 'Obok wcześniejszego ujęcia',
  keepShot: 'Zachowaj to ujęcie do porównania',
  kept: 'To ujęcie jest zachowane. Po otwarciu następnego zostaną porównane.',
  openEarlier: 'Wybierz wcześniejsze ujęcie',
  away: 'Usuń wcześniejsze ujęcie',
  edgesTable: 'Przycięte we wcześniejszym ujęciu → w tym',
  sameAs: 'To ujęcie jest tak samo jasne jak wcześniejsze',
  shiftedBy: (stops, brighter) => `To ujęcie jest o ${stops} ${brighter ? 'jaśniejsze' : 'ciemniejsze'} od wcześniejszego`,
  shiftNear: (measured, clicks) => `${measured}, najbliżej: ${clicks}. Pliki nie mówią, co było zamierzone.`,
  shiftSmall: (measured) => `${measured}, mniej niż pół skoku o 1/3 EV. Pliki nie mówią, co było zamierzone.`,
  shiftMeant: (measured, stops) => `${measured}, zgodnie z ustawieniami (${stops ?? 'ta sama ekspozycja'}).`,
  shiftOff: (measured, stops, brighter) =>
    `${measured}, a według ustawień powinno być ${stops ? `o ${stops} ${brighter ? 'jaśniejsze' : 'ciemniejsze'}` : 'takie samo'}: zmieniły się też lampy, obiektyw lub scena.`,
  oneClick: 'jeden skok o 1/3 EV',
  otherShape: 'Oba ujęcia mają różne proporcje: to nie jest ten sam kadr i nie można ich porównać.',
  otherSet: 'Oba ujęcia nie pokazują tej samej sceny z tego samego miejsca: nie ma między nimi jednej różnicy jasności.',
  nothingInCommon: 'Żadna część kadru nie jest wolna od przyciętych tonów na obu ujęciach: nie ma czego porównać.',
  shiftSpread: (stops) => `Zmierzone tam, gdzie żadne z ujęć nie jest przycięte; dwie trzecie zdjęcia zgadza się do ±${stops}.`,
  shiftMoved: (share) => `${share} tego, co można porównać, poruszyło się lub zmieniło i zostało pominięte.`,
  shiftColour: (colour, stops, stronger) =>
    `Względem zielonego ${colour === 'red' ? 'czerwony' : 'niebieski'} wyszedł o ${stops} ${stronger ? 'mocniejszy' : 'słabszy'}: zmieniła się barwa światła lub balans bieli.`,

  sharpness: 'Gdzie jest ostro?',
  looking: 'Szukanie…',
});

const AIMS_WHY: Readonly<Record<AimsWhy, string>> = {
  fits: 'Ten cel dotyczy tylko kolejnego ujęcia, jeśli będzie.',
  card: 'Uwzględnia ona nawet najmniejsze światła tego kadru; ten cel kieruje się najjaśniejszą farbą, jaka może być w tym świetle według szarej karty.',
  glints: 'Uwzględnia ona nawet najmniejsze światła tego kadru; ten cel bierze to, co najjaśniejsze, za odblaski i kieruje się resztą.',
};
