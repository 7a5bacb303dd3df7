import {describe, expect, it} from 'vitest';
import {inLanguage} from '../../scripts/page-languages.mjs';

/** Invented, a page of three texts. */
const PAGE = '<html lang="en"><body><h1 aria-label="The table">The light\n  of the table</h1><p>Light</p></body></html>';
const WORDS = {Light: 'Licht', 'The light of the table': 'Das Licht des Tisches', 'The table': 'Der "Tisch"'};

describe('a page in another language', () => {
  it('has every text exchanged once, line ends in it or not', () => {
    expect(inLanguage(PAGE, 'de', WORDS))
      .toBe('<html lang="de"><body><h1 aria-label="Der &quot;Tisch&quot;">Das Licht des Tisches</h1><p>Licht</p></body></html>');
  });

  it('ends the build where a text has no words, and where words have no text', () => {
    const rest = {'The light of the table': 'Das Licht des Tisches', 'The table': 'Der Tisch'};
    expect(() => inLanguage(PAGE, 'de', rest)).toThrow('de: no words for “Light”');
    expect(() => inLanguage(PAGE, 'de', {...WORDS, Shadow: 'Schatten'})).toThrow('de: “Shadow” is not on the page');
  });
});
