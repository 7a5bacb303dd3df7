/** The knobs of a reference page: what is typed goes to the check as an attribute or custom property, and into the markup. */
const page = document.querySelector('#reference');
const check = page.querySelector(page.dataset.tag);
const markup = page.querySelector('#markup');
const heard = page.querySelector('#heard');

page.addEventListener('input', ({target}) => {
  const {attribute, property} = target.dataset;
  if (attribute) reason(attribute);
  if (property) check.style.setProperty(property, target.value);
  if (attribute && target.type === 'checkbox') check.toggleAttribute(attribute, target.checked);
  else if (attribute && target.value.trim() === '') check.removeAttribute(attribute);
  else if (attribute) check.setAttribute(attribute, target.value);
  write();
});

/** Puts into the block what the check is made of now. */
function write() {
  const copy = document.createElement(page.dataset.tag);
  for (const {name, value} of check.attributes) copy.setAttribute(name, value);
  copy.append(...Array.from(check.childNodes, (node) => node.cloneNode(true)));
  const text = copy.outerHTML.replace(/ (?=[a-z-]+="[^"]*"(?=[^<]*>))/g, '\n  ');
  markup.textContent = `<script type="module" src="lampblack/${page.dataset.tag}.js"></script>\n${text}`;
}

/** Says beside a knob why its text is not in use; without a problem, that nothing is wrong with it. */
function reason(attribute, problem) {
  const knob = page.querySelector(`[data-attribute="${attribute}"]`);
  // Text that was typed in the check has its reason there.
  if (!knob || (problem && String(problem.value) !== knob.value)) return;
  const place = knob.nextElementSibling;
  place.hidden = !problem;
  place.textContent = problem ? `“${knob.value}” is not in use. Wanted: ${problem.wanted}.` : '';
  knob.setAttribute('aria-invalid', String(Boolean(problem)));
  knob.setAttribute('aria-describedby', place.id);
}

// What is set right in the check is right.
check.addEventListener('shot-change', ({changes}) => {
  for (const key of Object.keys(changes)) reason(key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`));
});

for (const name of ['shot-change', 'shot-problem', 'trail-change', 'shots-change']) {
  check.addEventListener(name, (event) => {
    const said = event.problem ? event.problem.message : JSON.stringify(event.changes ?? {}, null, 1);
    heard.textContent = `${name} ${said}`;
    if (event.problem) reason(event.problem.parameter, event.problem);
  });
}
