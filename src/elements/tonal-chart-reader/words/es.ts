import {photoWords} from '../../shared/photo/words/es.js';
import type {Say} from '../../shared/say.js';
import type {ChartWords} from './en.js';

export {family} from '../../shared/words/es.js';

export const words = (say: Say): ChartWords => ({
  ...photoWords,
  say,
  element: 'Gráfico de tonos de una foto',
  invite: 'Soltar aquí una foto, pegarla o elegir un archivo. Se indica si la toma vale o conviene repetirla, cuánto más clara o más oscura, y dónde está nítida la foto.',
  lineWanted: 'dos puntos en fracciones de la imagen: 76% 96% 68% 68%',
});
