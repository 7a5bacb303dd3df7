import {css} from 'lit';

/**
 * The look of the family: ink on the host's paper. Ruled lines, an engraved scale, answers written on a line; one
 * warm accent for what can be moved. Colours and type come from the host; a few custom properties set the rest.
 * Sizes are in em, since hosts change the root's font size.
 */
export const familyStyles = css`
  :host {
    --ink: currentColor;
    --accent: var(--lampblack-accent, #b26a00);
    --paper: var(--lampblack-paper, transparent);
    --line: var(--lampblack-line, color-mix(in srgb, currentColor 52%, transparent));
    --hairline: color-mix(in srgb, currentColor 16%, transparent);
    --quiet: var(--lampblack-quiet, color-mix(in srgb, currentColor 76%, transparent));
    --wash: color-mix(in srgb, currentColor 6%, transparent);
    --gap: var(--lampblack-gap, 1em);
    display: block;
    container-type: inline-size;
    box-sizing: border-box;
    min-inline-size: 0;
    color: inherit;
    font: inherit;
    line-height: 1.45;
    background: var(--paper);
    font-variant-numeric: tabular-nums;
    text-align: start;
  }
  :host([hidden]) { display: none; }
  /* Where the host's styles made the element a piece of a line (* { all: unset }) it is a block all the same. */
  :host(:state(inline)) { display: block !important; container-type: inline-size !important; }
  *, *::before, *::after { box-sizing: border-box; }

  .plate { white-space: normal; text-align: start; text-indent: 0; line-height: 1.45; }
  .plate { border-block-start: 0.2em solid currentColor; padding-block: 0.7em 0.9em; display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }
  .verdict { margin: 0; font-size: 1.15em; line-height: 1.35; font-weight: 600; text-wrap: pretty; }
  .verdict + .reason { margin-block-start: -0.6em; }
  .reason, .note { margin: 0; color: var(--quiet); text-wrap: pretty; }
  .note { font-size: 0.9em; }
  h3, h4 { margin: 0; font-size: 0.82em; font-weight: 600; letter-spacing: 0.06em; text-transform: uppercase; color: var(--quiet); }
  ul, ol { margin: 0; padding: 0; list-style: none; }
  svg { display: block; inline-size: 100%; block-size: auto; overflow: visible; }
  svg text { fill: currentColor; font-size: 11px; font-family: inherit; }

  /* Fields: a label, and the answer written on a ruled line. */
  .fields { display: grid; gap: 0.7em 1.1em; grid-template-columns: repeat(auto-fill, minmax(min(7.2em, 100%), 1fr)); align-items: start; }
  .field { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0; min-inline-size: 0; }
  .field > label, .field > .label { font-size: 0.85em; color: var(--quiet); }
  input:not([type='checkbox'], [type='radio'], [type='range'], [type='file']), select {
    inline-size: 100%; min-block-size: max(40px, 2.6em); margin: 0; padding: 0.25em 0.1em;
    color: inherit; background: transparent; font: inherit; font-weight: 600;
    border: 0; border-block-end: 1px solid var(--line); border-radius: 0;
  }
  select { padding-inline-end: 1.2em; contain: paint; }
  select option { color: CanvasText; background: Canvas; }
  input:hover, select:hover { border-block-end-color: currentColor; }
  input[aria-invalid='true'] { border-block-end: 2px dashed currentColor; }
  .problem { margin: 0.25em 0 0; font-size: 0.85em; }
  .problem::before { content: '▲ '; }

  /* Buttons: a line of text that can be pressed. */
  button {
    min-block-size: max(40px, 2.6em); min-inline-size: max(40px, 2.6em); margin: 0; padding: 0.35em 0.9em;
    color: inherit; background: transparent; font: inherit; text-align: start; line-height: 1.3;
    border: 1px solid var(--line); border-radius: var(--lampblack-radius, 0.2em); cursor: pointer;
  }
  button:hover { background: var(--wash); border-color: currentColor; }
  button:disabled { opacity: 0.55; cursor: default; }
  button[aria-pressed='true'], button[aria-checked='true'] { border-color: currentColor; box-shadow: inset 0 -3px 0 var(--accent); }
  .ways { display: grid; gap: 0.5em; }
  .ways button { inline-size: 100%; display: grid; gap: 0 0.8em; padding-inline: 0.9em 2.2em; position: relative; }
  .ways button::after { content: '→'; position: absolute; inset-inline-end: 0.8em; inset-block-start: 50%; translate: 0 -50%; color: var(--accent); font-weight: 700; }
  :host(:dir(rtl)) .ways button::after { content: '←'; }
  .ways strong { font-weight: 600; }
  .ways span { color: var(--quiet); font-size: 0.9em; }

  .done { margin: 0; display: flex; flex-wrap: wrap; gap: 0.3em 0.8em; align-items: center; }
  .done span { flex: 1 1 9em; font-weight: 600; }

  :focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
  /* Folds: ruled off from each other. */
  .folds { display: grid; }
  details { border-block-end: 1px solid var(--hairline); }
  details[open] { padding-block-end: 0.8em; }
  details > summary { cursor: pointer; min-block-size: max(40px, 2.6em); display: flex; align-items: center; gap: 0.5em; color: var(--quiet); font-size: 0.9em; }
  details > summary::-webkit-details-marker { display: none; }
  details > summary::before { content: '+'; font-weight: 700; flex: none; inline-size: 1em; text-align: center; color: var(--accent); }
  details[open] > summary::before { content: '−'; }
  details[open] > summary { margin-block-end: 0.4em; }
  fieldset { border: 0; margin: 0; padding: 0; min-inline-size: 0; }
  legend { padding: 0; font-size: 0.85em; color: var(--quiet); }

  .spoken { position: absolute; inline-size: 1px; block-size: 1px; margin: -1px; padding: 0; overflow: hidden; clip-path: inset(50%); white-space: nowrap; border: 0; }

  @media (forced-colors: active) {
    :host { --accent: Highlight; --line: CanvasText; --hairline: GrayText; --quiet: CanvasText; }
    button[aria-pressed='true'], button[aria-checked='true'] { outline: 3px solid Highlight; outline-offset: -3px; }
  }
  @media (prefers-reduced-motion: reduce) {
    *, *::before, *::after { transition: none !important; animation: none !important; }
  }
  /* A page that came from a server, where no script runs: what cannot be pressed is not shown. */
  @media (scripting: none) {
    button, .screen-only { display: none !important; }
  }
  @media print {
    button, details:not([open]), .screen-only, .done { display: none !important; }
    .ways button { display: grid !important; border: 0; padding: 0; min-block-size: 0; }
    .ways button::after { content: none; }
    .plate { break-inside: avoid; }
  }
`;
