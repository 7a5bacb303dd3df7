import type {Comparison, PerChannel, ShiftVerdict, EdgeChange} from '../../core/tone/compare.js';
import {CHANNEL_NAMES, share, thirds} from './words.js';

/** No-break space. */
const S = '\u00a0';

/** Stops of colour between two shots that compression alone can make, see the comparison. Found on rendered pictures. */
const SAME_COLOUR = 0.1;
/** Below this much agreement it is worth saying that something moved. */
const ALL_AGREE = 0.85;

/** Hundredths of a stop, without a sign. */
function hundredths(stops: number): string {
  return `${Math.abs(stops).toFixed(2)}${S}stop${Math.abs(stops) > 1 ? 's' : ''}`;
}

const brighter = (stops: number): string => (stops > 0 ? 'brighter' : 'darker');

function clicks(count: number): string {
  const size = Math.abs(count);
  return size === 1 ? 'one third-stop click' : thirds(size);
}

/** How the shot differs from the earlier one, against what was meant. */
export function shiftSentence({shift, because}: Comparison, judged: ShiftVerdict | undefined, meant: number | undefined): string {
  if (shift === undefined || !judged) return whyNot(because);
  const same = Math.abs(shift) < 0.005;
  const measured = same ? 'just as bright as the earlier one' : `${hundredths(shift)} ${brighter(shift)} than the earlier one`;
  if (meant === undefined) {
    return `This shot is ${measured}${judged.thirds === 0 ? ', less than half a third-stop click' : `, nearest to ${clicks(judged.thirds)}`}. The files do not say what was meant.`;
  }
  const thirdsMeant = Math.round(meant * 3);
  const wanted = thirdsMeant === 0 ? 'the same exposure should be' : `${clicks(thirdsMeant)} should be`;
  if (judged.asMeant) return `This shot is ${measured}, as ${wanted}.`;
  const said = thirdsMeant === 0 ? 'no difference' : `${thirds(thirdsMeant)} ${brighter(meant)}`;
  return `This shot is ${measured}, where the settings say ${said}: the lamps, the lens or the set changed as well.`;
}

function whyNot(because: Comparison['because']): string {
  switch (because) {
    case 'shape': return 'The two shots have different proportions: they are not the same framing and cannot be compared.';
    case 'other-set': return 'The two shots do not show the same set from the same place: there is no one shift between them.';
    case 'nothing-in-common':
    case undefined: return 'No part of the crop is free of lost tones in both shots: there is nothing to compare.';
  }
}

/** How far to trust it, what moved, and whether the colour of the light did. */
export function shiftNote({shift, spread, agreeing, colour}: Comparison): string {
  if (shift === undefined) return '';
  const parts = [`Measured in linear light where neither shot is cut off; the middle two thirds of the picture lie within ±${Math.max(0.01, spread).toFixed(2)}${S}stop.`];
  if (agreeing < ALL_AGREE) parts.push(`${share(1 - agreeing)} of what could be compared moved or changed and was left out.`);
  if (colour && Math.max(Math.abs(colour.red), Math.abs(colour.blue)) > SAME_COLOUR) {
    const most = Math.abs(colour.red) >= Math.abs(colour.blue) ? 'red' : 'blue';
    parts.push(`${CHANNEL_NAMES[most]} came out ${hundredths(colour[most])} ${colour[most] > 0 ? 'stronger' : 'weaker'} against green: the colour of the light or the white balance changed.`);
  }
  return parts.join(' ');
}

/** What a shift did to one edge. */
export function edgeText(edges: PerChannel<EdgeChange>, channel: keyof PerChannel<EdgeChange>): string {
  const {before, after} = edges[channel];
  return share(before) === share(after) ? share(after) : `${share(before)} → ${share(after)}`;
}

export const BESIDE = {
  title: 'Beside an earlier shot',
  keep: 'Keep this shot to compare the next with',
  kept: 'This shot is kept. Open the next one and they are compared.',
  open: 'Choose the earlier shot',
  away: 'Take the earlier shot away',
  table: 'What changed at the edges, earlier → this shot',
  channel: 'Channel',
  black: 'At 0',
  white: 'At 255',
} as const;
