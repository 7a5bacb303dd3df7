/** The compiler leaves imports out of declarations that only add to global types; here they come back. */
import {existsSync, readFileSync, writeFileSync} from 'node:fs';

/**
 * Lets a page's `addEventListener('shot-change', …)` know its event wherever an element is imported.
 * @param elements - folder of the built elements
 */
export function writeEventTypes(elements, tags) {
  for (const tag of tags) {
    const homes = ['../shared/events.js', './events.js'].filter((home) => existsSync(`${elements}${tag}/${home.replace('.js', '.d.ts')}`));
    const path = `${elements}${tag}/class.d.ts`;
    const text = readFileSync(path, 'utf8');
    const missing = homes.map((home) => `import '${home}';\n`).filter((line) => !text.includes(line));
    writeFileSync(path, missing.join('') + text);
  }
}
