import {ShotPlan} from './class.js';

if (globalThis.customElements && !customElements.get('shot-plan')) customElements.define('shot-plan', ShotPlan);

declare global { interface HTMLElementTagNameMap { 'shot-plan': ShotPlan } }
