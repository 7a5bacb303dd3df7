import {assert, expect} from '@open-wc/testing';
import {openPhoto} from '../../src/photo/open.js';
import {isPhotoProblem} from '../../src/photo/problem.js';
import {settingsFromTags} from '../../src/photo/settings.js';
import {withExif} from './exif.js';
import {drawn, fill} from './pictures.js';

/** Tags as the reader library hands them on. */
const tags = (record: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(record).map(([tag, value]) => [tag, {value}]));

const plain = (width = 30, height = 20) => drawn(width, height, (pen) => fill(pen, [90, 90, 90], 0, 0, width, height),
  {type: 'image/jpeg', name: 'plain.jpg'});

async function settingsOf(file: File) {
  const photo = await openPhoto(file);
  if (isPhotoProblem(photo)) assert.fail(photo.problem);
  photo.close();
  return photo.settings;
}

describe('settings from Exif written by another library', () => {
  it('are read as they were written', async () => {
    const settings = await settingsOf(await withExif(await plain(), {
      FNumber: [56, 10], ExposureTime: [1, 60], ISOSpeedRatings: 200, FocalLength: [350, 10], FocalLengthIn35mmFilm: 52,
      DateTimeOriginal: '2026:03:01 12:30:00', Orientation: 1, PixelXDimension: 30, PixelYDimension: 20,
    }));
    expect(settings).to.deep.include({
      aperture: 5.6, shutter: 1 / 60, iso: 200, focalLength: 35, equivalentFocalLength: 52, takenAt: '2026-03-01T12:30:00',
      recordedSize: {width: 30, height: 20},
    });
    expect(settings.leftOut).to.deep.equal([]);
  });

  it('are taken from the APEX tags when the plain ones are missing', async () => {
    // Av 6.918863 is f/11, Tv 6 is 1/64 s: APEX as in tests/reference/published/apex.json.
    const settings = await settingsOf(await withExif(await plain(), {
      ApertureValue: [6918863, 1000000], ShutterSpeedValue: [6, 1],
    }));
    expect(settings.aperture).to.be.closeTo(11, 1e-5);
    expect(settings.shutter).to.be.closeTo(1 / 64, 1e-12);
  });

  it('leave nonsense out and list it', async () => {
    const settings = await settingsOf(await withExif(await plain(), {
      FNumber: [0, 0], ExposureTime: [1, 0], ISOSpeedRatings: 65535, FocalLength: [0, 1], FocalLengthIn35mmFilm: 0,
      DateTimeOriginal: '0000:00:00 00:00:00', FocalPlaneXResolution: [5, 0], FocalPlaneYResolution: [0, 0],
    }));
    expect(Object.keys(settings)).to.deep.equal(['leftOut']);
    expect(settings.leftOut).to.deep.include.members([
      {tag: 'FNumber', value: '0/0', why: 'no-number'}, {tag: 'ExposureTime', value: '1/0', why: 'no-number'},
      {tag: 'ISOSpeedRatings', value: '65535', why: 'absurd'}, {tag: 'FocalLength', value: '0/1', why: 'absurd'},
      {tag: 'DateTimeOriginal', value: '0000:00:00 00:00:00', why: 'absurd'},
    ]);
  });

  it('are none for a file whose metadata are torn', async () => {
    const file = await withExif(await plain(), {FNumber: [56, 10], ExposureTime: [1, 60]});
    const bytes = new Uint8Array(await file.arrayBuffer());
    bytes.fill(0xee, 14, 60);
    const photo = await openPhoto(new File([bytes], 'torn.jpg'));
    if (isPhotoProblem(photo)) assert.fail(photo.problem);
    expect(photo.settings.aperture).to.equal(undefined);
    expect((await photo.tally()).pixels).to.equal(600);
    photo.close();
  });
});

describe('settings from tags', () => {
  it('never throw, whatever stands in them', () => {
    const values = [undefined, null, NaN, Infinity, -1, 0, '', 'f/8', [], [[]], [1], [1, 0], [NaN, 1], [[1, 0], [2, 3]], {}, new Date(NaN),
      [4294967295, 4294967295], Array.from({length: 5000}, () => 7)];
    const names = ['FNumber', 'ApertureValue', 'ExposureTime', 'ShutterSpeedValue', 'ISOSpeedRatings', 'FocalLength',
      'FocalLengthIn35mmFilm', 'FocalPlaneXResolution', 'FocalPlaneResolutionUnit', 'PixelXDimension', 'Orientation',
      'SubjectDistance', 'DateTimeOriginal'];
    for (const value of values) {
      const settings = settingsFromTags(tags(Object.fromEntries(names.map((name) => [name, value]))), {width: 30, height: 20});
      for (const [key, found] of Object.entries(settings)) {
        if (typeof found === 'number') expect(Number.isFinite(found) && found > 0, `${key} from ${String(value)}`).to.equal(true);
      }
    }
  });

  it('find the speed that a two-byte tag cannot hold', () => {
    expect(settingsFromTags(tags({ISOSpeedRatings: 65535, RecommendedExposureIndex: 102400})).iso).to.equal(102400);
  });

  it('do not take the machinery of a language for a tag', () => {
    expect(settingsFromTags(Object.create({FNumber: {value: 8}}) as never)).to.deep.equal({leftOut: []});
  });
});

describe('the sensor width', () => {
  const size = {width: 6000, height: 4000};

  // Sensor formats with their crop factor: tests/reference/published/sensors.json (by the diagonal).
  it('follows from the focal plane, in inches, centimetres or millimetres', () => {
    for (const [unit, perUnit] of [[2, 25.4], [3, 10], [4, 1]] as const) {
      const {sensorWidth} = settingsFromTags(tags({
        FocalPlaneXResolution: [Math.round(6000 / 23.5 * perUnit * 1000), 1000], FocalPlaneResolutionUnit: unit, PixelXDimension: 6000, PixelYDimension: 4000,
      }), size);
      expect(sensorWidth?.mm).to.be.closeTo(23.5, 0.001);
      expect(sensorWidth).to.include({from: 'focal-plane', standing: 'alone'});
    }
  });

  it('follows from the 35 mm equivalent by the diagonal, in the proportions of the picture', () => {
    // A 17.3 × 13 mm sensor is 4:3, its diagonal 21.6 mm, half of that of 36 × 24 mm: 25 mm is like 50 mm.
    const {sensorWidth} = settingsFromTags(tags({FocalLength: [25, 1], FocalLengthIn35mmFilm: 50}), {width: 5184, height: 3888});
    expect(sensorWidth?.mm).to.be.closeTo(17.3, 0.1);
    expect(sensorWidth).to.include({from: 'equivalent', standing: 'alone'});
    expect(sensorWidth?.within).to.be.closeTo(0.012, 0.0005);
  });

  it('is agreed when both routes lead to it', () => {
    const {sensorWidth} = settingsFromTags(tags({
      FocalLength: [60, 1], FocalLengthIn35mmFilm: 60, FocalPlaneXResolution: [1250, 3], FocalPlaneResolutionUnit: 3,
    }), {width: 1500, height: 1000});
    expect(sensorWidth?.mm).to.be.closeTo(36, 1e-9);
    expect(sensorWidth?.standing).to.equal('agreed');
  });

  it('is taken from the equivalent when a picture was made smaller and kept its focal plane', () => {
    const {sensorWidth} = settingsFromTags(tags({
      FocalLength: [60, 1], FocalLengthIn35mmFilm: 60, FocalPlaneXResolution: [1250, 3], FocalPlaneResolutionUnit: 3,
    }), {width: 750, height: 500});
    expect(sensorWidth?.mm).to.be.closeTo(36, 0.01);
    expect(sensorWidth).to.include({from: 'equivalent', standing: 'disputed'});
  });

  it('is left unsaid when nothing credible leads to it', () => {
    expect(settingsFromTags(tags({FocalPlaneXResolution: [1, 1], FocalPlaneResolutionUnit: 3}), size).sensorWidth).to.equal(undefined);
    expect(settingsFromTags(tags({FocalLength: [50, 1]}), size).sensorWidth).to.equal(undefined);
  });
});

describe('a picture turned by its Exif orientation', () => {
  // Where the top left quarter of the stored picture ends up. Source: Exif 2.32, tag 0112 (from memory).
  const corners = {1: 'top left', 2: 'top right', 3: 'bottom right', 4: 'bottom left', 5: 'top left', 6: 'top right',
    7: 'bottom right', 8: 'bottom left'} as const;
  for (const [orientation, corner] of Object.entries(corners)) {
    it(`${orientation} has its marked corner at the ${corner}`, async () => {
      const stored = await drawn(64, 32, (pen) => {
        fill(pen, [20, 20, 20], 0, 0, 64, 32);
        fill(pen, [220, 220, 220], 0, 0, 16, 16);
      }, {type: 'image/jpeg', quality: 1});
      const photo = await openPhoto(await withExif(stored, {Orientation: Number(orientation)}));
      if (isPhotoProblem(photo)) assert.fail(photo.problem);
      const turned = Number(orientation) > 4;
      expect([photo.width, photo.height]).to.deep.equal(turned ? [32, 64] : [64, 32]);
      const x = corner.endsWith('left') ? 0 : photo.width - 16;
      const y = corner.startsWith('top') ? 0 : photo.height - 16;
      const inside = await photo.tally({x, y, width: 16, height: 16});
      expect(inside.brightness.subarray(200).reduce((sum, count) => sum + count, 0)).to.equal(256);
      const whole = await photo.tally();
      expect(whole.brightness.subarray(200).reduce((sum, count) => sum + count, 0)).to.equal(256);
      expect(photo.preview.width).to.equal(photo.width);
      expect(photo.settings.orientation).to.equal(Number(orientation));
      photo.close();
    });
  }
});
