/**
 * Renders the elements of a page before it is sent, into declarative shadow DOM: what a reader sees first is what they
 * keep seeing when the scripts have arrived, and nothing on the page moves.
 */
import {render} from '@lit-labs/ssr';
import {collectResultSync} from '@lit-labs/ssr/lib/render-result.js';
import {html} from 'lit';
import {ROOT} from './set-up.mjs';

/**
 * @param tags - elements to render; they come from dist/
 * @returns a function from a page's HTML to the same page rendered, in the language of its `<html lang>`
 */
export async function serverRenderer(tags, dist = `${ROOT}dist/`) {
  const {loadWords, renderTogether} = await import(`${dist}elements/server.js`);
  await Promise.all(tags.map((tag) => import(`${dist}elements/${tag}/define.js`)));
  const classes = tags.map((tag) => customElements.get(tag));
  const element = new RegExp(`<(${tags.join('|')})((?:\\s+[^\\s=>]+(?:\\s*=\\s*(?:"[^"]*"|'[^']*'|[^\\s"'>]+))?)*)\\s*>([\\s\\S]*?)</\\1>`, 'g');
  return async (page) => {
    const language = /<html[^>]*\blang="([^"]+)"/.exec(page)?.[1] ?? 'en';
    await loadWords(language, classes);
    const found = page.match(element) ?? [];
    const rendered = renderTogether(language, () => found.map((source) => collectResultSync(render(template(source)))));
    let at = 0;
    return page.replace(element, () => withoutMarks(rendered[at++]));
  };
}

/** A template without a hole in it, as if it had been written in a script. */
function template(source) {
  const told = source.replace(/^<settings-trail(?![^>]*\ssteps=)/, (start) => `${start}${stepsBetween(source)}`);
  return html(Object.assign([told], {raw: [told]}));
}

/** A server cannot look between the tags: a list that stands there is handed over as an attribute, for the while. */
function stepsBetween(source) {
  const steps = [...source.matchAll(/<li[^>]*>([^<]*)<\/li>/g)].map(([, text]) => text.trim().replaceAll('"', '&quot;'));
  return steps.length ? ` ${HANDED_OVER}="" steps="${steps.join('\n')}"` : '';
}

const HANDED_OVER = 'data-handed-over';

/** The page itself is no template that anything would take over: marks around an element would only confuse. */
function withoutMarks(text) {
  return text.replace(/^<!--lit-part [^>]*-->/, '').replace(/<!--\/lit-part-->$/, '')
    .replace(new RegExp(`\\s${HANDED_OVER}(?:="")? steps="[^"]*"`), '');
}

let renderer;

/** A middleware of the test server: `/rendered?page=…` is answered with that page, rendered as a server would. */
export async function renderedMiddleware(context, next) {
  if (context.path !== '/rendered') return next();
  const page = new URLSearchParams(context.search).get('page') ?? '';
  const tags = (await import('./manifest.mjs')).elementTags();
  renderer ??= serverRenderer(tags);
  context.type = 'text/html; charset=utf-8';
  context.body = await (await renderer)(page);
}
