import {css} from 'lit';

export const dialStyles = css`
  .body { display: grid; gap: var(--gap) 2em; grid-template-columns: minmax(0, 1fr); }
  .dial { inline-size: min(100%, max(25em, 360px)); margin-inline: auto; touch-action: pan-y; cursor: grab; user-select: none; -webkit-user-select: none; }
  .dial.held { cursor: grabbing; }
  .face { fill: var(--wash); stroke: var(--line); stroke-width: 1; }
  .joint { fill: none; stroke: currentColor; stroke-width: 1; }
  .rim { fill: none; stroke: currentColor; stroke-width: 2.5; }
  .tick { stroke: currentColor; stroke-width: 1; }
  .tick.whole { stroke-width: 1.8; }
  /* Out of reach: ticks may fade, figures must be read. */
  .unfaced .tick { opacity: 0.5; }
  .unfaced text { fill: var(--quiet); }
  .dial text { text-anchor: middle; dominant-baseline: central; font-size: 12.5px; }
  .dial .now { font-size: 27px; font-weight: 650; }
  .window { fill: none; stroke: var(--accent); stroke-width: 2.5; stroke-linejoin: round; }
  .dial .facing { font-size: 14px; font-weight: 650; }
  /* The drawing shrinks with its page, its letters stay at 12 px. */
  @container (max-width: 352px) { .dial text:not(.now) { font-size: 14.4px; } .dial .facing { font-size: 15.2px; } }
  @container (max-width: 295px) { .dial text:not(.now) { font-size: 15.2px; } }
  .grip { fill: var(--accent); stroke: var(--accent); }
  .hand-group { outline: none; }
  .hand-group:focus-visible .ring-focus { stroke: var(--accent); }
  .ring-focus { fill: none; stroke: transparent; stroke-width: 2; }

  .field > :is(label, .note, .problem) { overflow-wrap: anywhere; hyphens: auto; }
  .stepper { display: flex; gap: 0.4em; align-items: end; }
  .stepper .field { flex: 1; }
  .stepper button { text-align: center; padding-inline: 0; font-size: 1.1em; min-inline-size: 40px; flex: 0 1 2.6em; }
  .stepper input { min-inline-size: 0; }
  .pair { display: flex; flex-wrap: wrap; gap: 0.5em; }
  .wide { grid-column: 1 / -1; }
  h3.wide { margin-block-start: 0.5em; }
  .wide.note { margin-block-start: -0.4em; }
  .pair + .folds { margin-block-start: -0.4em; }
  .mending { display: grid; gap: 0.6em; margin-block-start: 1em; }

  .changes { margin: 0; font-size: 0.95em; }
  .changes > div { display: flex; flex-wrap: wrap; gap: 0 1.2em; align-items: baseline; padding-block: 0.35em; border-block-start: 1px solid var(--hairline); }
  dt { color: var(--quiet); flex: 1 1 6em; min-inline-size: 0; overflow-wrap: anywhere; }
  dd { margin: 0; flex: 1 1 8em; min-inline-size: 0; font-weight: 600; }
  .light { font-weight: 400; }
  h3 + .path { margin-block-start: 0.2em; }
  .changes + h3 { margin-block-start: 0.8em; }
  .path { display: flex; flex-wrap: wrap; gap: 0.35em 0; font-size: 0.95em; margin-block-start: 0.35em; }
  .path li { white-space: nowrap; }
  .path li + li::before { content: '→'; color: var(--quiet); padding-inline: 0.5em; }
  :host(:dir(rtl)) .path li + li::before { content: '←'; }
  .path li:last-child { font-weight: 600; }

  @container (min-width: 40em) {
    .body { grid-template-columns: minmax(0, max(23em, 352px)) minmax(0, 1fr); align-items: start; }
    .dial { inline-size: 100%; }
  }
  @media (forced-colors: active) {
    .face { fill: Canvas; stroke: CanvasText; }
    .tick, .joint, .rim { stroke: CanvasText; }
    .dial text { fill: CanvasText; }
  }
`;
