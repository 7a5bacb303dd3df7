import {configs as lit} from 'eslint-plugin-lit';
import litA11y from 'eslint-plugin-lit-a11y';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  {ignores: ['dist', 'site', 'coverage', 'node_modules', 'tests/package/consumer']},
  ...tseslint.configs.recommended,
  {
    files: ['src/**/*.ts'],
    extends: [...tseslint.configs.recommendedTypeCheckedOnly],
    languageOptions: {parserOptions: {project: './tsconfig.json', tsconfigRootDir: import.meta.dirname}},
    rules: {
      'no-eval': 'error',
      'no-new-func': 'error',
      'no-restricted-properties': ['error',
        {property: 'innerHTML', message: 'Markup from strings: render a template instead.'},
        {property: 'outerHTML', message: 'Markup from strings: render a template instead.'},
        {property: 'insertAdjacentHTML', message: 'Markup from strings: render a template instead.'}],
      'no-restricted-syntax': ['error', {
        selector: 'TemplateElement[value.raw=/\\son[a-z]+\\s*=/]', message: 'An inline handler: a strict policy blocks it. Use @event.',
      }],
      eqeqeq: 'error',
      '@typescript-eslint/no-unused-vars': ['error', {ignoreRestSiblings: true, varsIgnorePattern: '^_', argsIgnorePattern: '^_'}],
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
    },
  },
  {
    files: ['src/core/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', 'window', 'document', 'navigator', 'HTMLElement', 'location', 'localStorage'],
      'no-restricted-imports': ['error', {patterns: ['lit', 'lit/*', '*/photo/*', '*/elements/*']}],
    },
  },
  {
    files: ['src/elements/**/*.ts'],
    plugins: {'lit-a11y': litA11y},
    extends: [lit['flat/recommended']],
    rules: litA11y.configs.recommended.rules,
  },
  {
    files: ['tests/**/*.ts'],
    rules: {'@typescript-eslint/no-unused-expressions': 'off'}, // chai's expect(x).to.be.true
  },
);
