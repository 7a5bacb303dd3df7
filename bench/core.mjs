/** Core calls per second, against an empty call and against trying everything. */
import {mkdtempSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {build} from 'esbuild';
import {ROOT} from '../scripts/set-up.mjs';

/** The core and the brute forces of the tests, from source, in one module. */
async function load() {
  const folder = mkdtempSync(join(tmpdir(), 'lampblack-bench-'));
  const outfile = join(folder, 'core.mjs');
  await build({
    stdin: {
      contents: `export * from './src/core/index.js'; export * as brute from './tests/core/optics/plan-by-brute-force.js';
        export {JOBS} from './tests/core/optics/plan-jobs.js';`,
      resolveDir: ROOT, loader: 'ts',
    },
    bundle: true, format: 'esm', platform: 'node', outfile, logLevel: 'error',
  });
  const module = await import(outfile);
  rmSync(folder, {recursive: true, force: true});
  return module;
}

let sink = 0;

/** Seconds a call takes: the best of several rounds, each long enough for the clock. */
function perCall(job, least = 0.04) {
  let calls = 1;
  let best = Infinity;
  for (let round = 0; round < 6;) {
    const start = performance.now();
    for (let call = 0; call < calls; call++) sink += job(call);
    const seconds = (performance.now() - start) / 1000;
    if (seconds < least && calls < 1e8) {
      calls = Math.ceil(calls * Math.min(10, 1.3 * least / Math.max(seconds, 1e-6)));
      continue;
    }
    best = Math.min(best, seconds / calls);
    if (seconds > 1) break;
    round++;
  }
  return best;
}

/** The defocus integral written down as it stands, five wavelengths, a midpoint sum. */
function plainContrast(working, blur, cycles) {
  let sum = 0;
  const light = [[0.00048, 0.139], [0.00052, 0.71], [0.00056, 0.995], [0.0006, 0.631], [0.00064, 0.175]];
  for (const [wavelength, weight] of light) {
    const s = 2 * wavelength * working * cycles;
    if (s >= 2) continue;
    const waves = blur / (8 * wavelength * working);
    const end = 1 - s / 2;
    const steps = 200;
    let part = 0;
    for (let at = 0; at < steps; at++) {
      const x = (at + 0.5) / steps * end;
      part += Math.sqrt(1 - (x + s / 2) ** 2) * Math.cos(4 * Math.PI * waves * s * x);
    }
    sum += weight * 4 / Math.PI * part * end / steps;
  }
  return sum / 2.65;
}

function tryEveryPlan({brute, JOBS}) {
  const job = JOBS['75 mm infantry base'];
  let best = Infinity;
  job.lenses.forEach((lens, at) => {
    const near = brute.nearestPlace(job, at);
    for (let distance = near.cameraDistance; distance <= job.room; distance += 5) {
      const place = brute.tryPlace(job, at, distance, brute.evenFocus(job, lens, distance));
      if (typeof place === 'string') continue;
      for (const aperture of job.apertures) {
        const frames = brute.fault(job, place, aperture) === null ? 1 : brute.framesNeeded(job, place, aperture);
        if (Number.isFinite(frames)) best = Math.min(best, brute.costOf(job, place, near, aperture, frames));
      }
    }
  });
  return best;
}

/** @returns rows of seconds a call: `what`, `ours`, `brute`, and what brute force is there */
export async function measureCore() {
  const core = await load();
  const lens = {focalLength: 100, aperture: 11.313708498984761, magnification: 0.3};
  const request = {
    from: {aperture: 2.8284271247461903, shutter: 1 / 25.4, iso: 100}, change: {aperture: 11.313708498984761}, pay: 'shutter', clicksPerStop: 3,
  };
  const depths = Float64Array.from({length: 200}, (_, at) => -40 + 0.4 * at);
  const detail = {onSensor: 0.02};
  const times = core.clicks('shutter', 3).map(({value}) => value);
  const away = core.pupilToSubject(lens);
  const working = core.workingAperture(lens.aperture, lens.magnification);
  const empty = perCall((call) => call & 1);
  const rows = [
    {
      what: '`trade`', ours: perCall(() => core.trade(request).rounding), against: 'every click of the shutter tried, without path, costs and ways out',
      brute: perCall(() => Math.min(...times.map((shutter) =>
        Math.abs(core.exposureStops(request.from, {aperture: request.change.aperture, shutter, iso: 100}))))),
    },
    {
      what: '`sharpZone`', ours: perCall((call) => core.sharpZone(lens, 0.02 + (call & 7) / 1000).near), against: 'blur followed out in steps of 0.01 mm',
      brute: perCall(() => {
        let [near, far] = [0, 0];
        while (core.blurDisc(lens, -near) < 0.02) near += 0.01;
        while (core.blurDisc(lens, far) < 0.02) far += 0.01;
        return near + far;
      }),
    },
    {
      what: '`contrastProfile`, 200 depths', ours: perCall(() => core.contrastProfile(lens, depths, detail)[7]), against: 'the integral summed in 200 steps',
      brute: perCall(() => depths.reduce((sum, depth) =>
        sum + plainContrast(working, lens.magnification * lens.focalLength / lens.aperture * Math.abs(depth) / (away + depth), 25), 0)),
    },
    {
      what: '`shotPlan`', ours: perCall(() => core.shotPlan(core.JOBS['75 mm infantry base']).ways.length, 0.2), against: 'every click at every 5 mm tried',
      brute: perCall(() => tryEveryPlan(core), 0.2),
    },
  ];
  if (Number.isNaN(sink)) throw new Error('A timed call gave no number.');
  return {empty, rows};
}
