import type {PieceKind, piecesIn} from './read-exposure.js';

/** What looks like a setting, a number of stops or a number. */
export type Piece = ReturnType<typeof piecesIn>[number];

/** Numbers that count steps: `2.`, `3)` at the head of a line, `Step 4` anywhere. */
export const NUMBERING = /* @__PURE__ */ new RegExp(String.raw`^[^\S\n]*(?:(?:step|shot|frame|picture|trial)\s+)?\(?\d{1,2}[.):](?=\s)`
  + String.raw`|\b(?:step|shot|frame|picture|trial|figure|part)\s+\d{1,2}\b(?![./"]\d)`, 'gim');

/** What follows a number that is no time: a model's scale, a lamp's power, a share or a size of something. */
const NO_TIME_BEFORE = /^\s*(?:scale|power|way|size|inch(?:es)?|base|deep|wide|tall|high|away|behind|apart|later|ago)\b/i;
const PART_OF = /^\s*(?:of\s+(?:the|its|an?\s+(?!sec))|(?:self-?)?timer|delay)\b/i;

/** What leads to a number of seconds that nobody sets. */
const NO_TIME_AFTER = /\b(?:wait(?:ed|ing)?|every|within|another)\s+(?:(?:of|for|about|the)\s+)?$/i;

/** What may stand between two settings of one step. */
const JOINED = /^[\s,@("“]*(?:at|and|with|for)?[\s("“]*$/i;

/** Where one step of running text ends and the next begins. */
const BREAK = /[.!?](?=\s|$)|;|→|->|\n|(?:,?\s*\b(?:and|but)\s+)?\b(?:then|next|finally|lastly|now|afterwards|after that)\b/i;

/** A remark that follows its setting at once: `(one stop darker)`, `+2`. */
const REMARK = /^\s*[)"”’]|^[\s,]*(?:\([^)]*\)|[+±−–-]\s?[\d½⅓⅔][^,;.\n]*)/;

/**
 * Whether a piece of running text is a setting, seen in its surroundings: no model's scale, lamp's power, length, date.
 * @param before - the last piece that is one
 */
export function isSetting(text: string, piece: Piece, before: Piece | undefined): boolean {
  const after = text.slice(piece.end, piece.end + 40);
  if (piece.kind === 'bare') {
    return before !== undefined && (before.kind === 'aperture' || before.kind === 'shutter')
      && JOINED.test(text.slice(before.end, piece.start)) && !/^\s*(?!(?:and|at|then|f|iso|or)\b)[a-zµ%°]/i.test(after);
  }
  if (piece.kind !== 'shutter') return piece.kind === 'aperture' || piece.kind === 'iso';
  // A length in metres or feet, a date or a page, unless it stands right beside an f-number.
  if (/\d\s*[m'’′]$|^(?!1\/)\d+\s*\/\s*\d+$/i.test(piece.text) && !/^\s*s(?:ec|\b)/i.test(after)) {
    return before?.kind === 'aperture' && JOINED.test(text.slice(before.end, piece.start));
  }
  return !NO_TIME_BEFORE.test(after) && !PART_OF.test(after)
    && (piece.text.includes('/') || !NO_TIME_AFTER.test(text.slice(Math.max(0, piece.start - 30), piece.start)));
}

/** Whether a piece only says again where a change began: the first of “from 1/25 to 1/6”, with a time said before. */
export function isFrom(text: string, piece: Piece, at: number, pieces: readonly Piece[]): boolean {
  const next = pieces[at + 1];
  return next?.kind === piece.kind && /^\s*to\s+$/i.test(text.slice(piece.end, next.start))
    && /\bfrom\s+$/i.test(text.slice(Math.max(0, piece.start - 10), piece.start))
    && pieces.slice(0, at).some(({kind}) => kind === piece.kind);
}

/**
 * Pieces that make one step belong together until a kind comes again, words part two complete ones, or a pair that
 * stands close together begins.
 */
export function groupProse(text: string, pieces: readonly Piece[]): Piece[][] {
  const groups: Piece[][] = [];
  let kinds = new Set<PieceKind>();
  for (const [at, piece] of pieces.entries()) {
    const kind = piece.kind !== 'bare' ? piece.kind : !kinds.has('shutter') ? 'shutter' : kinds.has('aperture') ? 'iso' : 'aperture';
    const group = groups.at(-1);
    const gap = text.slice(group?.at(-1)?.end ?? 0, piece.start);
    const next = pieces[at + 1];
    const opensPair = next && kinds.has(next.kind) && next.kind !== kind && !JOINED.test(gap) && JOINED.test(text.slice(piece.end, next.start));
    if (!group || kinds.has(kind) || opensPair || (kinds.has('aperture') && kinds.has('shutter') && BREAK.test(gap))) {
      kinds = new Set();
      groups.push([]);
    }
    kinds.add(kind);
    groups.at(-1)?.push(piece);
  }
  return groups;
}

/**
 * Where between two steps the words of the first end.
 * @param start - end of the first one's last setting
 * @param end - start of the second one's first setting, or the end of the text
 */
export function cutBetween(text: string, start: number, end: number): number {
  const gap = text.slice(start, end);
  const remark = REMARK.exec(gap)?.[0].length ?? 0; // stays with the setting before it
  const counts = [...gap.slice(remark).matchAll(NUMBERING)];
  const found = counts.at(-1) ?? BREAK.exec(gap.slice(remark));
  if (!found) return start + (end === text.length ? gap.length : remark);
  // A word opens the next step, a mark closes this one.
  return start + remark + found.index + (/\w/.test(found[0]) ? 0 : found[0].length);
}
