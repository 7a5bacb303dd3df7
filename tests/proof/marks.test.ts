import {expect} from '@open-wc/testing';
import {wcagContrast} from 'culori';
import {CASES, stand} from './cases.js';

const SHAPES = 'svg :is(path, line, rect, circle, ellipse, polygon, polyline)';
const PAPERS = {light: {dark: false, paper: '#ffffff'}, dark: {dark: true, paper: '#14130f'}} as const;

/** Marks that need not stand out, and why. */
const EXEMPT: Readonly<Record<string, string>> = {
  '.hit, .ring, .ring-focus': 'what is pressed or shows the focus: seen only while it has it',
  '.face, .wash, .view, .full': 'ground under other marks, whose own edge is drawn or told in words',
  '.ruled, .rule, .rules .base, .rules .tick, .unfaced, .unfaced *': 'ruled paper: what stands there is printed beside it',
  '.cell, .strip *, .swatch, .qr *': 'the picture itself: its grays are what it shows',
  '.under, .line-core, .line-edge': 'a light line on a dark one: over a photo one of the two stands out',
};

/** The pixel that a colour, thinned, makes on a paper. A canvas knows every way of writing a colour. */
function on(paper: string, colour: string, opacity: number): {readonly css: string; readonly seen: boolean} {
  const pen = new OffscreenCanvas(1, 1).getContext('2d', {willReadFrequently: true}) as OffscreenCanvasRenderingContext2D;
  pen.fillStyle = colour;
  pen.globalAlpha = opacity;
  pen.fillRect(0, 0, 1, 1);
  const seen = (pen.getImageData(0, 0, 1, 1).data[3] ?? 0) > 0;
  pen.globalCompositeOperation = 'destination-over';
  pen.globalAlpha = 1;
  pen.fillStyle = paper;
  pen.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = pen.getImageData(0, 0, 1, 1).data;
  return {css: `rgb(${red}, ${green}, ${blue})`, seen};
}

/** How much of a mark is left after every layer it lies in has thinned it. */
function opacityOf(mark: Element): number {
  let left = 1;
  for (let at: Element | null = mark; at; at = at.parentElement) left *= Number(getComputedStyle(at).opacity);
  return left;
}

/** A drawing over a photo or a canvas has no paper of its own. */
const overPhoto = (drawing: SVGSVGElement): boolean => Boolean(drawing.parentElement?.querySelector('canvas, img, image'));

function marksOf(root: ShadowRoot): SVGGeometryElement[] {
  return [...root.querySelectorAll<SVGGeometryElement>(SHAPES)].filter((mark) => {
    const drawing = mark.ownerSVGElement as SVGSVGElement;
    if (overPhoto(drawing) || Object.keys(EXEMPT).some((selector) => mark.matches(selector))) return false;
    // The lines of a hatch stand in its pattern, and are drawn wherever it fills.
    if (mark.closest('pattern')) return Boolean(drawing.getClientRects().length);
    return !mark.closest('defs, clipPath, mask, symbol') && mark.checkVisibility({visibilityProperty: true, opacityProperty: true}) && drawing.getClientRects().length > 0;
  });
}

/** Colours a mark is painted in. A hatch is judged by its lines. */
function paints(mark: SVGGeometryElement, paper: string): string[] {
  const style = getComputedStyle(mark);
  const opacity = opacityOf(mark);
  const found = [];
  for (const [paint, own, there] of [
    [style.fill, style.fillOpacity, mark.localName !== 'line'], [style.stroke, style.strokeOpacity, parseFloat(style.strokeWidth) > 0],
  ] as const) {
    if (!there || paint === 'none' || paint.startsWith('url(')) continue;
    const {css, seen} = on(paper, paint, opacity * Number(own));
    if (seen) found.push(css);
  }
  return found;
}

/** Whether a colour is one: the ink of a page, thinned or not, is none. */
function tinted(css: string): boolean {
  const channels = (css.match(/\d+/g) ?? []).map(Number);
  return Math.max(...channels) - Math.min(...channels) > 40;
}

const nameOf = (mark: Element) => `${mark.localName}.${mark.getAttribute('class') ?? ''} in ${mark.parentElement?.localName}.${mark.parentElement?.getAttribute('class') ?? ''}`;
/** What these show lies over a photo, or is a code to be scanned. */
const UNDRAWN: readonly string[] = ['gray-card-check', 'shot-sheet'];
const DRAWN = CASES.filter(({tag, state}) => state === 'at work' || tag === 'tonal-chart-reader' && state === 'with a spot');

describe('drawn marks', () => {
  for (const known of DRAWN) {
    for (const [name, {dark, paper}] of Object.entries(PAPERS)) {
      // Source: WCAG 2.2, success criterion 1.4.11, non-text contrast: at least 3 to 1. The ratio is culori's.
      it(`of ${known.tag}, ${known.state}, ${name}: stand out from the paper three to one`, async () => {
        const {shadowRoot} = await stand(known, {dark});
        const marks = marksOf(shadowRoot as ShadowRoot);
        if (!UNDRAWN.includes(known.tag)) expect(marks.length, 'marks').to.be.greaterThan(3);
        const faint = new Set<string>();
        for (const mark of marks) {
          const ratios = paints(mark, paper).map((colour) => wcagContrast(colour, paper));
          if (ratios.length && Math.max(...ratios) < 3) faint.add(`${nameOf(mark)}: ${Math.max(...ratios).toFixed(2)}`);
        }
        expect([...faint].join('\n')).to.equal('');
      });
    }

    // Source: WCAG 2.2, success criterion 1.4.1, use of colour.
    it(`of ${known.tag}, ${known.state}: differ in more than their colour`, async () => {
      const {shadowRoot} = await stand(known);
      const alike = new Map<string, Map<boolean, string>>();
      for (const mark of marksOf(shadowRoot as ShadowRoot)) {
        if (mark.closest('pattern')) continue;
        const style = getComputedStyle(mark);
        const [colour] = paints(mark, '#ffffff');
        if (!colour) continue;
        const drawings = [...(shadowRoot as ShadowRoot).querySelectorAll('svg')];
        const fill = style.fill === 'none' ? 'open' : style.fill.startsWith('url(') ? 'hatched' : 'full';
        const shape = [drawings.indexOf(mark.ownerSVGElement as SVGSVGElement), mark.localName, fill, style.strokeWidth, style.strokeDasharray,
          mark.closest('[role=slider], [role=button], button') ? 'held' : 'fixed', mark.getAttribute('r') ?? ''].join(' ');
        alike.set(shape, (alike.get(shape) ?? new Map<boolean, string>()).set(tinted(colour), nameOf(mark)));
      }
      const told = [...alike].filter(([, colours]) => colours.size > 1)
        .map(([shape, colours]) => `${shape}: ${[...colours.values()].join(' / ')}`);
      expect(told.join('\n')).to.equal('');
    });
  }
});
