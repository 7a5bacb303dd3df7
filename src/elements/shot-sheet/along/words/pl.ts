import type {Say} from '../../../shared/say.js';
import type {AlongWords} from './en.js';

export {family} from '../../../shared/words/pl.js';

export const words = (say: Say): AlongWords => ({
  say,
  quoted: (text) => `„${text}”`,
  which: 'Które ujęcie',
  now: 'To',
  all: 'Wszystkie zachowane',
  option: (count, title) => `${count}. ${title}`,

  link: 'Link',
  copyLink: 'Kopiuj link',
  linkShown: (start, length) => `${start}… (liczba znaków: ${length}; kopiowany jest cały)`,
  showQr: 'Pokaż kod QR',
  hideQr: 'Ukryj kod QR',
  qr: 'Kod QR linku do tego ujęcia',
  linkTooLong: (length) => `Link ma za dużo znaków (${length}), by zmieścić się w kodzie QR. Skopiować go albo skrócić notatkę.`,

  text: 'Kopiuj jako tekst, do miejsc bez skryptów',
  forms: {text: 'Zwykły tekst', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'},
  card: 'Karta i papier',
  svg: 'Zapisz SVG',
  png: 'Zapisz PNG',
  noPng: 'Na tej stronie nie można narysować PNG. SVG zawiera tę samą kartę.',
  print: 'Drukuj na jednej stronie',
  printed: 'Karta ujęcia',
  noPrint: 'Na tej stronie nie można drukować samej karty. Zapisać SVG i wydrukować.',

  file: 'Plik',
  save: 'Zapisz plik',
  copyFile: 'Kopiuj plik jako tekst',
  open: 'Otwórz plik',
  paste: 'albo wklej tu jego tekst',
  take: 'Dodaj te ujęcia',
  thisText: 'Ten tekst',
  onDevice: '„Zapamiętane na tym urządzeniu”',
  noJson: (file) => `${file}: uszkodzone dane albo brak ujęć – to nie jest kompletny JSON. Niczego nie zmieniono.`,
  foreign: (file) => `${file}: to JSON, ale bez ujęć. Niczego nie zmieniono.`,
  newer: (file, version) =>
    `${file}: zapis z wersji (${version}) nowszej niż ta, którą czyta ta strona. Niczego nie zmieniono; odświeżyć stronę lub poprosić o starszy plik.`,
  wrong: (file, where, found, wanted) => `${file}: nie można wczytać – ${where}: ${found}; potrzebne: ${wanted}. Niczego nie zmieniono.`,
  ofShot: (name, shot) => `${name} w ujęciu ${shot}`,
  shot: (shot) => `ujęcie ${shot}`,
  nothingThere: 'brak',
  unreadable: (file) => `${file}: nie udało się odczytać – plik przeniesiono albo jest o wiele większy niż jakikolwiek plik z ujęciami. Niczego nie zmieniono.`,

  element: 'Element',
  snippets: {
    tag: 'Znacznik z tym, co ustawiono',
    script: 'Wiersz skryptu, raz na stronę',
    frame: 'W ramce, gdzie wolno ramki, a nie wolno skryptów',
    plain: 'Zwykły tekst, gdzie nic innego nie działa',
  },
  fallback: (settings) => `${settings}.`,
  copy: 'Kopiuj',
  copied: 'Skopiowano',
  copyHere: 'Kopiowanie nie jest tu dozwolone. Tekst jest zaznaczony: skopiować ręcznie.',
});
