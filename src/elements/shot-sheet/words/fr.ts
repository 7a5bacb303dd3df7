import type {Say} from '../../shared/say.js';
import {record} from '../record-words/fr.js';
import type {SheetElementWords} from './en.js';

export {family} from '../../shared/words/fr.js';

export const words = (say: Say): SheetElementWords => ({
  say,
  record,
  sheet: 'Fiche de prise de vue',

  noneKept: (now) => `${now}. Aucune prise de vue gardée pour l’instant.`,
  asKept: (now, count) => `${now}. Comme la prise de vue ${count}.`,
  since: (now, count, changes) => `${now}. Depuis la prise de vue ${count}\u00a0: ${changes}.`,
  sinceAndMore: (now, count, changes, rest) => `${now}. Depuis la prise de vue ${count}\u00a0: ${changes} et ${rest} de plus.`,
  changed: (label) => `${label}\u00a0: modifié`,
  change: (label, from, to) => `${label} ${from} → ${to}`,
  changeBy: (label, from, to, stops, brighter) => `${label} ${from} → ${to}, ${stops} plus ${brighter ? 'clair' : 'sombre'}`,

  nothing: 'Rien n’a encore été indiqué\u00a0: ce qui figure plus haut n’est que supposé.',
  missing: 'Pas encore sur cette fiche. Chaque partie apparaît dès qu’elle est réglée dans un contrôle lié\u202f; ce que contient un contrôle encore replié vient à sa première ouverture\u00a0:',
  missingParts: {
    camera: 'Objectif et champ\u00a0: dans le contrôle de la netteté',
    figure: 'Taille de la figurine\u00a0: dans le contrôle de la netteté',
    lamps: 'Lampes et drapeaux\u00a0: dans le contrôle du fond',
    backdrop: 'Fond et sa distance\u00a0: dans le contrôle du fond',
    card: 'Charte grise\u00a0: ouvrir sa photo dans le contrôle de la charte',
  },
  name: 'Nom de cette prise de vue',
  nameHint: 'sans nom, elle est numérotée',
  note: 'Note',
  picture: (title) => `Petite image de ${title}`,
  thisShot: 'cette prise de vue',

  keep: 'Garder cette prise de vue',
  keptHead: 'Prises de vue gardées, dans l’ordre',
  kept: (count) => `Gardée comme prise de vue ${count}.`,
  numbered: (count) => `Prise de vue ${count}`,
  first: 'La première gardée.',
  same: 'Rien n’a changé depuis la précédente.',
  putBack: 'Reprendre ces réglages',
  putBackOf: (count) => `Reprendre ces réglages\u00a0: prise de vue ${count}`,
  isBack: (count) => `Réglé comme pour la prise de vue ${count}, dans tous les contrôles liés.`,
  up: 'Plus tôt',
  upOf: (count) => `Plus tôt\u00a0: prise de vue ${count}`,
  down: 'Plus tard',
  downOf: (count) => `Plus tard\u00a0: prise de vue ${count}`,
  remove: 'Retirer',
  removeOf: (count) => `Retirer\u00a0: prise de vue ${count}`,
  added: (count) => say.plural(count, {one: 'Une prise de vue ajoutée.', other: `${count} prises de vue ajoutées.`}),

  undo: (what) => `Annuler\u00a0: ${what}`,
  acts: {
    keep: (count) => `prise de vue ${count} gardée`,
    remove: (count) => `prise de vue ${count} retirée`,
    move: (count) => `prise de vue ${count} déplacée`,
    putBack: (count) => `retour à la prise de vue ${count}`,
    import: 'prises de vue ajoutées',
    link: 'lien ouvert',
    otherPage: 'prises de vue reprises d’une autre fenêtre',
  },

  remember: 'Mémoriser dans ce navigateur',
  remembered: 'Gardées dans ce navigateur, nulle part ailleurs. Appuyer de nouveau pour les oublier.',
  forgotten: 'Ce navigateur a oublié les prises de vue. Elles sont encore sur cette page.',
  full: 'Ce navigateur n’a plus de place pour les prises de vue. Elles restent sur cette page jusqu’à sa fermeture\u00a0: par '
    + 'sécurité, enregistrer un fichier.',
  blocked: 'Ce navigateur ne garde rien pour cette page (fenêtre privée ou stockage bloqué). Les prises de vue restent sur cette page jusqu’à sa fermeture\u00a0: par sécurité, enregistrer un fichier.',

  linkTaken: 'Les réglages du lien sont repris.',
  linkNewer: (version) => `Ce lien vient d’une version plus récente (${version}). Ce qui est connu ici a été repris.`,
  linkUnknown: (name) => `«\u202f${name}\u202f» dans le lien ne veut rien dire ici. Le prochain lien le transmet\u202f; tout le reste a été repris.`,
  linkUnreadable: (name, text, wanted) =>
    `${name} «\u202f${text}\u202f» dans le lien ne convient pas\u202f; il faut ${wanted}. C’est gardé tel quel\u202f; tout le reste a été repris.`,
  linkTooLong: (name, length) => `«\u202f${name}\u202f» dans le lien compte ${length} caractères et a été laissé de côté\u202f; tout le reste a été repris.`,

  along: 'Lien, texte, carte, fichier et papier',
  page: 'Intégrer à sa propre page',
});
