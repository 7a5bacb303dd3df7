import {expect, waitUntil} from '@open-wc/testing';
import {shot} from '../photo/pictures.js';
import {verdictOf} from './host-page.js';

const SHOT = '#shot=1&aperture=f/11&shutter=0.6s&metered-aperture=f/2.8&metered-shutter=1/25';
const address = (tag: string, more = '', hash = SHOT) => `/site/embed.html?tag=${tag}${more}${hash}`;

/** A frame on this page, which has the host's script. */
async function embed(src: string, attributes: Readonly<Record<string, string>> = {'data-lampblack': '', sandbox: 'allow-scripts'}): Promise<HTMLIFrameElement> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'display:block;width:600px;border:3px solid;box-sizing:border-box';
  for (const [name, value] of Object.entries(attributes)) frame.setAttribute(name, value);
  frame.src = src;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  return frame;
}

/** What frames have said to this page. */
const heard: {readonly source: MessageEventSource | null; readonly origin: string; readonly data: unknown}[] = [];
const heightFrom = (frame: HTMLIFrameElement) => heard.filter(({source}) => source === frame.contentWindow)
  .map(({data}) => (data as {height?: number}).height).findLast((height) => typeof height === 'number');

/** A frame whose script says `said` to the page around it. */
const speaking = (said: string) => `<script>parent.postMessage(${said}, '*')</script>`;
const still = () => new Promise((resolve) => { setTimeout(resolve, 120); });

describe('a check in a frame', () => {
  before(async () => {
    addEventListener('message', ({source, origin, data}) => { heard.push({source, origin, data}); });
    const script = document.createElement('script');
    script.src = '/site/embed-host.js';
    document.head.append(script);
    await new Promise((resolve) => { script.addEventListener('load', resolve, {once: true}); });
  });
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('runs in a sandbox that belongs to no origin, and gets the height it asks for', async () => {
    const frame = await embed(address('stop-trade-dial'));
    await waitUntil(() => (heightFrom(frame) ?? 0) > 300, 'the frame has told its height');
    expect(frame.contentDocument, 'no way in from here').to.equal(null);
    expect(heard.find(({source}) => source === frame.contentWindow)?.origin).to.equal('null');
    await waitUntil(() => frame.clientHeight === heightFrom(frame), 'the host follows');
    const wide = heightFrom(frame) as number;
    frame.style.width = '300px';
    await waitUntil(() => heightFrom(frame) !== wide && frame.clientHeight === heightFrom(frame), 'a narrow frame is told anew');
  });

  describe('with a photo, in a sandbox', () => {
    const PAGE = '/tests/pages/sandboxed.html';
    const seen = (frame: HTMLIFrameElement) => heard.filter(({source, data}) => source === frame.contentWindow && (data as {text?: string}).text)
      .map(({data}) => data as {readonly origin: string; readonly chart: boolean; readonly text: string}).at(-1);
    const reader = async () => {
      const frame = await embed(PAGE);
      await waitUntil(() => seen(frame), 'the chart stands ready', {timeout: 10_000});
      expect(seen(frame)?.origin).to.equal('null');
      expect(seen(frame)?.chart).to.equal(false);
      return frame;
    };

    it('reads what is dropped there, in the frame itself', async () => {
      const frame = await reader();
      frame.contentWindow?.postMessage({photo: await shot('exposure-plus1.jpg')}, '*');
      await waitUntil(() => seen(frame)?.chart, 'the chart is drawn', {timeout: 15_000});
    });

    it('takes one from a server that lets everybody have it, and names the one it may not have', async () => {
      const [allowed, refused] = [await reader(), await reader()];
      allowed.contentWindow?.postMessage({src: new URL('/as-built/shots/aperture-f8.jpg?for=everybody', location.href).href}, '*');
      await waitUntil(() => seen(allowed)?.chart, 'the chart is drawn', {timeout: 15_000});
      refused.contentWindow?.postMessage({src: new URL('/as-built/shots/aperture-f8.jpg', location.href).href}, '*');
      await waitUntil(() => seen(refused)?.text.includes('aperture-f8.jpg'), 'the photo that could not be had is named', {timeout: 10_000});
      expect(seen(refused)?.chart).to.equal(false);
    });
  });

  it('shows the shot of its link, in the language and theme of its address, and follows the link', async () => {
    const frame = await embed(address('stop-trade-dial', '&lang=ar&theme=dark'), {});
    const root = frame.contentDocument?.documentElement as HTMLElement;
    const dial = () => root.querySelector('stop-trade-dial') as Element;
    await waitUntil(() => root.querySelector('stop-trade-dial')?.shadowRoot && verdictOf(dial()), 'the dial speaks');
    expect(verdictOf(dial())).to.equal('f/11 at 0.6 s gives the same light as f/2.8 at 1/25 s.');
    expect([root.lang, root.dir, root.dataset.theme]).to.deep.equal(['ar', 'rtl', 'dark']);
    (frame.contentWindow as Window).location.hash = SHOT.replace('f/11', 'f/16');
    await waitUntil(() => verdictOf(dial()).includes('f/16'), 'the link is followed');
    const foreign = (frame.contentWindow as Window).performance.getEntriesByType('resource').filter(({name}) => !name.startsWith(location.origin));
    expect(foreign).to.deep.equal([]);
  });

  it('speaks the language of its address, and the next one that the page around it asks for', async () => {
    const frame = await embed(address('stop-trade-dial', '&lang=de'), {});
    const said = () => {
      const dial = frame.contentDocument?.querySelector('stop-trade-dial');
      return dial ? verdictOf(dial) : '';
    };
    // Numbers as Intl writes them for the language: a decimal comma in German and in Polish, a point in English.
    await waitUntil(() => said().includes('0,6'), 'German is spoken');
    frame.contentWindow?.postMessage({lampblack: 1, lang: 'en'}, '*');
    await waitUntil(() => said().includes('0.6') && said().includes('same light'), 'English is spoken');
    frame.contentWindow?.postMessage({lampblack: 1, lang: 'pl'}, '*');
    await waitUntil(() => said().includes('0,6'), 'Polish is spoken');
  });

  it('takes theme and language from the page around it, and from nobody else', async () => {
    const frame = await embed(address('stop-trade-dial', '&theme=light'), {});
    const root = frame.contentDocument?.documentElement as HTMLElement;
    await waitUntil(() => root.querySelector('stop-trade-dial')?.shadowRoot, 'the dial is there');
    frame.contentWindow?.postMessage({lampblack: 1, theme: 'dark', lang: 'he'}, '*');
    await waitUntil(() => root.dataset.theme === 'dark' && root.dir === 'rtl', 'the page around it is heard');
    // A sibling that knows the way has nothing to say.
    const sibling = document.createElement('iframe');
    document.body.append(sibling);
    (sibling.contentWindow as Window & typeof globalThis).eval(`parent.frames[0].postMessage({lampblack: 1, theme: 'light'}, '*')`);
    frame.contentWindow?.postMessage({lampblack: 2, theme: 'light'}, '*');
    frame.contentWindow?.postMessage('lampblack', '*');
    await still();
    expect(root.dataset.theme).to.equal('dark');
  });

  it('asks nothing of anybody else, whatever its address says', async () => {
    for (const src of ['https://elsewhere.invalid/a.jpg', '//elsewhere.invalid/a.jpg', '../../secret.jpg', 'data:image/png,x']) {
      const frame = await embed(address('tonal-chart-reader', `&src=${encodeURIComponent(src)}`), {});
      await waitUntil(() => frame.contentDocument?.querySelector('tonal-chart-reader')?.shadowRoot, src);
      expect(frame.contentDocument?.querySelector('tonal-chart-reader')?.hasAttribute('src'), src).to.equal(false);
    }
  });

  it('says so when its address names no check', async () => {
    const frame = await embed('/site/embed.html?tag=no-such-check', {});
    await waitUntil(() => frame.contentDocument?.body.textContent?.includes('could not be loaded'), 'the unknown tag');
    const nameless = await embed('/site/embed.html?tag=%3Cscript%3E', {});
    await waitUntil(() => nameless.contentDocument?.body.textContent?.includes('There is no check called'), 'what is no tag');
  });
});

describe('the page around a frame', () => {
  const box = (said: string, attributes: Readonly<Record<string, string>> = {'data-lampblack': '', sandbox: 'allow-scripts'}) => {
    const frame = document.createElement('iframe');
    for (const [name, value] of Object.entries(attributes)) frame.setAttribute(name, value);
    frame.style.cssText = 'border:0;height:333px';
    frame.srcdoc = speaking(said);
    document.body.append(frame);
    return frame;
  };
  afterEach(() => { for (const frame of document.querySelectorAll('iframe')) frame.remove(); });

  it('keeps heights within 80 and 4000 px', async () => {
    const [tall, flat] = [box('{lampblack: 1, height: 1e9}'), box('{lampblack: 1, height: -5}')];
    await waitUntil(() => tall.offsetHeight === 4000 && flat.offsetHeight === 80, 'both ends');
  });

  for (const said of [`{lampblack: 1, height: '900'}`, '{lampblack: 1, height: NaN}', '{lampblack: 1, height: Infinity}', '{lampblack: 2, height: 900}',
    '{height: 900}', 'null', `'lampblack'`, '[1, 900]']) {
    it(`leaves ${said} alone`, async () => {
      const frame = box(said);
      await still();
      expect(frame.offsetHeight).to.equal(333);
    });
  }

  it('listens to marked frames only, and to nobody who speaks for another', async () => {
    const unmarked = box('{lampblack: 1, height: 900}', {sandbox: 'allow-scripts'});
    const marked = box('null');
    postMessage({lampblack: 1, height: 900}, '*');
    await still();
    expect([unmarked.offsetHeight, marked.offsetHeight]).to.deep.equal([333, 333]);
  });
});

describe('links that become frames', () => {
  const TAGS = ['backdrop-shade', 'gray-card-check', 'settings-trail', 'sharp-zone-bar', 'shot-plan', 'shot-sheet', 'stop-trade-dial', 'tonal-chart-reader'];

  it('each check has a page that leads to its oEmbed document, and the document to the page', async () => {
    for (const tag of TAGS) {
      for (const path of [`/site/embed/${tag}.html`, `/site/reference/${tag}.html`]) {
        const page = new DOMParser().parseFromString(await (await fetch(path)).text(), 'text/html');
        const link = page.querySelector<HTMLLinkElement>('link[rel=alternate][type="application/json+oembed"]');
        // oembed.com, section 4: whole, in the head, with a title. Read from memory.
        expect(link?.getAttribute('href'), path).to.match(new RegExp(`^https?://[^/]+/.*oembed/${tag}\\.json$`));
        expect(link?.closest('head'), path).not.to.equal(null);
        expect(link?.title, path).to.equal(page.querySelector('title')?.textContent?.split(' · ')[0]);
      }
      // oembed.com, sections 2.3.4 and 2.3.4.4: what a rich response must have. Read from memory.
      const answer = await (await fetch(`/site/oembed/${tag}.json`)).json() as Record<string, unknown>;
      expect(answer).to.include({version: '1.0', type: 'rich'});
      expect(answer.width).to.be.a('number');
      expect(answer.height).to.be.a('number');
      for (const name of ['title', 'provider_name', 'html']) expect(answer[name], name).to.be.a('string').and.not.equal('');
      expect(new URL(String(answer.provider_url)).protocol).to.match(/^https?:$/);
      const frame = new DOMParser().parseFromString(String(answer.html), 'text/html').querySelector('iframe') as HTMLIFrameElement;
      expect(frame.getAttribute('src')).to.match(new RegExp(`^https?://.+/embed/${tag}\\.html$`));
      expect(frame.getAttribute('sandbox')).to.equal('allow-scripts');
      expect([frame.width, frame.height]).to.deep.equal([String(answer.width), String(answer.height)]);
    }
  });

  it('the page of a check shows that check', async () => {
    const frame = await embed('/site/embed/settings-trail.html', {});
    await waitUntil(() => frame.contentDocument?.querySelector('settings-trail')?.shadowRoot, 'the check is there');
    frame.remove();
  });
});
