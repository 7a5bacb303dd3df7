import {photoWords} from '../../shared/photo/words/en.js';
import type {Say} from '../../shared/say.js';

export {family} from '../../shared/words/en.js';

/** What is said before a photo is open. */
export const words = (say: Say) => ({
  ...photoWords,
  say,
  element: 'Tonal chart of a photo',
  invite: 'Drop a photo here, paste one or choose a file. It tells whether to keep the shot or to shoot again, how much brighter or darker, and where the photo is sharp.',
  lineWanted: 'two places in shares of the picture: 76% 96% 68% 68%',
});

export type ChartWords = ReturnType<typeof words>;
