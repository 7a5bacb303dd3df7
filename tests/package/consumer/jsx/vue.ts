import type {GlobalComponents} from 'vue';
import 'lampblack/elements/stop-trade-dial';
import 'lampblack/jsx/vue';

/** What a template may give the element: the editor and the checker of templates go by this. */
type Props = InstanceType<GlobalComponents['stop-trade-dial']>['$props'];

export const props: Props = {
  bench: 'heron', class: 'wide', aperture: 8, 'metered-shutter': '1/25',
  onShotChange: ({shot, changes}) => { const time: number = shot.shutter + (changes.shutter ?? 0); void time; },
  onShotProblem: ({problem}) => { void problem.wanted; },
};
export const bar: InstanceType<GlobalComponents['sharp-zone-bar']>['$props'] = {'base-depth': '60 mm', overhangBack: 26};

// @ts-expect-error a property takes a number in base units
export const wrong: Props = {aperture: 'f/8'};
// @ts-expect-error there is no such element
export type Foreign = GlobalComponents['stop-trade-clock'];
