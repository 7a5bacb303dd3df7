import type {SensorWords} from './en.js';

export const sensor: SensorWords = {
  format: 'Sensor',
  formats: {
    '54x40': 'medio formato 54 × 40', '44x33': 'medio formato 44 × 33', 'full-frame': 'formato completo', 'aps-c-small': 'APS-C, menor',
    'aps-h': 'APS-H', 'aps-c': 'APS-C', 'four-thirds': 'Four Thirds',
    '1/1.3-inch': '1/1,3″, teléfono', '1/2.55-inch': '1/2,55″, teléfono',
  },
  own: 'medidas propias',
  sensorWidth: 'Ancho del sensor',
  sensorHeight: 'Alto del sensor',
  held: 'Cámara en',
  landscape: 'horizontal',
  portrait: 'vertical',
};
