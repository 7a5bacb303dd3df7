/** Share of light a gray card throws back. Common practice; ISO 2720 meters are commonly said to assume less. */
export const GRAY_CARD = 0.18;

/** Share of light that common backdrops throw back, matt and new. Common practice, no source: measure your own. */
export const REFLECTANCES = {
  'black-velvet': 0.01,
  'black-card': 0.04,
  'dark-gray-card': 0.09,
  'gray-card': GRAY_CARD,
  'white-card': 0.85,
} as const;
