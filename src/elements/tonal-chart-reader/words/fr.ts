import {photoWords} from '../../shared/photo/words/fr.js';
import type {Say} from '../../shared/say.js';
import type {ChartWords} from './en.js';

export {family} from '../../shared/words/fr.js';

export const words = (say: Say): ChartWords => ({
  ...photoWords,
  say,
  element: 'Diagramme des tons d’une photo',
  invite: 'Déposer une photo ici, la coller ou choisir un fichier. La réponse dit s’il faut garder la photo ou la refaire, de combien l’éclaircir ou l’assombrir, et où la photo est nette.',
  lineWanted: 'deux points en fractions de l’image\u00a0: 76% 96% 68% 68%',
});
