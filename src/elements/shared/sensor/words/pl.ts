import type {SensorWords} from './en.js';

export const sensor: SensorWords = {
  format: 'Matryca',
  formats: {
    '54x40': 'średni format 54 × 40', '44x33': 'średni format 44 × 33', 'full-frame': 'pełna klatka', 'aps-c-small': 'APS-C, mniejsza',
    'aps-h': 'APS-H', 'aps-c': 'APS-C', 'four-thirds': 'Four Thirds',
    '1/1.3-inch': '1/1,3″, telefon', '1/2.55-inch': '1/2,55″, telefon',
  },
  own: 'własne wymiary',
  sensorWidth: 'Szerokość matrycy',
  sensorHeight: 'Wysokość matrycy',
  held: 'Ułożenie aparatu',
  landscape: 'poziomo',
  portrait: 'pionowo',
};
