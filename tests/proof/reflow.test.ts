import {expect} from '@open-wc/testing';
import {CASES, stand, type Case} from './cases.js';

/** Narrow as at 400 per cent zoom, with letters of twice the size and both at once, on a phone, in an article, across a desk. */
const SIGHTS = [
  {width: 280, size: 16}, {width: 320, size: 16}, {width: 320, size: 32}, {width: 640, size: 32}, {width: 600, size: 16}, {width: 1100, size: 16},
] as const;

const scrolls = (node: Element) => /auto|scroll/.test(getComputedStyle(node).overflowX);
const inScroller = (node: Element): boolean => scrolls(node) || (node.parentElement !== null && inScroller(node.parentElement));

/** Whether it is there for those who listen alone. */
const isCut = (node: Element): boolean => getComputedStyle(node).clipPath !== 'none' || (node.parentElement !== null && isCut(node.parentElement));

/** Parts that are wider than the room they have, or stand outside the element. */
function overflowing(el: Element): string[] {
  const {left, right} = el.getBoundingClientRect();
  return [...el.shadowRoot?.querySelectorAll<HTMLElement>('*') ?? []].filter((node) => {
    if (node.closest('.spoken, svg svg, defs') || isCut(node) || !node.getClientRects().length || inScroller(node)) return false;
    const box = node.getBoundingClientRect();
    if (node instanceof SVGElement) return node.localName === 'text' && (box.left < left - 8 || box.right > right + 8);
    return node.scrollWidth > node.clientWidth + 1 && node.clientWidth > 0 && getComputedStyle(node).display !== 'inline'
      && node.localName !== 'input' && node.localName !== 'select' || box.left < left - 1 || box.right > right + 1;
  }).map((node) => `${node.localName}.${node.getAttribute('class') ?? ''} “${(node.textContent ?? '').replace(/\s+/g, ' ').trim().slice(0, 60)}”`);
}

/** Words of a drawing that stand on each other. */
function collisions(el: Element): string[] {
  const found: string[] = [];
  for (const drawing of el.shadowRoot?.querySelectorAll('svg') ?? []) {
    const words = [...drawing.querySelectorAll('text')].filter((node) => node.textContent?.trim() && node.ownerSVGElement && shown(node))
      .map((node) => ({said: (node.textContent ?? '').trim(), box: node.getBoundingClientRect()})).filter(({box}) => box.width > 0);
    for (const [at, one] of words.entries()) {
      for (const other of words.slice(at + 1)) {
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        // The box of a line of text has air above and below its letters.
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        if (across > 1 && down > 0.35 * Math.min(one.box.height, other.box.height)) found.push(`“${one.said}” on “${other.said}”`);
      }
    }
  }
  return found;
}

function shown(node: Element): boolean {
  for (let at: Element | null = node; at; at = at.parentElement) {
    const {visibility, display, opacity} = getComputedStyle(at);
    if (visibility === 'hidden' || display === 'none' || opacity === '0') return false;
  }
  return true;
}

/** Letters of a drawing below what can be read. */
function small(el: Element): string[] {
  return [...el.shadowRoot?.querySelectorAll<SVGTextElement>('svg text') ?? []].filter((node) => node.textContent?.trim() && shown(node)
    && (node.ownerSVGElement?.getScreenCTM()?.a ?? 1) * parseFloat(getComputedStyle(node).fontSize) < 9.5).map((node) => node.textContent ?? '');
}

describe('nothing is lost, cut or on top of another thing', () => {
  for (const known of CASES.filter(({state}) => state !== 'as it comes') as Case[]) {
    it(`in ${known.tag}, ${known.state}`, async () => {
      const el = await stand(known);
      const page = el.parentElement as HTMLElement;
      const found: string[] = [];
      for (const {width, size} of SIGHTS) {
        page.style.inlineSize = `${width}px`;
        page.style.fontSize = `${size}px`;
        for (let picture = 0; picture < 5; picture++) await new Promise(requestAnimationFrame);
        await el.updateComplete;
        const where = `${width} px, letters of ${size} px`;
        found.push(...[...overflowing(el), ...collisions(el), ...small(el).map((said) => `too small: “${said}”`)].map((what) => `${where}: ${what}`));
      }
      expect(found.join('\n')).to.equal('');
    });
  }
});
