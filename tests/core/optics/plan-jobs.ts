import {clicks} from '../../../src/core/exposure/clicks.js';
import type {PlanJob} from '../../../src/core/optics/plan-job.js';

const thirds = (least: number, greatest: number): number[] =>
  clicks('aperture', 3, [least, greatest]).map(({value}) => value);

/** Invented, as all jobs here: a 75 mm deep infantry base, upright on a 36 × 24 mm sensor. */
const infantry: PlanJob = {
  outline: {baseDepth: 75, height: 90}, tilt: 15, figureWidth: 70,
  pictureWidth: 1000, pictureHeight: 1250, margin: 0.08,
  lenses: [{focalLength: 60, closest: 250}, {focalLength: 100, closest: 400}],
  sensorWidth: 24, sensorHeight: 36, pixelsAcross: 4000,
  apertures: thirds(2.8, 22), clicksPerStop: 3, shutterRange: [1 / 4000, 30], room: 1800,
  metered: {aperture: 8, shutter: 0.315, iso: 100}, meteredMagnification: 0.2, blurPixels: 2, mostFrames: 20,
};

/** One job for each kind of figure and camera a plan has to get right. */
export const JOBS: Readonly<Record<string, PlanJob>> = {
  '30 mm bust': {
    ...infantry, outline: {baseDepth: 30, height: 45}, tilt: 5, figureWidth: 35, pictureWidth: 800, pictureHeight: 1000,
  },
  '75 mm infantry base': infantry,
  '120 mm rider': {
    ...infantry, outline: {baseDepth: 120, height: 130, overhangFront: 15, overhangFrontHeight: 100}, tilt: 10,
    figureWidth: 90,
  },
  '240 mm diorama with overhangs at both ends': {
    ...infantry,
    outline: {
      baseDepth: 240, height: 150, overhangFront: 30, overhangFrontHeight: 60, overhangBack: 40, overhangBackHeight: 90,
    },
    figureWidth: 260, sensorWidth: 36, sensorHeight: 24, pixelsAcross: 6000, pictureWidth: 1500, pictureHeight: 1050,
    lenses: [{focalLength: 60, closest: 250}, {focalLength: 35, closest: 200, pupilRatio: 1}], room: 2500,
  },
  'seen 30 degrees from above': {...infantry, tilt: 30, outline: {baseDepth: 60, height: 80}},
  '60 mm figure with a lens that does not focus near': {
    ...infantry, outline: {baseDepth: 60, height: 70}, lenses: [{focalLength: 60, closest: 420}], figureWidth: 45,
    room: 520, pixelsAcross: 6000,
  },
  'phone-size sensor': {
    ...infantry, lenses: [{focalLength: 5.4}, {focalLength: 9}], sensorWidth: 7.3, sensorHeight: 9.8, pixelsAcross: 3000,
    apertures: [1.78], metered: {aperture: 1.78, shutter: 1 / 16, iso: 50}, meteredMagnification: undefined, room: 700,
  },
};
