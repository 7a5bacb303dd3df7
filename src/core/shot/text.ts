import {oneLine, type Sheet} from './sheet-lines.js';

/** Forms of text for places that run no script. */
export type SheetForm = 'text' | 'markdown' | 'bbcode' | 'html';

/**
 * Records as text, one after the other.
 * @param form - `text` for anywhere; `markdown`, `bbcode` and `html` for places that take those. What a person typed
 *   stays text in all of them.
 */
export function writeSheets(sheets: readonly Sheet[], form: SheetForm): string {
  const write = {text: plain, markdown, bbcode, html}[form];
  return sheets.map(write).join('\n\n');
}

const lines = (text: string): readonly string[] => text.split(/\r\n?|\n/).map((line) => line.trim()).filter(Boolean);

function plain({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [heading, ...said.map(([label, text]) => `  ${label}: ${oneLine(text)}`)].join('\n'));
  return [[title, settings].filter(Boolean).join('\n'), ...blocks, lines(note).join('\n')].filter(Boolean).join('\n\n');
}

/** Signs that begin markup anywhere. Source: CommonMark 0.31, backslash escapes. */
const mark = (text: string): string => oneLine(text).replace(/[\\`*_{}[\]<>#|~&!]/g, '\\$&').replace(/^([-+=]|\d+(?=[.)]))/, (start) =>
  (/\d/.test(start) ? `${start}\u200b` : `\\${start}`));

function markdown({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [`**${mark(heading)}**\n`, ...said.map(([label, text]) => `- ${mark(label)}: ${mark(text)}`)].join('\n'));
  return [title && `### ${mark(title)}`, `**${mark(settings)}**`, ...blocks, ...lines(note).map(mark)].filter(Boolean).join('\n\n');
}

/** A bracket that begins no tag: no board has an escape of its own. */
const bracket = (text: string): string => oneLine(text).replaceAll('[', '[\u200b');

function bbcode({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [`[b]${bracket(heading)}[/b]`, '[list]',
    ...said.map(([label, text]) => `[*]${bracket(label)}: ${bracket(text)}`), '[/list]'].join('\n'));
  return [title && `[b]${bracket(title)}[/b]`, `[b]${bracket(settings)}[/b]`, ...blocks, ...lines(note).map(bracket)].filter(Boolean).join('\n\n');
}

const SIGNS: Readonly<Record<string, string>> = {'&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;'};

/** Text that stays text in HTML, in an attribute too. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => SIGNS[sign] ?? sign);

function html({title, settings, groups, note}: Sheet): string {
  const blocks = groups.map(({heading, lines: said}) => [`  <h4>${escapeHtml(heading)}</h4>`, '  <dl>',
    ...said.map(([label, text]) => `    <dt>${escapeHtml(label)}</dt><dd>${escapeHtml(oneLine(text))}</dd>`), '  </dl>'].join('\n'));
  return ['<section>', title && `  <h3>${escapeHtml(title)}</h3>`, `  <p><strong>${escapeHtml(settings)}</strong></p>`, ...blocks,
    ...lines(note).map((line) => `  <p>${escapeHtml(line)}</p>`), '</section>'].filter(Boolean).join('\n');
}
