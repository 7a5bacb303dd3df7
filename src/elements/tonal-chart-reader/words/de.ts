import {photoWords} from '../../shared/photo/words/de.js';
import type {Say} from '../../shared/say.js';
import type {ChartWords} from './en.js';

export {family} from '../../shared/words/de.js';

export const words = (say: Say): ChartWords => ({
  ...photoWords,
  say,
  element: 'Tonwertdiagramm eines Fotos',
  invite: 'Ein Foto hier ablegen, einfügen oder eine Datei wählen. Danach steht hier, ob die Aufnahme bleiben kann oder neu gemacht werden sollte, um wie viel heller oder dunkler, und wo das Foto scharf ist.',
  lineWanted: 'zwei Stellen in Anteilen des Bildes: 76% 96% 68% 68%',
});
