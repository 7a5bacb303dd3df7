import {css} from 'lit';

/** What only this element draws. */
export const planStyles = css`
  .drawing, .curve-box { position: relative; min-inline-size: 0; direction: ltr; }
  .drawing { container-type: normal; }
  svg { inline-size: auto; max-inline-size: 100%; }
  svg text { font-size: 12px; }
  svg text.quiet { fill: var(--quiet); font-size: 11px; }
  svg text.strong { font-weight: 650; }
  svg text.on-paper { paint-order: stroke; stroke: var(--lampblack-paper, Canvas); stroke-width: 4px; }
  .line, .fine, .focus, .view, .wished, .curve, .own, .best { fill: none; stroke: currentColor; stroke-width: 1; }
  .line { stroke-width: 1.4; }
  .fine { stroke-width: 0.8; stroke-linejoin: round; }
  .view { fill: var(--wash); stroke: none; }
  .solid { fill: currentColor; stroke: none; }
  .soft { fill: url(#hatch); stroke: currentColor; stroke-width: 1; stroke-linejoin: round; }
  .hatch { stroke: currentColor; stroke-width: 0.9; opacity: 0.6; }
  .focus { stroke-dasharray: 5 3; }
  .axis { fill: none; stroke: currentColor; stroke-width: 0.6; stroke-dasharray: 10 3 2 3; }
  .leader { fill: none; stroke: currentColor; stroke-width: 1; stroke-dasharray: 1 3; }
  .sharp { fill: none; stroke: currentColor; stroke-width: 5; }
  .body { fill: var(--lampblack-paper, Canvas); stroke: currentColor; stroke-width: 1.4; stroke-linejoin: round; }
  .handle { outline: none; touch-action: none; cursor: move; }
  .handle.along { cursor: ew-resize; touch-action: pan-y; }
  .handle.up { cursor: ns-resize; touch-action: pan-x; }
  .hit { fill: transparent; stroke: none; }
  .knob { fill: var(--accent); stroke: var(--lampblack-paper, Canvas); stroke-width: 1.5; }
  .handle:hover .knob { stroke: currentColor; }
  .handle:focus-visible .hit { stroke: var(--accent); stroke-width: 2; }

  /* Labels of one or two lines, and every answer on the same rule. */
  .fields { row-gap: 0; }
  @container (min-width: 26em) { .wishes > .field:first-child { grid-column: span 2; } }
  .fields > .field { grid-row: span 3; grid-template-rows: subgrid; margin-block-end: 0.7em; }
  .fields > .field > label { align-self: end; }
  .compare { display: grid; gap: 1.2em; }
  .row-of-ways { display: grid; gap: 1em; }
  .labels { display: none; }
  .way { border-block-start: 1px solid currentColor; min-inline-size: 0; }
  .way .pick { inline-size: 100%; border: 0; border-radius: 0; padding: 0.5em 0; display: flex; gap: 0.6em; justify-content: space-between; align-items: baseline; min-block-size: max(44px, 3em); }
  .pick strong { font-weight: 650; }
  .pick span { color: var(--quiet); font-size: 0.9em; white-space: nowrap; }
  .pick span::after { content: ' →'; color: var(--accent); font-weight: 700; }
  :host(:dir(rtl)) .pick span::after { content: ' ←'; }
  .pick[aria-pressed='true'] { box-shadow: inset 0 3px 0 var(--accent); }
  .pick[aria-pressed='true'] span::after { content: ' ✓'; }
  .way dl { margin: 0; }
  .way dl { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 0 1em; }
  .way dl > div { border-block-start: 1px solid var(--hairline); padding-block: 0.3em; line-height: 1.3; }
  .price, .frames { grid-column: 1 / -1; }
  .frames { display: flex; gap: 0.7em; }
  dt { color: var(--quiet); font-size: 0.88em; }
  dd, .pick strong { unicode-bidi: plaintext; }
  :host(:dir(rtl)) dd, :host(:dir(rtl)) .pick strong { text-align: right; }
  dd { margin: 0; min-inline-size: 0; overflow-wrap: anywhere; }
  .aperture dd, .shutter dd, .contrast dd { font-weight: 650; }
  .price dd { font-size: 0.92em; }

  @container (min-width: 36em) {
    .row-of-ways { grid-template-columns: minmax(6em, 9.5em); grid-auto-columns: minmax(0, 1fr); grid-template-rows: repeat(11, auto); gap: 0 1.2em; }
    .labels, .way { grid-row: 1 / span 11; display: grid; grid-template-rows: subgrid; }
    .labels { grid-column: 1; border-block-start: 1px solid currentColor; color: var(--quiet); font-size: 0.88em; }
    .labels > span { border-block-start: 1px solid var(--hairline); padding-block: 0.32em; }
    .labels > span:first-child { border: 0; }
    .way .pick { flex-direction: column; gap: 0; justify-content: start; align-items: start; }
    .way dl { grid-template-columns: minmax(0, 1fr); gap: 0; grid-row: 2 / span 10; grid-template-rows: subgrid; }
    .way dl > .price, .way dl > .frames { grid-column: auto; }
    .way dt { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }

  .curve-part { display: grid; gap: 0.5em 2em; align-items: center; }
  @container (min-width: 52em) { .curve-part { grid-template-columns: auto minmax(0, 1fr); } }
  .single > .note { margin-block-end: 0.5em; }
  .wish { margin: 0; display: grid; }
  .lost { fill: url(#chart-hatch); stroke: none; }
  .wished { stroke-dasharray: 6 3; stroke-width: 0.8; }
  .curve { stroke-width: 2.6; stroke-linejoin: round; }
  .own { stroke-dasharray: 1 3; }
  .own-dot { fill: currentColor; }
  .best { stroke-width: 1.6; }
  .plate[aria-busy='true'] .compare { opacity: 0.6; }
  .set-up details[open] { padding-block-end: 0.8em; }
  @media (forced-colors: active) { .knob { fill: Highlight; stroke: Canvas; } .body { fill: Canvas; } }
  @media print { .handle { display: none; } .pick { display: flex !important; } .pick span { display: none; } }
`;
