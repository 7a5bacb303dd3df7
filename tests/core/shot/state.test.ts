import {describe, expect, it} from 'vitest';
import {withText, withValue} from '../../../src/core/shot/saying.js';
import {EMPTY_STATE, filledFrom} from '../../../src/core/shot/state.js';

describe('a shot filled from another', () => {
  it('takes what it does not say', () => {
    const filled = filledFrom(withValue(EMPTY_STATE, 'aperture', 8), withText(EMPTY_STATE, 'shutter', '0"6'));
    expect(filled.values.aperture).toBe(8);
    expect(filled.texts).toEqual({shutter: '0"6'});
  });

  it('does not take the other’s text for a value of its own', () => {
    const [own, other] = [withValue(EMPTY_STATE, 'aperture', 8), withText(EMPTY_STATE, 'aperture', 'f/4')];
    expect(filledFrom(own, other)).toEqual(own);
    expect(filledFrom(own, withText(EMPTY_STATE, 'aperture', 'wide open'))).toEqual(own);
    expect(filledFrom(withText(EMPTY_STATE, 'aperture', 'wide open'), other).values).toEqual({});
  });
});
