import {css} from 'lit';

/** A blank to drop a print on, the button that asks for one, and the sheet that it is laid out on. */
export const photoStyles = css`
  :host([dropping]) .plate { outline: 2px dashed var(--accent); outline-offset: 0.4em; }
  .sheet { display: grid; gap: var(--gap) 1.8em; grid-template-columns: minmax(0, 1fr); align-items: start; }
  .side { display: grid; gap: 0.7em; min-inline-size: 0; grid-template-columns: minmax(0, 1fr); align-content: start; }

  .blank { display: grid; gap: 0.9em; padding: 1.2em; border: 1px dashed var(--line); grid-template-columns: minmax(0, 1fr); }
  .blank p { margin: 0; max-inline-size: 38em; text-wrap: pretty; }
  :host([dropping]) .blank { border-color: var(--accent); background: var(--wash); }
  @container (max-width: 25em) { .blank { padding: 0.7em; } }

  .pick {
    position: relative; display: inline-flex; align-items: center; gap: 0.5em; min-block-size: max(40px, 2.6em); padding: 0.35em 0.9em;
    border: 1px solid var(--line); border-radius: var(--lampblack-radius, 0.2em); cursor: pointer; line-height: 1.3; min-inline-size: 0;
  }
  .pick:hover { background: var(--wash); border-color: currentColor; }
  .pick::after { content: '↥'; color: var(--accent); font-weight: 700; }
  .pick input { position: absolute; inset: 0; opacity: 0; inline-size: 100%; block-size: 100%; margin: 0; padding: 0; font-size: 0; cursor: pointer; }
  .pick:focus-within { outline: 2px solid var(--accent); outline-offset: 2px; }
  .tools { display: flex; flex-wrap: wrap; gap: 0.5em 0.8em; align-items: center; min-inline-size: 0; }
  .tools .note { flex: 1 1 9em; }
  .way-done { display: flex; flex-wrap: wrap; gap: 0.3em 0.8em; align-items: center; }
  .way-done p { margin: 0; flex: 1 1 9em; }

  @media print { .pick, .blank { display: none; } }
`;
