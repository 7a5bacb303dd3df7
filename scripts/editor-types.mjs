/** From custom-elements.json: what editors show while HTML is written, and types for JSX and Vue templates. */

const elementsOf = ({modules}) => modules.flatMap(({path, declarations}) => declarations.map((each) => ({...each, path})));

/** HTML custom data 1.1, which editors read. */
export function editorData(manifest) {
  return {
    version: 1.1,
    tags: elementsOf(manifest).map(({tagName, summary, description, attributes}) => ({
      name: tagName,
      description: [summary, description].filter(Boolean).join('\n\n'),
      attributes: attributes.map(({name, description: said, type: {text}}) => ({
        name, description: said,
        ...(text === 'boolean' ? {valueSet: 'v'} : text.includes('|') ? {values: text.split('|').map((each) => ({name: each.trim().replaceAll("'", '')}))} : {}),
      })),
    })),
  };
}

/**
 * One file a framework, since a file that speaks of a framework needs it installed. All three set a property where the
 * element has one of that name, so a name without a hyphen takes what the property takes: a number in base units.
 */
export function jsxTypes(manifest, eventHomes) {
  const elements = elementsOf(manifest);
  const camel = (name) => name.replace(/(?:^|-)([a-z])/g, (_, letter) => letter.toUpperCase());
  const imports = [
    ...elements.map(({name, path}) => `import type {${name}} from '../${path.replace('dist/', '')}';`),
    ...[...eventHomes].map(([name, path]) => `import type {${name}} from '${path}';`),
    "import type {Shot} from '../core/shot/shot.js';",
  ].join('\n');
  const props = (hear) => elements.map(({name, attributes, members, events}) => {
    const settable = members.filter(({kind, settable: can}) => kind === 'field' && can);
    const fields = settable.map(({name: field}) => field);
    return [
      `/** ${name}: properties in base units, attributes as a person writes them. */`,
      `export interface ${name}Props {`,
      ...settable.map(({name: field, description, shotKey}) => `  /** ${description.replaceAll('*/', '')} */\n  '${field}'?: ${shotKey ? `Shot['${shotKey}']` : `${name}['${field}']`} | undefined;`),
      ...attributes.filter(({name: attribute}) => !fields.includes(attribute))
        .map(({name: attribute, description, type}) => `  /** ${description.replaceAll('*/', '')} */\n  '${attribute}'?: ${type.text === 'boolean' ? 'boolean' : 'string | number'} | undefined;`),
      ...events.map(({name: event, type, description}) => `  /** ${description.replaceAll('*/', '')} */\n  '${hear(event)}'?: ((event: ${type.text}) => void) | undefined;`),
      '}',
    ].join('\n');
  }).join('\n\n');
  const tags = (wrap) => elements.map(({tagName, name}) => `      '${tagName}': ${wrap(name)};`).join('\n');
  const head = (first) => `${first}\n${imports}\n\n`;
  const on = (event) => `on${event}`;
  const empty = 'export {};\n';
  return {
    'react.js': empty, 'preact.js': empty, 'vue.js': empty,
    'react.d.ts': `${head("import type {DetailedHTMLProps, HTMLAttributes} from 'react';")}${props(on)}

declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
${tags((name) => `Omit<DetailedHTMLProps<HTMLAttributes<${name}>, ${name}>, keyof ${name}Props> & ${name}Props & {class?: string}`)}
    }
  }
}
`,
    'preact.d.ts': `${head("import type {HTMLAttributes} from 'preact';")}${props(on)}

declare module 'preact' {
  namespace JSX {
    interface IntrinsicElements {
${tags((name) => `Omit<HTMLAttributes<${name}>, keyof ${name}Props> & ${name}Props`)}
    }
  }
}
`,
    'vue.d.ts': `${head("import type {DefineComponent, HTMLAttributes} from 'vue';")}${props((event) => `on${camel(event)}`)}

declare module 'vue' {
  interface GlobalComponents {
${tags((name) => `DefineComponent<Omit<HTMLAttributes, keyof ${name}Props> & ${name}Props>`)}
  }
}
`,
  };
}
