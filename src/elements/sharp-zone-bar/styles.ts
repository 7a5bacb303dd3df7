import {css} from 'lit';

/** What only this element draws. */
export const zoneStyles = css`
  .drawing { position: relative; min-inline-size: 0; direction: ltr; }
  svg text { font-size: 12.5px; }
  /* Folds: ruled lines, in two columns where there is room, each of which grows for itself. */
  .folds { gap: 0 2em; align-items: start; grid-template-columns: minmax(0, 1fr); margin-block-start: -0.4em; }
  .folds .fields { grid-template-columns: repeat(auto-fill, minmax(min(8.6em, 100%), 1fr)); }
  @container (min-width: 36em) { .plate > .fields { grid-template-columns: repeat(5, minmax(0, 1fr)); } }
  @container (min-width: 46em) { .folds { grid-template-columns: repeat(2, minmax(0, 1fr)); } }
  /* Labels of one or two lines, and every answer on the same rule. */
  .fields { row-gap: 0; }
  .fields > .field { grid-row: span 3; grid-template-rows: subgrid; margin-block-end: 0.7em; }
  .fields > .field > label { align-self: end; }
  .field:has(#sensor-format, #camera-distance, #pupil-ratio, #aperture-shown) { grid-column: 1 / -1; }
  @container (min-width: 36em) { .field:has(#sensor-format, #camera-distance, #pupil-ratio, #aperture-shown) { grid-column: span 2; } }
  .group { display: grid; gap: 0.7em; grid-template-columns: minmax(0, 1fr); }
  .curves { display: flex; flex-wrap: wrap; align-items: center; gap: 0.6em 1.1em; margin-block-start: 0.5em; }
  .curves .pair { display: flex; }
  .curves .field { flex: 0 1 15em; }
  .out { display: grid; gap: 0.6em; grid-template-columns: minmax(0, 1fr); }
  .out, .verdict, .reason, .note, summary { overflow-wrap: anywhere; }
  .line-of-way { display: grid; grid-template-columns: 3.4em minmax(0, 1fr); gap: 0 0.6em; }
  .line-of-way i { font-style: normal; }
  .line-of-way > span { color: currentColor; font-size: 1em; }
  .ways strong { margin-block-end: 0.15em; }
  @container (max-width: 17em) {
    .ways button { padding-inline: 0.5em 1.6em; }
    .ways button::after { inset-inline-end: 0.4em; }
    .line-of-way { grid-template-columns: minmax(0, 1fr); }
    .curves .pair { flex-wrap: wrap; }
  }
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
  .ring { fill: none; stroke: transparent; stroke-width: 2; }
  .handle:focus-visible .ring { stroke: var(--accent); }
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
