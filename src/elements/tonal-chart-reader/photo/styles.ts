import {css} from 'lit';

/** Styles of an open photo; put on when the first is opened. */
export const sheetStyles = css`
  p, strong { unicode-bidi: plaintext; }
  .side, .pair { display: grid; gap: 0.7em; min-inline-size: 0; grid-template-columns: minmax(0, 1fr); align-content: start; }
  @container (min-width: 44em) {
    .sheet, .pair { grid-template-columns: minmax(0, 1.05fr) minmax(0, 1fr); gap: 1.8em; align-items: start; }
  }

  /* The photo and the frame of what is kept. */
  .stage { position: relative; justify-self: center; inline-size: min(100%, calc(28em * var(--ratio, 1.5))); aspect-ratio: var(--ratio, 1.5); }
  .stage canvas, .stage svg { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; display: block; }
  .stage > svg { overflow: hidden; }
  .stage svg { touch-action: pan-y; cursor: crosshair; direction: ltr; }
  .veil { fill: #000; fill-opacity: 0.5; }
  .hatched { fill: url(#outside); }
  .hatch { stroke: #fff; stroke-opacity: 0.3; stroke-width: 1; }
  .frame { fill: transparent; stroke: #fff; stroke-width: 1.5; paint-order: stroke; }
  .frame-edge { fill: none; stroke: #000; stroke-width: 3.5; stroke-opacity: 0.55; }
  .keep { outline: none; touch-action: none; cursor: move; }
  .all .keep[data-frame='crop'] { touch-action: pan-y; cursor: crosshair; }
  .keep:focus-visible .frame { stroke: var(--accent); stroke-width: 3; }
  .spot-frame { fill: transparent; stroke: #fff; stroke-width: 1.5; stroke-dasharray: 4 3; }
  .keep:focus-visible .spot-frame { stroke: var(--accent); stroke-width: 3; }
  .hit { fill: transparent; touch-action: none; }
  .mark { fill: var(--accent); stroke: #fff; stroke-width: 1.5; pointer-events: none; }
  .trim { fill: none; stroke: var(--accent); stroke-width: 3; pointer-events: none; }
  .nwse { cursor: nwse-resize; } .nesw { cursor: nesw-resize; } .ns { cursor: ns-resize; } .ew { cursor: ew-resize; }

  /* The chart. */
  .choices { display: flex; flex-wrap: wrap; gap: 0 0.2em; }
  .choices legend { margin-block-end: 0.1em; }
  .choices label { position: relative; display: inline-flex; align-items: center; min-block-size: 40px; min-inline-size: 40px; padding-inline: 0.5em; cursor: pointer; font-size: 0.9em; border-block-end: 1px solid var(--line); }
  .choices input { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; margin: 0; opacity: 0; cursor: pointer; }
  .choices label:hover { background: var(--wash); }
  .choices label:has(:checked) { font-weight: 600; box-shadow: inset 0 -3px 0 var(--accent); }
  .choices label:has(:focus-visible) { outline: 2px solid var(--accent); outline-offset: 2px; z-index: 1; }
  .chart { direction: ltr; }
  .ruled { stroke: currentColor; stroke-width: 1; fill: none; shape-rendering: crispEdges; }
  .hair { stroke: var(--line); stroke-width: 1; fill: none; shape-rendering: crispEdges; }
  .dotted { stroke-dasharray: 1 3; }
  .soot { fill: currentColor; fill-opacity: 0.82; }
  .line { fill: none; stroke: currentColor; stroke-width: 1.6; stroke-linejoin: round; }
  .red { stroke: color-mix(in srgb, currentColor 40%, #d02010); }
  .green { stroke: color-mix(in srgb, currentColor 40%, #128a2e); stroke-dasharray: 7 2.5; }
  .blue { stroke: color-mix(in srgb, currentColor 40%, #2050e0); stroke-dasharray: 1.6 2.2; stroke-width: 2; }
  .earlier { stroke-width: 0.8; stroke-opacity: 0.75; }
  .moved { fill: none; stroke: var(--accent); stroke-width: 1.6; stroke-dasharray: 4 3; }
  .gone { fill: url(#gone); stroke: currentColor; stroke-width: 1; }
  .gone-line { stroke: currentColor; stroke-width: 1.4; }
  .stage text, .chart text, .profile text { font-size: 12px; }
  .faint { fill: var(--quiet); }
  .strong { font-weight: 700; }
  .end { text-anchor: end; } .middle { text-anchor: middle; }

  table { inline-size: 100%; border-collapse: collapse; font-size: 0.88em; line-height: 1.3; }
  caption { text-align: start; color: var(--quiet); font-size: 0.95em; padding-block-end: 0.2em; }
  th, td { text-align: end; padding: 0.3em 0 0.3em 0.4em; border-block-end: 1px solid var(--hairline); font-weight: 400; vertical-align: baseline; }
  thead th { color: var(--quiet); font-size: 0.9em; border-block-end: 1px solid var(--line); vertical-align: bottom; }
  th:first-child { text-align: start; padding-inline-start: 0; white-space: nowrap; }
  .lost { font-weight: 700; }
  .lost::before { content: '▨ '; }
  .sample { display: inline-block; inline-size: 22px; block-size: 8px; vertical-align: middle; margin-inline: 0.3em; }
  @container (max-width: 25em) {
    .name { display: none; }
    .choices { gap: 0; justify-content: space-between; }
    .choices label { padding-inline: 0.3em; justify-content: center; }
    table { font-size: 0.82em; }
    th, td { padding-inline-start: 0.25em; }
    .sample { inline-size: 16px; margin-inline: 0.15em; }
  }
  @container (max-width: 19em) {
    table, tbody, caption { display: block; }
    thead { display: block; position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
    tbody tr { display: grid; padding-block: 0.3em; border-block-end: 1px solid var(--hairline); }
    tbody th, td { border: 0; padding: 0; }
    td { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 0.6em; }
    td::before { content: attr(data-of); color: var(--quiet); flex: 1 0 auto; text-align: start; }
    .name { display: inline; }
  }
  .finding { margin: 0; font-weight: 600; text-wrap: pretty; }

  @media (forced-colors: active) {
    .veil { fill: Canvas; fill-opacity: 0.6; }
    .frame { stroke: Highlight; stroke-width: 3; }
    .red, .green, .blue, .line { stroke: CanvasText; }
    .soot { fill: CanvasText; forced-color-adjust: none; }
    .choices label:has(:checked) { border-block-end: 3px solid Highlight; }
  }
  @media print {
    .choices, .hit, .mark, .trim, .sheet .field { display: none; }
  }
`;
