import {GrayCardCheck} from './class.js';

if (globalThis.customElements && !customElements.get('gray-card-check')) {
  customElements.define('gray-card-check', GrayCardCheck);
}

declare global {
  interface HTMLElementTagNameMap {
    'gray-card-check': GrayCardCheck;
  }
}
