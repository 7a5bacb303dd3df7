import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {gzipSync} from 'node:zlib';
import {build} from 'esbuild';
import {describe, expect, it} from 'vitest';
import * as whole from '../../src/core/index.js';

const CORE = fileURLToPath(new URL('../../src/core/', import.meta.url));
const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {exports: Record<string, {default: string}>};
/** A page that needs one part loads no more than this, minified and gzipped, everything behind it included. */
const MOST = 12_000;
/** The record in words has the whole vocabulary behind it, and English for every value of it. */
const MOST_IN_WORDS = 13_200;
const PARTS = ['document', 'exposure', 'light', 'optics', 'sheet', 'shot', 'tone', 'units', 'white'];

/** A bundle as a page would get it: its bytes, and the modules that something of it comes from. */
async function bundle(code: string): Promise<{readonly bytes: number; readonly modules: readonly string[]}> {
  const {outputFiles: [file], metafile} = await build({
    stdin: {contents: code, resolveDir: CORE, loader: 'ts'},
    bundle: true, minify: true, format: 'esm', target: 'es2022', write: false, metafile: true, logLevel: 'error', outfile: 'out.js',
  });
  const [output] = Object.values(metafile.outputs);
  return {
    bytes: gzipSync(file?.contents ?? '', {level: 9}).length,
    modules: Object.entries(output?.inputs ?? {}).filter(([, {bytesInOutput}]) => bytesInOutput > 0)
      .map(([path]) => path.replace(/^.*src\/core\//, '').replace('.ts', '')).filter((name) => name !== '<stdin>').sort(),
  };
}

describe('the parts of the core', () => {
  it('have an address each, and are the whole together', async () => {
    const addresses = Object.entries(manifest.exports).filter(([, {default: file}]) => /^\.\/dist\/core\/(?!index)/.test(file ?? ''));
    expect(addresses.map(([address]) => address.slice(2)).sort()).toEqual(PARTS);
    for (const [address, {default: file}] of addresses) expect(file).toBe(`./dist/core/${address.slice(2)}.js`);
    const names = new Map<string, string[]>();
    for (const part of PARTS) {
      for (const name of Object.keys(await import(`../../src/core/${part}.ts`))) names.set(name, [...names.get(name) ?? [], part]);
    }
    expect([...names.keys()].sort()).toEqual(Object.keys(whole).sort());
    // Whoever catches a problem has its class at hand; every other name has one home.
    expect(names.get('Problem')).toEqual(PARTS.filter((part) => part !== 'units'));
    for (const [name, homes] of names) if (name !== 'Problem') expect(homes, name).toHaveLength(1);
  });

  it.each(PARTS)('%s is no more than a page can load for it', async (part) => {
    const {bytes} = await bundle(`export * from './${part}.ts'`);
    expect(bytes).toBeGreaterThan(300);
    expect(bytes).toBeLessThanOrEqual(part === 'sheet' ? MOST_IN_WORDS : MOST);
  });
});

/** What one function may bring along: its ceiling in bytes, and the modules something of which it needs. */
const ALONE: readonly (readonly [name: string, most: number, modules: readonly string[]])[] = [
  ['apertureStops', 600, ['exposure/stops', 'problem']],
  ['lengthIn', 300, ['units']],
  ['sharpZone', 1100, ['optics/lens', 'optics/zone', 'problem']],
  ['linearFromCode', 600, ['problem', 'tone/light']],
  ['gainsFromGray', 600, ['problem', 'white/gains']],
  ['smallLamp', 600, ['light/falloff', 'light/space']],
  ['readShutter', 2900, ['exposure/clicks', 'exposure/printed', 'exposure/read-shutter', 'exposure/reading', 'exposure/stops', 'problem', 'units']],
  ['trade', 3400, ['exposure/clicks', 'exposure/printed', 'exposure/stops', 'exposure/trade', 'exposure/write', 'problem']],
  ['attributeOf', 300, ['shot/field']],
];

describe('one function of the core', () => {
  it.each(ALONE)('%s brings in only what it uses', async (name, most, modules) => {
    const {bytes, modules: brought} = await bundle(`import {${name}} from './index.ts'; console.log(${name});`);
    expect(brought).toEqual(modules);
    expect(bytes).toBeLessThan(most);
  });

  it.each(ALONE)('%s is as small taken from the whole as from its part', async (name) => {
    const part = (await Promise.all(PARTS.map(async (each) => [each, Object.keys(await import(`../../src/core/${each}.ts`))] as const)))
      .find(([, names]) => names.includes(name))?.[0];
    const fromWhole = await bundle(`import {${name}} from './index.ts'; console.log(${name});`);
    const fromPart = await bundle(`import {${name}} from './${part}.ts'; console.log(${name});`);
    expect(fromPart.modules).toEqual(fromWhole.modules);
    // The bundler may put the same modules in another order, and so pack them a little differently.
    expect(Math.abs(fromPart.bytes - fromWhole.bytes)).toBeLessThan(40);
  });
});
