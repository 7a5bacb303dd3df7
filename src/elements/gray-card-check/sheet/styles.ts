import {css} from 'lit';

/** What is laid out of a card shot. */
export const sheetStyles = css`
  @container (min-width: 44em) { .sheet:not(.alone) { grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr); } }

  /* The shot with its three frames, and the picture that is wiped. */
  .stage, .wiped { position: relative; inline-size: 100%; aspect-ratio: var(--ratio, 1.8); overflow: hidden; }
  .stage canvas, .stage > svg, .wiped canvas, .wiped > svg { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; display: block; }
  .stage > svg, .wiped > svg { overflow: hidden; direction: ltr; }
  .stage { touch-action: pan-y; cursor: crosshair; }
  .wiped { touch-action: pan-y; cursor: ew-resize; }
  .wiped > svg { pointer-events: none; }
  .at { overflow: visible; inline-size: 1px; block-size: 1px; }
  .mark { outline: none; cursor: move; touch-action: none; }
  .edge { fill: transparent; stroke: #000; stroke-width: 4; stroke-opacity: 0.6; }
  .line { fill: none; stroke: #fff; stroke-width: 1.8; }
  .line.gray { stroke-dasharray: 8 4; }
  .line.black { stroke-dasharray: 1.5 3.5; stroke-width: 2.6; }
  .mark:focus-visible .line { stroke: var(--accent); stroke-width: 3.4; }
  /* A name stands on any picture: white with ink round it. */
  .stage svg .name { fill: #fff; stroke: #000; stroke-width: 4; stroke-linejoin: round; paint-order: stroke; font-size: 12.5px; font-weight: 700; pointer-events: none; }
  .waiting .name, .mark:focus-visible .name { text-decoration: underline; text-underline-offset: 0.15em; }
  .hit { fill: transparent; touch-action: none; }
  .size { cursor: nwse-resize; }
  .knob { fill: var(--accent); stroke: #fff; stroke-width: 1.5; pointer-events: none; }
  .cut { stroke: #fff; stroke-width: 1.8; }

  table { inline-size: 100%; border-collapse: collapse; font-size: 0.9em; line-height: 1.3; }
  caption { text-align: start; color: var(--quiet); font-size: 0.95em; padding-block-end: 0.2em; }
  th, td { text-align: end; padding: 0.35em 0 0.35em 0.5em; border-block-end: 1px solid var(--hairline); font-weight: 400; vertical-align: baseline; }
  thead th { color: var(--quiet); font-size: 0.9em; border-block-end: 1px solid var(--line); }
  th:first-child { text-align: start; padding-inline-start: 0; white-space: nowrap; }
  .foot { display: flex; flex-wrap: wrap; gap: 0.5em 1em; align-items: center; }
  .sample { display: inline-block; inline-size: 24px; block-size: 8px; vertical-align: middle; margin-inline-start: 0.5em; }
  .sample .line { stroke: currentColor; }
  .bad { font-weight: 700; }
  .bad::before { content: '▲ '; }
  .findings { display: grid; gap: 0.6em; }
  .findings li { padding-inline-start: 0.9em; border-inline-start: 2px solid var(--line); }
  .findings .against { border-inline-start: 4px double currentColor; padding-inline-start: 0.8em; }
  .findings strong { font-weight: 600; display: block; text-wrap: pretty; }
  .findings span { color: var(--quiet); text-wrap: pretty; }
  .next { margin: 0; font-weight: 600; }
  .said { margin: 0; text-wrap: pretty; }
  .holds { display: grid; gap: 0.2em; }
  .holds .problem { margin: 0; font-size: 1em; font-weight: 600; }
  .verdict + .problem { margin-block-start: -0.5em; font-size: 1em; font-weight: 600; }
  .gains > li { display: grid; grid-template-columns: minmax(0, 1fr) auto; align-items: center; gap: 0 0.8em; padding-block: 0.3em; border-block-end: 1px solid var(--hairline); }
  .gains span { color: var(--quiet); font-size: 0.85em; grid-area: 1 / 1; }
  .gains code { font: inherit; font-weight: 600; grid-area: 2 / 1; overflow-wrap: anywhere; text-align: start; }
  .gains button { grid-area: 1 / 2 / 3 / 3; text-align: center; }
  .ends { display: grid; grid-template-columns: auto minmax(0, 1fr) auto; gap: 0.7em; align-items: center; font-size: 0.85em; color: var(--quiet); direction: ltr; }
  .ends input { inline-size: 100%; min-block-size: 40px; margin: 0; accent-color: var(--accent); }
  .choices { display: flex; flex-wrap: wrap; gap: 0.4em 1.4em; align-items: end; }
  .check { display: inline-flex; align-items: center; gap: 0.5em; min-block-size: 40px; cursor: pointer; }
  .check input { inline-size: 1.15em; block-size: 1.15em; margin: 0; accent-color: var(--accent); }
  .fields.of-marks { grid-template-columns: repeat(auto-fit, minmax(min(9em, 100%), 1fr)); }
  @container (max-width: 25em) {
    table { font-size: 0.82em; hyphens: auto; }
    thead th { font-size: 0.95em; }
    th, td { padding-inline-start: 0.3em; }
    .sample { display: none; }
  }
  @container (max-width: 14em) {
    table { table-layout: fixed; font-size: 0.6em; }
    th, th:first-child, td, td.codes { white-space: normal; overflow-wrap: anywhere; }
  }

  @media (forced-colors: active) {
    .mark:focus-visible .line { stroke: Highlight; }
    .line, .name, .edge, .cut { forced-color-adjust: none; }
    .sample .line { stroke: CanvasText; }
  }
  @media print {
    .hit, .knob, .ends, .choices, .gains button { display: none; }
    .sheet { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  }
`;
