import {REFLECTANCES} from '../light/reflectances.js';
import {readLights, refuseLights, writeLights} from '../light/set-text.js';
import {Problem} from '../problem.js';
import {readNumber} from '../units.js';
import {outside, type Field, type ShotFields} from './field.js';
import {length, number} from './field-kinds.js';

type LightKey = 'backdropDistance' | 'backdropReflectance' | 'backdropWish' | 'lights';

/** Fields of lamps and backdrop. */
export const LIGHT_FIELDS: ShotFields<LightKey> = /* @__PURE__ */ fields();

function fields(): ShotFields<LightKey> {
  return {
    backdropDistance: length('backdropDistance', 1, 50_000),
    backdropReflectance: reflectance(),
    backdropWish: number('backdropWish', 0, 12, 'stops under the gray card from 0 to 12, such as 4.5', /\s*stops?\s*$/i),
    lights: {read: readLights, write: writeLights, refuse: refuseLights},
  };
}

/** `black card`, `4%` and `0.04` are the same backdrop. */
function reflectance(): Field<number> {
  const wanted = 'a backdrop such as black card, or the share of light it throws back, such as 4%';
  const materials = Object.entries(REFLECTANCES);
  const refuse = (value: number) => outside('backdropReflectance', value, 0.001, 1, wanted);
  return {
    read: (text) => {
      const named = materials.find(([name]) => name === text.trim().toLowerCase().replace(/[\s_]+/g, '-'));
      const number = readNumber(text.replace(/\s*%\s*$/, '')) ?? NaN;
      const value = named?.[1] ?? (text.includes('%') || number > 1 ? number / 100 : number);
      return refuse(value) ? new Problem('backdrop-reflectance', text, wanted) : value;
    },
    write: (value) => materials.find(([, share]) => share === value)?.[0].replaceAll('-', ' ') ?? `${+(value * 100).toPrecision(6)}%`,
    refuse,
  };
}
