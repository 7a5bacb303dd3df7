import {expect, waitUntil} from '@open-wc/testing';
import {MARKUP, writePage} from './host-page.js';

/** The files for a bare script tag, as built. */
const FOLDER = '/dist/standalone/';

interface List {
  readonly imports: Readonly<Record<string, readonly string[]>>;
  readonly words: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  readonly lazy: Readonly<Record<string, readonly string[]>>;
}

/** A photo is opened by parts that come with it. */
const WITHOUT_PHOTO: Readonly<Record<string, string>> = {
  'tonal-chart-reader': '<tonal-chart-reader>The chart</tonal-chart-reader>', 'gray-card-check': '<gray-card-check>The card</gray-card-check>',
};

describe('standalone files', () => {
  it('define their element, and loading one twice or beside the whole set is harmless', async () => {
    const errors: string[] = [];
    addEventListener('error', (event) => { errors.push(event.message); });
    await import(`${FOLDER}stop-trade-dial.js`);
    const first = customElements.get('stop-trade-dial');
    await import(`${FOLDER}stop-trade-dial.js?again`);
    await import(`${FOLDER}all.js`);
    await import(`${FOLDER}all.js?again`);
    expect(first).to.be.a('function');
    expect(customElements.get('stop-trade-dial')).to.equal(first);
    for (const tag of ['sharp-zone-bar', 'tonal-chart-reader']) expect(customElements.get(tag), tag).to.be.a('function');
    expect(errors).to.deep.equal([]);
  });

  it('carry Lit once between them', async () => {
    const text = async (file: string) => (await fetch(FOLDER + file)).text();
    const chunks = new Set<string>();
    for (const tag of ['stop-trade-dial', 'sharp-zone-bar', 'tonal-chart-reader']) {
      const code = await text(`${tag}.js`);
      expect(code).not.to.contain('litHtmlVersions');
      for (const [, chunk] of code.matchAll(/from\s*["'][^"']*?(shared-[^"'?]+)/g)) if (chunk) chunks.add(chunk);
    }
    const withLit = [];
    for (const chunk of chunks) if ((await text(chunk)).includes('litHtmlVersions')) withLit.push(chunk);
    expect(withLit).to.have.length(1);
  });

  // The build counts these and no others as what a page loads before an element first works.
  for (const [tag, markup] of Object.entries({...MARKUP, ...WITHOUT_PHOTO})) {
    it(`${tag} asks for what is counted as first, and for nothing else`, async () => {
      const {imports, words, lazy} = await (await fetch(`${FOLDER}integrity.json`)).json() as List;
      const {unasked} = await (await fetch('/scripts/budgets.json')).json() as {readonly unasked: readonly string[]};
      const host = writePage(`<!doctype html><html lang="en"><title>One check</title>
        <script type="module" src="${FOLDER}${tag}.js"></script>${markup}</html>`);
      const plate = () => host.page.document.querySelector(tag)?.shadowRoot?.querySelector('[part~=plate]')?.textContent?.trim();
      await waitUntil(plate, `${tag} says something`, {timeout: 15_000});
      const asked = host.page.performance.getEntriesByType('resource').map(({name}) => name).filter((name) => name.endsWith('.js'));
      host.frame.remove();
      const counted = [`${tag}.js`, ...imports[`${tag}.js`] ?? [], ...words[`${tag}.js`]?.en ?? []];
      // What it goes on to fetch by itself is counted too, and may be on its way.
      const soon = unasked.filter((name) => lazy[`${tag}.js`]?.includes(name)).flatMap((name) => [name, ...imports[name] ?? []]);
      const known = new Set([...counted, ...soon].map((name) => `${location.origin}${FOLDER}${name}`));
      expect(asked.filter((name) => !known.has(name))).to.deep.equal([]);
      // Each once, and all of them: otherwise too much would be counted.
      for (const name of counted) expect(asked.filter((each) => each.endsWith(`/${name}`)), name).to.have.length(1);
    });
  }
});
