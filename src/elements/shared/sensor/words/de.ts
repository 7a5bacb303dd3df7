import type {SensorWords} from './en.js';

export const sensor: SensorWords = {
  format: 'Sensor',
  formats: {
    '54x40': 'Mittelformat 54 × 40', '44x33': 'Mittelformat 44 × 33', 'full-frame': 'Vollformat', 'aps-c-small': 'APS-C, kleiner',
    'aps-h': 'APS-H', 'aps-c': 'APS-C', 'four-thirds': 'Four Thirds',
    '1/1.3-inch': '1/1,3″, Smartphone', '1/2.55-inch': '1/2,55″, Smartphone',
  },
  own: 'eigene Maße',
  sensorWidth: 'Sensorbreite',
  sensorHeight: 'Sensorhöhe',
  held: 'Kamerahaltung',
  landscape: 'quer',
  portrait: 'hoch',
};
