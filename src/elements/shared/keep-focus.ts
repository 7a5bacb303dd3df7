import {isServer, type ReactiveElement} from 'lit';

/** What the tab key comes to. */
const STOPS = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

/** What somebody wants next who took a way out, or took it back. */
const NEXT = '.undo, .way-done button, .ways button';

const isStop = (node: Element): node is HTMLElement => node.isConnected && !node.matches(':disabled') && (node as HTMLElement).checkVisibility();

/**
 * The focus of somebody without a pointer is not lost with a button that its press takes away: it goes to what takes the press
 * back, from there to the way that was taken back or to those that are there again, or to the next stop.
 */
export function keepFocus(element: ReactiveElement): void {
  let held: Element | null = null;
  let around: readonly Element[] = [];
  let stops: readonly Element[] = [];
  /** Which of the ways was pressed last. */
  let way = -1;
  const ways = () => [...element.renderRoot.querySelectorAll('.ways button')];
  element.addController({
    hostUpdate() {
      held = isServer || !element.hasUpdated ? null : (element.renderRoot as ShadowRoot).activeElement;
      if (held?.localName !== 'button') held = null;
      if (!held) return;
      stops = [...element.renderRoot.querySelectorAll(STOPS)];
      around = ancestorsOf(held);
      if (held.matches('.ways *')) way = ways().indexOf(held);
    },
    hostUpdated() {
      if (!held || isStop(held)) return;
      const at = stops.indexOf(held);
      const part = around.find(({isConnected}) => isConnected);
      const again = held.matches('.undo') ? ways().slice(way, way + 1) : [];
      const next = [...again, ...part?.querySelectorAll(NEXT) ?? [], ...stops.slice(at), ...stops.slice(0, at).reverse()].find(isStop);
      next?.focus({preventScroll: true});
    },
  });
}

function ancestorsOf(node: Element): readonly Element[] {
  const {parentElement} = node;
  return parentElement ? [parentElement, ...ancestorsOf(parentElement)] : [];
}
