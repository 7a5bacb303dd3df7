import type {SensorWords} from './en.js';

export const sensor: SensorWords = {
  format: 'Capteur',
  formats: {
    '54x40': 'moyen format 54 × 40', '44x33': 'moyen format 44 × 33', 'full-frame': 'plein format', 'aps-c-small': 'APS-C, plus petit',
    'aps-h': 'APS-H', 'aps-c': 'APS-C', 'four-thirds': 'Four Thirds',
    '1/1.3-inch': '1/1,3″, téléphone', '1/2.55-inch': '1/2,55″, téléphone',
  },
  own: 'autres mesures',
  sensorWidth: 'Largeur du capteur',
  sensorHeight: 'Hauteur du capteur',
  held: 'Appareil tenu',
  landscape: 'à l’horizontale',
  portrait: 'à la verticale',
};
