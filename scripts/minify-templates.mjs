/**
 * Takes the comments and the layout out of the css, html and svg templates of the script-tag files. White space is only
 * shortened, never taken away between tags or words, so that a page shows the same.
 */
import {transform} from 'esbuild';

const TAGS = new Set(['css', 'html', 'svg']);

/** A Rollup plugin; for plain JavaScript. */
export function minifyTemplates() {
  return {
    name: 'minify-templates',
    async transform(code, id) {
      if (!id.includes('/dist/elements/') || !/\b(css|html|svg)\s*`/.test(code)) return null;
      const templates = [];
      walk(this.parse(code), (node) => {
        if (node.type === 'TaggedTemplateExpression' && TAGS.has(node.tag.name)) templates.push(node);
      });
      const pieces = [];
      for (const {tag, quasi: {quasis}} of templates) {
        const texts = quasis.map(({value}) => value.raw);
        const short = tag.name === 'css' ? await shortCss(texts) : texts.map(shortMarkup);
        quasis.forEach(({start, end}, index) => {
          pieces.push({start, end, text: short[index]});
        });
      }
      return {code: spliced(code, pieces), map: null};
    },
  };
}

function walk(node, visit) {
  if (!node || typeof node.type !== 'string') return;
  visit(node);
  for (const value of Object.values(node)) {
    if (Array.isArray(value)) value.forEach((each) => walk(each, visit));
    else if (value && typeof value === 'object') walk(value, visit);
  }
}

function spliced(code, pieces) {
  let [at, out] = [0, ''];
  for (const {start, end, text} of pieces.sort((one, other) => one.start - other.start)) {
    out += code.slice(at, start) + text;
    at = end;
  }
  return out + code.slice(at);
}

/** A line break with what stands around it is one space, as the page shows it. Comments that Lit does not look into go. */
const shortMarkup = (text) => text.replace(/<!--[\s\S]*?-->/g, '').replace(/\s*\n\s*/g, ' ');

/** A style sheet that is whole goes through esbuild; one with holes, or with escapes, is only taken out of its layout. */
async function shortCss(texts) {
  const [whole] = texts;
  if (texts.length > 1 || whole.includes('\\')) return texts.map((text) => text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\s*\n\s*/g, ' '));
  const {code} = await transform(whole, {loader: 'css', minify: true, target: 'es2022', logLevel: 'silent'});
  return [code.trim().replaceAll('\\', '\\\\').replaceAll('`', '\\`').replaceAll('${', '\\${')];
}
