import fc from 'fast-check';
import {describe, expect} from 'vitest';
import {
  Problem, checkFlicker, codeFromLinear, codeStops, distanceStops, illuminance, inverseSquareError, linearFromCode, penumbraWidth,
  ripple, visibleShare,
} from '../../src/core/index.js';
import {anyFlag, anyLamp, anyPlace} from '../core/light/arbitrary.js';
import {between} from '../core/optics/arbitrary.js';
import {fuzz, outcome, sound} from './cases.js';
import {anyNumber} from './hostile.js';

const wildPoint = fc.tuple(anyNumber, anyNumber, anyNumber);

describe('light and tone with numbers nobody means', () => {
  fuzz('laws of light are sound or refuse', 6000, fc.tuple(anyNumber, anyNumber, anyNumber), ([one, other, third]) => {
    for (const job of [
      () => distanceStops(one, other), () => inverseSquareError(one, other),
      () => penumbraWidth(one, other, third), () => ripple(50, one, other), () => checkFlicker(50, one, [other, third]),
      () => codeFromLinear(one), () => linearFromCode(one), () => codeStops(one, other),
    ] as (() => unknown)[]) sound(outcome(job));
  });
  fuzz('a lamp anywhere lights any place soundly or is refused', 4000, fc.tuple(anyLamp, wildPoint, wildPoint, anyFlag, anyNumber), ([lamp, place, facing, flag, size]) => {
    for (const job of [
      () => illuminance(lamp, place, facing), () => illuminance({...lamp, position: place}, [0, 0, 0], facing),
      () => illuminance({...lamp, width: size, power: size}, [0, 0, 0], [0, -1, 0]), () => visibleShare({...lamp, position: place}, [0, 0, 0], [flag]),
    ] as (() => unknown)[]) {
      const light = sound(outcome(job));
      if (typeof light === 'number') expect(light).toBeGreaterThanOrEqual(0);
    }
  });
  fuzz('a card never lets more of a lamp through than none, and a second one never less than is left', 2000, fc.tuple(anyLamp, anyPlace, anyFlag, anyFlag), ([lamp, place, one, other]) => {
    const seen = (flags: typeof one[]): number | Problem => outcome(() => visibleShare(lamp, place, flags));
    const [none, single, both] = [seen([]), seen([one]), seen([one, other])];
    if ([none, single, both].some((share) => share instanceof Problem)) return;
    expect(single).toBeLessThanOrEqual(none as number + 1e-9);
    expect(both).toBeLessThanOrEqual(single as number + 1e-9);
  });
  fuzz('brighter light never gets a darker code', 4000, fc.tuple(between(0, 1), between(0, 1)), ([one, other]) => {
    expect(codeFromLinear(Math.max(one, other))).toBeGreaterThanOrEqual(codeFromLinear(Math.min(one, other)));
  });
});
