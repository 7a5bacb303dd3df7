import {existsSync, readFileSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {describe, expect, it} from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const manifest = JSON.parse(readFileSync(`${ROOT}package.json`, 'utf8'));
const tags = readdirSync(`${ROOT}src/elements`).filter((name) => existsSync(`${ROOT}src/elements/${name}/define.ts`));

describe('the package', () => {
  it('names the core, all elements, one element and its class', () => {
    expect(Object.keys(manifest.exports)).toEqual(expect.arrayContaining(['.', './elements', './elements/*', './elements/*/class']));
  });

  it('defines every element in elements/all', () => {
    const all = readFileSync(`${ROOT}src/elements/all.ts`, 'utf8');
    expect(tags.length).toBeGreaterThan(0);
    for (const tag of tags) expect(all).toContain(`'./${tag}/define.js'`);
  });

  it('lists every module with a side effect, and no other', () => {
    const define = readFileSync(`${ROOT}src/elements/${tags[0]}/define.ts`, 'utf8');
    expect(define).toContain(`customElements.define('${tags[0]}'`);
    expect(manifest.sideEffects).toEqual([
      './dist/elements/*/define.js', './dist/elements/all.js', './dist/photo/photo-worker.js', './dist/standalone/*.js',
    ]);
  });

  it('brings nothing at run time but lit, the reader of picture metadata and the QR coder', () => {
    expect(Object.keys(manifest.dependencies).sort()).toEqual(['exifreader', 'lit', 'uqr']);
  });
});
