import {css} from 'lit';

/** What only this element draws. */
export const zoneStyles = css`
  .drawing { position: relative; min-inline-size: 0; direction: ltr; }
  .set-up { margin-block-start: -0.4em; }
  .set-up details[open] { padding-block-end: 0.8em; }
  .set-up .note { margin-block-start: 0.6em; }
  .field:has(#sensor-format) { grid-column: 1 / -1; }
  @container (min-width: 22em) { .field:has(#sensor-format) { grid-column: span 2; } }
  .group { display: grid; gap: 0.7em; padding-block-end: 0.6em; }
  .slide { display: flex; flex-wrap: wrap; align-items: center; gap: 0.2em 0.8em; font-size: 0.9em; }
  .slide input { flex: 1 1 10em; min-block-size: 40px; margin: 0; accent-color: var(--accent); }
  .slide output { min-inline-size: 5em; font-weight: 600; }
  .curves { display: flex; flex-wrap: wrap; align-items: end; gap: 0.6em 1.1em; margin-block-start: 0.5em; }
  .curves .pair { display: flex; }
  .curves .field { flex: 0 1 11em; }
  .out { display: grid; gap: 0.45em; }
  .solid { fill: currentColor; }
  .soft { fill: url(#hatch); stroke: currentColor; stroke-width: 1; }
  .soft.bare { stroke: none; }
  .hatch { stroke: currentColor; stroke-width: 0.9; opacity: 0.6; }
  .wash { fill: var(--wash); }
  .line, .bound, .leader, .limit { fill: none; stroke: currentColor; stroke-width: 1; }
  .line { stroke-width: 1.2; stroke-linejoin: round; stroke-linecap: round; }
  .fine { stroke-width: 0.8; }
  .bound { stroke-width: 0.8; opacity: 0.7; }
  .leader { stroke-dasharray: 1 3; }
  .limit { stroke-dasharray: 6 3; }
  .curve { fill: none; stroke: currentColor; stroke-width: 1.2; }
  .curve.sharp { stroke-width: 3; }
  .dot { fill: Canvas; fill: var(--lampblack-paper, Canvas); stroke: currentColor; stroke-width: 1.4; }
  .dot.sharp { fill: currentColor; }
  .frame { stroke: var(--accent); stroke-width: 1; stroke-dasharray: 3 3; }
  .focus { fill: none; stroke: var(--accent); stroke-width: 1.6; pointer-events: none; }
  .tab { fill: var(--accent); stroke: none; }
  svg text.quiet { fill: var(--quiet); }
  svg text.moves { font-weight: 600; }
  .handle { cursor: ew-resize; touch-action: pan-y; outline: none; }
  .hit { fill: transparent; stroke: none; }
  .handle:focus-visible .hit { stroke: var(--accent); stroke-width: 2; }
  .handle:hover .tab { stroke: currentColor; stroke-width: 1.5; }
  @media (forced-colors: active) {
    .dot { fill: Canvas; }
    button[aria-pressed='true'] { border-block-end: 4px solid Highlight; }
  }
  @media print {
    .ways button { display: grid !important; border: 0; padding: 0; }
    .ways button::after { content: none; }
  }
`;
