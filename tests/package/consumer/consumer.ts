import {readShutter, trade, Problem, type Exposure} from 'lampblack';
import 'lampblack/elements';
import 'lampblack/elements/stop-trade-dial';
import {StopTradeDial} from 'lampblack/elements/stop-trade-dial/class';

const from: Exposure = {aperture: 2.8284, shutter: 0.04, iso: 100};
const reading = readShutter('1/25');
const time: number = reading instanceof Problem ? NaN : reading.value;
const {to, rounding}: {to: Exposure; rounding: number} = trade({from, change: {aperture: 8}, pay: 'shutter', clicksPerStop: 3});

const dial = document.createElement('stop-trade-dial');
const same: StopTradeDial = dial;
same.aperture = to.aperture + rounding + time;
dial.addEventListener('shot-change', (event) => { const shutter: number = event.shot.shutter; void shutter; });

// @ts-expect-error a property takes a number in base units
dial.aperture = 'f/8';
