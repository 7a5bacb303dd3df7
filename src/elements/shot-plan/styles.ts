import {css} from 'lit';

/** What only this element draws. */
export const planStyles = css`
  .drawing, .curve-box { position: relative; min-inline-size: 0; direction: ltr; }
  .drawing { container-type: normal; }
  svg { inline-size: auto; max-inline-size: 100%; }
  svg text { font-size: 12px; }
  svg text.quiet { fill: var(--quiet); }
  svg text.strong { font-weight: 650; }
  svg text.on-paper { paint-order: stroke; stroke: var(--lampblack-paper, Canvas); stroke-width: 4px; }
  .line, .fine, .focus, .view, .wished, .curve, .own, .best { fill: none; stroke: currentColor; stroke-width: 1; }
  .line { stroke-width: 1.4; }
  .fine { stroke-width: 0.8; stroke-linejoin: round; }
  .view { fill: var(--wash); stroke: none; }
  .solid { fill: currentColor; stroke: none; }
  .soft { fill: url(#hatch); stroke: currentColor; stroke-width: 1; stroke-linejoin: round; }
  .hatch { stroke: currentColor; stroke-width: 0.9; opacity: 0.6; }
  .focus { stroke-dasharray: 5 3; }
  .axis { fill: none; stroke: currentColor; stroke-width: 0.6; stroke-dasharray: 10 3 2 3; }
  .leader { fill: none; stroke: currentColor; stroke-width: 1; stroke-dasharray: 1 3; }
  .sharp { fill: none; stroke: currentColor; stroke-width: 5; }
  .body { fill: var(--lampblack-paper, Canvas); stroke: currentColor; stroke-width: 1.4; stroke-linejoin: round; }
  .handle { outline: none; touch-action: none; cursor: move; }
  .handle.along { cursor: ew-resize; touch-action: pan-y; }
  .handle.up { cursor: ns-resize; touch-action: pan-x; }
  .hit { fill: transparent; stroke: none; }
  .knob { fill: var(--accent); stroke: var(--lampblack-paper, Canvas); stroke-width: 1.5; }
  .handle:hover .knob { stroke: currentColor; }
  .handle:focus-visible .hit { stroke: var(--accent); stroke-width: 2; }

  /* Labels of one or two lines, and every answer on the same rule. */
  .fields { row-gap: 0; }
  .fields > .field:has(select) { grid-column: 1 / -1; }
  @container (min-width: 26em) { .wishes > .field:first-child, .fields > .field:has(select) { grid-column: span 2; } }
  .fields > .field { grid-row: span 3; grid-template-rows: subgrid; margin-block-end: 0.7em; }
  .fields > .field > label { align-self: end; }
  .field > :is(label, .note, .problem) { overflow-wrap: anywhere; hyphens: auto; }
  /* Ways: what each is called, what it sets and what it costs; the one in use is marked. */
  .ways-part { display: grid; gap: 0.6em; }
  .ways .pick { grid-template-columns: minmax(0, 1fr) auto; padding-inline-end: 0.9em; }
  .ways .pick .act { grid-column: 2; grid-row: 1; white-space: nowrap; padding-inline-end: 1.5em; }
  .pick strong { overflow-wrap: anywhere; hyphens: auto; }
  .ways .pick .setting { color: inherit; font-size: 1em; }
  .pick .setting, .pick .price { grid-column: 1 / -1; }
  .ways .pick::after { inset-block-start: 0.35em; translate: none; }
  .ways .pick[aria-pressed='true']::after { content: '✓'; }
  .wish { display: grid; padding: 0.35em 0; border-block-end: 1px solid var(--hairline); }
  .single > .note, .rates-part > .note { margin-block-end: 0.5em; }
  .rates { margin: 0; max-inline-size: 34em; }
  .rates > div { display: flex; gap: 1em; justify-content: space-between; padding-block: 0.3em; border-block-start: 1px solid var(--hairline); }
  .rates dd { flex: none; font-weight: 600; white-space: nowrap; }

  .compare { display: grid; gap: 1.2em; }
  .row-of-ways { display: grid; gap: 1em; }
  .labels { display: none; }
  .column { border-block-start: 1px solid currentColor; min-inline-size: 0; }
  .column > strong { display: block; font-weight: 650; padding-block: 0.4em; line-height: 1.3; }
  .column dl { margin: 0; display: grid; grid-template-columns: repeat(auto-fit, minmax(min(7em, 100%), 1fr)); gap: 0 1em; }
  .column dl > div { border-block-start: 1px solid var(--hairline); padding-block: 0.3em; line-height: 1.3; }
  .column .price { grid-column: 1 / -1; }
  dt { color: var(--quiet); font-size: 0.88em; overflow-wrap: anywhere; }
  dd, .column > strong { unicode-bidi: plaintext; }
  :host(:dir(rtl)) dd, :host(:dir(rtl)) .column > strong { text-align: right; }
  dd { margin: 0; min-inline-size: 0; overflow-wrap: anywhere; }
  .rates dt { font-size: 1em; }
  .column .aperture dd, .column .shutter dd, .column .contrast dd { font-weight: 650; }
  .column .price dd { font-size: 0.92em; }

  @container (min-width: 40em) {
    .row-of-ways { grid-template-columns: minmax(6em, 9.5em); grid-auto-columns: minmax(0, 1fr); grid-template-rows: repeat(12, auto); gap: 0 1.2em; }
    .labels, .column { grid-row: 1 / span 12; display: grid; grid-template-rows: subgrid; }
    .labels { grid-column: 1; border-block-start: 1px solid currentColor; color: var(--quiet); font-size: 0.88em; }
    .labels > span { border-block-start: 1px solid var(--hairline); padding-block: 0.32em; }
    .labels > span:first-child { border: 0; }
    .column dl { grid-template-columns: minmax(0, 1fr); gap: 0; grid-row: 2 / span 11; grid-template-rows: subgrid; }
    .column .price { grid-column: auto; }
    .column dt { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  }

  .curve-part { display: grid; gap: 0.5em 2em; align-items: center; }
  @container (min-width: 52em) { .curve-part { grid-template-columns: minmax(0, 640px) minmax(0, 1fr); } }
  .lost { fill: url(#chart-hatch); stroke: none; }
  .wished { stroke-dasharray: 6 3; stroke-width: 0.8; }
  .curve { stroke-width: 2.6; stroke-linejoin: round; }
  .own { stroke-dasharray: 1 3; }
  .own-dot { fill: currentColor; }
  .best { stroke-width: 1.6; }
  .plate[aria-busy='true'] :is(.ways, .compare) { opacity: 0.6; }
  @media (forced-colors: active) { .knob { fill: Highlight; stroke: Canvas; } .body { fill: Canvas; } }
  @media print { .handle { display: none; } .pick .act, .done { display: none !important; } }
`;
