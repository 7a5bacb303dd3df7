import {photoWords} from '../../shared/photo/words/de.js';
import type {Say} from '../../shared/say.js';
import type {CardWords} from './en.js';

export {family} from '../../shared/words/de.js';

export const words = (say: Say): CardWords => ({
  ...photoWords,
  say,
  element: 'Prüfung der Graukarte',
  invite: 'Eine Aufnahme der Graukarte hier ablegen, einfügen oder als Datei wählen: Es zeigt sich, ob der Karte zu trauen ist, womit Rot und Blau zu multiplizieren sind und wie weit die Belichtung danebenliegt.',
  choose: 'Kartenaufnahme wählen',
  chooseOther: 'Andere Kartenaufnahme wählen',
  useLinked: 'Das Foto im Tonwertdiagramm nehmen',
  opening: 'Die Kartenaufnahme wird gelesen …',
});
