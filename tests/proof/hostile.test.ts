import {expect, waitUntil} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {LitElement} from 'lit';
import type {ShotKey} from '../../src/core/shot/shot.js';
import {CASES, TAGS, settled, stand, text, unfold, type Case} from './cases.js';
import {drawn, fill} from '../photo/pictures.js';

declare global { var wasHarmed: number | undefined }

/** What somebody who means harm, or a broken program, writes where a value belongs. Invented. */
const HARM: Readonly<Record<string, string>> = {
  markup: '<img src=x onerror="globalThis.wasHarmed=1"><b>bold</b>',
  script: '"><script>globalThis.wasHarmed=1</script>',
  handler: '" onfocus="globalThis.wasHarmed=1" autofocus="',
  template: '${globalThis.wasHarmed=1}{{constructor.constructor("wasHarmed=1")()}}',
  address: 'javascript:globalThis.wasHarmed=1',
  'a million letters': 'f/8 '.repeat(250_000),
  'half a letter': 'f/\ud800 8\udfff mm',
  'turned round': '\u202e8/f \u0000\u0007\u2028',
  'too large': '1e308', 'beyond too large': '1e309', 'minus nothing': '-0', 'too small': '1e-320', 'no number': 'NaN', endless: 'Infinity',
  'deep nesting': '('.repeat(5000), prototype: '__proto__', constructor: 'constructor', nothing: '', space: ' \t\n ',
  json: '{"__proto__":{"polluted":1},"aperture":8}', hexadecimal: '0x10', 'other digits': '١٦ mm',
};

const NUMBERS = [1e308, -1e308, -0, 0, 5e-324, NaN, Infinity, -Infinity] as const;

const faults: string[] = [];
const onError = (event: ErrorEvent) => { faults.push(event.message); };
const onRejection = (event: PromiseRejectionEvent) => { faults.push(String(event.reason)); };
before(() => {
  addEventListener('error', onError);
  addEventListener('unhandledrejection', onRejection);
});
after(() => {
  removeEventListener('error', onError);
  removeEventListener('unhandledrejection', onRejection);
});
beforeEach(() => {
  faults.length = 0;
  globalThis.wasHarmed = undefined;
});

/** It stands, says something, runs nothing that was handed to it, and prints no number that is none. */
function unharmed(el: LitElement, how: string): void {
  const said = text(el.shadowRoot);
  expect(said.length, `${how}: something is on screen`).to.be.greaterThan(40);
  expect(globalThis.wasHarmed, `${how}: nothing ran`).to.equal(undefined);
  expect(el.shadowRoot?.querySelector('img, script, iframe, object, embed, [onerror], [onfocus], a[href^="javascript:"]'), how).to.equal(null);
  expect(faults, how).to.deep.equal([]);
  expect(({} as Record<string, unknown>).polluted, how).to.equal(undefined);
  for (const shape of el.shadowRoot?.querySelectorAll('svg *') ?? []) {
    for (const {name, value} of shape.attributes) {
      if (!/^(aria|id|class|data)/.test(name)) expect(value, `${how}: ${shape.localName} ${name}`).not.to.match(/NaN|Infinity|undefined/);
    }
  }
}

/** Names of the attributes an element listens to. */
const attributesOf = (el: LitElement): string[] => (el.constructor as typeof LitElement).observedAttributes;

describe('hostile attributes', () => {
  for (const [giant, tag] of TAGS.entries()) {
    it(`show as text in ${tag}, do nothing, and the element can be used afterwards`, async function () {
      this.timeout(60_000);
      const el = await stand({tag, state: '', attributes: {}});
      const names = attributesOf(el).filter((name) => name !== 'bench' && !/src|scripts|page/.test(name));
      for (const [what, bad] of Object.entries(HARM)) {
        // All at once. A million letters stand in one place, tens of thousands in the others: thirty times a million is the browser's trial.
        for (const [at, name] of names.entries()) el.setAttribute(name, at === giant % names.length ? bad : bad.slice(0, 40_000));
        await el.updateComplete;
        unharmed(el, what);
      }
      await settled(el);
      for (const name of names) el.removeAttribute(name);
      await settled(el);
      unharmed(el, 'after all of them');
      // And it still listens to good values and to a reader.
      if (names.includes('aperture')) {
        el.setAttribute('aperture', 'f/11');
        await el.updateComplete;
        expect((el as unknown as {aperture: number}).aperture).to.be.closeTo(2 ** 3.5, 1e-9);
      }
      const field = el.shadowRoot?.querySelector<HTMLInputElement>('input:not([type=file],[type=radio],[type=checkbox]), textarea');
      if (field?.checkVisibility?.() ?? field) {
        field?.focus();
        await sendKeys({type: '7'});
        expect(field?.value).to.contain('7');
      }
    });

    it(`properties of ${tag} take no number that is none`, async () => {
      const el = await stand({tag, state: '', attributes: {}});
      const keys = (el.constructor as unknown as {shotKeys: readonly ShotKey[]}).shotKeys;
      for (const bad of NUMBERS) {
        for (const key of keys) {
          if (typeof (el as unknown as Record<string, unknown>)[key] !== 'number') continue;
          (el as unknown as Record<string, unknown>)[key === 'focus' ? 'focusPlane' : key] = bad;
        }
        await el.updateComplete;
        unharmed(el, String(bad));
        expect(text(el.shadowRoot), String(bad)).not.to.match(/(?<![\d.])[-−]0(?![.\d])/);
        for (const key of keys) {
          const kept = (el as unknown as Record<string, unknown>)[key === 'focus' ? 'focusPlane' : key];
          if (typeof kept === 'number') expect(Number.isNaN(kept), `${key} = ${kept}`).to.equal(false);
        }
      }
      await settled(el);
      unharmed(el, 'settled');
    });
  }

  it('are shown as they were written, beside the field', async () => {
    const el = await stand({tag: 'stop-trade-dial', state: '', attributes: {aperture: HARM.markup as string}});
    expect(text(el.shadowRoot)).to.contain('<img src=x onerror="globalThis.wasHarmed=1">');
  });
});

describe('hostile links', () => {
  const before = location.href;
  afterEach(() => { history.replaceState(null, '', before); });

  it('are taken as far as they can be, and do nothing', async function () {
    this.timeout(60_000);
    const el = await stand({tag: 'shot-sheet', state: '', attributes: {'follow-link': '', 'bench': 'hostile-link'}, unfolded: true});
    for (const [what, bad] of Object.entries(HARM)) {
      const keys = ['aperture', 'shutter', 'base-depth', 'note', 'crop', 'lights', 'focal-lengths', '__proto__', 'constructor'];
      const value = encodeURIComponent(bad.toWellFormed?.() ?? bad.replace(/[\ud800-\udfff]/g, '\ufffd')).slice(0, 40_000);
      location.hash = `shot=1&${keys.map((key) => `${key}=${value}`).join('&')}`;
      await new Promise((resolve) => { setTimeout(resolve, 30); });
      await el.updateComplete;
      unharmed(el, what);
    }
    for (const hash of ['#shot=1&aperture=%', '#shot=1&aperture=%E0%A4%A', '#shot=1&&&===&=&aperture', '#shot=99&aperture=f/8', `#shot=1&${'a=b&'.repeat(20_000)}`, '#<script>wasHarmed=1</script>']) {
      location.hash = hash;
      await new Promise((resolve) => { setTimeout(resolve, 30); });
      await el.updateComplete;
      unharmed(el, hash.slice(0, 40));
    }
    location.hash = 'shot=1&aperture=f/5.6';
    await waitUntil(() => text(el.shadowRoot).includes('f/5.6'), 'a good link afterwards');
  });
});

describe('hostile records', () => {
  const texts: Readonly<Record<string, string>> = {
    'no JSON': '{"format":', 'null': 'null', 'a list': '[]', 'a number': '1e999', 'deep': '['.repeat(20_000) + ']'.repeat(20_000),
    'prototype': '{"__proto__":{"polluted":1},"format":"lampblack-shots","version":1,"shots":[{"__proto__":{"polluted":1}}]}',
    'wrong types': '{"format":"lampblack-shots","version":1,"shots":[{"title":{},"made":7,"values":[],"texts":null,"measured":"x"},null,3,"<b>"]}',
    'markup': JSON.stringify({format: 'lampblack-shots', version: 1, shots: [{title: HARM.markup, note: HARM.script, values: {aperture: HARM.markup}, picture: HARM.address}]}),
    'huge numbers': '{"format":"lampblack-shots","version":1,"shots":[{"values":{"aperture":1e308,"shutter":-0,"baseDepth":1e309}}]}',
    'a giant': JSON.stringify({format: 'lampblack-shots', version: 1, shots: [{title: 'x'.repeat(1_000_000)}]}),
    'half a letter': '{"format":"lampblack-shots","version":1,"shots":[{"title":"\\ud800"}]}',
  };

  it('are refused in words or taken as far as they can be, by paste and by file', async function () {
    this.timeout(60_000);
    const el = await stand({...CASES.find(({tag, state}) => tag === 'shot-sheet' && state === 'at work') as Case});
    await waitUntil(() => el.shadowRoot?.querySelector('#pasted'), 'the field for a pasted record', {timeout: 8000});
    for (const [what, bad] of Object.entries(texts)) {
      const area = el.shadowRoot?.querySelector('#pasted') as HTMLTextAreaElement;
      area.value = bad;
      area.dispatchEvent(new Event('input', {bubbles: true}));
      area.dispatchEvent(new Event('change', {bubbles: true}));
      [...el.shadowRoot?.querySelectorAll('button') ?? []].filter((button) => /take|read|add|import/i.test(text(button)) && area.closest('div, fieldset, details')?.contains(button))
        .forEach((button) => { button.click(); });
      await new Promise((resolve) => { setTimeout(resolve, 30); });
      await el.updateComplete;
      unharmed(el, what);
    }
    const picker = el.shadowRoot?.querySelector<HTMLInputElement>('input[type=file]') as HTMLInputElement;
    for (const [what, bad] of Object.entries(texts)) {
      const files = new DataTransfer();
      files.items.add(new File([bad], `${HARM.markup}.json`, {type: 'application/json'}));
      picker.files = files.files;
      picker.dispatchEvent(new Event('change', {bubbles: true}));
      await new Promise((resolve) => { setTimeout(resolve, 40); });
      await el.updateComplete;
      unharmed(el, `file: ${what}`);
    }
  });
});

describe('hostile file names', () => {
  for (const tag of ['tonal-chart-reader', 'gray-card-check'] as const) {
    it(`show as text in ${tag}, with a picture in the file and with none`, async function () {
      this.timeout(60_000);
      const el = await stand({tag, state: '', attributes: {}});
      const picture = await drawn(60, 40, (pen) => { fill(pen, [90, 90, 90], 0, 0, 60, 40); });
      for (const what of ['markup', 'script', 'handler', 'half a letter', 'turned round', 'a million letters', 'prototype'] as const) {
        const bad = HARM[what] as string;
        expect(await el.open?.(new File(['no picture'], bad))).to.equal(false);
        await el.updateComplete;
        unharmed(el, `no picture, ${what}`);
        await el.open?.(new File([picture], bad, {type: 'image/png'}));
        await el.updateComplete;
        unharmed(el, `a picture, ${what}`);
      }
      await unfold(el);
      unharmed(el, 'unfolded');
    });
  }
});
