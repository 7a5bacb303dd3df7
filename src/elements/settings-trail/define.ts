import {SettingsTrail} from './class.js';

if (globalThis.customElements && !customElements.get('settings-trail')) {
  customElements.define('settings-trail', SettingsTrail);
}

declare global {
  interface HTMLElementTagNameMap { 'settings-trail': SettingsTrail }
}
