import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {Slip, Then} from '../speech.js';
import type {TrailWords} from './en.js';

export {family} from '../../shared/words/es.js';

/** A step of the list is an “ajuste”: “paso” is a stop of light. */
export const words = (say: Say): TrailWords => ({
  say,
  trail: 'Ajustes, uno tras otro',
  pair: (aperture: string, shutter: string) => `${aperture} a ${shutter}`,
  triple: (pair: string, iso: string) => `${pair}, ${iso}`,
  names: {aperture: 'diafragma', shutter: 'tiempo', iso: 'ISO'} satisfies Record<Setting, string>,
  quote: (text: string) => `«${text}»`,

  same: 'la misma luz',
  brighter: (stops: string) => `${stops} más de luz`,
  darker: (stops: string) => `${stops} menos de luz`,
  some: {brighter: 'algo más de luz', darker: 'algo menos de luz'},

  empty: 'Escribir o pegar ajustes: se calculan los pasos que hay entre ellos.',
  single: 'Se ha encontrado un ajuste; hace falta otro para comparar.',
  severalOff: (off: number, all: number) => `${off} ajustes de ${all} no cuadran.`,
  off: (step: number, setting: string, light: string, than: number) => `El ajuste ${step} no cuadra: ${setting} da ${light} que el ajuste ${than}.`,
  offFromMeant: (step: number, setting: string, light: string, than: number, meant: string) =>
    `El ajuste ${step} no cuadra: ${setting} da ${light} que el ajuste ${than}; se pretendía: ${meant}.`,
  asBright: (step: number, setting: string, as: number, meant: string) =>
    `El ajuste ${step} no cuadra: ${setting} da tanta luz como el ajuste ${as}; se pretendía: ${meant}.`,
  needed: (text: string, step?: number) => `Cuadraría con ${text}${step ? ` en el ajuste ${step}` : ''}.`,
  slip: (text: string, was: string, step: number | undefined, then: Then) =>
    `${step ? `En el ajuste ${step} seguramente` : 'Seguramente'} se quería ${text}, no ${was}${{all: ': así cuadra todo', it: ': así cuadraría', some: ''}[then]}.`,
  allSame: (steps: number) => `Los ${steps === 2 ? 'dos' : steps} ajustes dan la misma luz.`,
  allAsMeant: (steps: number) => `Los ${steps === 2 ? 'dos' : steps} ajustes hacen lo que se pretendía.`,
  someAsMeant: (judged: number, all: number) => `La intención se indica en ${judged} de los ${all} cambios, y se cumple.`,
  noneJudged: (steps: number) => `${steps} ajustes. Nada dice qué luz se pretendía, así que no se juzga ninguno.`,
  nothingYet: 'Aún no hay nada que comparar.',
  cannotJudge: (steps: string, count: number) => (count > 1 ? `Los ajustes ${steps} no se pueden juzgar.` : `El ajuste ${steps} no se puede juzgar.`),

  example: 'Ejemplo',
  pasteOwn: 'Pegar aquí ajustes propios',

  mend: (step: number, text: string, was: string) => `Ajuste ${step}: ${text} en vez de ${was}`,
  mendInstead: (step: number, text: string, was: string) => `O ajuste ${step}: ${text} en vez de ${was}`,
  add: (step: number, text: string) => `Ajuste ${step}: añadir ${text}`,
  addInstead: (step: number, text: string) => `O ajuste ${step}: añadir ${text}`,
  slips: {
    seconds: 'segundos, no una fracción', fraction: 'una fracción, no segundos', point: 'se perdió la coma',
    needed: 'da la luz que se pretendía', digits: 'las mismas cifras',
  } satisfies Record<Slip, string>,
  mendCost: (slip: string, light: string) => `${slip}, ${light}`,
  mendCostElsewhere: (slip: string, light: string, steps: string, count: number) =>
    `${slip}, ${light}; corrige ${count > 1 ? 'los ajustes' : 'el ajuste'} ${steps}`,
  mended: (step: number, text: string, was: string) => `Hecho: el ajuste ${step} dice ahora ${text} en vez de ${was}.`,
  added: (step: number, text: string) => `Hecho: el ajuste ${step} dice ahora ${text}.`,
  undo: 'Deshacer',
  back: 'Volver al texto como estaba',

  light: 'luz',
  depth: 'profundidad',
  signs: {true: '=', false: '≠', null: '·'},
  linkOther: (light: string) => `${light} según los ajustes; la luz misma se cambió.`,
  linkUnsaid: (light: string) => `${light}. Nada dice qué se pretendía.`,
  linkOff: (light: string, than: number, meant: string) => `${light} que el ajuste ${than}; se pretendía: ${meant}.`,
  linkSame: (as: number, meant: string) => `tanta luz como el ajuste ${as}; se pretendía: ${meant}.`,
  linkAsked: (light: string, by: number) => `${light}, como pide el ajuste ${by}.`,
  linkAssumed: (light: string) => `${light}.`,
  linkMeant: (light: string) => `${light}, como se pretendía.`,
  unchanged: 'Nada ha cambiado',
  tolerance: {
    1: 'Hasta medio paso no cuenta: medio clic del dial.',
    2: 'Hasta un cuarto de paso no cuenta: medio clic del dial.',
    3: 'Hasta un sexto de paso no cuenta: medio clic del dial.',
  },
  depthIs: 'La profundidad cuenta los pasos que se cerró el diafragma: con + hay más zona nítida de delante atrás.',

  carried: (settings: string) => `${settings} como en el ajuste anterior.`,
  taken: (text: string, value: string) => `«${text}» se ha leído como ${value}.`,
  asksNext: (text: string, light: string) => `«${text}» pide al ajuste siguiente ${light}.`,
  noSetting: 'Aquí no se lee ningún ajuste; se espera algo como f/8 1/60.',
  missing: (settings: string) => `Sin decir hasta aquí: ${settings}. Por eso no hay nada que comparar.`,
  unread: (texts: string, count: number) => (count > 1 ? `${texts} no se usan: no son ajustes, o sobran.` : `${texts} no se usa: no es un ajuste, o sobra.`),

  dial: 'Poner en el dial',
  dialOf: (step: number) => `Poner en el dial: ajuste ${step}`,
  dialWill: (start: string, setting: string) =>
    `«Poner en el dial» convierte un ajuste en el punto de partida del dial de esta página, en vez de ${start}, y lo deja puesto, en vez de ${setting}. Se puede deshacer.`,
  dialWillBoth: (setting: string) =>
    `«Poner en el dial» convierte un ajuste en el punto de partida y la posición del dial de esta página, en vez de ${setting}. Se puede deshacer.`,
  dialled: (setting: string) => `Hecho: el dial parte de ${setting}.`,
  dialledAsking: (setting: string, light: string) => `Hecho: el dial parte de ${setting} y se le pide ${light}.`,

  copy: 'Copiar la lista',
  copied: 'Copiado',
  copyHere: 'Aquí no se permite copiar. La lista está en este campo:',
  paste: 'Pegar una lección o cambiar esta',
  pasteLabel: 'Texto corrido, o un ajuste por línea',
  pasteHint: 'Lo que se dice de la luz solo se lee en inglés: same light, one stop darker, +2.',
  read: 'Leer',
  expect: 'Donde no se dice nada de la luz',
  expects: {'same-light': 'se pretende la misma luz', nothing: 'no se pretende nada'},
  wanted: 'un ajuste como f/8 1/60',
  expectWanted: 'same-light o nothing',
  refused: (text: string, wanted: string) => `«${text}» no sirve; se espera: ${wanted}.`,
  refusedKept: (text: string, wanted: string) => `«${text}» no sirve; se espera: ${wanted}. Sigue en uso la última lista válida.`,
});
