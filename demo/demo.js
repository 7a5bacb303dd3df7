/** Where focus and camera were when each of the guild's shots was taken, and what is kept of it. */
const SHOTS = {
  'aperture-f8': {tilt: 7, focus: 35.7},
  'aperture-f2.8': {tilt: 7, focus: 35.7},
  'aperture-f16': {tilt: 7, focus: 35.7},
  'exposure-plus1': {tilt: 7, focus: 35.7},
  'exposure-minus2': {tilt: 7, focus: 35.7},
  'white-edge': {tilt: 9, focus: 34.9, crop: {left: 0.2, top: 0.02, width: 0.6, height: 0.809}},
};

/** Width that filled the frame in all of them, mm. */
const FIELD_WIDTH = 187;

const WHOLE = {left: 0, top: 0, width: 1, height: 1};
const chart = document.querySelector('#chart');
const bar = document.querySelector('sharp-zone-bar');
const card = document.querySelector('gray-card-check');
const away = document.querySelector('#shots').dataset.away;

for (const list of document.querySelectorAll('.shots')) {
  for (const button of list.querySelectorAll('button')) button.addEventListener('click', () => take(button, list));
}

/** The rest of the checks: a script is loaded when its check is opened. */
for (const details of document.querySelectorAll('details[data-check]')) {
  details.addEventListener('toggle', () => { import(`./lampblack/${details.dataset.check}.js`); }, {once: true});
}

/** A link to a shot: its record lays the table, also when it is put into the address of a page that is open. */
addEventListener('hashchange', follow);
follow();

/** Once it was here, the calculator works without a network. */
navigator.serviceWorker?.register('service-worker.js').catch(() => undefined);

function follow() {
  if (!/^#(?:.*&)?shot=/.test(location.hash)) return;
  // What a link does not say has not been said: checks that are still closed bring nothing of the example with them.
  for (const check of document.querySelectorAll('details[data-check] > [bench]:not(:defined)')) {
    for (const name of check.getAttributeNames()) if (!['bench', 'scripts', 'example'].includes(name)) check.removeAttribute(name);
  }
  document.querySelector('shot-sheet').setAttribute('follow-link', '');
  document.querySelector('[data-check="shot-sheet"]').open = true;
  document.querySelector('#by-link').hidden = false;
  for (const said of document.querySelectorAll('[data-example]')) said.hidden = true;
  for (const language of document.querySelectorAll('.languages a')) language.hash = location.hash;
}

/** Opens a shot as if it had been picked; with one of the figure the bench is laid as it stood when it was taken. */
async function take(button, list) {
  const name = button.dataset.shot;
  const answer = await fetch(`shots/${name}.jpg`).catch(() => undefined);
  if (!answer?.ok) {
    button.lastChild.textContent = away;
    return;
  }
  const file = new File([await answer.blob()], `${name}.jpg`, {type: 'image/jpeg'});
  const shot = SHOTS[name];
  if (shot) {
    chart.file = file;
    Object.assign(bar, {fieldWidth: FIELD_WIDTH, tilt: shot.tilt, focus: shot.focus});
    chart.crop = shot.crop ?? WHOLE;
  } else {
    card.file = file;
  }
  for (const other of list.querySelectorAll('button')) other.setAttribute('aria-pressed', String(other === button));
}
