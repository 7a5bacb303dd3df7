/**
 * The calculator in other languages: demo/index.html with its texts exchanged for those of demo/words/<language>.json, which
 * has them by their English. A text that is not on the page, or a text of the page that has none, ends the build.
 */
import {readFileSync, readdirSync} from 'node:fs';
import {ROOT} from './set-up.mjs';

/** Said alike everywhere: names, and the languages in their own words. */
const SAME = new Set(['Fenwick Painting Guild', 'English', 'Deutsch', 'Español', 'Français', 'Polski', 'Lampblack']);

/** @returns pages by file name: `index.de.html` … */
export function languagePages(page = readFileSync(`${ROOT}demo/index.html`, 'utf8'), folder = `${ROOT}demo/words/`) {
  return Object.fromEntries(readdirSync(folder).sort().map((file) => {
    const language = file.replace('.json', '');
    return [`index.${language}.html`, inLanguage(page, language, JSON.parse(readFileSync(folder + file, 'utf8')))];
  }));
}

/** @param words - texts by the English they stand for, blanks in it as one */
export function inLanguage(page, language, words) {
  // Put aside first, so that no text is exchanged twice.
  const texts = Object.entries(words).sort(([a], [b]) => b.length - a.length);
  let out = page;
  for (const [at, [english]] of texts.entries()) {
    const found = new RegExp(`([>"]\\s*)${english.split(/\s+/).map(escape).join('\\s+')}(?=\\s*[<"])`, 'g');
    if (!found.test(out)) throw new Error(`${language}: “${english}” is not on the page`);
    out = out.replace(found, `$1\u0001${at}\u0002`);
  }
  const missing = [...untold(out)];
  if (missing.length) throw new Error(`${language}: no words for “${missing.join('”, “')}”`);
  out = out.replace(/\u0001(\d+)\u0002/g, (_, at) => texts[at][1].replaceAll('"', '&quot;'));
  return out.replace('<html lang="en">', `<html lang="${language}">`)
    .replace(' aria-current="page">English', '>English')
    .replace(new RegExp(`(<a href="index\\.${language}\\.html"[^>]*)>`), '$1 aria-current="page">');
}

const escape = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Texts of a page that were not put aside: words between tags, and in attributes that are read out. */
function* untold(page) {
  const visible = page.replace(/<!--.*?-->/gs, '').replace(/<(script|style)\b.*?<\/\1>/gs, '').replace(/<ol>.*?<\/ol>/gs, '');
  for (const [, text] of visible.matchAll(/>([^<]+)</g)) {
    const words = text.replace(/\u0001\d+\u0002|&\w+;/g, '').trim();
    if (/\p{L}{2}/u.test(words) && !SAME.has(words)) yield words;
  }
  for (const [, text] of visible.matchAll(/\s(?:aria-label|alt|title|data-away)="([^"]*)"/g)) {
    if (/\p{L}{2}/u.test(text.replace(/\u0001\d+\u0002/g, ''))) yield text;
  }
}
