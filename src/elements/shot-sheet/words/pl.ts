import type {Say} from '../../shared/say.js';
import {record} from '../record-words/pl.js';
import type {SheetElementWords} from './en.js';

export {family} from '../../shared/words/pl.js';

export const words = (say: Say): SheetElementWords => ({
  say,
  record,
  sheet: 'Karta ujęcia',

  noneKept: (now) => `${now}. Nie zachowano jeszcze żadnego ujęcia.`,
  asKept: (now, count) => `${now}. Tak jak w ujęciu ${count}.`,
  since: (now, count, changes) => `${now}. Od ujęcia ${count}: ${changes}.`,
  sinceAndMore: (now, count, changes, rest) => `${now}. Od ujęcia ${count}: ${changes} i jeszcze ${rest}.`,
  changed: (label) => `${label}: zmiana`,
  change: (label, from, to) => `${label} ${from} → ${to}`,
  changeBy: (label, from, to, stops, brighter) => `${label} ${from} → ${to}, o ${stops} ${brighter ? 'jaśniej' : 'ciemniej'}`,

  nothing: 'Niczego jeszcze nie podano: to, co wyżej, jest tylko założeniem.',
  missing: 'Tego jeszcze nie ma na karcie. Każda część pojawi się, gdy zostanie ustawiona w połączonej kontroli; to, co jest w jeszcze zwiniętej, dojdzie po jej pierwszym rozwinięciu:',
  missingParts: {
    camera: 'Obiektyw i pole: w kontroli ostrości',
    figure: 'Wielkość figurki: w kontroli ostrości',
    lamps: 'Lampy i flagi: w kontroli tła',
    backdrop: 'Tło i jego odległość: w kontroli tła',
    card: 'Szara karta: otworzyć jej zdjęcie w kontroli szarej karty',
  },
  name: 'Nazwa tego ujęcia',
  nameHint: 'bez nazwy dostanie numer',
  note: 'Notatka',
  picture: (title) => `Miniatura: ${title}`,
  thisShot: 'to ujęcie',

  keep: 'Zachowaj to ujęcie',
  keptHead: 'Zachowane ujęcia, po kolei',
  kept: (count) => `Zachowano jako ujęcie ${count}.`,
  numbered: (count) => `Ujęcie ${count}`,
  first: 'Pierwsze zachowane.',
  same: 'Od poprzedniego ujęcia nic się nie zmieniło.',
  putBack: 'Przywróć ustawienia',
  putBackOf: (count) => `Przywróć ustawienia: ujęcie ${count}`,
  isBack: (count) => `Ustawiono jak w ujęciu ${count}, we wszystkich połączonych kontrolach.`,
  up: 'Wcześniej',
  upOf: (count) => `Wcześniej: ujęcie ${count}`,
  down: 'Później',
  downOf: (count) => `Później: ujęcie ${count}`,
  remove: 'Usuń',
  removeOf: (count) => `Usuń: ujęcie ${count}`,
  added: (count) => say.plural(count, {
    one: 'Dodano jedno ujęcie.', few: `Dodano ${count} ujęcia.`, many: `Dodano ${count} ujęć.`, other: `Dodano ${count} ujęcia.`,
  }),

  undo: (what) => `Cofnij: ${what}`,
  acts: {
    keep: (count) => `zachowanie ujęcia ${count}`,
    remove: (count) => `usunięcie ujęcia ${count}`,
    move: (count) => `przesunięcie ujęcia ${count}`,
    putBack: (count) => `przywrócenie ujęcia ${count}`,
    import: 'dodanie ujęć',
    link: 'otwarcie linku',
    otherPage: 'przejęcie ujęć z innego okna',
  },

  remember: 'Zapamiętaj na tym urządzeniu',
  remembered: 'Zapisane na tym urządzeniu i nigdzie indziej. Ponowne naciśnięcie je usuwa.',
  forgotten: 'Ujęcia usunięto z pamięci tego urządzenia. Na tej stronie nadal są.',
  full: 'Na tym urządzeniu nie ma już miejsca na ujęcia. Zostaną na tej stronie do jej zamknięcia: dla pewności zapisać plik.',
  blocked: 'Ta przeglądarka niczego nie przechowuje dla tej strony (okno prywatne lub zablokowana pamięć). Ujęcia zostaną na tej stronie do jej zamknięcia: dla pewności zapisać plik.',

  linkTaken: 'Ujęcie z linku jest ustawione.',
  linkNewer: (version) => `Ten link pochodzi z nowszej wersji (${version}). Przejęto to, co jest tu znane.`,
  linkUnknown: (name) => `„${name}” w linku nic tu nie znaczy. Przejdzie do następnego linku; całą resztę przejęto.`,
  linkUnreadable: (name, text, wanted) => `${name} „${text}” w linku nie pasuje; potrzebne: ${wanted}. Zostaje tak, jak wpisano; całą resztę przejęto.`,
  linkTooLong: (name, length) => `Pominięto „${name}” z linku (liczba znaków: ${length}); całą resztę przejęto.`,

  along: 'Link, tekst, karta, plik i druk',
  page: 'Wstaw na własną stronę',
});
