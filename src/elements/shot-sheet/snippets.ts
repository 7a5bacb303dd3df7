import {attributeOf} from '../../core/shot/field.js';
import {writtenOf} from '../../core/shot/given.js';
import type {ShotKey} from '../../core/shot/shot.js';
import type {ShotState} from '../../core/shot/state.js';
import {escapeHtml} from '../../core/shot/text.js';

/** An element on the page that shows this shot. */
export interface Shown {
  readonly tag: string;
  /** Values it takes as attributes. */
  readonly keys: readonly ShotKey[];
  readonly bench: string | null;
}

/**
 * The tag of an element with what it shows of a shot as attributes, and a fallback between its tags that is true
 * where no script runs.
 */
export function tagSnippet({tag, keys, bench}: Shown, {values, texts}: ShotState, fallback: string): string {
  const attributes = keys.flatMap((key) => {
    const text = values[key] === undefined ? texts[key] : writtenOf(key, values[key]);
    return text === undefined ? [] : [`${attributeOf(key)}="${escapeHtml(text)}"`];
  });
  const all = [tag, ...(bench ? [`bench="${escapeHtml(bench)}"`] : []), ...attributes];
  return `<${all.join('\n  ')}>\n  ${escapeHtml(fallback)}\n</${tag}>`;
}

/** The line that brings the element to life. `base`: where the scripts lie, with a slash at its end. */
export function scriptSnippet(tag: string, base: string): string {
  return `<script type="module" src="${escapeHtml(`${base.replace(/\/?$/, '/')}${tag}.js`)}"></script>`;
}

/** The page with this shot in a frame that may run its own scripts and nothing else, for places that take frames and no scripts. */
export function frameSnippet(link: string, title: string): string {
  return `<iframe data-lampblack src="${escapeHtml(link)}" title="${escapeHtml(title)}" sandbox="allow-scripts" width="100%" height="720" loading="lazy"></iframe>`;
}

/** Elements of a document that share a bench, each tag once; `alone` is what stands alone. */
export function shownOn(root: ParentNode, bench: string | null, alone: Shown): readonly Shown[] {
  if (!bench) return [alone];
  const found = new Map<string, Shown>();
  for (const element of root.querySelectorAll('[bench]')) {
    const keys = (element.constructor as {readonly shotKeys?: readonly ShotKey[]}).shotKeys;
    if (keys && element.getAttribute('bench') === bench) found.set(element.localName, {tag: element.localName, keys, bench});
  }
  found.delete(alone.tag);
  return [...found.values(), alone];
}
