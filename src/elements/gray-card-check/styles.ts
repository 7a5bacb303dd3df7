import {css} from 'lit';

export const styles = css`
  :host([dropping]) .plate { outline: 2px dashed var(--accent); outline-offset: 0.4em; }
  .sheet { display: grid; gap: var(--gap) 1.8em; grid-template-columns: minmax(0, 1fr); align-items: start; }
  .side { display: grid; gap: 0.7em; min-inline-size: 0; align-content: start; }
  @container (min-width: 44em) { .sheet:not(.alone) { grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr); } }

  .blank { display: grid; gap: 0.9em; padding: 1.2em; border: 1px dashed var(--line); }
  .blank p { margin: 0; max-inline-size: 38em; text-wrap: pretty; }
  :host([dropping]) .blank { border-color: var(--accent); background: var(--wash); }
  .card { display: grid; grid-template-columns: repeat(3, 1fr); inline-size: min(100%, 15em); aspect-ratio: 3.3; gap: 6%; }
  .card svg { inline-size: 100%; block-size: 100%; }
  .pick {
    position: relative; display: inline-flex; align-items: center; gap: 0.5em; min-block-size: max(40px, 2.6em); padding: 0.35em 0.9em;
    border: 1px solid var(--line); border-radius: var(--lampblack-radius, 0.2em); cursor: pointer; line-height: 1.3;
  }
  .pick:hover { background: var(--wash); border-color: currentColor; }
  .pick::after { content: '↥'; color: var(--accent); font-weight: 700; }
  .pick input { position: absolute; inset: 0; opacity: 0; inline-size: 100%; block-size: 100%; margin: 0; padding: 0; font-size: 0; cursor: pointer; }
  .pick:focus-within { outline: 2px solid var(--accent); outline-offset: 2px; }
  .tools { display: flex; flex-wrap: wrap; gap: 0.5em 0.8em; align-items: center; }
  .tools .note { flex: 1 1 9em; }

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
  .waiting .tag { fill: var(--accent); }
  .mark:focus-visible .line { stroke: var(--accent); stroke-width: 3.4; }
  .tag { fill: #000; }
  .mark:focus-visible .tag { fill: var(--accent); }
  .stage svg .letter { fill: #fff; font-size: 12px; font-weight: 700; text-anchor: middle; pointer-events: none; }
  .hit { fill: transparent; touch-action: none; }
  .size { cursor: nwse-resize; }
  .knob { fill: var(--accent); stroke: #fff; stroke-width: 1.5; pointer-events: none; }
  .cut { stroke: #fff; stroke-width: 1.8; }

  table { inline-size: 100%; border-collapse: collapse; font-size: 0.9em; line-height: 1.3; }
  caption { text-align: start; color: var(--quiet); font-size: 0.95em; padding-block-end: 0.2em; }
  th, td { text-align: end; padding: 0.35em 0 0.35em 0.5em; border-block-end: 1px solid var(--hairline); font-weight: 400; vertical-align: baseline; }
  thead th { color: var(--quiet); font-size: 0.9em; border-block-end: 1px solid var(--line); }
  th:first-child { text-align: start; padding-inline-start: 0; white-space: nowrap; }
  td { white-space: nowrap; }
  th b { display: inline-block; inline-size: 1em; font-weight: 700; }
  .foot { display: flex; flex-wrap: wrap; gap: 0.5em 1em; align-items: center; }
  .sample { display: inline-block; inline-size: 24px; block-size: 8px; vertical-align: middle; margin-inline: 0.4em; }
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
  .way-done { margin: 0; }
  .way-done strong { font-weight: 600; white-space: nowrap; }
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
  @container (max-width: 25em) { table { font-size: 0.82em; } th, td { padding-inline-start: 0.3em; } td { white-space: normal; } .word { display: none; } .sample { margin-inline: 0.25em 0; } }

  @media (forced-colors: active) {
    .mark:focus-visible .line { stroke: Highlight; }
    .tag, .line, .letter, .edge, .cut { forced-color-adjust: none; }
    .sample .line { stroke: CanvasText; }
  }
  @media print {
    .pick, .hit, .knob, .blank, .ends, .choices, .gains button { display: none; }
    .sheet { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  }
`;
