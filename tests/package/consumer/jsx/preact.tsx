import 'lampblack/elements/stop-trade-dial';
import 'lampblack/jsx/preact';

export const page = <main>
  <stop-trade-dial bench="heron" class="wide" aperture={8} metered-shutter="1/25"
    onshot-change={({shot, changes}) => { const time: number = shot.shutter + (changes.shutter ?? 0); void time; }}
    onshot-problem={({problem}) => { void problem.wanted; }}>
    f/8
  </stop-trade-dial>
  <sharp-zone-bar base-depth="60 mm" overhangBack={26} />
</main>;

// @ts-expect-error a property takes a number in base units
export const wrong = <stop-trade-dial aperture="f/8" />;
// @ts-expect-error there is no such property
export const unknown = <sharp-zone-bar baseWidth={60} />;
// @ts-expect-error there is no such element
export const foreign = <stop-trade-clock />;
