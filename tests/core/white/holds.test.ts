import {describe, expect, it} from 'vitest';
import type {Lamp} from '../../../src/core/light/lamp.js';
import type {Flag} from '../../../src/core/light/flag.js';
import {compareShots} from '../../../src/core/tone/compare.js';
import {colourChange, setupChanges} from '../../../src/core/white/holds.js';
import type {LightSetup} from '../../../src/core/white/holds.js';
import {picture} from '../../reference/shots/picture.js';

/** A table with a key and a fill lamp and one flag. Invented. */
const key: Lamp = {kind: 'rectangle', position: [-230, -200, 300], aim: [0, 0, 45], width: 180, height: 180, power: 0};
const fill: Lamp = {kind: 'small', position: [360, -330, 180], aim: [0, 0, 45], power: -1};
const flag: Flag = {position: [-100, 150, 200], facing: [0, 1, 0], width: 200, height: 300};
const setup: LightSetup = {lamps: [key, fill], flags: [flag], whiteBalance: 'daylight'};

const withLamps = (...lamps: readonly Lamp[]): LightSetup => ({...setup, lamps});

describe('whether a card’s gains hold, by the set-ups', () => {
  it('they hold for the same set-up, and for one put back to a few mm', () => {
    expect(setupChanges(setup, setup)).toEqual([]);
    expect(setupChanges(setup, withLamps({...key, position: [-226, -203, 304]}, fill))).toEqual([]);
  });

  it('all lamps brighter alike is exposure, not colour', () => {
    expect(setupChanges(setup, withLamps({...key, power: 1}, {...fill, power: 0}))).toEqual([]);
  });

  it.each([
    ['a lamp moved', withLamps(key, {...fill, position: [360, -330, 240]}), [{changed: 'lamp-moved', index: 1, by: 60}]],
    ['one lamp brighter', withLamps(key, {...fill, power: 0}), [{changed: 'lamp-power', index: 1, by: 1}]],
    ['a lamp taken away', withLamps(key), [{changed: 'lamps', before: 2, after: 1}]],
    ['a lamp added', withLamps(key, fill, fill), [{changed: 'lamps', before: 2, after: 3}]],
    ['a flag taken away', {...setup, flags: []}, [{changed: 'flags', before: 1, after: 0}]],
    ['a flag moved', {...setup, flags: [{...flag, position: [-100, 150, 170]}]}, [{changed: 'flag-moved', index: 0, by: 30}]],
    ['another white balance', {...setup, whiteBalance: 'auto'}, [{changed: 'white-balance', before: 'daylight', after: 'auto'}]],
  ] as const)('%s', (_, shot, changes) => {
    expect(setupChanges(setup, shot as LightSetup)).toEqual(changes);
  });
});

describe('whether a card’s gains hold, by the pictures', () => {
  it('under the same lamps they do', async () => {
    expect(colourChange(compareShots(await picture('card-neutral'), await picture('aperture-f8')))).toEqual([]);
    expect(colourChange(compareShots(await picture('card-warm'), await picture('nocard-warm')))).toEqual([]);
  });

  it.each([['card-neutral', 'nocard-warm'], ['card-warm', 'aperture-f8'], ['card-mixed', 'aperture-f8']])(
    'the card of %s does not serve %s', async (card, shot) => {
      expect(colourChange(compareShots(await picture(card), await picture(shot)))).toEqual([expect.objectContaining({changed: 'colour'})]);
    });

  it('of another set nothing can be said', async () => {
    expect(colourChange(compareShots(await picture('card-neutral'), await picture('deep-near')))).toBeUndefined();
  });
});
