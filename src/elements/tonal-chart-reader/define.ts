import {TonalChartReader} from './class.js';

if (globalThis.customElements && !customElements.get('tonal-chart-reader')) {
  customElements.define('tonal-chart-reader', TonalChartReader);
}

declare global {
  interface HTMLElementTagNameMap {
    'tonal-chart-reader': TonalChartReader;
  }
}
