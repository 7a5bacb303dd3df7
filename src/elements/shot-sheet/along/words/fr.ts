import type {Say} from '../../../shared/say.js';
import type {AlongWords} from './en.js';

export {family} from '../../../shared/words/fr.js';

export const words = (say: Say): AlongWords => ({
  say,
  quoted: (text) => `«\u202f${text}\u202f»`,
  which: 'Quelle prise de vue',
  now: 'Celle-ci',
  all: 'Toutes les prises de vue gardées',
  option: (count, title) => `${count}. ${title}`,

  link: 'Lien',
  copyLink: 'Copier le lien',
  linkShown: (start, length) => `${start}… (${length} caractères\u202f; il est copié en entier)`,
  showQr: 'Afficher le code QR',
  hideQr: 'Masquer le code QR',
  qr: 'Code QR du lien vers cette prise de vue',
  linkTooLong: (length) => `Le lien compte ${length} caractères, plus qu’un code QR n’en contient. Le copier, ou raccourcir la note.`,

  text: 'Copier en texte, pour les sites sans script',
  forms: {text: 'Texte brut', markdown: 'Markdown', bbcode: 'BBCode', html: 'HTML'},
  card: 'Carte et papier',
  svg: 'Enregistrer en SVG',
  png: 'Enregistrer en PNG',
  noPng: 'Cette page ne permet pas de dessiner un PNG. Le SVG contient la même carte.',
  print: 'Imprimer sur une page',
  printed: 'Fiche de prise de vue',
  noPrint: 'Cette page ne permet pas d’imprimer la carte seule. Enregistrer le SVG et l’imprimer.',

  file: 'Fichier',
  save: 'Enregistrer le fichier',
  copyFile: 'Copier le fichier en texte',
  open: 'Ouvrir un fichier',
  paste: 'ou coller son texte ici',
  take: 'Ajouter ces prises de vue',
  thisText: 'Ce texte',
  onDevice: '«\u202fMémorisé dans ce navigateur\u202f»',
  noJson: (file) => `${file} est abîmé ou n’est pas un fichier de prises de vue\u00a0: le JSON n’est pas complet. Rien n’a changé.`,
  foreign: (file) => `${file} est du JSON, mais pas un fichier de prises de vue. Rien n’a changé.`,
  newer: (file, version) =>
    `${file} vient d’une version plus récente (${version}) que celle que lit cette page. Rien n’a changé\u202f; recharger la page ou demander un fichier plus ancien.`,
  wrong: (file, where, found, wanted) => `${file} ne peut pas être repris\u00a0: ${where} (${found})\u202f; il faut ${wanted}. Rien n’a changé.`,
  ofShot: (name, shot) => `${name} de la prise de vue ${shot}`,
  shot: (shot) => `la prise de vue ${shot}`,
  nothingThere: 'absent',
  unreadable: (file) => `${file} n’a pas pu être lu\u00a0: il a peut-être été déplacé, ou il est bien plus gros qu’un fichier de prises de vue. Rien n’a changé.`,

  element: 'Élément',
  snippets: {
    tag: 'Balise avec ce qui est réglé',
    script: 'Ligne de script, une fois par page',
    frame: 'Dans un cadre, là où les cadres passent et pas les scripts',
    plain: 'Texte brut, là où rien d’autre ne passe',
  },
  fallback: (settings) => `${settings}.`,
  copy: 'Copier',
  copied: 'Copié',
  copyHere: 'La copie n’est pas permise ici. Le texte est sélectionné\u00a0: le copier à la main.',
});
