import type {Flag} from '../../../src/core/light/flag.js';
import type {Lamp} from '../../../src/core/light/lamp.js';

// A second route to every number of light: rays, one at a time, from a dense grid on the lamp's face to the point,
// each stopped by any card it meets. Shares no code with the library, and no formula but the inverse square law.

type Vector = readonly [number, number, number];

const sub = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const mul = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const length = (a: Vector): number => Math.sqrt(mul(a, a));
const scaled = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
const sum = (...parts: readonly Vector[]): Vector => parts.reduce((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]);

/** Level edge and rising edge of a card that faces `normal`. */
function edges(normal: Vector): readonly [Vector, Vector] {
  // A card as good as level has its width along x: the library's stated choice.
  const level: Vector = Math.hypot(normal[0], normal[1]) < 1e-9 ? [1, 0, 0] : [normal[1], -normal[0], 0];
  const across = scaled(level, 1 / length(level));
  const rising: Vector = [
    across[1] * normal[2] - across[2] * normal[1],
    across[2] * normal[0] - across[0] * normal[2],
    across[0] * normal[1] - across[1] * normal[0],
  ];
  return [across, scaled(rising, 1 / length(rising))];
}

/** Whether the straight way from `from` to `to` meets the card. */
function meets(flag: Flag, from: Vector, to: Vector): boolean {
  const normal = scaled(flag.facing, 1 / length(flag.facing));
  const before = mul(sub(from, flag.position), normal);
  const after = mul(sub(to, flag.position), normal);
  if (before * after > 0 || before === after) return false;
  const hit = sub(sum(from, scaled(sub(to, from), before / (before - after))), flag.position);
  const [across, rising] = edges(normal);
  return Math.abs(mul(hit, across)) <= flag.width / 2 && Math.abs(mul(hit, rising)) <= flag.height / 2;
}

/** What rays from a grid of `grid`² points on the lamp's face find at a point. */
export function castRays(
  lamp: Lamp, at: Vector, facing: Vector, flags: readonly Flag[], grid = 160,
): {readonly light: number; readonly share: number} {
  const normal = scaled(sub(lamp.aim, lamp.position), 1 / length(sub(lamp.aim, lamp.position)));
  const way = scaled(facing, 1 / length(facing));
  const [across, rising] = edges(normal);
  const width = lamp.width ?? NaN;
  const height = lamp.kind === 'disc' ? width : lamp.height ?? NaN;
  let rays = 0;
  let seen = 0;
  let light = 0;
  for (let i = 0; i < grid; i++) {
    for (let j = 0; j < grid; j++) {
      const u = (i + 0.5) / grid - 0.5;
      const v = (j + 0.5) / grid - 0.5;
      if (lamp.kind === 'disc' && Math.hypot(u, v) > 0.5) continue;
      rays++;
      const from = sum(lamp.position, scaled(across, u * width), scaled(rising, v * height));
      if (flags.some((flag) => meets(flag, from, at))) continue;
      seen++;
      const ray = sub(from, at);
      const far = length(ray);
      light += Math.max(0, mul(ray, way)) * Math.max(0, -mul(ray, normal)) / far ** 4;
    }
  }
  // Intensity 1 at a metre, spread over all rays: the unit the library states.
  return {light: 1e6 * 2 ** lamp.power * light / rays, share: seen / rays};
}
