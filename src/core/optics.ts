/** The lens at close range: blur, sharp zone, outline, and the ways to get all of it sharp. */
export {Problem} from './problem.js';
export {bestAperture, worstContrast} from './optics/best-aperture.js';
export type {ApertureContrast, Ends, WorstContrast} from './optics/best-aperture.js';
export {blurDisc, blurInPixels, blurLimit, blurProfile, onePixel} from './optics/blur.js';
export type {BlurAtDepth, FinishedPicture} from './optics/blur.js';
export {contrastAlong, contrastAt, contrastProfile, detailCycles, whiteContrast} from './optics/contrast.js';
export type {Detail} from './optics/contrast.js';
export {stepBackBy, stepBackForPixels, stepBackForStops, stepBackTo} from './optics/distance.js';
export type {StepBack} from './optics/distance.js';
export {figureField} from './optics/figure-field.js';
export type {FigureField, FigureInPicture} from './optics/figure-field.js';
export {zoneFit} from './optics/fit.js';
export type {Framing, ZoneFit} from './optics/fit.js';
export {bestFocus, equalBlurDistance, focusForBothEnds, refocusInPlace} from './optics/focus.js';
export {giveUpSteps, whatToGiveUp} from './optics/give-up.js';
export type {GiveUp, GiveUps} from './optics/give-up.js';
export {
  GREEN_MM, airyDiameter, entrancePupil, fieldWidth, lightLoss, magnificationFromDistance, magnificationFromField,
  magnificationFromPupil, markedFromWorking, principalToSubject, pupilToSubject, sensorToSubject, viewAngle,
  workingAperture,
} from './optics/lens.js';
export type {LensSetup} from './optics/lens.js';
export {axialDepth, axialToRuler, depthToCover, outlinePoints, rulerToAxial} from './optics/outline.js';
export type {DepthToCover, Outline, OutlinePart, OutlinePoint} from './optics/outline.js';
export {MOST_FRAMES, PLAN_RATES} from './optics/plan-job.js';
export type {FullJob, PlanJob, PlanLens, PlanPrice, PlanRates} from './optics/plan-job.js';
export {priceOf} from './optics/plan-way.js';
export type {PlanWay} from './optics/plan-way.js';
export {shotPlan} from './optics/plan.js';
export type {Plan} from './optics/plan.js';
export {readSharpRuler, rulerScale} from './optics/ruler.js';
export type {PhotoPoint, RulerReading, RulerScale} from './optics/ruler.js';
export {SENSOR_FORMATS, cropFactor, nearestFormat, printBlurLimit, sensorDiagonal} from './optics/sensors.js';
export type {SensorFormat} from './optics/sensors.js';
export {bestStack, stackContrast, stackFrames} from './optics/stack.js';
export type {Stack, StackChoice, StackFrame, StackJob, StackTrade} from './optics/stack.js';
export {toEnd} from './optics/steps.js';
export type {Steps} from './optics/steps.js';
export {backAndDown, openUp} from './optics/ways-combined.js';
export type {BackAndDown, OpenUp} from './optics/ways-combined.js';
export {waysOut} from './optics/ways-out.js';
export type {Diffraction, Means, MoveBack, NoWay, Refocus, StopDown, WaysOut} from './optics/ways-out.js';
export {sharpZone} from './optics/zone.js';
export type {SharpZone} from './optics/zone.js';
