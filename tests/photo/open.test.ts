import {assert, expect} from '@open-wc/testing';
import {openPhoto} from '../../src/photo/open.js';
import type {Photo} from '../../src/photo/open.js';
import {isPhotoProblem} from '../../src/photo/problem.js';
import {bytesOf, drawn, fill, shot} from './pictures.js';

/** The photo, or a failed test. */
async function opened(file: Blob, options = {}): Promise<Photo> {
  const result = await openPhoto(file, options);
  if (isPhotoProblem(result)) assert.fail(`${result.problem} (${result.kind})`);
  return result;
}

const RED = [200, 30, 20] as const;
const GRAY = [90, 90, 90] as const;

/** A gray picture with a red square of 20 × 20 in its top left corner. */
const square = (type: string) => drawn(60, 40, (pen) => {
  fill(pen, GRAY, 0, 0, 60, 40);
  fill(pen, RED, 0, 0, 20, 20);
}, {type, quality: 1, name: `square.${type.slice(6)}`});

describe('openPhoto', () => {
  for (const inPage of [false, true]) {
    describe(inPage ? 'in the page' : 'in a worker', () => {
      it('counts exactly what is in the crop', async () => {
        const photo = await opened(await square('image/png'), {inPage});
        expect(photo.where).to.equal(inPage ? 'page' : 'worker');
        expect([photo.width, photo.height, photo.name]).to.deep.equal([60, 40, 'square.png']);
        const whole = await photo.tally();
        expect([whole.pixels, whole.red[200], whole.red[90]]).to.deep.equal([2400, 400, 2000]);
        const part = await photo.tally({x: 10, y: 10, width: 20, height: 20});
        expect([part.pixels, part.red[200], part.green[30], part.blue[20]]).to.deep.equal([400, 100, 100, 100]);
        photo.close();
      });

      it('refuses a crop beside the picture by name, and any question once it is closed', async () => {
        const photo = await opened(await square('image/png'), {inPage});
        const beside = await photo.tally({x: 60, y: 0, width: 5, height: 5}).catch((error: unknown) => error);
        expect(beside).to.include({name: 'Problem', parameter: 'crop'});
        photo.close();
        photo.close();
        const closed = await photo.tally().catch((error: unknown) => error);
        expect(closed).to.include({name: 'Problem', parameter: 'photo'});
      });
    });
  }

  // Other formats, which not every browser's canvas writes: odd-files.test.ts.
  it('opens a JPEG', async () => {
    const photo = await opened(await square('image/jpeg'));
    expect(photo.facts.kind).to.equal('jpeg');
    const tally = await photo.tally({x: 2, y: 2, width: 12, height: 12});
    const mean = tally.red.reduce((sum, count, code) => sum + count * code, 0) / tally.pixels;
    expect(mean).to.be.within(195, 205);
    photo.close();
  });

  it('shows a preview of at most 1600 pixels', async () => {
    const photo = await opened(await drawn(4000, 1000, (pen) => fill(pen, GRAY, 0, 0, 4000, 1000)));
    expect([photo.width, photo.height]).to.deep.equal([4000, 1000]);
    expect([photo.preview.width, photo.preview.height]).to.deep.equal([1600, 400]);
    photo.close();
    expect(photo.preview.width).to.equal(0);
  });

  it('reads the settings of a shot, and the sensor width from its focal plane', async () => {
    const photo = await opened(await shot('aperture-f8.jpg'));
    // What was written into the picture: tests/reference/shots/shots.json.
    expect(photo.settings).to.deep.include({aperture: 8, shutter: 1 / 3, iso: 100, focalLength: 60});
    expect(photo.settings.sensorWidth?.mm).to.be.closeTo(36, 0.01);
    expect(photo.settings.sensorWidth?.from).to.equal('focal-plane');
    photo.close();
  });

  it('leaves an open photo alone when the next file is no good', async () => {
    const photo = await opened(await square('image/png'));
    const bad = await openPhoto(new File(['not a picture'], 'IMG_1.jpg', {type: 'image/jpeg'}));
    expect(bad).to.deep.include({problem: 'not-a-picture', kind: 'unknown', name: 'IMG_1.jpg'});
    expect((await photo.tally()).pixels).to.equal(2400);
    photo.close();
  });

  it('calls a file by its contents and not by its name', async () => {
    const photo = await opened(new File([await bytesOf(await square('image/png'))], 'painting.jpg', {type: 'image/jpeg'}));
    expect(photo.facts.kind).to.equal('png');
    photo.close();
  });

  it('copies out the pixels of a crop', async () => {
    const photo = await opened(await square('image/png'));
    const {data, width, height} = await photo.ask('pixels', {x: 19, y: 0, width: 2, height: 1});
    expect([width, height, ...data]).to.deep.equal([2, 1, ...RED, 255, ...GRAY, 255]);
    photo.close();
  });
});
