import type {Shot} from '../../core/shot/shot.js';
import {acrossTo, upTo, type CameraView, type Sheet, type Spot} from './draw.js';

/** What of the drawing can be taken hold of. */
export type Grip = 'overhang-front' | 'overhang-back' | 'top' | 'base-front' | 'base-back' | 'tilt';

export const GRIPS: readonly Grip[] = ['tilt', 'overhang-front', 'top', 'overhang-back', 'base-front', 'base-back'];

/** Whether a handle answers to left and right, up and down. */
export const FREE: Readonly<Record<Grip, 'along' | 'up' | 'both'>> = {
  'overhang-front': 'both', 'overhang-back': 'both', top: 'up', 'base-front': 'along', 'base-back': 'along', tilt: 'up',
};

/** Where a tip that reaches nowhere waits to be pulled out, mm above the table. */
export function tipHeight(shot: Shot, end: 'Front' | 'Back'): number {
  return shot[`overhang${end}`] || shot[`overhang${end}Height`] ? shot[`overhang${end}Height`] : shot.figureHeight * 0.5;
}

/** Where a handle stands, CSS px. */
export function gripAt(grip: Grip, shot: Shot, sheet: Sheet, camera: CameraView): Spot {
  switch (grip) {
    case 'overhang-front': return [acrossTo(sheet, -shot.overhangFront), upTo(sheet, tipHeight(shot, 'Front'))];
    case 'overhang-back': return [acrossTo(sheet, shot.baseDepth + shot.overhangBack), upTo(sheet, tipHeight(shot, 'Back'))];
    case 'top': return [acrossTo(sheet, shot.baseDepth / 2), upTo(sheet, shot.figureHeight)];
    case 'base-front': return [acrossTo(sheet, 0), sheet.table + 36];
    case 'base-back': return [acrossTo(sheet, shot.baseDepth), sheet.table + 36];
    case 'tilt': return camera.mark;
  }
}

/** Number a handle stands for, for the slider it is. */
export function valueOf(grip: Grip, shot: Shot): number {
  switch (grip) {
    case 'overhang-front': return shot.overhangFront;
    case 'overhang-back': return shot.overhangBack;
    case 'top': return shot.figureHeight;
    case 'tilt': return shot.tilt;
    case 'base-front': case 'base-back': return shot.baseDepth;
  }
}

/** Least of those numbers: a base has some depth. */
export const leastOf = (grip: Grip): number => (grip === 'tilt' ? -80 : grip.startsWith('base') ? 1 : 0);

/**
 * What moving a handle makes of the shot.
 * @param shot - as it was when the handle was taken
 * @param along - mm away from the camera
 * @param up - mm; degrees for the camera
 * @param grain - lengths come out as multiples of it, mm
 */
export function moved(grip: Grip, shot: Shot, along: number, up: number, grain: number): Partial<Shot> {
  const even = (mm: number, least = 0): number => Math.min(5000, Math.max(least, Math.round(mm / grain) * grain));
  switch (grip) {
    case 'overhang-front': {
      const overhangFront = even(shot.overhangFront - along);
      return {overhangFront, overhangFrontHeight: overhangFront ? even(tipHeight(shot, 'Front') + up) : 0};
    }
    case 'overhang-back': {
      const overhangBack = even(shot.overhangBack + along);
      return {overhangBack, overhangBackHeight: overhangBack ? even(tipHeight(shot, 'Back') + up) : 0};
    }
    case 'top': return {figureHeight: even(shot.figureHeight + up)};
    case 'tilt': return {tilt: Math.min(80, Math.max(-80, Math.round(shot.tilt + up)))};
    // An edge moves alone: the tips and the focus plane stay where they are in the room.
    case 'base-front': {
      const baseDepth = even(shot.baseDepth - along, Math.max(1, grain));
      const by = shot.baseDepth - baseDepth;
      return {baseDepth, ...(shot.overhangFront && {overhangFront: Math.max(0, shot.overhangFront + by)}), focus: shot.focus - by};
    }
    case 'base-back': {
      const baseDepth = even(shot.baseDepth + along, Math.max(1, grain));
      return {baseDepth, ...(shot.overhangBack && {overhangBack: Math.max(0, shot.overhangBack + shot.baseDepth - baseDepth)})};
    }
  }
}
