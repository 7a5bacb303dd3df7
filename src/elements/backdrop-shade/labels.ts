/** A name at a dot of the drawing, CSS px. */
export interface Dot {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** Where a name stands. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A part of the drawing, CSS px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Letters of 12 px are at most about so wide on average, CSS px; they reach so far above and below their line. */
const LETTER = 7;
const [ABOVE, BELOW] = [11, 3];

/** Half of a dot with the room about it, CSS px. */
const DOT = 7;

/** Distance of the boxes that stand for a slanting line, CSS px. */
const EVERY = 5;

/** What it costs to lie over another name, a dot, or a line, and to leave the field. */
const COSTS = {name: 100, dot: 40, line: 8, outside: 400} as const;

/** How much of two boxes lies over each other, 0 to 1 of the first. */
function covered(box: Box, other: Box): number {
  const wide = Math.min(box.right, other.right) - Math.max(box.left, other.left);
  const high = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
  return wide > 0 && high > 0 ? wide * high / ((box.right - box.left) * (box.bottom - box.top)) : 0;
}

/** What a name of 12 px covers. */
export function boxOf({x, y, anchor}: Label, text: string): Box {
  const wide = text.length * LETTER;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return {left, right: left + wide, top: y - ABOVE, bottom: y + BELOW};
}

/** A slanting outline as a row of small boxes, one every few px. */
export function edgesOf(spots: readonly (readonly [x: number, y: number])[]): readonly Box[] {
  return spots.flatMap(([x, y], at) => {
    const [toX, toY] = spots[(at + 1) % spots.length] as readonly [number, number];
    const pieces = Math.ceil(Math.hypot(toX - x, toY - y) / EVERY);
    return Array.from({length: pieces}, (_, piece): Box => {
      const [left, top] = [x + (toX - x) * piece / pieces, y + (toY - y) * piece / pieces];
      return {left: left - 2, right: left + 2, top: top - 2, bottom: top + 2};
    });
  });
}

/**
 * Places for the names of dots, in their order: above, below or beside each, where it covers least of the names before it,
 * of other dots and of lines.
 * @param field - what names must not leave
 * @param taken - names that are there already
 * @param lines - thin parts that a name may cross where there is no better place
 */
export function placeLabels(dots: readonly Dot[], field: Box, taken: readonly Box[], lines: readonly Box[]): readonly Label[] {
  const names = [...taken];
  return dots.map((dot) => {
    const half = dot.text.length * LETTER / 2;
    const middle = Math.max(field.left + half, Math.min(field.right - half, dot.x));
    const choices: readonly Label[] = [
      {x: middle, y: dot.y - 10, anchor: 'middle'}, {x: middle, y: dot.y + 20, anchor: 'middle'},
      {x: dot.x + 11, y: dot.y + 4, anchor: 'start'}, {x: dot.x - 11, y: dot.y + 4, anchor: 'end'},
    ];
    const cost = (label: Label, at: number): number => {
      const box = boxOf(label, dot.text);
      const over = (boxes: readonly Box[]) => boxes.reduce((sum, other) => sum + Math.min(1, covered(box, other) * 4), 0);
      const outside = box.left < field.left || box.right > field.right || box.top < field.top || box.bottom > field.bottom;
      const others = dots.filter((other) => other !== dot)
        .map(({x, y}): Box => ({left: x - DOT, right: x + DOT, top: y - DOT, bottom: y + DOT}));
      return at + over(names) * COSTS.name + over(others) * COSTS.dot + over(lines) * COSTS.line + (outside ? COSTS.outside : 0);
    };
    const costs = choices.map(cost);
    const best = choices[costs.indexOf(Math.min(...costs))] as Label;
    names.push(boxOf(best, dot.text));
    return best;
  });
}
