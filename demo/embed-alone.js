/** A title and ways on for a frame's page that somebody opened by itself. */
(() => {
  const WORDS = {
    en: {
      part: 'One check of the guild’s table calculator, by itself.', back: 'Back', all: 'All checks', shot: 'All checks, with this shot',
      'tonal-chart-reader': 'The tonal chart of a photo', 'stop-trade-dial': 'The same light, another setting', 'sharp-zone-bar': 'Sharp from front to back?',
      'shot-plan': 'Plan the picture', 'backdrop-shade': 'How dark will the backdrop be?', 'gray-card-check': 'Can the gray card be trusted?',
      'settings-trail': 'Do the settings of a lesson balance?', 'shot-sheet': 'The record of a shot',
    },
    de: {
      part: 'Eine Prüfung aus dem Rechner am Tisch der Gilde, für sich allein.', back: 'Zurück', all: 'Alle Prüfungen', shot: 'Alle Prüfungen, mit dieser Aufnahme',
      'tonal-chart-reader': 'Das Tonwertdiagramm eines Fotos', 'stop-trade-dial': 'Gleiches Licht, andere Einstellung', 'sharp-zone-bar': 'Scharf von vorn bis hinten?',
      'shot-plan': 'Das Bild planen', 'backdrop-shade': 'Wie dunkel wird der Hintergrund?', 'gray-card-check': 'Ist der Graukarte zu trauen?',
      'settings-trail': 'Stimmen die Einstellungen einer Anleitung?', 'shot-sheet': 'Das Protokoll einer Aufnahme',
    },
    es: {
      part: 'Una comprobación de la calculadora de mesa del gremio, por separado.', back: 'Volver', all: 'Todas las comprobaciones', shot: 'Todas las comprobaciones, con estos ajustes',
      'tonal-chart-reader': 'El gráfico de tonos de una foto', 'stop-trade-dial': 'La misma luz, otro ajuste', 'sharp-zone-bar': '¿Nítida de delante atrás?',
      'shot-plan': 'Planear la foto', 'backdrop-shade': '¿Cómo de oscuro será el fondo?', 'gray-card-check': '¿Es de fiar la carta gris?',
      'settings-trail': '¿Cuadran los ajustes de una lección?', 'shot-sheet': 'La ficha de una toma',
    },
    fr: {
      part: 'Une vérification de la calculette de table de la guilde, seule.', back: 'Retour', all: 'Toutes les vérifications', shot: 'Toutes les vérifications, avec ces réglages',
      'tonal-chart-reader': 'Le diagramme des tons d’une photo', 'stop-trade-dial': 'La même lumière, un autre réglage', 'sharp-zone-bar': 'Nette de l’avant à l’arrière ?',
      'shot-plan': 'Préparer la photo', 'backdrop-shade': 'Le fond sera-t-il assez sombre ?', 'gray-card-check': 'Peut-on se fier à la charte grise ?',
      'settings-trail': 'Les réglages d’une leçon sont-ils cohérents ?', 'shot-sheet': 'La fiche d’une prise de vue',
    },
    pl: {
      part: 'Jedna kontrola z kalkulatora gildii, osobno.', back: 'Wstecz', all: 'Wszystkie kontrole', shot: 'Wszystkie kontrole, z tym ujęciem',
      'tonal-chart-reader': 'Wykres tonów zdjęcia', 'stop-trade-dial': 'To samo światło, inne ustawienie', 'sharp-zone-bar': 'Ostro od przodu do tyłu?',
      'shot-plan': 'Plan zdjęcia', 'backdrop-shade': 'Jak ciemne będzie tło?', 'gray-card-check': 'Czy szarej karcie można ufać?',
      'settings-trail': 'Czy ustawienia z poradnika się zgadzają?', 'shot-sheet': 'Karta ujęcia',
    },
  };
  const script = document.currentScript;
  const asked = (new URLSearchParams(location.search).get('lang') ?? '').slice(0, 2).toLowerCase();
  const language = Object.hasOwn(WORDS, asked) ? asked : 'en';
  const words = WORDS[language];
  const title = words[script.dataset.tag];
  const place = document.querySelector('#alone');
  if (!title || !place) return;
  const made = (name, text) => Object.assign(document.createElement(name), {textContent: text});

  const whole = made('a');
  const lead = () => {
    const hasShot = /^#(?:.*&)?shot=/.test(location.hash);
    whole.href = new URL((language === 'en' ? 'index.html' : `index.${language}.html`) + (hasShot ? location.hash : ''), script.src).href;
    whole.textContent = hasShot ? words.shot : words.all;
  };
  lead();
  addEventListener('hashchange', lead);

  const ways = made('p');
  ways.append(whole);
  if (document.referrer.startsWith(`${location.origin}/`)) ways.append(Object.assign(made('a', words.back), {href: document.referrer}));
  place.append(made('h1', title), made('p', words.part), ways);
  place.lang = language;
  place.hidden = false;
  document.title = `${title} · Lampblack`;
})();
