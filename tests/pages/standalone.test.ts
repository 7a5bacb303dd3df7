import {expect} from '@open-wc/testing';

/** The files for a bare script tag, as built. */
const FOLDER = '/dist/standalone/';

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
});
