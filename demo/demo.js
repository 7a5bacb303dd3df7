/** The guild's shots: what each shows, and where focus and camera were when it was taken. */
const SHOTS = [
  {file: 'aperture-f8.jpg', title: 'f/8, the first keeper?', shot: {tilt: 7, focus: 35.7}},
  {file: 'aperture-f2.8.jpg', title: 'f/2.8, wide open', shot: {tilt: 7, focus: 35.7}},
  {file: 'aperture-f16.jpg', title: 'f/16, stopped down', shot: {tilt: 7, focus: 35.7}},
  {file: 'exposure-plus1.jpg', title: 'One stop brighter', shot: {tilt: 7, focus: 35.7}},
  {file: 'exposure-minus2.jpg', title: 'Two stops darker', shot: {tilt: 7, focus: 35.7}},
  {
    file: 'white-edge.jpg', title: 'White table edge, cropped',
    shot: {tilt: 9, focus: 34.9, crop: {left: 0.2, top: 0.02, width: 0.6, height: 0.809}},
  },
];

const WHOLE = {left: 0, top: 0, width: 1, height: 1};
const chart = document.querySelector('#chart');
const bar = document.querySelector('sharp-zone-bar');
const list = document.querySelector('#shots');

for (const {file, title, shot} of SHOTS) {
  const button = document.createElement('button');
  button.type = 'button';
  const image = document.createElement('img');
  Object.assign(image, {src: `shots/small/${file}`, alt: '', width: 168, height: 112, loading: 'lazy'});
  const words = document.createElement('span');
  words.textContent = title;
  button.append(image, words);
  button.addEventListener('click', () => take(file, shot, button));
  const item = document.createElement('li');
  item.append(button);
  list.append(item);
}

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
async function take(file, shot, button) {
  const answer = await fetch(`shots/${file}`).catch(() => undefined);
  if (!answer?.ok) {
    button.lastChild.textContent = 'Not to be had without a network';
    return;
  }
  chart.file = new File([await answer.blob()], file, {type: 'image/jpeg'});
  Object.assign(bar, {tilt: shot.tilt, focus: shot.focus});
  chart.crop = shot.crop ?? WHOLE;
  for (const other of list.querySelectorAll('button')) other.setAttribute('aria-pressed', String(other === button));
}
