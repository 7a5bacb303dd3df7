import {describe, expect, it} from 'vitest';
import {across, beside, clearOf, curve, inPanel, leaning, leavesAt, markAt, panelTop, sheetFor, silhouette, slab, up} from '../../src/elements/sharp-zone-bar/draw.js';
import {ticks} from '../../src/elements/sharp-zone-bar/ticks.js';
import {axialDepth} from '../../src/core/optics/outline.js';

const rider = {baseDepth: 120, height: 150, overhangFront: 30, overhangFrontHeight: 90, overhangBack: 10, overhangBackHeight: 60};
const flat = {baseDepth: 60};
const plainly = (value: number) => String(value).replace('-', '−');
const widths = [280, 320, 600, 1000, 1600];

describe('sharp-zone-bar, drawing', () => {
  for (const width of widths) {
    it(`keeps the whole figure and the focus plane on a sheet ${width} px wide, the camera's place free`, () => {
      for (const outline of [rider, flat]) {
        const ends = [-(outline === rider ? 30 : 0), outline === rider ? 130 : 60] as const;
        const sheet = sheetFor(width, outline, ends, 20);
        expect(across(sheet, ends[0])).to.be.above(54);
        expect(across(sheet, ends[1])).to.be.below(width);
        expect(up(sheet, outline === rider ? 150 : 0)).to.be.at.least(sheet.ceiling);
        expect(sheet.height).to.be.below(600);
      }
    });

    it(`engraves lines no closer than 4 px and numbers no closer than 40 on ${width} px, in every unit`, () => {
      const sheet = sheetFor(width, rider, [-30, 130], 20);
      for (const unit of ['mm', 'cm', 'in'] as const) {
        const all = ticks(sheet, unit, plainly);
        const numbered = all.filter(({label}) => label);
        expect(numbered.length).to.be.at.least(2);
        for (let k = 1; k < all.length; k++) expect((all[k]?.x ?? 0) - (all[k - 1]?.x ?? 0)).to.be.at.least(3.99);
        for (let k = 1; k < numbered.length; k++) expect((numbered[k]?.x ?? 0) - (numbered[k - 1]?.x ?? 0)).to.be.at.least(39.9);
      }
    });
  }

  it('numbers the ruler from the base’s front edge, with a true minus', () => {
    const sheet = sheetFor(600, flat, [0, 60], 20);
    const zero = ticks(sheet, 'mm', plainly).find(({label}) => label === '0');
    expect(zero?.x).to.be.closeTo(across(sheet, 0), 1e-9);
    expect(ticks(sheet, 'mm', plainly)[0]?.x).to.be.at.least(0);
    expect(ticks(sheet, 'mm', plainly).some(({label}) => label.startsWith('−'))).to.be.true;
    expect(ticks(sheet, 'in', plainly).find(({label}) => label === '1')?.x).to.be.closeTo(across(sheet, 25.4), 1e-9); // an inch by definition
  });

  it('leans planes of equal depth as the camera leans', () => {
    for (const tilt of [-20, 0, 7, 45]) {
      for (const z of [0, 40, 90]) {
        expect(axialDepth(leaning(33, z, tilt), z, tilt)).to.be.closeTo(axialDepth(33, 0, tilt), 1e-9);
      }
    }
  });

  it('draws a zone without end past the sheet, with finite corners', () => {
    const sheet = sheetFor(600, flat, [0, 60], 20);
    for (const [x, y] of slab(sheet, 10, Infinity, 30)) expect(Number.isFinite(x) && Number.isFinite(y)).to.be.true;
    expect(Math.max(...slab(sheet, 10, Infinity, 0).map(([x]) => x))).to.be.above(600);
  });

  it('puts a tip of the silhouette exactly where the outline says', () => {
    const sheet = sheetFor(600, rider, [-30, 130], 20);
    expect(silhouette(sheet, rider).body).to.contain(`${across(sheet, -30).toFixed(1)} ${up(sheet, 90).toFixed(1)}`);
    expect(silhouette(sheet, rider).body).to.contain(`${across(sheet, 130).toFixed(1)} ${up(sheet, 60).toFixed(1)}`);
  });

  it('finds the mark again from its place', () => {
    const sheet = sheetFor(320, rider, [-30, 130], 20);
    expect(markAt(sheet, across(sheet, 12.5))).to.be.closeTo(12.5, 1e-9);
  });

  it('never squeezes the limit flat and never lets a huge blur hide it', () => {
    expect(panelTop(1.5, [0.2, 0.3])).to.be.above(1.5);
    expect(panelTop(1.5, [100, 120])).to.be.at.most(12);
    const sheet = sheetFor(600, flat, [0, 60], 20);
    expect(inPanel(sheet, 1.5, panelTop(1.5, [100, 120]))).to.be.within(sheet.panel, sheet.floor - 8);
  });

  it('writes a word on the other side of its place where a line or the edge of the sheet would cut it', () => {
    const sheet = sheetFor(600, flat, [0, 60], 20);
    expect(beside(sheet, 'front', 300, 5, 'end')).to.deep.equal({x: 295, anchor: 'end'});
    expect(beside(sheet, 'front', 300, 5, 'end', 280)).to.deep.equal({x: 305, anchor: 'start'});
    expect(beside(sheet, 'front', 20, 5, 'end')).to.deep.equal({x: 25, anchor: 'start'});
    expect(beside(sheet, 'front', 590, 5, 'start')).to.deep.equal({x: 585, anchor: 'end'});
  });

  it('keeps letters off a level line, as near as can be to where they belong', () => {
    expect(clearOf(100, 50)).to.equal(100);
    for (let line = 80; line < 112; line += 0.5) {
      const y = clearOf(100, line);
      // Letters of 12 px: figures 9 px high, tails 3 px low.
      expect(line > y + 3.5 || line < y - 9.5, `${line}`).to.be.true;
      expect(Math.abs(y - 100)).to.be.at.most(9);
    }
  });

  it('finds where a curve goes out at the top on the way to an end, and leaves an end alone that is in view', () => {
    const rising = (mark: number) => Math.abs(mark - 30) / 2;
    expect(leavesAt(30, 90, 10, rising)).to.be.closeTo(50, 0.01); // 20 mm at half a pixel a mm
    expect(leavesAt(30, -20, 10, rising)).to.be.closeTo(10, 0.01);
    expect(leavesAt(30, 45, 10, rising)).to.equal(45);
    expect(leavesAt(60, 90, 10, rising)).to.equal(90);
  });

  it('draws no curve over an empty stretch', () => {
    const sheet = sheetFor(600, flat, [0, 60], 20);
    expect(curve(sheet, 50, 50, 1, () => 0)).to.deep.equal([]);
    expect(curve(sheet, sheet.right + 1, Infinity, 1, () => 0)).to.deep.equal([]);
  });
});
