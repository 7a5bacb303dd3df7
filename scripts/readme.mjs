/**
 * Fills the README's tables of elements and core functions from the comments in the source, and the hashes of the script-tag files
 * from the build. `--check` only compares the tables, `--check-built` the hashes.
 */
import {existsSync, readFileSync, readdirSync, writeFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import ts from 'typescript';
import {integrityBlock, readList} from './integrity.mjs';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const read = (path) => readFileSync(ROOT + path, 'utf8');

/** Parts of the core that can be asked for alone, in the order of the README. */
const PARTS = {
  exposure: 'Exposure', optics: 'Optics', tone: 'Tone', white: 'Gray card', light: 'Light', shot: 'The record', sheet: 'The record in words',
  document: 'The record as JSON', units: 'Units',
};

/** One row an element: its tag and the summary of its class. */
function elementsTable() {
  const tags = readdirSync(`${ROOT}src/elements`).filter((tag) => existsSync(`${ROOT}src/elements/${tag}/define.ts`)).sort();
  const rows = tags.map((tag) => {
    const [, summary = ''] = /@summary ([\s\S]*?)\n \*(?: @|\/|\n| \*)/.exec(read(`src/elements/${tag}/class.ts`)) ?? [];
    return `| \`${tag}\` | ${oneLine(summary.replaceAll(/\n \*\s*/g, ' '))} |`;
  });
  return ['| tag | what it lets a reader check |', '|---|---|', ...rows].join('\n');
}

/** Names that a part exports as values, by file. */
function exportedNames(part) {
  const file = ts.createSourceFile(`${part}.ts`, read(`src/core/${part}.ts`), ts.ScriptTarget.Latest, true);
  return file.statements.filter((statement) => ts.isExportDeclaration(statement) && !statement.isTypeOnly).map((statement) => ({
    path: statement.moduleSpecifier.text.replace('./', '').replace('.js', '.ts'),
    names: statement.exportClause.elements.map((element) => element.name.text),
  }));
}

/** First sentence of the comment above each exported function of a file. */
function sentencesOf(path) {
  const file = ts.createSourceFile(path, read(`src/core/${path}`), ts.ScriptTarget.Latest, true);
  const sentences = new Map();
  for (const statement of file.statements) {
    if (!ts.isFunctionDeclaration(statement) || !statement.name) continue;
    const [comment] = ts.getJSDocCommentsAndTags(statement).slice(-1);
    const [returns] = ts.getAllJSDocTagsOfKind(statement, ts.SyntaxKind.JSDocReturnTag);
    const text = ts.getTextOfJSDocComment(comment?.comment) || ts.getTextOfJSDocComment(returns?.comment) || '';
    sentences.set(statement.name.text, oneLine(text.split(/(?<=[.:])\s(?=[A-Z@]|$)|\n\n/)[0]));
  }
  return sentences;
}

function coreTable() {
  return Object.entries(PARTS).map(([part, title]) => {
    const files = part === 'units' ? [{path: 'units.ts', names: [...sentencesOf('units.ts').keys()]}] : exportedNames(part);
    const rows = files.flatMap(({path, names}) => {
      const sentences = sentencesOf(path);
      return names.filter((name) => sentences.has(name)).map((name) => `| \`${name}\` | ${sentences.get(name)} |`);
    });
    return `<details><summary>${title}: <code>lampblack/${part}</code> (${rows.length})</summary>\n\n| function | what it gives |\n|---|---|\n${rows.join('\n')}\n\n</details>`;
  }).join('\n\n');
}

function oneLine(text) {
  return text.replaceAll(/\{@link (\w+)\}/g, '`$1`').replaceAll(/\s+/g, ' ').replaceAll('|', '\\|').trim();
}

function between(text, mark, body) {
  return text.replace(new RegExp(`(<!-- ${mark} -->)[\\s\\S]*?(<!-- /${mark} -->)`), (_, open, close) => `${open}\n${body}\n${close}`);
}

const before = read('README.md');
const tables = (text) => between(between(text, 'elements', elementsTable()), 'core', coreTable());
const hashes = (text) => between(text, 'integrity', integrityBlock(readList()));
const isBuilt = existsSync(`${ROOT}dist/standalone/integrity.json`);

const CHECKS = {
  '--check': [tables, 'The README’s tables do not match the source. Run “npm run readme”.'],
  '--check-built': [hashes, 'The README’s hashes are not those of the build. Run “npm run readme” after “npm run build”.'],
};
const [made, sentence] = CHECKS[process.argv[2]] ?? [];
if (!made) writeFileSync(`${ROOT}README.md`, isBuilt ? hashes(tables(before)) : tables(before));
else if (made(before) !== before) {
  console.error(sentence);
  process.exit(1);
}
