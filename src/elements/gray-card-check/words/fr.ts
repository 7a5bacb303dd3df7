import {photoWords} from '../../shared/photo/words/fr.js';
import type {Say} from '../../shared/say.js';
import type {CardWords} from './en.js';

export {family} from '../../shared/words/fr.js';

export const words = (say: Say): CardWords => ({
  ...photoWords,
  say,
  element: 'Contrôle de la charte grise',
  invite: 'Déposer ici une photo de la charte grise, la coller ou choisir un fichier : on verra si la charte est fiable, par quoi multiplier le rouge et le bleu, et de combien l’exposition s’écarte.',
  choose: 'Choisir une photo de la charte',
  chooseOther: 'Choisir une autre photo de la charte',
  useLinked: 'Prendre la photo du diagramme des tons',
  opening: 'Lecture de la photo de la charte…',
});
