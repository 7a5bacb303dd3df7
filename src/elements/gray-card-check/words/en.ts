import {photoWords} from '../../shared/photo/words/en.js';
import type {Say} from '../../shared/say.js';

export {family} from '../../shared/words/en.js';

/** What is said before a card shot is open. */
export const words = (say: Say) => ({
  ...photoWords,
  say,
  element: 'Gray card check',
  invite: 'Drop a shot of your gray card here, paste one or choose a file: you will see whether the card can be trusted, what to multiply red and blue by, and how far off the exposure is.',
  choose: 'Choose a card shot',
  chooseOther: 'Choose another card shot',
  useLinked: 'Use the photo in the tonal chart',
  opening: 'Reading the card shot…',
});

export type CardWords = ReturnType<typeof words>;
