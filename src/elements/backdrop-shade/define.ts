import {BackdropShade} from './class.js';

if (globalThis.customElements && !customElements.get('backdrop-shade')) {
  customElements.define('backdrop-shade', BackdropShade);
}

declare global {
  interface HTMLElementTagNameMap { 'backdrop-shade': BackdropShade }
}
