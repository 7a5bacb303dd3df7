import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {Slip, Then} from '../speech.js';

export {family} from '../../shared/words/en.js';

/**
 * Values come written: `f/11`, `0.6 s`, a pair of both; steps count from 1. `light` is how one step stands to another:
 * `2 stops brighter`, `the same light`.
 */
export const words = (say: Say) => ({
  say,
  trail: 'Settings, step by step',
  pair: (aperture: string, shutter: string) => `${aperture} at ${shutter}`,
  triple: (pair: string, iso: string) => `${pair}, ${iso}`,
  names: {aperture: 'aperture', shutter: 'time', iso: 'ISO'} satisfies Record<Setting, string>,
  quote: (text: string) => `“${text}”`,

  // the light of a step
  same: 'the same light',
  brighter: (stops: string) => `${stops} brighter`,
  darker: (stops: string) => `${stops} darker`,
  some: {brighter: 'something brighter', darker: 'something darker'},

  // the verdict
  empty: 'Write or paste settings, and the stops between them are worked out.',
  single: 'One setting found; a second is needed to compare it with.',
  severalOff: (off: number, all: number) => `${off} steps of ${all} do not balance.`,
  off: (step: number, setting: string, light: string, than: number) => `Step ${step} does not balance: ${setting} is ${light} than step ${than}.`,
  offFromMeant: (step: number, setting: string, light: string, than: number, meant: string) =>
    `Step ${step} does not balance: ${setting} is ${light} than step ${than}; ${meant} was meant.`,
  asBright: (step: number, setting: string, as: number, meant: string) =>
    `Step ${step} does not balance: ${setting} is as bright as step ${as}; ${meant} was meant.`,
  needed: (text: string, step?: number) => `It would balance with ${text}${step ? ` in step ${step}` : ''}.`,
  slip: (text: string, was: string, step: number | undefined, then: Then) =>
    `${text} was probably meant${step ? ` in step ${step}` : ''}, not ${was}${{all: ': then all balances', it: ': it would balance', some: ''}[then]}.`,
  allSame: (steps: number) => `${steps === 2 ? 'Both' : `All ${steps}`} steps give the same light.`,
  allAsMeant: (steps: number) => `${steps === 2 ? 'Both' : `All ${steps}`} steps do what was meant.`,
  someAsMeant: (judged: number, all: number) => `What was meant is said of ${judged} of ${all} changes, and it is what they do.`,
  noneJudged: (steps: number) => `${steps} steps. Nothing says what was meant of the light, so none is judged.`,
  nothingYet: 'Nothing to compare yet.',
  cannotJudge: (steps: string, count: number) => `${count > 1 ? 'Steps' : 'Step'} ${steps} cannot be judged.`,

  // an example of the page's
  example: 'Example',
  pasteOwn: 'Paste your own settings here',

  // mends
  mend: (step: number, text: string, was: string) => `Step ${step}: ${text} for ${was}`,
  mendInstead: (step: number, text: string, was: string) => `Or step ${step}: ${text} for ${was}`,
  add: (step: number, text: string) => `Step ${step}: add ${text}`,
  addInstead: (step: number, text: string) => `Or step ${step}: add ${text}`,
  slips: {
    seconds: 'seconds, not a fraction', fraction: 'a fraction, not seconds', point: 'the point was lost',
    needed: 'brings the light that was meant', digits: 'the same digits',
  } satisfies Record<Slip, string>,
  mendCost: (slip: string, light: string) => `${slip}, ${light}`,
  mendCostElsewhere: (slip: string, light: string, steps: string, count: number) =>
    `${slip}, ${light}; mends ${count > 1 ? 'steps' : 'step'} ${steps}`,
  mended: (step: number, text: string, was: string) => `Done: step ${step} now says ${text} instead of ${was}.`,
  added: (step: number, text: string) => `Done: step ${step} now says ${text}.`,
  undo: 'Undo',
  back: 'Back to the text as written',

  // from step to step
  light: 'light',
  depth: 'depth',
  signs: {true: '=', false: '≠', null: '·'},
  linkOther: (light: string) => `${light} by the settings; the light itself was changed.`,
  linkUnsaid: (light: string) => `${light}. Nothing says what was meant.`,
  linkOff: (light: string, than: number, meant: string) => `${light} than step ${than}; ${meant} was meant.`,
  linkSame: (as: number, meant: string) => `the same light as step ${as}; ${meant} was meant.`,
  linkAsked: (light: string, by: number) => `${light}, as step ${by} asked.`,
  linkAssumed: (light: string) => `${light}.`,
  linkMeant: (light: string) => `${light}, as meant.`,
  unchanged: 'Nothing changed',
  tolerance: {
    1: 'Up to half a stop counts as nothing: half a click of the dial.',
    2: 'Up to a quarter of a stop counts as nothing: half a click of the dial.',
    3: 'Up to a sixth of a stop counts as nothing: half a click of the dial.',
  },
  depthIs: 'Depth counts the stops by which the aperture was closed: +1 means that more is sharp from front to back, −1 that less is.',

  // what a step says
  carried: (settings: string) => `${settings} as in the step before.`,
  taken: (text: string, value: string) => `“${text}” taken as ${value}.`,
  asksNext: (text: string, light: string) => `“${text}” asks the next step for ${light}.`,
  noSetting: 'No setting can be read here: wanted is something such as f/8 1/60.',
  missing: (settings: string) => `Not said up to here: ${settings}. So nothing can be compared.`,
  unread: (texts: string, count: number) => `${texts} ${count > 1 ? 'are' : 'is'} not in use: no setting, or one too many.`,

  // the dial on the same bench
  dial: 'Put on the dial',
  dialOf: (step: number) => `Put on the dial: step ${step}`,
  dialWill: (start: string, setting: string) =>
    `“Put on the dial” makes a step the start of the dial on this page, instead of ${start}, and what it is set to, instead of ${setting}. It can be undone.`,
  dialWillBoth: (setting: string) =>
    `“Put on the dial” makes a step the start and the setting of the dial on this page, instead of ${setting}. It can be undone.`,
  dialled: (setting: string) => `Done: the dial starts from ${setting}.`,
  dialledAsking: (setting: string, light: string) => `Done: the dial starts from ${setting} and is asked for ${light}.`,

  // copying, and a list of one's own
  copy: 'Copy the list',
  copied: 'Copied',
  copyHere: 'Copying is not allowed here. Take the list from this field:',
  paste: 'Paste a lesson, or change this one',
  pasteLabel: 'Running text, or one setting a line',
  pasteHint: 'What is said of the light is read too: same light, one stop darker, +2.',
  read: 'Read it',
  expect: 'Where nothing is said of the light',
  expects: {'same-light': 'the same light is meant', nothing: 'nothing is meant'},
  wanted: 'a setting such as f/8 1/60',
  expectWanted: 'same-light or nothing',
  refused: (text: string, wanted: string) => `“${text}” does not read as ${wanted}.`,
  refusedKept: (text: string, wanted: string) => `“${text}” does not read as ${wanted}. The last good list stays in use.`,
});

export type TrailWords = ReturnType<typeof words>;
