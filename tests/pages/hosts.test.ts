import {expect} from '@open-wc/testing';
import {emulateMedia} from '@web/test-runner-commands';
import {MARKUP, awake, scriptOf, shownIn, verdictOf, writePage, type HostPage} from './host-page.js';

/** Pages that do their worst to everything in them. */
const SHEETS: Readonly<Record<string, string>> = {
  'unsets everything': '* { all: unset } head, style, script { display: none }',
  'has rules for every button, field and drawing':
    `button { all: unset; position: fixed; inset: 0; font-size: 40px } input, select { display: none } svg { width: 16px; height: 16px; fill: red }
     svg * { stroke: red } text { font-size: 60px } section, p, ul, li, details { margin: 90px; padding: 90px; float: left }`,
  'sets the root to 62.5 %': 'html { font-size: 62.5% } body { font-size: 1.6rem }',
  'is set small and wide': 'body { font: 11px/1 serif; letter-spacing: 0.05em; word-spacing: 0.2em }',
  'centres and never wraps': 'body { text-align: center; white-space: nowrap; line-height: 3; text-indent: 2em }',
};

const TAGS = Object.keys(MARKUP);
const HEAD = '<meta charset="utf-8"><meta name="viewport" content="width=device-width">';
/** Photos take their time: they are on the pages where they could come to harm. */
const WITHOUT_PHOTO = TAGS.filter((tag) => !/chart|card/.test(tag));
const page = (css: string, {html = '<html lang="en">', doctype = '<!doctype html>', head = '', tags = TAGS} = {}) =>
  `${doctype}${html}<head>${HEAD}${head}<style>body { margin: 0 } ${css}</style></head><body>
  <main>${tags.map((tag) => MARKUP[tag]).join('\n')}</main>${tags.map((tag) => scriptOf(tag)).join('')}</body></html>`;

/** What must hold on any page whatever: something to read, inside its column, and controls for a thumb. */
function expectUsable(element: HTMLElement, column: number): void {
  const {localName: tag} = element;
  const plate = element.shadowRoot?.querySelector('.plate') as HTMLElement;
  const {left, right} = plate.getBoundingClientRect();
  expect(right - left, `${tag} fills its column`).to.be.within(column - 1, column + 1);
  /** @param over - px that may stick out, as the handles of a frame over a photo do */
  const within = (found: HTMLElement, over = 2) => {
    const box = found.getBoundingClientRect();
    const name = `${tag}: ${found.localName} “${found.textContent?.replace(/\s+/g, ' ').trim().slice(0, 40)}”`;
    if (box.width < 2) return; // for screen readers alone
    expect(box.right, `${name} ends in the column`).to.be.at.most(right + over);
    expect(box.left, `${name} starts in the column`).to.be.at.least(left - over);
  };
  for (const text of shownIn(element, '.plate p:not(.spoken), .plate h3, .plate h4, .plate li, .plate dd, .plate strong, .plate summary')) within(text);
  for (const drawing of shownIn(element, '.plate svg:not(svg svg)')) within(drawing, 24);
  const verdict = element.shadowRoot?.querySelector<HTMLElement>('.verdict') as HTMLElement;
  expect(verdict.scrollWidth, `${tag}: the verdict wraps`).to.be.at.most(column + 1);
  expect(parseFloat(getComputedStyle(verdict).fontSize), `${tag}: type`).to.be.at.least(11);
  for (const control of shownIn(element, '.plate button, .plate summary, .plate select, .plate input:not([type=checkbox], [type=radio], [type=range], [type=file])')) {
    const {height, width} = control.getBoundingClientRect();
    if (width < 2) continue;
    within(control);
    expect(height, `${tag}: ${control.localName} “${control.textContent?.trim().slice(0, 30)}” is high enough for a thumb`).to.be.at.least(39.5);
  }
}

async function expectAllUsable(host: HostPage): Promise<HTMLElement[]> {
  const elements = await awake(host, TAGS);
  for (const element of elements) expectUsable(element, host.page.document.documentElement.clientWidth || host.page.innerWidth);
  expect(host.errors).to.deep.equal([]);
  return elements;
}

describe('pages that do their worst', () => {
  let host: HostPage | undefined;
  afterEach(() => { host?.frame.remove(); host = undefined; });

  for (const [what, css] of Object.entries(SHEETS)) {
    it(`one that ${what}: every check is read and worked in its column`, async () => {
      host = writePage(page(css, {tags: /button|unset/.test(css) ? TAGS : WITHOUT_PHOTO}));
      await expectAllUsable(host);
    });
  }

  it('columns of 280 px, and of 320, which is a wide window at a zoom of 400 %', async () => {
    host = writePage(page(''), {width: 280});
    await expectAllUsable(host);
    host.frame.style.width = '320px';
    await new Promise((resolve) => { setTimeout(resolve, 100); });
    await expectAllUsable(host);
    expect(host.page.document.documentElement.scrollWidth, 'nothing scrolls sideways').to.be.at.most(320);
  });

  it('a page that reads from the right', async () => {
    host = writePage(page('', {html: '<html lang="ar" dir="rtl">', tags: WITHOUT_PHOTO}), {width: 320});
    const elements = await expectAllUsable(host);
    expect(host.page.document.documentElement.scrollWidth, 'nothing scrolls sideways').to.be.at.most(320);
    for (const element of elements) {
      const verdict = element.shadowRoot?.querySelector('.verdict') as HTMLElement;
      expect(getComputedStyle(verdict).direction, element.localName).to.equal('rtl');
    }
  });

  it('a page without a doctype', async () => {
    host = writePage(page('', {doctype: '', tags: WITHOUT_PHOTO}));
    expect(host.page.document.compatMode).to.equal('BackCompat');
    await expectAllUsable(host);
  });

  it('a page whose base lies elsewhere: scripts, worker and drawings are found all the same', async () => {
    host = writePage(page('', {head: '<base href="/nowhere/at/all/">'}));
    const elements = await expectAllUsable(host);
    const chart = elements.find(({localName}) => localName === 'tonal-chart-reader') as HTMLElement;
    expect(verdictOf(chart)).to.match(/^(?:Keep it|Shoot again|Your call|Change the light): /);
    for (const element of elements) {
      for (const drawn of element.shadowRoot?.querySelectorAll('[fill^="url("], [clip-path^="url("], [mask^="url("]') ?? []) {
        const [, id] = /url\(["']?#([^"')]+)/.exec(drawn.outerHTML) ?? [];
        expect(id && element.shadowRoot?.getElementById(id), `${element.localName}: ${drawn.outerHTML.slice(0, 80)}`).to.exist;
      }
    }
  });

  it('on paper: the verdict stands, no control does, and nothing lies over anything', async function () {
    if (!('userAgentData' in navigator)) this.skip(); // only Chromium can be asked for paper
    host = writePage(page(''));
    const elements = await awake(host, TAGS);
    try {
      await emulateMedia({media: 'print'});
      expect(host.page.matchMedia('print').matches).to.equal(true);
      for (const element of elements) {
        const {localName: tag} = element;
        expect(shownIn(element, '.verdict'), `${tag}: the verdict`).to.have.length.of.at.least(1);
        expect(shownIn(element, 'button:not(.ways button, .way button), summary:not(details[open] > summary)').map(({textContent}) => textContent?.trim()), tag)
          .to.deep.equal([]);
        const boxes = shownIn(element, '.plate > *').map((block) => block.getBoundingClientRect()).filter(({height, width}) => height > 1 && width > 2);
        for (const [at, box] of boxes.entries()) {
          for (const other of boxes.slice(at + 1)) {
            const over = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
            const across = Math.min(box.right, other.right) - Math.max(box.left, other.left);
            expect(over > 1 && across > 1, `${tag}: two parts overlap`).to.equal(false);
          }
        }
      }
    } finally {
      await emulateMedia({media: 'screen'});
    }
  });
});
