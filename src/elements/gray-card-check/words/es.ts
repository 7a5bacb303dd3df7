import {photoWords} from '../../shared/photo/words/es.js';
import type {Say} from '../../shared/say.js';
import type {CardWords} from './en.js';

export {family} from '../../shared/words/es.js';

export const words = (say: Say): CardWords => ({
  ...photoWords,
  say,
  element: 'Comprobación de la carta gris',
  invite: 'Soltar aquí una toma de la carta gris, pegarla o elegir un archivo: se verá si la carta es de fiar, por cuánto multiplicar el rojo y el azul, y cuánto se desvía la exposición.',
  choose: 'Elegir una toma de la carta',
  chooseOther: 'Elegir otra toma de la carta',
  useLinked: 'Usar la foto del gráfico de tonos',
  opening: 'Leyendo la toma de la carta…',
});
