import type {Sheet} from '../../core/shot/sheet-lines.js';

/** A line of text, a rule or the picture of a card; px of the card. */
export type CardPart =
  | {readonly part: 'text'; readonly x: number; readonly y: number; readonly size: number; readonly weight: 400 | 600; readonly quiet: boolean; readonly end: boolean; readonly text: string}
  | {readonly part: 'rule'; readonly x: number; readonly y: number; readonly width: number; readonly thick: number}
  | {readonly part: 'picture'; readonly x: number; readonly y: number; readonly width: number; readonly height: number; readonly url: string};

export interface Card {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly CardPart[];
}

/** What goes on a card. */
export interface CardShot {
  readonly sheet: Sheet;
  readonly picture?: {readonly url: string; readonly width: number; readonly height: number} | undefined;
}

const WIDTH = 720;
const MARGIN = 36;
const GUTTER = 28;
const COLUMN = (WIDTH - 2 * MARGIN - GUTTER) / 2;
/** Picture's largest box. */
const PICTURE = {width: 216, height: 216};

/** Letters of a text face are about so wide on average, as a share of its size: wide enough for the widest of common faces. */
const LETTER = 0.66;

/** Lays shots out on a card, one under the other. */
export function layCard(shots: readonly CardShot[]): Card {
  const parts: CardPart[] = [];
  let y = MARGIN;
  for (const shot of shots) y = layShot(parts, shot, y) + MARGIN;
  return {width: WIDTH, height: Math.ceil(y), parts};
}

function layShot(parts: CardPart[], {sheet, picture}: CardShot, top: number): number {
  const text = (x: number, y: number, words: string, size: number, more: {weight?: 400 | 600; quiet?: boolean; end?: boolean} = {}) => {
    parts.push({part: 'text', x, y, size, weight: more.weight ?? 400, quiet: more.quiet ?? false, end: more.end ?? false, text: words});
  };
  const rule = (x: number, y: number, width: number, thick: number) => { parts.push({part: 'rule', x, y, width, thick}); };
  rule(MARGIN, top, WIDTH - 2 * MARGIN, 4);
  const box = picture && {...fitted(picture), url: picture.url};
  if (box) parts.push({part: 'picture', x: WIDTH - MARGIN - box.width, y: top + 18, ...box});
  const wide = WIDTH - 2 * MARGIN - (box ? box.width + GUTTER : 0);
  let y = top + 22;
  for (const line of wrap(sheet.title, wide, 27)) text(MARGIN, y += 33, line, 27, {weight: 600});
  for (const line of wrap(sheet.settings, wide, 23)) text(MARGIN, y += 30, line, 23);
  y += 8;
  for (const line of sheet.note.split('\n').flatMap((words) => wrap(words, wide, 15))) text(MARGIN, y += 21, line, 15);
  y = Math.max(y + 22, box ? top + 18 + box.height + 20 : 0);
  const ends = [y, y];
  for (const {heading, lines} of sheet.groups) {
    const column = (ends[0] as number) <= (ends[1] as number) ? 0 : 1;
    const x = MARGIN + column * (COLUMN + GUTTER);
    let at = (ends[column] as number) + 18;
    text(x, at, heading, 15, {weight: 600});
    rule(x, at += 7, COLUMN, 1);
    for (const [label, value] of lines) {
      text(x, at += 18, label, 13, {quiet: true});
      const room = COLUMN - label.length * 13 * LETTER - 12;
      const [first = '', ...rest] = value.length * 13 * LETTER <= room ? [value] : ['', ...wrap(value, COLUMN - 14, 13)];
      if (first) text(x + COLUMN, at, first, 13, {weight: 600, end: true});
      for (const line of rest) text(x + 14, at += 18, line, 13, {weight: 600});
      rule(x, at += 6, COLUMN, 0.4);
    }
    ends[column] = at + 16;
  }
  return Math.max(...ends);
}

function fitted({width, height}: {readonly width: number; readonly height: number}): {readonly width: number; readonly height: number} {
  const scale = Math.min(PICTURE.width / width, PICTURE.height / height);
  return {width: width * scale, height: height * scale};
}

/** Breaks text into lines that fit; a word longer than a line is broken too. */
export function wrap(text: string, width: number, size: number): readonly string[] {
  const most = Math.max(4, Math.floor(width / (size * LETTER)));
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean).flatMap((long) => long.match(new RegExp(`.{1,${most}}`, 'gu')) ?? [])) {
    if (line && line.length + 1 + word.length > most) {
      lines.push(line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return line ? [...lines, line] : lines;
}
