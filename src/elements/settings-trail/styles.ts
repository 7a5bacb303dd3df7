import {css} from 'lit';

export const trailStyles = css`
  .example { margin: 0; display: flex; flex-wrap: wrap; gap: 0.3em 0.8em; align-items: center; }
  .example strong { padding-inline: 0.5em; border: 1px dashed currentColor; }
  .done > span { flex: 0 1 auto; min-inline-size: 0; }
  .trail { display: grid; }
  .trail > li { display: grid; }
  .row { display: grid; grid-template-columns: 2em minmax(0, 1fr); gap: 0 0.8em; }
  .rail { display: grid; grid-template-rows: 1fr auto 1fr; justify-items: center; font-weight: 700; line-height: 1.2; }
  .step > .rail { grid-template-rows: auto 1fr; }
  .rail::after, .between-rail::before { content: ''; border-inline-start: 2px solid currentColor; min-block-size: 0.5em; }
  .rail.off::before, .rail.off::after { border-inline-start-style: dotted; }
  .between-rail.off { font-size: 1.25em; }
  .rail.last::after { border: 0; }
  .count { inline-size: 100%; text-align: center; font-size: 1.2em; line-height: 1.35; border-block: 2px solid currentColor; padding-block: 0.1em; }
  .step > .said { border-block-start: 1px solid var(--line); padding-block: 0.35em 0.5em; }
  .said, .between { display: grid; gap: 0.15em 1.6em; min-inline-size: 0; }
  .between { padding-block: 0.7em; }
  .said p, .between p { margin: 0; }
  .taken { font-weight: 650; font-size: 1.1em; }
  .typed { overflow-wrap: anywhere; color: var(--quiet); }
  .typed b { font-weight: 600; white-space: nowrap; color: var(--ink); text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: 0.2em; }
  .typed b.slip, .typed b.unread { text-decoration: underline wavy 2px var(--accent); text-decoration-skip-ink: none; }
  .typed b.unread { text-decoration-color: currentColor; }
  .typed del { text-decoration-thickness: 2px; }
  .typed ins { text-decoration: none; border-block-end: 3px solid var(--accent); font-weight: 650; color: var(--ink); }
  .step button { justify-self: start; font-size: 0.9em; margin-block-start: 0.4em; }

  .rules { display: grid; grid-template-columns: max-content minmax(0, 1fr) minmax(min(4em, 30%), max-content); gap: 0.2em 0.7em; align-items: center; max-inline-size: 26em; font-size: 0.9em; direction: ltr; }
  .rules dt { color: var(--quiet); }
  .rules dd { margin: 0; font-weight: 600; }
  .rules svg { block-size: 14px; }
  .rules line { stroke: currentColor; vector-effect: non-scaling-stroke; }
  .base, .tick { stroke-width: 1; opacity: 0.5; }
  .zero { stroke-width: 1.5; }
  .meant { stroke-width: 2; stroke-dasharray: 2 2; }
  .bar { fill: currentColor; }
  .bar.depth { fill: none; stroke: currentColor; stroke-width: 1.2; vector-effect: non-scaling-stroke; }
  .outcome.off { font-weight: 600; }

  .pair { display: flex; flex-wrap: wrap; gap: 0.5em; align-items: center; }
  .paste { display: grid; gap: 0.6em; justify-items: start; }
  .paste .field { inline-size: 100%; }
  .paste .field:has(select) { max-inline-size: 18em; }
  textarea {
    inline-size: 100%; min-block-size: 7em; padding: 0.5em; color: inherit; background: transparent; font: inherit;
    border: 1px solid var(--line); border-radius: var(--lampblack-radius, 0.2em); resize: vertical;
  }
  textarea[aria-invalid='true'] { border: 2px dashed currentColor; }

  @container (min-width: 38em) {
    .said { grid-template-columns: minmax(0, 20em) minmax(0, 1fr) auto; align-items: baseline; }
    .between { grid-template-columns: minmax(0, 20em) minmax(0, 1fr); align-items: center; }
    .said > .wide { grid-column: 2; }
    .said > button { grid-column: 3; grid-row: 1 / span 3; margin: 0; }
    .said > .done { grid-column: 1 / -1; }
  }
  @media (forced-colors: active) {
    .rules line { stroke: CanvasText; }
    .bar { fill: CanvasText; }
    .bar.depth { fill: Canvas; stroke: CanvasText; }
    .typed ins { border-color: Highlight; }
  }
`;
