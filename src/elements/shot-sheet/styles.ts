import {css} from 'lit';

export const sheetStyles = css`
  .sheet { display: grid; gap: 0.9em 1.6em; align-items: start; }
  canvas { display: block; max-inline-size: 100%; block-size: auto; max-block-size: 15em; }
  .groups { columns: 17em; column-gap: 2em; margin-block-end: -1em; }
  .groups > div { break-inside: avoid; padding-block-end: 1em; }
  .head { margin: 0; font-size: 0.82em; font-weight: 600; letter-spacing: 0.06em; text-transform: uppercase; color: var(--quiet); padding-block-end: 0.35em; border-block-end: 1px solid currentColor; }
  #name { font-size: 1.3em; }
  .stated { display: grid; gap: 0.9em; min-inline-size: 0; }
  .missing { display: grid; gap: 0.2em; }
  .missing p { margin: 0; }
  .missing li { padding-inline-start: 1.1em; text-indent: -1.1em; }
  .missing li::before { content: '–'; display: inline-block; inline-size: 1.1em; text-indent: 0; }
  dl { margin: 0; display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); font-size: 0.92em; }
  dl > div { display: grid; grid-template-columns: subgrid; grid-column: 1 / -1; gap: 0 1em; align-items: baseline; border-block-end: 1px solid var(--hairline); padding-block: 0.28em; }
  dt { color: var(--quiet); }
  dd { margin: 0; font-weight: 600; overflow-wrap: anywhere; }
  dl > .long { grid-template-columns: minmax(0, 1fr); }
  .long dd { white-space: pre-line; font-weight: 500; }

  textarea {
    inline-size: 100%; min-block-size: 4em; padding: 0 0.1em; color: inherit; background: transparent; font: inherit; line-height: 2em; resize: vertical;
    border: 0; border-radius: 0;
    background-image: repeating-linear-gradient(transparent 0 calc(2em - 1px), var(--hairline) calc(2em - 1px) 2em); background-attachment: local;
  }
  textarea.code { background-image: none; line-height: 1.45; font-family: ui-monospace, monospace; font-size: 0.85em; border: 1px solid var(--line); padding: 0.6em; overflow-wrap: anywhere; }
  .row { display: flex; flex-wrap: wrap; gap: 0.5em; align-items: center; }
  .row > .note { flex-basis: 100%; }
  .keep { font-weight: 600; border-color: currentColor; border-width: 2px; }

  .kept { display: grid; }
  #kept { border: 0; padding: 0; margin-block-end: -0.6em; }
  .kept > li { display: grid; grid-template-columns: minmax(1.4em, 9%) minmax(0, 1fr); gap: 0.2em 0.9em; border-block-start: 1px solid var(--line); padding-block: 0.7em; }
  .count { font-weight: 700; font-size: 1.2em; line-height: 1.35; text-align: center; border-block: 2px solid currentColor; align-self: start; padding-block: 0.1em; }
  .told { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.15em; align-content: start; min-inline-size: 0; }
  .told p { margin: 0; overflow-wrap: anywhere; }
  .called { font-weight: 650; font-size: 1.25em; line-height: 1.25; }
  .taken { font-weight: 600; }
  .changes { display: grid; gap: 0.1em; font-size: 0.92em; }
  .changes li { overflow-wrap: anywhere; padding-inline-start: 1.3em; text-indent: -1.3em; }
  .changes li::before { content: '▵'; display: inline-block; inline-size: 1.3em; text-indent: 0; color: var(--accent); font-weight: 700; }
  .kept canvas { grid-column: 2; max-block-size: 8em; margin-block: 0.3em; }
  .kept .row { margin-block-start: 0.45em; font-size: 0.9em; }

  .along { display: grid; gap: 1.3em 2em; grid-template-columns: repeat(auto-fit, minmax(min(17em, 100%), 1fr)); align-items: start; }
  .along > * { display: grid; gap: 0.7em; justify-items: start; min-inline-size: 0; }
  .along .field, .along textarea, .along .head { inline-size: 100%; }
  .wide { grid-column: 1 / -1; }
  .address { margin: 0; font-size: 0.85em; overflow-wrap: anywhere; color: var(--quiet); }
  .qr { inline-size: min(100%, 18em); background: #fff; }
  .qr rect { fill: #fff; }
  .qr path { fill: #000; }
  .pick { position: relative; display: inline-grid; align-items: center; min-block-size: max(40px, 2.6em); padding: 0.35em 0.9em; border: 1px solid var(--line); border-radius: var(--lampblack-radius, 0.2em); cursor: pointer; }
  .pick:hover { background: var(--wash); border-color: currentColor; }
  .pick input { position: absolute; inset: 0; opacity: 0; cursor: pointer; inline-size: 100%; }
  .pick:focus-within { outline: 2px solid var(--accent); outline-offset: 2px; }

  @container (min-width: 34em) {
    .sheet.pictured { grid-template-columns: minmax(0, 1fr) minmax(0, 15em); }
    .sheet.pictured > canvas { order: 1; justify-self: end; }
    .kept > li { grid-template-columns: 2em minmax(0, 1fr) auto; }
    .kept canvas { grid-column: 3; }
  }
  @media (forced-colors: active) {
    .qr { forced-color-adjust: none; }
    textarea { border: 1px solid CanvasText; }
  }
  @media print {
    :host { break-inside: avoid; font-size: 10pt; }
    .groups { columns: 2; }
    .kept > li { break-inside: avoid; }
    textarea { background-image: none; resize: none; }
    .field .note { display: none; }
  }
`;
