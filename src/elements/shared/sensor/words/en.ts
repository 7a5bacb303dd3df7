/** The camera’s sensor, and how the camera is held. */
export const sensor = {
  format: 'Sensor',
  /** By the id that the core gives them. */
  formats: {
    '54x40': 'medium format 54 × 40', '44x33': 'medium format 44 × 33', 'full-frame': 'full frame', 'aps-c-small': 'APS-C, smaller',
    'aps-h': 'APS-H', 'aps-c': 'APS-C', 'four-thirds': 'Four Thirds',
    '1/1.3-inch': '1/1.3″, phone', '1/2.55-inch': '1/2.55″, phone',
  } as Readonly<Record<string, string>>,
  own: 'own numbers',
  sensorWidth: 'Sensor width',
  sensorHeight: 'Sensor height',
  held: 'Camera held',
  landscape: 'landscape',
  portrait: 'portrait',
};

export type SensorWords = typeof sensor;
