import {useState} from 'react';
import {createRoot} from 'react-dom/client';
import 'lampblack/elements/stop-trade-dial';
import 'lampblack/elements/tonal-chart-reader';
import 'lampblack/jsx/react';
import {writeAperture} from 'lampblack';

/** React sets properties where an element has them: numbers in base units, not the text of an attribute. */
function Page() {
  const [aperture, setAperture] = useState(8);
  return <main>
    <p>Shot at {writeAperture(aperture)}.</p>
    <stop-trade-dial bench="heron" aperture={aperture} metered-shutter="1/25" onshot-change={({shot}) => { setAperture(shot.aperture); }}>
      The same light at another aperture.
    </stop-trade-dial>
    <tonal-chart-reader bench="heron" intent="dark-backdrop">The tonal chart of the shot.</tonal-chart-reader>
  </main>;
}

const place = document.querySelector('#page');
if (place) createRoot(place).render(<Page />);
