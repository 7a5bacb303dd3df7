import {readFileSync, readdirSync} from 'node:fs';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {gzipSync} from 'node:zlib';
import {transform} from 'esbuild';
import {rollup} from 'rollup';
import {describe, expect, it} from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Bytes, minified and gzipped, of a bundle that imports some names from the core. */
async function bundled(names: string): Promise<number> {
  const bundle = await rollup({
    input: 'entry',
    plugins: [{
      name: 'from-source',
      resolveId: (id, from) => (id === 'entry' ? id : id === 'lampblack' ? `${ROOT}src/core/index.ts`
        : fileURLToPath(new URL(id.replace(/\.js$/, '.ts'), pathToFileURL(from ?? '')))),
      load: (id) => (id === 'entry' ? `import {${names}} from 'lampblack'; console.log(${names});` : readFileSync(id, 'utf8')),
      transform: async (code, id) => (id.endsWith('.ts') ? (await transform(code, {loader: 'ts', target: 'es2022'})).code : null),
    }],
  });
  const {output: [{code}]} = await bundle.generate({format: 'es'});
  const {code: minified} = await transform(code, {minify: true, target: 'es2022'});
  return gzipSync(minified, {level: 9}).length;
}

describe('the core', () => {
  it('imports nothing from outside itself', () => {
    const folder = `${ROOT}src/core/`;
    const files = readdirSync(folder, {recursive: true, encoding: 'utf8'}).filter((file) => file.endsWith('.ts'));
    expect(files.length).toBeGreaterThan(20);
    for (const file of files) {
      const foreign = [...readFileSync(folder + file, 'utf8').matchAll(/from '([^']+)'/g)].map(([, name]) => name as string)
        .filter((name) => !new URL(name, `file:///core/${file}`).pathname.startsWith('/core/') || !name.startsWith('.'));
      expect(foreign, file).toEqual([]);
    }
  });

  it('gives exactly the names it promises', async () => {
    const core = await import('../../src/core/index.js');
    const promised = readFileSync(`${ROOT}tests/package/core-names.txt`, 'utf8').trim().split('\n');
    expect(Object.keys(core).sort()).toEqual(promised);
  });

  it('lets a bundler leave out what is not used', async () => {
    expect(await bundled('apertureStops')).toBeLessThan(700);
    expect(await bundled('sharpZone')).toBeLessThan(1500);
  });
});
