import {render} from '@lit-labs/ssr';
import {collectResultSync} from '@lit-labs/ssr/lib/render-result.js';
import {html, type TemplateResult} from 'lit';
import {beforeAll, describe, expect, it} from 'vitest';
import {loadWords, renderTogether} from '../../src/elements/server.js';
import {StopTradeDial} from '../../src/elements/stop-trade-dial/class.js';
import '../../src/elements/stop-trade-dial/define.js';

/** What a browser shows of a page a server rendered: text only, styles and marks left out. */
function shown(page: TemplateResult, language = 'en'): string {
  return renderTogether(language, () => collectResultSync(render(page)))
    .replace(/<style>.*?<\/style>/gs, '').replace(/<!--.*?-->/g, '').replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
}

describe('a dial rendered on a server', () => {
  beforeAll(() => loadWords('en', [StopTradeDial]));

  it('takes its attributes as a person writes them, and keeps what stands between its tags', () => {
    const text = shown(html`<stop-trade-dial metered-aperture="2.8" metered-shutter="1/25" aperture="f/11" shutter='0"6'>Without script</stop-trade-dial>`);
    // f/2.8 to f/11 is four stops: 1/25 s becomes 0.6 s. ISO 2720, marked series
    expect(text).toContain('f/11 at 0.6 s gives the same light as f/2.8 at 1/25 s.');
    expect(text).toContain('Without script');
  });

  it('shares the shot of its bench with the page and with no other page', () => {
    const page = html`<stop-trade-dial bench="a" aperture="f/5.6"></stop-trade-dial><stop-trade-dial bench="a" shutter="1/8"></stop-trade-dial>`;
    expect(shown(page).match(/f\/5\.6 at 1\/8 s, ISO 100/g)).toHaveLength(2);
    expect(shown(html`<stop-trade-dial bench="a"></stop-trade-dial>`)).toContain('f/8 at 1/4 s, ISO 100');
  });

  it('shows text that cannot be read as text', () => {
    const text = shown(html`<stop-trade-dial aperture="${'<img onerror=x>'}"></stop-trade-dial>`);
    expect(text).toContain('“&lt;img onerror=x&gt;” does not read as an f-number such as f/8 or 5.6');
  });
});
