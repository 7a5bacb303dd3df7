import fc from 'fast-check';
import type {Flag} from '../../../src/core/light/flag.js';
import type {Lamp} from '../../../src/core/light/lamp.js';
import type {Point} from '../../../src/core/light/space.js';

const mm = (min: number, max: number): fc.Arbitrary<number> => fc.double({min, max, noNaN: true});

/** A place before the lamps of {@link anyLamp}: round the figure, or on the backdrop. */
export const anyPlace: fc.Arbitrary<Point> = fc.tuple(mm(-300, 300), mm(0, 400), mm(0, 200));

/** A direction, never without one. */
export const anyFacing: fc.Arbitrary<Point> =
  fc.tuple(mm(-1, 1), mm(-1, 1), mm(-1, 1)).filter(([x, y, z]) => Math.hypot(x, y, z) > 0.05);

/** Any kind of lamp on the camera's side, aimed near the figure. */
export const anyLamp: fc.Arbitrary<Lamp> = fc.record({
  kind: fc.constantFrom('bulb', 'small', 'disc', 'rectangle'),
  position: fc.tuple(mm(-600, 600), mm(-700, -150), mm(20, 700)),
  aim: fc.tuple(mm(-80, 80), mm(-80, 80), mm(0, 90)),
  width: mm(5, 600),
  height: mm(5, 600),
  power: mm(-4, 4),
});

/** A card anywhere between lamps and backdrop. */
export const anyFlag: fc.Arbitrary<Flag> = fc.record({
  position: fc.tuple(mm(-400, 400), mm(-400, 350), mm(0, 500)),
  facing: anyFacing,
  width: mm(10, 500),
  height: mm(10, 500),
});
