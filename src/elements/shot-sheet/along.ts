import {html, nothing, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {isFault, readDocument, writeDocument} from '../../core/shot/document.js';
import type {ShotRecord} from '../../core/shot/record.js';
import type {ShotState} from '../../core/shot/state.js';
import {settingsIn, sheetIn, type Sheet} from '../../core/shot/sheet-lines.js';
import {writeSheets, type SheetForm} from '../../core/shot/text.js';
import {choiceField} from '../shared/fields.js';
import {layCard, type Card} from './card.js';
import {cardPng, cardSvg, pictureSize, printCard} from './card-picture.js';
import type {ShotSheet} from './class.js';
import {drawKept} from './picture.js';
import type {QrCode} from './qr.js';
import {frameSnippet, scriptSnippet, shownOn, tagSnippet, type Shown} from './snippets.js';
import {copyText, fileName, saveFile} from './take.js';
import {faultWords, fileWords, linkWords} from './along-speech.js';
import type {AlongWords} from './along/words/en.js';
import {languageOfSheet} from './speech.js';
import type {SheetElementWords} from './words/en.js';

/** Which shots are meant: the one on the bench, all kept, or one of them. */
type Which = 'now' | 'all' | `${number}`;

/** More bytes than the most shots with the largest pictures take. */
const LARGEST_FILE = 250_000_000;

/** What it needs of its sheet. */
interface AlongHost {
  /** Called when there is something new to show. */
  readonly changed: () => void;
  /** The shot as it stands. */
  readonly state: () => ShotState;
  /** What the sheet says, and what is said here, which comes later. */
  readonly sentences: () => SheetElementWords;
  readonly words: () => AlongWords | undefined;
}

/** Everything that takes shots out of the page and brings them in. Loaded when somebody looks for it. */
export class Along {
  #which: Which = 'now';
  #tag = '';
  #pasted = '';
  #fault: ((words: AlongWords) => string) | null = null;
  #cardFault: 'noPrint' | 'noPng' | null = null;
  /** What was copied last, or is to be copied by hand. */
  #copying: {readonly id: string; readonly text: string; readonly done: boolean} | null = null;
  #qr: {readonly link: string; readonly code: QrCode | null} | null = null;

  constructor(private readonly sheet: ShotSheet, private readonly host: AlongHost) {}

  // —— its words ——

  /** Its own sentences, once they have arrived. */
  get #words(): AlongWords | undefined { return this.host.words(); }

  #sheetOf(record: ShotRecord): Sheet {
    return sheetIn(languageOfSheet(this.host.sentences()), record);
  }

  // —— what is taken ——

  get #records(): readonly ShotRecord[] {
    const {shots} = this.sheet;
    if (this.#which === 'all' && shots.length) return shots;
    const one = shots[Number(this.#which)];
    return [one ?? {...this.sheet.record, title: this.sheet.record.title || this.host.sentences().numbered(shots.length + 1)}];
  }

  #text(form: SheetForm): string {
    return writeSheets(this.#records.map((record) => this.#sheetOf(record)), form);
  }

  async #card(): Promise<Card> {
    const shots = await Promise.all(this.#records.map(async (record) => {
      const size = record.picture ? await pictureSize(record.picture, drawKept) : undefined;
      return {sheet: this.#sheetOf(record), picture: record.picture && size ? {url: record.picture, ...size} : undefined};
    }));
    return layCard(shots);
  }

  #fileName(ending: string): string {
    const records = this.#records;
    return fileName(records.length === 1 ? records[0]?.title ?? '' : '', ending);
  }

  async #copy(id: string, text: string): Promise<void> {
    const done = await copyText(text);
    this.#copying = {id, text, done};
    this.host.changed();
    if (done) return;
    await this.sheet.updateComplete;
    const area = this.sheet.renderRoot.querySelector<HTMLTextAreaElement>(`#${id}-by-hand`);
    area?.focus();
    area?.select();
  }

  async #saveCard(form: 'svg' | 'png' | 'print'): Promise<void> {
    const card = await this.#card();
    this.#cardFault = null;
    if (form === 'print') this.#cardFault = printCard(card, this.#words?.printed ?? '') ? null : 'noPrint';
    else {
      const file = form === 'svg' ? cardSvg(card) : await cardPng(card);
      if (file) saveFile(this.#fileName(form), file);
      else this.#cardFault = 'noPng';
    }
    this.host.changed();
  }

  async #toggleQr(): Promise<void> {
    if (this.#qr) this.#qr = null;
    else {
      const {qrCode} = await import('./qr.js');
      const {link} = this.sheet;
      this.#qr = {link, code: qrCode(link)};
    }
    this.host.changed();
  }

  /** The code follows the shot while it is shown. */
  #followQr(link: string): void {
    if (!this.#qr || this.#qr.link === link) return;
    this.#qr = {...this.#qr, link};
    void import('./qr.js').then(({qrCode}) => {
      this.#qr &&= {link, code: qrCode(link)};
      this.host.changed();
    });
  }

  #import(text: string, name: string): void {
    const read = readDocument(text);
    if (isFault(read)) {
      this.#fault = (words) => faultWords(words, read, fileWords(words, name));
      this.#pasted = name ? this.#pasted : text;
    } else {
      this.#fault = null;
      this.#pasted = '';
      this.sheet.addShots(read);
    }
    this.host.changed();
  }

  async #open(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    input.value = '';
    if (!file) return;
    const text = file.size > LARGEST_FILE ? null : await file.text().catch(() => null);
    if (text !== null) this.#import(text, file.name);
    else {
      this.#fault = (words) => words.unreadable(words.quoted(file.name));
      this.host.changed();
    }
  }

  // —— drawing ——

  /** @param of - id of what says what is copied, where its own label does not */
  #copyButton(words: AlongWords, id: string, label: string, text: () => string, of: string | typeof nothing = nothing): TemplateResult {
    const {done} = this.#copying?.id === id ? this.#copying : {done: false};
    return html`<button type="button" data-copy=${id} aria-describedby=${of} @click=${() => { void this.#copy(id, text()); }}>${label}${done ? html` <span role="status">· ${words.copied}</span>` : nothing}</button>`;
  }

  #byHand(words: AlongWords, ...ids: readonly string[]): TemplateResult | typeof nothing {
    const copying = this.#copying;
    if (!copying || copying.done || !ids.includes(copying.id)) return nothing;
    return html`<div class="field wide"><label for="${copying.id}-by-hand">${words.copyHere}</label>
      <textarea class="code" id="${copying.id}-by-hand" readonly rows="5" .value=${copying.text}></textarea></div>`;
  }

  renderAlong(): TemplateResult | typeof nothing {
    const words = this.#words;
    if (!words) return nothing;
    const {shots} = this.sheet;
    const options: readonly (readonly [Which, string])[] = [['now', words.now], ...(shots.length ? [['all', words.all] as const] : []),
      ...shots.map(({title}, at) => [`${at}`, words.option(at + 1, title)] as const)];
    const forms = Object.entries(words.forms) as [SheetForm, string][];
    return html`<div class="along">
      ${this.#renderLink(words)}
      <div role="group" aria-labelledby="text-head">
        <p class="head" id="text-head">${words.text}</p>
        ${choiceField<Which>({id: 'which', label: words.which, value: options.some(([value]) => value === this.#which) ? this.#which : 'now', options,
          onChoose: (which) => { this.#which = which; this.#copying = null; this.host.changed(); }})}
        <div class="row">${forms.map(([form, label]) => this.#copyButton(words, form, label, () => this.#text(form)))}</div>
        ${this.#byHand(words, ...forms.map(([form]) => form))}
        <p class="head">${words.card}</p>
        <div class="row">${(['svg', 'png', 'print'] as const).map((form) => html`<button type="button"
          @click=${() => { void this.#saveCard(form); }}>${words[form]}</button>`)}</div>
        ${this.#cardFault ? html`<p class="problem" role="alert">${words[this.#cardFault]}</p>` : nothing}
      </div>
      ${this.#renderFile(words)}
    </div>`;
  }

  #renderLink(words: AlongWords): TemplateResult {
    const {link} = this.sheet;
    this.#followQr(link);
    const qr = this.#qr;
    return html`<div role="group" aria-labelledby="link-head">
      <p class="head" id="link-head">${words.link}</p>
      <p class="address">${linkWords(words, link)}</p>
      <div class="row">
        ${this.#copyButton(words, 'link', words.copyLink, () => link)}
        <button type="button" class="show-qr" aria-expanded=${qr ? 'true' : 'false'} @click=${() => { void this.#toggleQr(); }}>${qr ? words.hideQr : words.showQr}</button>
      </div>
      ${this.#byHand(words, 'link')}
      ${qr?.code ? html`<svg class="qr" viewBox="0 0 ${qr.code.size} ${qr.code.size}" role="img" aria-label=${words.qr} shape-rendering="crispEdges">
        <rect width=${qr.code.size} height=${qr.code.size}></rect><path d=${qr.code.path}></path></svg>` : nothing}
      ${qr && !qr.code ? html`<p class="problem">${words.linkTooLong(link.length)}</p>` : nothing}
    </div>`;
  }

  #renderFile(words: AlongWords): TemplateResult {
    const fault = this.#fault?.(words);
    return html`<div role="group" aria-labelledby="file-head">
      <p class="head" id="file-head">${words.file}</p>
      <div class="row">
        <button type="button" class="save" @click=${() => { saveFile(this.#fileName('json'), new Blob([writeDocument(this.#records)], {type: 'application/json'})); }}>${words.save}</button>
        ${this.#copyButton(words, 'file', words.copyFile, () => writeDocument(this.#records))}
        <label class="pick">${words.open}<input type="file" accept=".json,application/json" @change=${(event: Event) => { void this.#open(event.target as HTMLInputElement); }}></label>
      </div>
      ${this.#byHand(words, 'file')}
      <div class="field">
        <label for="pasted">${words.paste}</label>
        <textarea class="code" id="pasted" rows="3" spellcheck="false" .value=${live(this.#pasted)} aria-invalid=${fault ? 'true' : nothing} aria-describedby=${fault ? 'fault' : nothing}
          @input=${(event: Event) => { this.#pasted = (event.target as HTMLTextAreaElement).value; }}></textarea>
        ${fault ? html`<p class="problem" id="fault" role="alert">${fault}</p>` : nothing}
      </div>
      <button type="button" class="add" @click=${() => { this.#import(this.#pasted, ''); }}>${words.take}</button>
    </div>`;
  }

  renderPage(): TemplateResult | typeof nothing {
    const words = this.#words;
    if (!words) return nothing;
    const {sheet} = this;
    const root = sheet.getRootNode() as Document | ShadowRoot;
    const keys = (sheet.constructor as typeof ShotSheet).shotKeys;
    const shown = shownOn(root, sheet.bench, {tag: sheet.localName, keys, bench: sheet.bench});
    const {tag, ...rest} = (shown.find((one) => one.tag === this.#tag) ?? shown[0]) as Shown;
    const settings = settingsIn(languageOfSheet(this.host.sentences()), this.host.state().values);
    const texts: Readonly<Record<keyof typeof words.snippets, string>> = {
      tag: tagSnippet({tag, ...rest}, this.host.state(), words.fallback(settings)),
      script: scriptSnippet(tag, sheet.scripts),
      frame: frameSnippet(sheet.link, settings),
      plain: writeSheets([this.#sheetOf(sheet.record)], 'text'),
    };
    return html`<div class="along">
      ${shown.length > 1 ? html`<div class="wide">${choiceField({id: 'tag', label: words.element, value: tag, options: shown.map((one) => [one.tag, one.tag] as const),
        onChoose: (chosen) => { this.#tag = chosen; this.#copying = null; this.host.changed(); }})}</div>` : nothing}
      ${(Object.keys(texts) as (keyof typeof texts)[]).map((id) => html`<div>
        <div class="field"><label for="snippet-${id}" id="snippet-${id}-what">${words.snippets[id]}</label><textarea class="code" id="snippet-${id}" readonly rows="6" spellcheck="false" .value=${texts[id]}></textarea></div>
        ${this.#copyButton(words, `snippet-${id}`, words.copy, () => texts[id], `snippet-${id}-what`)}
        ${this.#byHand(words, `snippet-${id}`)}
      </div>`)}
    </div>`;
  }
}
