import {css} from 'lit';

/** Styles of what says where a photo is sharp; adopted when that is first opened. */
export const sharpnessStyles = css`
  .profile { inline-size: auto; max-inline-size: 100%; direction: ltr; }
  .profile .now { stroke-width: 2; }
  .profile .not-known { fill: url(#profile-unknown); }
  .profile .softer { fill: url(#profile-softer); stroke: currentColor; stroke-width: 1; }
  .profile .sharper { fill: var(--accent); }
  .profile .dots { stroke: currentColor; stroke-width: 2; stroke-dasharray: 2 5; fill: none; }
  .by-ruler .fields { grid-template-columns: repeat(auto-fit, minmax(min(11em, 100%), 1fr)); }
  .kept { fill: currentColor; }
  .ink-hatch { stroke: currentColor; stroke-opacity: 0.45; }
  .accent-hatch { stroke: var(--accent); }
  .pale-hatch { stroke: #fff; stroke-opacity: 0.45; }
  .focus { stroke: var(--accent); stroke-width: 2; stroke-dasharray: 7 3; fill: none; }

  .stage .over { position: absolute; inset: 0; pointer-events: none; }
  .stage .heat { pointer-events: none; }
  .heat .sharp, .heat .sharper, .swatch .sharp, .swatch .sharper { fill: var(--accent); fill-opacity: 0.24; stroke: var(--accent); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .heat .near { fill: url(#heat-near); } .swatch .near { fill: url(#legend-near); }
  .heat .soft, .heat .softer { fill: url(#heat-soft); } .swatch .soft, .swatch .softer { fill: url(#legend-soft); }
  .cell.unknown { fill: #fff; fill-opacity: 0.75; }
  .cell.alike { fill: none; }
  .swatch { inline-size: 20px; block-size: 20px; flex: none; overflow: hidden; }
  .swatch .ground { fill: #3a3a3a; }
  .legend { display: flex; flex-wrap: wrap; gap: 0.3em 1.2em; font-size: 0.88em; }
  .legend li { display: flex; gap: 0.5em; align-items: center; }

  .stage .over-line { pointer-events: none; touch-action: auto; }
  .line-edge { fill: none; stroke: #000; stroke-opacity: 0.55; stroke-width: 4; }
  .line-core { fill: none; stroke: #fff; stroke-width: 1.8; }
  .end-of-line { pointer-events: all; cursor: grab; touch-action: none; outline: none; }
  .end-of-line:active { cursor: grabbing; }
  .grip { fill: var(--accent); stroke: #fff; stroke-width: 1.5; }
  .end-of-line:focus-visible .grip { stroke-width: 4; }
  .stage .letter { fill: #fff; font-size: 12px; font-weight: 700; text-anchor: middle; }

  @media (forced-colors: active) {
    .kept, .profile .sharper { fill: CanvasText; forced-color-adjust: none; }
    .line-core, .grip { stroke: Highlight; }
  }
  @media print { .over-line .grip, .over-line .letter { display: none; } }
`;
