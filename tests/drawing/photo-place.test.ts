import {describe, expect, it} from 'vitest';
import {completeShot, type Shot} from '../../src/core/shot/shot.js';
import {PhotoPlace, photoCrop} from '../../src/elements/shared/photo/place.js';
import {closeUpSince} from '../../src/elements/shared/photo/trade-for.js';

const CROP = {left: 0.3, top: 0.3, width: 0.4, height: 0.4};
/** The place after a shot was described in these steps, and the shot. */
function after(...steps: readonly Partial<Shot>[]) {
  const place = new PhotoPlace(steps[0] ?? {});
  for (const stated of steps) place.follow(stated);
  return {place, shot: completeShot(steps.at(-1) ?? {})};
}

describe('place of a photo', () => {
  it('is where the field width puts it that is stated first, even after the photo was opened', () => {
    const {place, shot} = after({}, {fieldWidth: 60});
    expect(closeUpSince(place, shot)).to.equal(0);
    expect(photoCrop(place, shot)).to.equal(shot.crop);
  });

  it('is where the shot was taken to stand, when a plan is the first to state a width', () => {
    const {place, shot} = after({}, {fieldWidth: 600, crop: CROP});
    expect(closeUpSince(place, shot)).to.be.below(-0.3); // less is lost from further back
    expect(photoCrop(place, shot)).to.deep.equal({left: 0, top: 0, width: 1, height: 1});
  });

  it('knows a camera that was turned upright from one that was moved, and a sensor that was put right', () => {
    const start = {fieldWidth: 180, sensorWidth: 36};
    const upright = after(start, {fieldWidth: 120, sensorWidth: 24});
    expect(closeUpSince(upright.place, upright.shot)).to.be.closeTo(0, 1e-12);
    const right = after(start, {fieldWidth: 180, sensorWidth: 24});
    expect(closeUpSince(right.place, right.shot)).to.equal(0);
  });

  it('stays through one plan after another, and is the shot’s again only where the camera was', () => {
    const [start, one, other] = [{fieldWidth: 120}, {fieldWidth: 300, crop: CROP}, {fieldWidth: 400, crop: {...CROP, width: 0.3}}];
    const away = after(start, one, other);
    expect(photoCrop(away.place, away.shot).width).to.equal(1);
    const back = after(start, one, other, start);
    expect(photoCrop(back.place, back.shot)).to.equal(back.shot.crop);
    expect(closeUpSince(back.place, back.shot)).to.equal(0);
    const narrowed = after(start, one, start, {...start, crop: CROP});
    expect(photoCrop(narrowed.place, narrowed.shot)).to.deep.equal(CROP);
  });

  it('takes a step back from a width that was put right for the way back', () => {
    const right = {fieldWidth: 130};
    const {place, shot} = after({fieldWidth: 120}, right, {fieldWidth: 300, crop: CROP}, {...right, crop: CROP});
    expect(photoCrop(place, shot)).to.equal(CROP);
    expect(place.crop).to.equal(undefined);
  });
});
