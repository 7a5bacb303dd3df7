import {englishSheetWords} from '../../../core/shot/english.js';
import type {Say} from '../../shared/say.js';

export {family} from '../../shared/words/en.js';

/** Numbers and settings come written. */
export const words = (say: Say) => ({
  say,
  record: englishSheetWords(),
  sheet: 'Shot sheet',

  // the verdict; shots come as `2` or `2 “heron front”`
  noneKept: (now: string) => `${now}. No shot is kept yet.`,
  asKept: (now: string, count: string) => `${now}. As kept in shot ${count}.`,
  since: (now: string, count: string, changes: string) => `${now}. Since shot ${count}: ${changes}.`,
  sinceAndMore: (now: string, count: string, changes: string, rest: number) => `${now}. Since shot ${count}: ${changes} and ${rest} more.`,
  changed: (label: string) => `${label} changed`,
  change: (label: string, from: string, to: string) => `${label} ${from} → ${to}`,
  changeBy: (label: string, from: string, to: string, stops: string, brighter: boolean) =>
    `${label} ${from} → ${to}, ${stops} ${brighter ? 'brighter' : 'darker'}`,

  // the sheet
  nothing: 'Nothing was stated yet: what stands above is only assumed.',
  missing: 'Not on this sheet yet. Each part appears once it is set in a linked check; what stands in a check that is still folded up comes along when that is first opened:',
  missingParts: {
    camera: 'Lens and field: in the check for what is sharp',
    figure: 'Size of the figure: in the check for what is sharp',
    lamps: 'Lamps and flags: in the check of the backdrop',
    backdrop: 'Backdrop and its distance: in the check of the backdrop',
    card: 'Gray card: open its photo in the gray card check',
  },
  name: 'Name of this shot',
  nameHint: 'without a name it is numbered',
  note: 'Note',
  picture: (title: string) => `Small picture of ${title}`,
  thisShot: 'this shot',

  // keeping
  keep: 'Keep this shot',
  keptHead: 'Kept shots, in order',
  kept: (count: string) => `Kept as shot ${count}.`,
  numbered: (count: number) => `Shot ${count}`,
  first: 'The first one kept.',
  same: 'Nothing changed since the shot before.',
  putBack: 'Back to these settings',
  putBackOf: (count: number) => `Back to these settings: shot ${count}`,
  isBack: (count: string) => `Set as in shot ${count}, in every linked check.`,
  up: 'Earlier',
  upOf: (count: number) => `Earlier: shot ${count}`,
  down: 'Later',
  downOf: (count: number) => `Later: shot ${count}`,
  remove: 'Remove',
  removeOf: (count: number) => `Remove: shot ${count}`,
  added: (count: number) => say.plural(count, {one: 'One shot was added.', other: `${count} shots were added.`}),

  // undoing
  undo: (what: string) => `Undo: ${what}`,
  acts: {
    keep: (count: number) => `shot ${count} kept`,
    remove: (count: number) => `shot ${count} removed`,
    move: (count: number) => `shot ${count} moved`,
    putBack: (count: number) => `back to shot ${count}`,
    import: 'shots added',
    link: 'link opened',
    otherPage: 'shots of another window taken over',
  },

  // this device
  remember: 'Remember on this device',
  remembered: 'Kept on this device, nowhere else. Press again and it forgets.',
  forgotten: 'This device has forgotten the shots. They are still on this page.',
  full: 'This device has no room left for the shots. They stay on this page until it is closed: save a file to be safe.',
  blocked: 'This browser keeps nothing for this page (a private window, or storage is blocked). The shots stay on this page until it is closed: save a file to be safe.',

  // links
  linkTaken: 'The shot of the link is set, in every linked check.',
  linkNewer: (version: string) => `This link comes from a later version (${version}). What is known here was taken.`,
  linkUnknown: (name: string) => `“${name}” in the link means nothing here. It is handed on with the next link; everything else was taken.`,
  linkUnreadable: (name: string, text: string, wanted: string) =>
    `${name} “${text}” in the link does not read as ${wanted}. It is kept as typed; everything else was taken.`,
  linkTooLong: (name: string, length: number) => `“${name}” in the link is ${length} characters long and was left out; everything else was taken.`,

  along: 'Link, text, card, file and print',
  page: 'Put it into a page of your own',
});

export type SheetElementWords = ReturnType<typeof words>;
