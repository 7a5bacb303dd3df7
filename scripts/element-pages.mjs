/** A reference page an element, made from custom-elements.json: what it is for, and every attribute with a knob that turns it. */
import {discoveryLink, titleOf} from './frames.mjs';

/** The guild's figure, as its measurements go into any element that wants them. */
const FIGURE = {
  'focal-length': '60 mm', 'field-width': '187 mm', 'base-depth': '90 mm', 'overhang-front': '18 mm', 'overhang-front-height': '20 mm',
  'overhang-back': '26 mm', 'overhang-back-height': '45 mm', 'figure-height': '95 mm', 'figure-width': '80 mm', tilt: '7',
};

/** What each page opens with: attributes in the order a person would write them, and what stands between the tags. */
const EXAMPLES = {
  'stop-trade-dial': {
    attributes: {'metered-aperture': 'f/2.8', 'metered-shutter': '1/25', aperture: 'f/8', shutter: '0.3 s', iso: '100', pay: 'shutter'},
    inside: 'f/2.8 at 1/25 s gives the same light as f/8 at 0.3 s.',
  },
  'sharp-zone-bar': {
    attributes: {aperture: 'f/8', ...FIGURE, focus: '36 mm', 'picture-width': '1200', 'blur-limit': '1.5', room: '1.2 m'},
    inside: 'At f/8 the satchel in front and the end of the cloak fall outside the sharp zone.',
  },
  'shot-plan': {
    attributes: {'metered-aperture': 'f/8', 'metered-shutter': '0.3 s', ...FIGURE, 'picture-width': '1200', room: '1.2 m', 'most-frames': '12'},
    inside: 'Ways to get the whole lantern bearer sharp, with what each costs.',
  },
  'tonal-chart-reader': {
    attributes: {src: '../shots/aperture-f8.jpg', intent: 'dark-backdrop', crop: '0% 0% 100% 100%'},
    inside: 'The tonal chart of the guild’s shot at f/8, and what to do with the exposure.',
  },
  'gray-card-check': {
    attributes: {src: '../shots/card-neutral.jpg'},
    inside: 'Whether the guild’s card shot can be trusted, and the gains it gives.',
  },
  'backdrop-shade': {
    attributes: {
      'backdrop-distance': '300 mm', 'backdrop-reflectance': 'black card', 'backdrop-wish': '4.5',
      lights: 'key 180x180 at -230,-200,300 aim 0,0,45 power 0; fill 420x420 at 360,-330,180 aim 0,0,45 power -1.5', mains: '50',
      ...FIGURE, focus: '36 mm',
    },
    inside: 'How dark the black card behind the lantern bearer will be.',
  },
  'settings-trail': {
    attributes: {expect: 'same-light', 'clicks-per-stop': 'third'},
    inside: '\n  <ol>\n    <li>f/2.8, 1/25 s</li>\n    <li>f/5.6, 1/6 s</li>\n    <li>f/11, 1/6 s</li>\n  </ol>\n',
  },
  'shot-sheet': {
    attributes: {aperture: 'f/8', shutter: '0.3 s', iso: '100', ...FIGURE, note: 'Lantern bearer, second evening'},
    inside: 'f/8, 0.3 s, ISO 100; 187 mm across the frame; base 90 mm.',
  },
};

const escape = (text) => String(text ?? '').replace(/[&<>"]/g, (sign) => ({'&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;'})[sign]);

/** Text of a doc comment: back-ticked pieces as code. */
const prose = (text) => escape(text).replace(/\s+/g, ' ').replace(/`([^`]+)`/g, '<code>$1</code>');

/**
 * @param manifest - custom-elements.json, parsed
 * @param observed - attributes each element listens to, by tag
 * @returns texts by name of file
 */
export function referencePages(manifest, tags, observed = {}) {
  const declarations = manifest.modules.flatMap(({declarations: all = []}) => all)
    .filter(({tagName, name}) => tagName && name && tags.includes(tagName));
  const known = tags.filter((tag) => declarations.some(({tagName}) => tagName === tag));
  return Object.fromEntries([
    ['reference/index.html', contents(known, declarations)],
    ...known.map((tag) => [`reference/${tag}.html`, page(declarations.find(({tagName}) => tagName === tag), known, observed[tag])]),
  ]);
}

function contents(tags, declarations) {
  const summary = (tag) => declarations.find(({tagName}) => tagName === tag).summary;
  return frame('The checks, one by one', '', `
  <header class="head">
    ${GUILD}
    <h1>The checks, one by one</h1>
    <p>What each is for, what it takes, and a knob for everything that can be set.</p>
  </header>
  <main>
    <dl class="contents">${tags.map((tag) => `
      <dt><a href="${tag}.html">${titleOf(tag)}</a> <code>&lt;${tag}&gt;</code></dt>
      <dd>${prose(summary(tag))}</dd>`).join('')}
    </dl>
  </main>`);
}

const GUILD = '<p class="guild"><a href="../index.html"><svg viewBox="0 0 48 48" aria-hidden="true"><use href="../icon.svg#heron"></use></svg> Fenwick Painting Guild</a></p>';

function frame(title, head, body) {
  return `<!doctype html>
<html lang="en">
<head>
  <meta charset="utf-8">
  <meta name="viewport" content="width=device-width, initial-scale=1">
  <meta name="color-scheme" content="light dark">
  <title>${escape(title)} · Lampblack</title>
  <link rel="icon" href="../icon.svg" type="image/svg+xml">
  <link rel="stylesheet" href="../demo.css">
  <link rel="stylesheet" href="../reference.css">
  ${head}
</head>
<body>${body}
</body>
</html>
`;
}

function page(declaration, tags, observed) {
  const {tagName: tag, summary, description, events = [], cssParts = [], cssProperties = [], slots = []} = declaration;
  const {attributes: example = {}, inside = ''} = EXAMPLES[tag] ?? {};
  const all = attributesOf(declaration, observed);
  const first = all.filter(({name}) => name in example);
  const rest = all.filter(({name}) => !(name in example));
  const shown = Object.entries(example).filter(([name]) => all.some((attribute) => attribute.name === name));
  const markup = `<${[tag, ...shown.map(([name, value]) => `${name}="${escape(value)}"`)].join('\n  ')}>${inside}</${tag}>`;
  return frame(titleOf(tag), `${discoveryLink(tag)}
  <script type="module" src="../lampblack/${tag}.js"></script>
  <script type="module" src="../reference.js"></script>`, `
  <header class="head">
    ${GUILD}
    <h1>${titleOf(tag)}</h1>
    <p><code>&lt;${tag}&gt;</code> ${prose(summary)}${/[.!?]$/.test(summary) ? '' : '.'}</p>
    <nav aria-label="Checks">${tags.map((other) => (other === tag
    ? `<span aria-current="page">${titleOf(other)}</span>` : `<a href="${other}.html">${titleOf(other)}</a>`)).join('')}</nav>
  </header>
  <main id="reference" data-tag="${tag}">
    <section class="live" aria-labelledby="live-title">
      <h2 id="live-title">To try</h2>
${markup}
    </section>
    <section aria-labelledby="markup-title">
      <h2 id="markup-title">To paste</h2>
      <p>${prose(description)}</p>
      <pre tabindex="0"><code id="markup">${escape(`<script type="module" src="lampblack/${tag}.js"></script>\n${markup}`)}</code></pre>
      <p class="aside">${prose(slots[0]?.description ?? 'Between the tags: what is shown where no script runs')}.
        In a frame: <a href="../embed.html?tag=${tag}"><code>embed.html?tag=${tag}</code></a>.</p>
    </section>
    <section aria-labelledby="attributes-title">
      <h2 id="attributes-title">Attributes</h2>
      <p>Write into a field to turn that knob. What does not read is not in use; why is said beside the knob, and in the check.</p>
      <dl class="knobs">${first.map((attribute) => knob(attribute, example[attribute.name])).join('')}
      </dl>
      ${rest.length ? `<details><summary>${rest.length} more</summary>
      <dl class="knobs">${rest.map((attribute) => knob(attribute)).join('')}
      </dl></details>` : ''}
    </section>
    <section aria-labelledby="events-title">
      <h2 id="events-title">Events</h2>
      <dl class="list">${events.filter(({name, description: said}) => name && said).map(({name, description: said}) => `
        <dt><code>${name}</code></dt><dd>${prose(said)}</dd>`).join('')}
      </dl>
      <p class="aside" id="heard" role="log">Nothing has been heard yet. Change something in the check.</p>
    </section>
    <section aria-labelledby="look-title">
      <h2 id="look-title">Look</h2>
      <dl class="knobs">${cssProperties.map(({name, description: said, default: value}) => `
        <div><dt><label for="knob${name}"><code>${name}</code></label></dt><dd>${prose(said)}${value ? `; <code>${escape(value)}</code> when not said` : ''}</dd>
          <dd><input id="knob${name}" data-property="${name}" placeholder="${escape(value ?? '')}" autocomplete="off" spellcheck="false"></dd></div>`).join('')}
      </dl>
      <dl class="list">${cssParts.map(({name, description: said}) => `
        <dt><code>::part(${name})</code></dt><dd>${prose(said)}</dd>`).join('')}
      </dl>
    </section>
  </main>`);
}

/** Attributes an element listens to, each with what its comments say; those that only scripts set are left out. */
function attributesOf({attributes = [], members = []}, observed) {
  const kebab = (name) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  const said = new Map();
  for (const {name, description} of [...members, ...attributes].filter(({description: text}) => text)) {
    said.set(kebab(name), description);
    for (const also of description.match(/`[a-z]+(-[a-z]+)+`/g) ?? []) if (!said.has(also.slice(1, -1))) said.set(also.slice(1, -1), '');
  }
  const names = observed ?? attributes.filter(({name, description}) => description && /^[a-z-]+$/.test(name)).map(({name}) => name);
  return [...new Set(names)].map((name) => ({
    name, description: (said.get(name) ?? said.get(name === 'focus' ? 'focus-plane' : name) ?? '').replace(/\s*@attr.*$/s, ''),
    flag: attributes.some((attribute) => attribute.name === name && attribute.type?.text === 'boolean'),
  }));
}

function knob({name, description, flag}, value) {
  const input = flag ? `<input type="checkbox" id="knob-${name}" data-attribute="${name}"${value === undefined ? '' : ' checked'}>`
    : `<input id="knob-${name}" data-attribute="${name}" value="${escape(value)}" autocomplete="off" spellcheck="false">`;
  return `
        <div><dt><label for="knob-${name}"><code>${name}</code></label></dt><dd>${prose(description)}</dd><dd>${input}<p class="reason" id="reason-${name}" hidden></p></dd></div>`;
}
