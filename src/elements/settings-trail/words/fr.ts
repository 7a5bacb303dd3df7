import type {Setting} from '../../../core/exposure/stops.js';
import type {Say} from '../../shared/say.js';
import type {Slip, Then} from '../speech.js';
import type {TrailWords} from './en.js';

export {family} from '../../shared/words/fr.js';

export const words = (say: Say): TrailWords => ({
  say,
  trail: 'Réglages, étape par étape',
  pair: (aperture: string, shutter: string) => `${aperture} à ${shutter}`,
  triple: (pair: string, iso: string) => `${pair}, ${iso}`,
  names: {aperture: 'ouverture', shutter: 'temps', iso: 'ISO'} satisfies Record<Setting, string>,
  quote: (text: string) => `« ${text} »`,

  same: 'la même lumière',
  brighter: (stops: string) => `${stops} de plus`,
  darker: (stops: string) => `${stops} de moins`,
  some: {brighter: 'un peu plus de lumière', darker: 'un peu moins de lumière'},

  empty: 'Écrire ou coller des réglages : les IL qui les séparent sont calculés.',
  single: 'Un seul réglage trouvé ; il en faut un second pour comparer.',
  severalOff: (off: number, all: number) => `${off} étapes sur ${all} ne s’accordent pas.`,
  off: (step: number, setting: string, light: string, than: number) => `L’étape ${step} ne s’accorde pas : ${setting} donne ${light} que l’étape ${than}.`,
  offFromMeant: (step: number, setting: string, light: string, than: number, meant: string) =>
    `L’étape ${step} ne s’accorde pas : ${setting} donne ${light} que l’étape ${than} ; il fallait ${meant}.`,
  asBright: (step: number, setting: string, as: number, meant: string) =>
    `L’étape ${step} ne s’accorde pas : ${setting} donne autant de lumière que l’étape ${as} ; il fallait ${meant}.`,
  needed: (text: string, step?: number) => `Tout s’accorderait avec ${text}${step ? ` à l’étape ${step}` : ''}.`,
  slip: (text: string, was: string, step: number | undefined, then: Then) =>
    `${step ? `À l’étape ${step}, il` : 'Il'} fallait sans doute lire ${text} et non ${was}${{all: ' : alors tout s’accorde', it: ' : alors l’étape s’accorde', some: ''}[then]}.`,
  allSame: (steps: number) => `Les ${steps === 2 ? 'deux' : steps} étapes donnent la même lumière.`,
  allAsMeant: (steps: number) => `Les ${steps === 2 ? 'deux' : steps} étapes font ce qui était voulu.`,
  someAsMeant: (judged: number, all: number) => `L’intention est indiquée pour ${judged} des ${all} changements, et elle est respectée.`,
  noneJudged: (steps: number) => `${steps} étapes. Rien ne dit ce qui était voulu pour la lumière : aucune n’est jugée.`,
  nothingYet: 'Rien à comparer pour l’instant.',
  cannotJudge: (steps: string, count: number) => (count > 1 ? `Les étapes ${steps} ne peuvent pas être jugées.` : `L’étape ${steps} ne peut pas être jugée.`),

  example: 'Exemple',
  pasteOwn: 'Coller ses propres réglages ici',

  mend: (step: number, text: string, was: string) => `Étape ${step} : ${text} au lieu de ${was}`,
  mendInstead: (step: number, text: string, was: string) => `Ou étape ${step} : ${text} au lieu de ${was}`,
  add: (step: number, text: string) => `Étape ${step} : ajouter ${text}`,
  addInstead: (step: number, text: string) => `Ou étape ${step} : ajouter ${text}`,
  slips: {
    seconds: 'des secondes, pas une fraction', fraction: 'une fraction, pas des secondes', point: 'la virgule s’est perdue',
    needed: 'donne la lumière voulue', digits: 'les mêmes chiffres',
  } satisfies Record<Slip, string>,
  mendCost: (slip: string, light: string) => `${slip}, ${light}`,
  mendCostElsewhere: (slip: string, light: string, steps: string, count: number) =>
    `${slip}, ${light} ; corrige ${count > 1 ? 'les étapes' : 'l’étape'} ${steps}`,
  mended: (step: number, text: string, was: string) => `Fait : l’étape ${step} dit maintenant ${text} au lieu de ${was}.`,
  added: (step: number, text: string) => `Fait : l’étape ${step} dit maintenant ${text}.`,
  undo: 'Annuler',
  back: 'Revenir au texte tel qu’il était',

  light: 'lumière',
  depth: 'profondeur',
  signs: {true: '=', false: '≠', null: '·'},
  linkOther: (light: string) => `${light} d’après les réglages ; la lumière elle-même a été changée.`,
  linkUnsaid: (light: string) => `${light}. Rien ne dit ce qui était voulu.`,
  linkOff: (light: string, than: number, meant: string) => `${light} que l’étape ${than} ; il fallait ${meant}.`,
  linkSame: (as: number, meant: string) => `autant de lumière que l’étape ${as} ; il fallait ${meant}.`,
  linkAsked: (light: string, by: number) => `${light}, comme l’étape ${by} le demande.`,
  linkAssumed: (light: string) => `${light}.`,
  linkMeant: (light: string) => `${light}, comme voulu.`,
  unchanged: 'Rien n’a changé',
  tolerance: {
    1: 'Jusqu’à un demi-IL ne compte pas : un demi-cran de la molette.',
    2: 'Jusqu’à un quart d’IL ne compte pas : un demi-cran de la molette.',
    3: 'Jusqu’à un sixième d’IL ne compte pas : un demi-cran de la molette.',
  },
  depthIs: 'La profondeur compte les IL dont le diaphragme a été fermé : avec +, la zone nette est plus profonde.',

  carried: (settings: string) => `${settings} comme à l’étape précédente.`,
  taken: (text: string, value: string) => `« ${text} » a été lu comme ${value}.`,
  asksNext: (text: string, light: string) => `« ${text} » demande à l’étape suivante ${light}.`,
  noSetting: 'Aucun réglage ne se lit ici ; il faut quelque chose comme f/8 1/60.',
  missing: (settings: string) => `Pas encore dit jusqu’ici : ${settings}. Rien ne peut donc être comparé.`,
  unread: (texts: string, count: number) => (count > 1 ? `${texts} ne servent pas : ce ne sont pas des réglages, ou il y en a de trop.`
    : `${texts} ne sert pas : ce n’est pas un réglage, ou il y en a un de trop.`),

  dial: 'Mettre sur le cadran',
  dialOf: (step: number) => `Mettre sur le cadran : étape ${step}`,
  dialWill: (start: string, setting: string) =>
    `« Mettre sur le cadran » fait d’une étape le départ du cadran de cette page, au lieu de ${start}, et son réglage, au lieu de ${setting}. Cela peut s’annuler.`,
  dialWillBoth: (setting: string) =>
    `« Mettre sur le cadran » fait d’une étape le départ et le réglage du cadran de cette page, au lieu de ${setting}. Cela peut s’annuler.`,
  dialled: (setting: string) => `Fait : le cadran part de ${setting}.`,
  dialledAsking: (setting: string, light: string) => `Fait : le cadran part de ${setting} ; on lui demande ${light}.`,

  copy: 'Copier la liste',
  copied: 'Copié',
  copyHere: 'La copie n’est pas permise ici. La liste est dans ce champ :',
  paste: 'Coller une leçon, ou changer celle-ci',
  pasteLabel: 'Texte suivi, ou un réglage par ligne',
  pasteHint: 'Ce qui est dit de la lumière n’est lu qu’en anglais : same light, one stop darker, +2.',
  read: 'Lire',
  expect: 'Là où rien n’est dit de la lumière',
  expects: {'same-light': 'la même lumière est voulue', nothing: 'rien n’est voulu'},
  wanted: 'un réglage comme f/8 1/60',
  expectWanted: 'same-light ou nothing',
  refused: (text: string, wanted: string) => `« ${text} » ne convient pas ; il faut ${wanted}.`,
  refusedKept: (text: string, wanted: string) => `« ${text} » ne convient pas ; il faut ${wanted}. La dernière bonne liste reste en usage.`,
});
