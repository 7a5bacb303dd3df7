/**
 * Where things stand in an array of counts: four charts of 256 one after the other, then four single numbers.
 * One flat array can be added, subtracted and summed up over tiles without knowing what is in it.
 */
export const GREEN_AT = 256;
export const BLUE_AT = 512;
export const BRIGHTNESS_AT = 768;
export const ANY_BLACK_AT = 1024;
export const ANY_WHITE_AT = 1025;
export const ANY_NEAR_WHITE_AT = 1026;
export const PIXELS_AT = 1027;
export const COUNTS = 1028;
