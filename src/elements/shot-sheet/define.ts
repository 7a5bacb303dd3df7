import {ShotSheet} from './class.js';

if (globalThis.customElements && !customElements.get('shot-sheet')) {
  customElements.define('shot-sheet', ShotSheet);
}

declare global {
  interface HTMLElementTagNameMap { 'shot-sheet': ShotSheet }
}
