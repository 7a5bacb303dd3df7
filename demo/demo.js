/** Where focus and camera were when each of the guild's shots was taken, and what is kept of it. */
const SHOTS = {
  'aperture-f8': {tilt: 7, focus: 35.7},
  'aperture-f2.8': {tilt: 7, focus: 35.7},
  'aperture-f16': {tilt: 7, focus: 35.7},
  'exposure-plus1': {tilt: 7, focus: 35.7},
  'exposure-minus2': {tilt: 7, focus: 35.7},
  'white-edge': {tilt: 9, focus: 34.9, crop: {left: 0.2, top: 0.02, width: 0.6, height: 0.809}},
};

const WHOLE = {left: 0, top: 0, width: 1, height: 1};
const chart = document.querySelector('#chart');
const bar = document.querySelector('sharp-zone-bar');
const list = document.querySelector('#shots');

for (const button of list.querySelectorAll('button')) button.addEventListener('click', () => take(button));

/** The rest of the checks: a script is loaded when its check is opened. */
for (const details of document.querySelectorAll('details[data-check]')) {
  details.addEventListener('toggle', () => { import(`./lampblack/${details.dataset.check}.js`); }, {once: true});
}

/** A link to a shot: its record lays the table. */
const isShot = /^#(?:.*&)?shot=/.test(location.hash);
if (isShot) {
  document.querySelector('shot-sheet').setAttribute('follow-link', '');
  document.querySelector('[data-check="shot-sheet"]').open = true;
}

/** Once it was here, the calculator works without a network. */
navigator.serviceWorker?.register('service-worker.js').catch(() => undefined);

/** Opens a shot as if it had been picked, and lays the bench as it stood when it was taken. */
async function take(button) {
  const name = button.dataset.shot;
  const shot = SHOTS[name];
  const answer = await fetch(`shots/${name}.jpg`).catch(() => undefined);
  if (!answer?.ok) {
    button.lastChild.textContent = list.dataset.away;
    return;
  }
  chart.file = new File([await answer.blob()], `${name}.jpg`, {type: 'image/jpeg'});
  Object.assign(bar, {tilt: shot.tilt, focus: shot.focus});
  chart.crop = shot.crop ?? WHOLE;
  for (const other of list.querySelectorAll('button')) other.setAttribute('aria-pressed', String(other === button));
}
