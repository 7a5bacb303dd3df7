import {StopTradeDial} from './class.js';

if (globalThis.customElements && !customElements.get('stop-trade-dial')) {
  customElements.define('stop-trade-dial', StopTradeDial);
}

declare global {
  interface HTMLElementTagNameMap { 'stop-trade-dial': StopTradeDial }
}
