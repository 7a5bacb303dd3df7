import {fileURLToPath} from 'node:url';
import {ESLint} from 'eslint';
import tseslint from 'typescript-eslint';
import {describe, expect, it} from 'vitest';

/** What needs the types of the whole project is left out: none of the rules below does. */
const eslint = new ESLint({
  cwd: fileURLToPath(new URL('../..', import.meta.url)), overrideConfig: [{...tseslint.configs.disableTypeChecked, files: ['src/**/*.ts']}],
});

/** The rules that a piece of code, were it in an element's class, would break. */
async function refusals(code: string): Promise<readonly (string | null)[]> {
  const [result] = await eslint.lintText(code, {filePath: 'src/elements/stop-trade-dial/class.ts'});
  return result?.messages.map(({ruleId}) => ruleId) ?? [];
}

describe('the lint rules refuse what would run a stranger’s text', {timeout: 120_000}, () => {
  it.each([
    ['eval', 'export const f = (text: string): unknown => eval(text);', 'no-eval'],
    ['new Function', 'export const f = (text: string): unknown => new Function(text);', 'no-new-func'],
    ['innerHTML', 'export const f = (el: Element, text: string): void => { el.innerHTML = text; };', 'no-restricted-properties'],
    ['outerHTML', 'export const f = (el: Element, text: string): void => { el.outerHTML = text; };', 'no-restricted-properties'],
    ['insertAdjacentHTML', "export const f = (el: Element, text: string): void => { el.insertAdjacentHTML('beforeend', text); };", 'no-restricted-properties'],
    ['an inline handler', 'declare const html: (text: TemplateStringsArray) => unknown; export const f = html`<b onclick="go()">go</b>`;', 'no-restricted-syntax'],
  ])('%s', async (_, code, rule) => {
    expect(await refusals(code)).toContain(rule);
  });
});
