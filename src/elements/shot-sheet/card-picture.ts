import type {Card} from './card.js';

const SVG = 'http://www.w3.org/2000/svg';

/** Ink on paper, whatever the page looks like: a card leaves the page. */
const INK = '#1d1b18';
const QUIET = '#5c574f';
const PAPER = '#fbf8f1';

/** Sharp on a screen of twice the density, and in print at a hand's width. */
const SCALE = 2;

/** The card as SVG that needs nothing from outside. */
export function cardElement({width, height, parts}: Card): SVGSVGElement {
  const make = (name: string, attributes: Readonly<Record<string, string | number>>, text = '') => {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, `${value}`);
    // XML has no place for these, not even as references.
    element.textContent = text.replace(/[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '');
    return element;
  };
  const svg = make('svg', {xmlns: SVG, viewBox: `0 0 ${width} ${height}`, width, height, 'font-family': 'Georgia, Cambria, serif'}) as SVGSVGElement;
  svg.append(make('rect', {width, height, fill: PAPER}));
  for (const part of parts) {
    if (part.part === 'rule') {
      svg.append(make('rect', {x: part.x, y: part.y, width: part.width, height: part.thick, fill: INK}));
    } else if (part.part === 'picture') {
      svg.append(make('image', {x: part.x, y: part.y, width: part.width, height: part.height, href: part.url}));
    } else {
      svg.append(make('text', {x: part.x, y: part.y, 'font-size': part.size, 'font-weight': part.weight, fill: part.quiet ? QUIET : INK, ...(part.end && {'text-anchor': 'end'})}, part.text));
    }
  }
  return svg;
}

/** The card as a file of SVG. */
export function cardSvg(card: Card): Blob {
  return new Blob([new XMLSerializer().serializeToString(cardElement(card))], {type: 'image/svg+xml'});
}

/** The card as a PNG; `null` where the page does not let one be drawn. */
export async function cardPng(card: Card): Promise<Blob | null> {
  const url = URL.createObjectURL(cardSvg(card));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = card.width * SCALE;
    canvas.height = card.height * SCALE;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => { canvas.toBlob(resolve, 'image/png'); });
  } catch (error) {
    // A policy that forbids pictures from blob: addresses, or a canvas larger than this browser makes.
    if (!(error instanceof DOMException)) throw error;
    return null;
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** Size of a picture at a data: address, so that it keeps its shape on the card. `undefined` where it cannot be read. */
export async function pictureSize(url: string, draw: (canvas: HTMLCanvasElement, url: string) => Promise<boolean>): Promise<{readonly width: number; readonly height: number} | undefined> {
  const canvas = document.createElement('canvas');
  return await draw(canvas, url) ? {width: canvas.width, height: canvas.height} : undefined;
}

/**
 * Prints the card alone on one page: from a frame, so that the page around it need not change.
 * @param title - of the frame
 * @returns whether a frame could be had
 */
export function printCard(card: Card, title: string): boolean {
  const frame = document.createElement('iframe');
  frame.title = title;
  frame.width = frame.height = '1';
  frame.setAttribute('aria-hidden', 'true');
  document.body.append(frame);
  const inner = frame.contentWindow as (Window & typeof globalThis) | null;
  if (!inner) {
    frame.remove();
    return false;
  }
  const sheet = new inner.CSSStyleSheet();
  sheet.replaceSync('@page { margin: 12mm } body { margin: 0 } svg { display: block; width: 100%; height: auto; max-height: 96vh }');
  inner.document.adoptedStyleSheets = [sheet];
  inner.document.body.append(inner.document.importNode(cardElement(card), true));
  inner.addEventListener('afterprint', () => { setTimeout(() => { frame.remove(); }); });
  inner.focus();
  inner.print();
  return true;
}
