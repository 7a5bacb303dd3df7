import {Problem, requireWithin} from '../problem.js';

/** A colour without its brightness, CIE 1931. */
export interface Chromaticity {
  readonly x: number;
  readonly y: number;
}

/** The white of an sRGB picture, D65: what a neutral gray shows. Source: IEC 61966-2-1. */
export const PICTURE_WHITE: Chromaticity = {x: 0.3127, y: 0.329};

/** Coolest and hottest radiator for which the locus below was fitted, K. */
const [COOLEST, HOTTEST] = [1000, 15000];
/** Distance from the locus past which a colour temperature means nothing. Source: CIE 15, 0.05 in u′v′ and here in uv. */
const NEAR_LOCUS = 0.05;
/** Steps of equal width in mireds in which the locus is searched before the nearest piece is refined. */
const SEARCH_STEPS = 60;

/**
 * Chromaticity of a colour given in linear light with sRGB primaries.
 * @param red - linear light, 0 or above; the same for green and blue; not all 0
 * @throws {Problem} `colour` when there is no light, or less than none
 * Source: matrix of IEC 61966-2-1.
 */
export function chromaticity(red: number, green: number, blue: number): Chromaticity {
  if (!(red >= 0 && green >= 0 && blue >= 0 && red + green + blue > 0 && Number.isFinite(red + green + blue))) {
    throw new Problem('colour', `${red}, ${green}, ${blue}`, 'light in at least one channel and less than none in no channel');
  }
  const X = 0.4124 * red + 0.3576 * green + 0.1805 * blue;
  const Y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  const Z = 0.0193 * red + 0.1192 * green + 0.9505 * blue;
  return {x: X / (X + Y + Z), y: Y / (X + Y + Z)};
}

/** Point of the CIE 1960 diagram, in which colour temperatures are told. */
type Uv = readonly [u: number, v: number];

function uvOf({x, y}: Chromaticity): Uv {
  const scale = -2 * x + 12 * y + 3;
  return [4 * x / scale, 6 * y / scale];
}

/**
 * Colour of a glowing black body, CIE 1960 uv.
 * @param kelvin - 1000 to 15000
 * @throws {Problem} `colour-temperature` outside
 * Source: Krystek, An algorithm to calculate correlated colour temperature, 1985; within 8e-5 of the integrated locus.
 */
export function glowingBodyUv(kelvin: number): Uv {
  requireWithin('colour-temperature', kelvin, COOLEST, HOTTEST);
  return [
    (0.860117757 + 1.54118254e-4 * kelvin + 1.28641212e-7 * kelvin ** 2)
      / (1 + 8.42420235e-4 * kelvin + 7.08145163e-7 * kelvin ** 2),
    (0.317398726 + 4.22806245e-5 * kelvin + 4.20481691e-8 * kelvin ** 2)
      / (1 - 2.89741816e-5 * kelvin + 1.61456053e-7 * kelvin ** 2),
  ];
}

/** Colour temperature of a light, and how far it is from a glowing body's colour. */
export interface ColourTemperature {
  readonly kelvin: number;
  /** Distance from the locus in CIE 1960 uv; positive = greener, negative = pinker. */
  readonly duv: number;
}

/**
 * Correlated colour temperature: the nearest point of the locus of glowing bodies.
 * @returns `undefined` when the colour is too far from the locus, or beyond its ends, for the number to mean anything
 * Source: nearest point in CIE 1960 uv, after CIE 15.
 */
export function colourTemperature(colour: Chromaticity): ColourTemperature | undefined {
  const [u, v] = uvOf(colour);
  const off = (mired: number): number => {
    const [onU, onV] = glowingBodyUv(1e6 / mired);
    return Math.hypot(u - onU, v - onV);
  };
  const [first, last] = [1e6 / HOTTEST, 1e6 / COOLEST];
  const step = (last - first) / SEARCH_STEPS;
  const start = Array.from({length: SEARCH_STEPS + 1}, (_, at) => off(first + at * step));
  const nearest = start.indexOf(Math.min(...start));
  if (nearest === 0 || nearest === SEARCH_STEPS) return undefined;
  let [low, high] = [first + (nearest - 1) * step, first + (nearest + 1) * step];
  while (high - low > 1e-6) {
    const third = (high - low) / 3;
    if (off(low + third) < off(high - third)) high -= third; else low += third;
  }
  const kelvin = 2e6 / (low + high);
  const distance = off(1e6 / kelvin);
  const duv = v >= glowingBodyUv(kelvin)[1] ? distance : -distance;
  return distance > NEAR_LOCUS ? undefined : {kelvin, duv};
}

/**
 * Reciprocal colour temperature, in which equal steps look about equal and filters add.
 * @param kelvin - above 0
 * @returns mireds: 6500 K is 154, 3200 K is 312
 * @throws {Problem} `colour-temperature` when not above 0
 */
export function mired(kelvin: number): number {
  if (!(kelvin > 0)) throw new Problem('colour-temperature', kelvin, 'a number above 0');
  return 1e6 / kelvin;
}

/** How the gray of a picture departs from neutral. */
export interface Cast {
  /** Stops by which red exceeds blue: positive = warmer than neutral, negative = cooler. */
  readonly warmth: number;
  /** Stops by which green exceeds the mean of red and blue: positive = greener, negative = pinker. */
  readonly greenness: number;
  readonly warmer: 'warmer' | 'cooler' | undefined;
  readonly greener: 'greener' | 'pinker' | undefined;
  readonly colour: Chromaticity;
  /** Present when the colour lies near that of daylight or a glowing body. */
  readonly temperature: ColourTemperature | undefined;
  /** Mireds by which the picture is warmer than neutral; negative = cooler. Only near the locus. */
  readonly miredShift: number | undefined;
}

/**
 * Departure from neutral, in stops between channels, that still passes for neutral: three or four codes at middle
 * gray, of which JPEG compression of colour alone can make one or two. Our decision.
 */
export const NEUTRAL_STOPS = 0.1;

/**
 * Distance to either side of the locus within which light still counts as daylight or glow, CIE 1960 uv.
 * From memory: several times what standards let a lamp stray. Our decision.
 */
const LAMP_LIKE = 0.02;

/**
 * Describes the cast of a gray patch. A picture file is already balanced to some white; the cast is what is left.
 * @param red - linear light of the gray patch, above 0; the same for green and blue
 * @throws {Problem} `colour` when a channel is not above 0
 */
export function castOf(red: number, green: number, blue: number): Cast {
  if (!(red > 0 && green > 0 && blue > 0)) throw new Problem('colour', `${red}, ${green}, ${blue}`, 'light in every channel');
  const warmth = Math.log2(red / blue);
  const greenness = Math.log2(green / Math.sqrt(red * blue));
  const colour = chromaticity(red, green, blue);
  const found = colourTemperature(colour);
  const temperature = found && Math.abs(found.duv) <= LAMP_LIKE ? found : undefined;
  const neutral = colourTemperature(PICTURE_WHITE) as ColourTemperature;
  return {
    warmth, greenness, colour, temperature,
    warmer: Math.abs(warmth) < NEUTRAL_STOPS ? undefined : warmth > 0 ? 'warmer' : 'cooler',
    greener: Math.abs(greenness) < NEUTRAL_STOPS ? undefined : greenness > 0 ? 'greener' : 'pinker',
    miredShift: temperature && mired(temperature.kelvin) - mired(neutral.kelvin),
  };
}
