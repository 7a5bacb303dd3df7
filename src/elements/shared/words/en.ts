import type {Family} from '../say.js';

export const family: Family = {
  problem: (text, wanted) => `“${text}” does not read as ${wanted}. The last good value stays in use.`,
  wanted: {},
  settings: {aperture: 'Aperture', shutter: 'Shutter', iso: 'ISO'},
  stops: (amount, size) => `${amount} ${size > 1.001 ? 'stops' : 'stop'}`,
  unreachable: 'This part could not be fetched. Check the connection and open the page again.',
};
