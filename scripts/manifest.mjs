/**
 * custom-elements.json: what the analyzer reads in the comments, completed by what it cannot see: the attributes and
 * properties that an element takes from the vocabulary of a shot, and what the whole family shares. From it the editor
 * data and the JSX types.
 */
import {createRequire} from 'node:module';
import {existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync} from 'node:fs';
import {create} from '@custom-elements-manifest/analyzer/src/create.js';
import {ROOT} from './set-up.mjs';
import {editorData, jsxTypes} from './editor-types.mjs';

// The analyzer's own TypeScript: syntax trees of another version would be read wrongly.
const ts = createRequire(createRequire(import.meta.url).resolve('@custom-elements-manifest/analyzer/cli.js'))('typescript');
const ELEMENTS = `${ROOT}src/elements/`;

/** What the family's style sheet and fields bring into every element. */
const FAMILY = {
  cssProperties: [
    {name: '--lampblack-accent', default: '#b26a00', description: 'What can be moved'},
    {name: '--lampblack-paper', default: 'transparent', description: 'Ground of the element'},
    {name: '--lampblack-line', description: 'Ruled lines; the text’s colour at 30 % when not said'},
    {name: '--lampblack-quiet', description: 'Labels and notes; the text’s colour at 76 % when not said'},
    {name: '--lampblack-gap', default: '1em', description: 'Space between parts'},
    {name: '--lampblack-radius', default: '0.2em', description: 'Corners of buttons'},
  ],
  cssParts: [{name: 'field', description: 'A label with its field'}],
};

export const elementTags = () => readdirSync(ELEMENTS).filter((tag) => existsSync(`${ELEMENTS}${tag}/define.ts`)).sort();

/** Writes custom-elements.json, the editor data and the JSX types into the folder of the built modules. */
export async function writeManifest(dist) {
  const manifest = await makeManifest(dist);
  // What only the types ask for is no part of the format.
  const json = (value) => `${JSON.stringify(value, (key, part) => (key === 'settable' || key === 'shotKey' ? undefined : part), 2)}\n`;
  writeFileSync(`${dist}custom-elements.json`, json(manifest));
  writeFileSync(`${dist}html-custom-data.json`, json(editorData(manifest)));
  mkdirSync(`${dist}jsx`, {recursive: true});
  for (const [name, text] of Object.entries(jsxTypes(manifest, eventHomes()))) writeFileSync(`${dist}jsx/${name}`, text);
}

export async function makeManifest(dist) {
  const {SHOT_FIELDS, attributeOf} = await import(`${dist}core/shot.js`);
  const vocabulary = vocabularyOf(`${ROOT}src/core/shot/shot.ts`, SHOT_FIELDS, attributeOf);
  const analyzed = analyze();
  const modules = await Promise.all(elementTags().map(async (tag) => {
    const path = `dist/elements/${tag}/class.js`;
    const [name, Class] = Object.entries(await import(`${dist}elements/${tag}/class.js`)).find(([, value]) => value?.observedAttributes);
    const declaration = complete({tag, name, Class, chain: chainOf(name, analyzed), vocabulary});
    return [
      {kind: 'javascript-module', path, declarations: [declaration], exports: [{kind: 'js', name, declaration: {name, module: path}}]},
      {
        kind: 'javascript-module', path: `dist/elements/${tag}/define.js`, declarations: [],
        exports: [{kind: 'custom-element-definition', name: tag, declaration: {name, module: path}}],
      },
    ];
  }));
  return {schemaVersion: '1.0.0', readme: 'README.md', modules: modules.flat()};
}

/** Every class of src/elements as the analyzer sees it, by name. */
function analyze() {
  const paths = readdirSync(ELEMENTS, {recursive: true, encoding: 'utf8'}).filter((path) => path.endsWith('.ts')).sort();
  const modules = paths.map((path) => ts.createSourceFile(path, readFileSync(ELEMENTS + path, 'utf8'), ts.ScriptTarget.Latest, true));
  const {modules: found} = create({modules});
  return new Map(found.flatMap(({declarations = []}) => declarations.filter(({kind}) => kind === 'class').map((each) => [each.name, each])));
}

/** Where the class of each event is, as seen from dist/jsx. */
function eventHomes() {
  const paths = ['shared', ...elementTags()].map((folder) => `${folder}/events.ts`).filter((path) => existsSync(ELEMENTS + path));
  return new Map(paths.flatMap((path) => [...readFileSync(ELEMENTS + path, 'utf8').matchAll(/export class (\w+Event)\b/g)]
    .map(([, name]) => [name, `../elements/${path.replace('.ts', '.js')}`])));
}

/** A class and those it extends, nearest first. */
function chainOf(name, classes) {
  const found = classes.get(name);
  return found ? [found, ...chainOf(found.superclass?.name, classes)] : [];
}

/** What each key of a shot means, from the comments of the vocabulary, and what its text may look like. */
function vocabularyOf(path, fields, attributeOf) {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
  const shot = file.statements.find((each) => ts.isInterfaceDeclaration(each) && each.name.text === 'Shot');
  return new Map(shot.members.map((member) => {
    const key = member.name.text;
    const said = ts.getJSDocCommentsAndTags(member).map(({comment}) => ts.getTextOfJSDocComment(comment)).join(' ');
    const refusal = fields[key].read('?');
    return [key, {
      shotKey: key, attribute: attributeOf(key), property: key === 'focus' ? 'focusPlane' : key, type: member.type.getText(file),
      description: oneLine(said), wanted: refusal?.wanted,
    }];
  }));
}

/** One element, with everything a page can set, hear or dress. */
function complete({tag, name, Class, chain, vocabulary}) {
  const [own] = chain;
  const header = new Map(chain.flatMap(({attributes = []}) => attributes).filter(({description}) => description).reverse()
    .map((each) => [each.name, each]));
  const members = new Map(chain.flatMap(({members: all = []}) => all).reverse().map((each) => [each.name, each]));
  const taken = new Map(Class.shotKeys.map((key) => [vocabulary.get(key).attribute, vocabulary.get(key)]));
  const plain = [...Class.elementProperties].filter(([, {state}]) => !state);
  const aside = asides(header);

  const attributes = Class.observedAttributes.map((attribute) => {
    const shot = taken.get(attribute);
    const property = shot?.property ?? plain.find(([key, {attribute: named}]) => (named || key.toLowerCase()) === attribute)?.[0];
    const {type, description} = header.get(attribute) ?? {};
    const flag = Class.elementProperties.get(property)?.type === Boolean;
    return {
      name: attribute,
      type: flag ? {text: 'boolean'} : type ?? {text: 'string'},
      description: sentence(description || text(members.get(property)) || shot?.description || aside.get(attribute),
        shot?.wanted && !description ? `takes ${shot.wanted}` : ''),
      fieldName: property,
    };
  });
  const fields = [
    ...[...taken.values()].map(({property, shotKey, type, description}) => ({
      kind: 'field', settable: true, shotKey, name: property, type: {text: type}, description: text(members.get(property)) || description || aside.get(property),
      attribute: attributes.find(({fieldName}) => fieldName === property).name,
    })),
    ...plain.filter(([key]) => !members.get(key)?.privacy || members.get(key).privacy === 'public').map(([key]) => ({
      kind: 'field', settable: true, name: String(key), type: members.get(key)?.type ?? {text: 'unknown'}, description: text(members.get(key)),
      ...(attributes.some(({fieldName}) => fieldName === key) ? {attribute: attributes.find(({fieldName}) => fieldName === key).name} : {}),
    })),
    ...open(chain, new Set([...[...taken.values()].map(({property}) => property), ...Class.elementProperties.keys()])),
  ];
  return {
    kind: 'class', customElement: true, tagName: tag, name, summary: oneLine(own.summary), description: oneLine(own.description),
    superclass: {name: 'LitElement', package: 'lit'},
    attributes, members: fields.map((field) => (field.description ? field : {...field, description: attributes.find(({name: attribute}) => attribute === field.attribute)?.description ?? ''})),
    events: (own.events ?? []).filter(({name: event, description}) => event && description),
    slots: own.slots ?? [],
    cssParts: withFamily(own.cssParts, FAMILY.cssParts.filter(() => usesFields(tag))),
    cssProperties: withFamily(own.cssProperties, FAMILY.cssProperties),
  };
}

/** Public fields and methods that are no reactive property: what a script may read or call. */
function open(chain, known) {
  const lifecycle = /^(constructor|connectedCallback|disconnectedCallback|attributeChangedCallback|observedAttributes|properties|styles|shotKeys|finalize)$/;
  const all = chain.flatMap(({members = []}) => members)
    .filter(({name, privacy, static: shared}) => !shared && !privacy && !name.startsWith('#') && !lifecycle.test(name) && !known.has(name));
  return [...new Map(all.map((each) => [each.name, each])).values()]
    .filter(({description}) => description)
    .map(({kind, name, type, description, readonly, parameters, return: returns}) => ({
      kind, name, ...(type && {type}), description: oneLine(description), ...(readonly && {readonly}), ...(parameters && {parameters}), ...(returns && {return: returns}),
    }));
}

/** Attributes named in passing in the text of another: “So with `metered-shutter`, `metered-iso`”. */
function asides(header) {
  const found = new Map();
  for (const {description} of header.values()) {
    for (const [, also] of description.matchAll(/`([a-z]+(?:-[a-z]+)+)`/g)) if (!header.has(also)) found.set(also, description);
  }
  return found;
}

const usesFields = (tag) => readdirSync(`${ELEMENTS}${tag}`, {recursive: true, encoding: 'utf8'}).filter((file) => file.endsWith('.ts')).some((file) => /\b(shotField|textField|choiceField|part="field")/.test(readFileSync(`${ELEMENTS}${tag}/${file}`, 'utf8')));

function withFamily(own = [], family) {
  return [...own, ...family.filter(({name}) => !own.some((each) => each.name === name))];
}

const oneLine = (said) => (said ?? '').replace(/\s+/g, ' ').trim();
const text = (member) => oneLine(member?.description).replace(/\s*@attr.*$/, '');
const sentence = (said, more) => (more ? `${oneLine(said).replace(/\.$/, '')}; ${oneLine(more)}` : oneLine(said));
