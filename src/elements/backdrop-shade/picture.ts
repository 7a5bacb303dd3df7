import {nothing, svg, type SVGTemplateResult} from 'lit';
import {flagCorners} from '../../core/light/flag.js';
import {lampCorners, type Lamp} from '../../core/light/lamp.js';
import {boxCorners} from '../../core/light/set.js';
import {along, direction, minus, type Point} from '../../core/light/space.js';
import type {Shot} from '../../core/shot/shot.js';
import {outline, shadedLamp, shadowOf, spotOf, written, type Sheet, type Spot, type View} from './draw.js';
import {boxOf, edgesOf, placeLabels, type Box, type Dot, type Label} from './labels.js';
import type {Reading} from './reading.js';
import {depthsOf, positionOf, thingsOf, type Thing} from './things.js';
import {handleWords, nameOf, placeWords} from './speech.js';
import type {ShadeWords} from './words/en.js';

/** Radius of what can be pressed, and of what is seen of it, CSS px. */
const [HIT, GRIP] = [20, 4.5];

/** A view's name below its upper edge, CSS px. */
const NAME_DOWN = 14;

const polygon = (name: string, spots: readonly Spot[]): SVGTemplateResult => svg`<polygon class=${name} points=${written(spots)}></polygon>`;

/** Both views, with everything that can be moved. */
export function picture(words: ShadeWords, sheet: Sheet, reading: Reading, selected: Thing): SVGTemplateResult {
  return svg`
    <defs><pattern id="soft" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V5"></path></pattern></defs>
    <line class="rule" x1="0" x2=${sheet.width} y1=${sheet.divide} y2=${sheet.divide}></line>
    <line class="table" x1="0" x2=${sheet.width} y1=${sheet.floor} y2=${sheet.floor}></line>
    ${(['plan', 'side'] as const).map((view) => svg`
      <text class="quiet" x="0" y=${(view === 'plan' ? 0 : sheet.divide) + NAME_DOWN}>${view === 'plan' ? words.above : words.side}</text>
      ${oneView(sheet, view, reading)}`)}
    ${(['plan', 'side'] as const).map((view) => handles(words, sheet, view, reading, selected))}`;
}

function oneView(sheet: Sheet, view: View, reading: Reading): SVGTemplateResult {
  const {set, seen} = reading;
  const at = (point: Point): Spot => spotOf(sheet, view, point);
  const {distance} = set.backdrop;
  const camera = set.camera as Point;
  const [low, high]: readonly [Point, Point] = view === 'plan'
    ? [[seen.left, distance, 0], [seen.right, distance, 0]] : [[0, distance, seen.low], [0, distance, seen.high]];
  const [a, b] = [at(low), at(high)];
  const reach = view === 'plan' ? 0 : sheet.floor - b[1];
  return svg`
    ${polygon('view', [at(camera), a, b])}
    ${set.flags.map((flag) => {
      const lamp = set.lamps[shadedLamp(reading, flag)];
      if (!lamp) return nothing;
      const {soft, full} = shadowOf(sheet, view, flag, lamp, distance);
      return svg`${polygon('soft', soft)}${polygon('full', full)}`;
    })}
    ${polygon('figure', outline(sheet, view, boxCorners(set.figure)))}
    <line class="backdrop" x1=${a[0]} x2=${b[0]} y1=${view === 'plan' ? a[1] : b[1] + reach} y2=${b[1]}></line>
    ${set.lamps.map((lamp) => {
      const [from, tip] = beamOf(sheet, view, lamp);
      return svg`${lamp.kind === 'bulb' ? svg`<circle class="lamp" cx=${from[0]} cy=${from[1]} r="8"></circle>`
        : svg`<line class="beam" x1=${from[0]} y1=${from[1]} x2=${tip[0]} y2=${tip[1]}></line>`}
        ${polygon('lamp', bodyOf(sheet, view, lamp))}`;
    })}
    ${set.flags.map((flag) => polygon('flag', outline(sheet, view, flagCorners(flag))))}
    <path class="camera" d="M${at(camera)[0]} ${at(camera)[1]}l-8 -6h-12v12h12z"></path>`;
}

/** Which way a lamp shines: from its middle, 26 px at most. */
function beamOf(sheet: Sheet, view: View, {position, aim}: Lamp): readonly [Spot, Spot] {
  const [from, to] = [spotOf(sheet, view, position), spotOf(sheet, view, aim)];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [from, length > 1 ? [from[0] + (to[0] - from[0]) / length * 26, from[1] + (to[1] - from[1]) / length * 26] : from];
}

/** Outline of a lamp. */
function bodyOf(sheet: Sheet, view: View, lamp: Lamp): readonly Spot[] {
  const corners = lampCorners(lamp);
  return outline(sheet, view, corners.length > 1 ? thick(lamp.position, lamp.aim, corners, sheet) : [lamp.position]);
}

/** A face with a little body behind it, so that it is seen which way it shines; 5 px deep. */
function thick(position: Point, aim: Point, corners: readonly Point[], {scale}: Sheet): readonly Point[] {
  const back = direction('lamp-aim', minus(position, aim));
  return [...corners, ...corners.map((corner) => along(corner, back, 5 / scale))];
}

/** Everything of a view that can be moved, named where its name is in nobody's way. */
function handles(words: ShadeWords, sheet: Sheet, view: View, {shot, seen, set}: Reading, selected: Thing): readonly SVGTemplateResult[] {
  const things = thingsOf(shot).filter((thing) => thing !== 'figure');
  const dots = things.map((thing): Dot => {
    const stands = positionOf(thing, shot);
    const [x, y] = spotOf(sheet, view, thing === 'backdrop' ? [seen.right, stands[1], (seen.low + seen.high) / 2] : stands);
    return {x, y, text: nameOf(words, thing, shot)};
  });
  const [top, bottom] = view === 'plan' ? [0, sheet.divide] : [sheet.divide, sheet.height];
  const [wall] = spotOf(sheet, view, [0, shot.backdropDistance, 0]);
  const viewName = boxOf({x: 0, y: top + NAME_DOWN, anchor: 'start'}, view === 'plan' ? words.above : words.side);
  const floor: Box = {left: 0, right: sheet.width, top: sheet.floor - 1, bottom: sheet.floor + 1};
  const labels = placeLabels(dots, {left: 0, right: sheet.width, top, bottom}, [viewName],
    [{left: wall - 3, right: wall + 3, top, bottom}, ...(view === 'side' ? [floor] : []),
      ...set.lamps.flatMap((lamp) => [...edgesOf(bodyOf(sheet, view, lamp)), ...edgesOf(beamOf(sheet, view, lamp))])]);
  return things.map((thing, at) => handle(words, view, thing, shot, selected, dots[at] as Dot, labels[at] as Label));
}

function handle(words: ShadeWords, view: View, thing: Thing, shot: Shot, selected: Thing, {x, y, text}: Dot, label: Label): SVGTemplateResult {
  const stands = positionOf(thing, shot);
  const [least, most] = depthsOf(thing, shot);
  return svg`<g class="handle ${thing === selected ? 'chosen' : ''}" role="slider" tabindex="0" data-thing=${thing} data-view=${view}
      aria-label=${handleWords(words, thing, shot, view)} aria-describedby="keys" aria-valuemin=${Math.floor(least)} aria-valuemax=${Math.ceil(most)}
      aria-valuenow=${Math.round(stands[1])} aria-valuetext=${placeWords(words, stands, shot)}>
    <circle class="hit" cx=${x} cy=${y} r=${HIT}></circle>
    <circle class="grip" cx=${x} cy=${y} r=${GRIP}></circle>
    <text class="label" x=${label.x} y=${label.y} text-anchor=${label.anchor}>${text}</text>
  </g>`;
}
