import {css} from 'lit';

export const dialStyles = css`
  .body { display: grid; gap: var(--gap) 2em; grid-template-columns: minmax(0, 1fr); }
  .dial { inline-size: min(100%, 25em); margin-inline: auto; touch-action: pan-y; cursor: grab; user-select: none; -webkit-user-select: none; }
  .dial.held { cursor: grabbing; }
  .face { fill: var(--wash); stroke: var(--line); stroke-width: 1; }
  .joint { fill: none; stroke: currentColor; stroke-width: 1; }
  .rim { fill: none; stroke: currentColor; stroke-width: 2.5; }
  .tick { stroke: currentColor; stroke-width: 1; }
  .tick.whole { stroke-width: 1.8; }
  .unfaced { opacity: 0.5; }
  .dial text { text-anchor: middle; dominant-baseline: central; font-size: 12.5px; }
  .dial .ring-name { font-size: 10px; letter-spacing: 0.08em; text-transform: uppercase; opacity: 0.76; }
  @container (max-width: 22em) { .dial .ring-name { font-size: 12px; letter-spacing: 0.04em; } }
  .dial .now { font-size: 27px; font-weight: 650; }
  .dial .now-small { font-size: 13px; }
  .window { fill: none; stroke: var(--accent); stroke-width: 2.5; }
  .dial .facing { font-size: 14px; font-weight: 650; }
  .grip { fill: var(--accent); stroke: var(--accent); }
  .hand-group { outline: none; }
  .hand-group:focus-visible .ring-focus { stroke: var(--accent); }
  .ring-focus { fill: none; stroke: transparent; stroke-width: 2; }

  .stepper { display: grid; grid-template-columns: auto minmax(3em, 1fr) auto; gap: 0.4em; align-items: end; }
  .stepper button { text-align: center; padding-inline: 0; font-size: 1.1em; }
  .pair { display: flex; flex-wrap: wrap; gap: 0.5em; }
  .wide { grid-column: 1 / -1; }
  h3.wide { margin-block-start: 0.5em; }
  .wide.note { margin-block-start: -0.4em; }
  .mending { display: grid; gap: 0.6em; margin-block-start: 1em; }

  table { border-collapse: collapse; inline-size: 100%; font-size: 0.95em; }
  caption { text-align: start; padding-block-end: 0.3em; }
  th, td { text-align: start; font-weight: 400; padding: 0.35em 0.6em 0.35em 0; border-block-start: 1px solid var(--hairline); white-space: nowrap; }
  thead td { border: 0; padding: 0; }
  thead th { color: var(--quiet); font-size: 0.85em; border: 0; padding-block: 0; }
  tbody th { color: var(--quiet); }
  td:last-child, th:last-child { text-align: end; padding-inline-end: 0; }
  td.changed { font-weight: 600; }

  .path { display: flex; flex-wrap: wrap; gap: 0.35em 0; font-size: 0.95em; margin-block-start: 0.35em; }
  .path li { white-space: nowrap; }
  .path li + li::before { content: '→'; color: var(--quiet); padding-inline: 0.5em; }
  :host(:dir(rtl)) .path li + li::before { content: '←'; }
  .path li:last-child { font-weight: 600; }

  @container (min-width: 40em) {
    .body { grid-template-columns: minmax(18em, 23em) minmax(0, 1fr); align-items: start; }
    .dial { inline-size: 100%; }
  }
  @media (forced-colors: active) {
    .face { fill: Canvas; stroke: CanvasText; }
    .tick, .joint, .rim { stroke: CanvasText; }
    .dial text { fill: CanvasText; }
  }
`;
