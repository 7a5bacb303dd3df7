import {SharpZoneBar} from './class.js';

if (globalThis.customElements && !customElements.get('sharp-zone-bar')) {
  customElements.define('sharp-zone-bar', SharpZoneBar);
}

declare global {
  interface HTMLElementTagNameMap { 'sharp-zone-bar': SharpZoneBar }
}
