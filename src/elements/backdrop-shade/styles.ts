import {css} from 'lit';

/** What only this element draws. */
export const shadeStyles = css`
  .strip, .drawing { min-inline-size: 0; direction: ltr; }
  .cell { stroke: none; shape-rendering: crispEdges; forced-color-adjust: none; }
  .bound, .ruled, .rule, .table, .view, .beam, .figure, .lamp, .camera, .wish, .curve { fill: none; stroke: currentColor; stroke-width: 1; }
  .ruled { stroke: var(--hairline); }
  .rule { stroke: var(--hairline); }
  .table { stroke-width: 1.4; }
  .view { stroke: none; fill: var(--wash); }
  .soft { fill: url(#soft); stroke: none; }
  .hatch { stroke: currentColor; stroke-width: 0.9; opacity: 0.5; }
  .full { fill: currentColor; fill-opacity: 0.3; stroke: none; }
  .figure { fill: url(#soft); stroke-width: 1.4; }
  .backdrop { stroke: currentColor; stroke-width: 5; }
  .lamp { stroke-width: 1.6; stroke-linejoin: round; }
  .beam { stroke-dasharray: 4 3; }
  .flag { fill: currentColor; fill-opacity: 0.55; stroke: currentColor; stroke-width: 3; stroke-linejoin: round; }
  .camera { fill: currentColor; }
  .curve { stroke-width: 2; stroke-linejoin: round; }
  .wish { stroke: var(--accent); stroke-dasharray: 6 3; stroke-width: 1.5; }
  svg text { font-size: 12px; }
  svg text.quiet { fill: var(--quiet); }
  .wish-name, .label { paint-order: stroke; stroke: var(--paper); stroke-width: 3; stroke-linejoin: round; }
  svg text.code { font-weight: 600; }
  .handle { cursor: move; touch-action: none; outline: none; }
  .handle .hit { fill: transparent; stroke: none; }
  .handle .grip { fill: var(--accent); stroke: none; }
  .handle .label { pointer-events: none; }
  .handle.chosen .label { font-weight: 700; }
  .handle.chosen .grip { stroke: currentColor; stroke-width: 2; }
  .handle:hover .grip { stroke: currentColor; stroke-width: 1.5; }
  .handle:focus-visible .hit { stroke: var(--accent); stroke-width: 2; }

  .body { display: grid; gap: var(--gap) 2em; grid-template-columns: minmax(0, 1fr); align-items: start; }
  .column { display: grid; gap: var(--gap); min-inline-size: 0; }
  .pair button { max-inline-size: 100%; overflow-wrap: anywhere; }
  .pair { display: flex; flex-wrap: wrap; gap: 0.5em; }
  .part { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6em; min-inline-size: 0; }
  .ways { grid-template-columns: minmax(0, 1fr); }
  .ways button { grid-template-columns: minmax(0, 1fr); overflow-wrap: anywhere; }
  .strip + .note { margin-block-start: calc(-0.6 * var(--gap)); }
  .cautions { border-block: 1px solid var(--line); padding-block: 0.7em; display: grid; gap: 0.5em; }
  .cautions ul { list-style: disc; padding-inline-start: 1.2em; display: grid; gap: 0.25em; font-size: 0.9em; }
  .cautions .problem { font-size: 1em; font-weight: 600; margin: 0; }
  .set-up, .unfolded { display: grid; grid-template-columns: minmax(0, 1fr); }
  .unfolded { gap: 0.8em; }
  .set-up .ways, .set-up .note { margin-block-start: 0.6em; }
  .set-up > p + details { margin-block-start: 0.6em; }
  .wide { grid-column: 1 / -1; }
  .wished { grid-template-columns: repeat(auto-fill, minmax(min(9em, 100%), 1fr)); }
  .print-only { display: none; }
  .field:has(#material), .field:has(#kind) { min-inline-size: 0; }
  @container (min-width: 46em) {
    .body { grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr); grid-template-rows: auto 1fr; }
    .drawing { grid-area: 1 / 1 / 3 / 2; }
  }
  @media (forced-colors: active) {
    .flag, .camera, .full { fill: CanvasText; }
    .handle .grip { fill: Highlight; }
  }
  @media print {
    .grip { display: none; }
    .print-only { display: block; }
    .ways button { display: grid !important; border: 0; padding: 0; }
    .ways button::after { content: none; }
    .body { grid-template-columns: minmax(0, 1fr); }
    .cautions { break-inside: avoid; }
  }
`;
