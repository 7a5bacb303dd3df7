import {css} from 'lit';

/** A distance to slide, a photo with two points, and the glass over the one that is moved. */
export const measuringStyles = css`
  .slide { display: flex; flex-wrap: wrap; align-items: center; gap: 0.2em 0.8em; font-size: 0.9em; }
  .slide input { flex: 1 1 10em; min-block-size: 40px; margin: 0; accent-color: var(--accent); }
  .slide output { min-inline-size: 5em; font-weight: 600; }
  .ruler-photo { position: relative; direction: ltr; line-height: 0; max-inline-size: 48em; }
  .ruler-photo > canvas { inline-size: 100%; block-size: auto; }
  .ruler-photo > svg { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; }
  .point { cursor: move; touch-action: none; outline: none; }
  .point:focus-visible .hit { stroke: var(--accent); stroke-width: 2; }
  .under { fill: none; stroke: #000; stroke-width: 4; opacity: 0.55; }
  .between, .cross { fill: none; stroke: #fff; stroke-width: 1.5; }
  .between { stroke-dasharray: 5 4; }
  .point:hover .cross, .point:focus-visible .cross { stroke-width: 2.5; }
  .loupe { position: absolute; inset-block-start: 6px; left: 6px; inline-size: min(120px, 38%); aspect-ratio: 1; border-radius: 50%; overflow: hidden; border: 2px solid #fff; outline: 2px solid #000; background: #000; }
  .loupe.end { left: auto; right: 6px; }
  .loupe[hidden] { display: none; }
  .loupe canvas { inline-size: 100%; block-size: 100%; }
  .loupe::before, .loupe::after { content: ''; position: absolute; background: #fff; mix-blend-mode: difference; }
  .loupe::before { inset-inline: 0; inset-block-start: calc(50% - 0.5px); block-size: 1px; }
  .loupe::after { inset-block: 0; inset-inline-start: calc(50% - 0.5px); inline-size: 1px; }
`;
