import {apertureStops} from 'lampblack';

export const stopped = apertureStops(2.8, 8);
