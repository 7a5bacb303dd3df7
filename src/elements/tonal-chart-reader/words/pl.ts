import {photoWords} from '../../shared/photo/words/pl.js';
import type {Say} from '../../shared/say.js';
import type {ChartWords} from './en.js';

export {family} from '../../shared/words/pl.js';

export const words = (say: Say): ChartWords => ({
  ...photoWords,
  say,
  element: 'Wykres tonów zdjęcia',
  invite: 'Upuścić tu zdjęcie, wkleić je albo wybrać plik. Wynik powie, czy ujęcie zostawić, czy powtórzyć, o ile jaśniej lub ciemniej, i gdzie zdjęcie jest ostre.',
  lineWanted: 'dwa miejsca w częściach obrazu: 76% 96% 68% 68%',
});
