import {photoWords} from '../../shared/photo/words/pl.js';
import type {Say} from '../../shared/say.js';
import type {CardWords} from './en.js';

export {family} from '../../shared/words/pl.js';

export const words = (say: Say): CardWords => ({
  ...photoWords,
  say,
  element: 'Kontrola szarej karty',
  invite: 'Tu upuścić zdjęcie szarej karty, wkleić je albo wybrać plik: okaże się, czy karcie można ufać, przez ile pomnożyć kanał czerwony i niebieski oraz o ile ekspozycja jest chybiona.',
  choose: 'Wybierz zdjęcie karty',
  chooseOther: 'Wybierz inne zdjęcie karty',
  useLinked: 'Użyj zdjęcia z wykresu tonów',
  opening: 'Wczytywanie zdjęcia karty…',
});
