import {readShutter, trade, Problem, type Exposure} from 'lampblack';
import {sharpZone, type SharpZone} from 'lampblack/optics';
import {readLink, type ShotKey} from 'lampblack/shot';
import {readLength} from 'lampblack/units';
import 'lampblack/elements';
import 'lampblack/elements/stop-trade-dial';
import {StopTradeDial} from 'lampblack/elements/stop-trade-dial/class';

const from: Exposure = {aperture: 2.8284, shutter: 0.04, iso: 100};
const reading = readShutter('1/25');
const time: number = reading instanceof Problem ? NaN : reading.value;
const {to, rounding}: {to: Exposure; rounding: number} = trade({from, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3});

const zone: SharpZone['far'] = sharpZone({focalLength: 60, aperture: 8, magnification: 0.19}, 0.02).far;
const link = readLink('#shot=1&aperture=f/8');
const key: ShotKey = 'baseDepth';
const depth = readLength(key, '60 mm');
void [zone, link?.state.values.aperture, depth instanceof Problem ? depth.wanted : depth];

const dial = document.createElement('stop-trade-dial');
const same: StopTradeDial = dial;
same.aperture = to.aperture + rounding + time;
dial.addEventListener('shot-change', (event) => { const shutter: number = event.shot.shutter; void shutter; });

// @ts-expect-error a property takes a number in base units
dial.aperture = 'f/8';
