import {html, nothing, type TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {isFault, readDocument, writeDocument} from '../../core/shot/document.js';
import type {ShotRecord} from '../../core/shot/record.js';
import type {ShotState} from '../../core/shot/state.js';
import {settingsText, sheetOf} from '../../core/shot/sheet.js';
import {writeSheets, type SheetForm} from '../../core/shot/text.js';
import {choiceField} from '../shared/fields.js';
import {layCard, type Card} from './card.js';
import {cardPng, cardSvg, pictureSize, printCard} from './card-picture.js';
import type {ShotSheet} from './class.js';
import {drawKept} from './picture.js';
import type {QrCode} from './qr.js';
import {frameSnippet, scriptSnippet, shownOn, tagSnippet, type Shown} from './snippets.js';
import {copyText, fileName, saveFile} from './take.js';
import {titleOf} from './words.js';
import {ALONG, FORMS, faultWords, longLinkWords, optionWords, snippetFallback, unreadableWords} from './words-along.js';

/** Which shots are meant: the one on the bench, all kept, or one of them. */
type Which = 'now' | 'all' | `${number}`;

/** More bytes than the most shots with the largest pictures take. */
const LARGEST_FILE = 250_000_000;

/** Everything that takes shots out of the page and brings them in. Loaded when somebody looks for it. */
export class Along {
  #which: Which = 'now';
  #tag = '';
  #pasted = '';
  #fault = '';
  #cardFault = '';
  /** What was copied last, or is to be copied by hand. */
  #copying: {readonly id: string; readonly text: string; readonly done: boolean} | null = null;
  #qr: {readonly link: string; readonly code: QrCode | null} | null = null;

  /**
   * @param changed - called when there is something new to show
   * @param state - the shot as it stands
   */
  constructor(private readonly sheet: ShotSheet, private readonly changed: () => void, private readonly state: () => ShotState) {}

  // —— what is taken ——

  get #records(): readonly ShotRecord[] {
    const {shots} = this.sheet;
    if (this.#which === 'all' && shots.length) return shots;
    const one = shots[Number(this.#which)];
    return [one ?? {...this.sheet.record, title: this.sheet.record.title || titleOf(shots.length + 1)}];
  }

  #text(form: SheetForm): string {
    return writeSheets(this.#records.map(sheetOf), form);
  }

  async #card(): Promise<Card> {
    const shots = await Promise.all(this.#records.map(async (record) => {
      const size = record.picture ? await pictureSize(record.picture, drawKept) : undefined;
      return {sheet: sheetOf(record), picture: record.picture && size ? {url: record.picture, ...size} : undefined};
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
    this.changed();
    if (done) return;
    await this.sheet.updateComplete;
    const area = this.sheet.renderRoot.querySelector<HTMLTextAreaElement>(`#${id}-by-hand`);
    area?.focus();
    area?.select();
  }

  async #saveCard(form: 'svg' | 'png' | 'print'): Promise<void> {
    const card = await this.#card();
    this.#cardFault = '';
    if (form === 'print') this.#cardFault = printCard(card) ? '' : ALONG.noPrint;
    else {
      const file = form === 'svg' ? cardSvg(card) : await cardPng(card);
      if (file) saveFile(this.#fileName(form), file);
      else this.#cardFault = ALONG.noPng;
    }
    this.changed();
  }

  async #toggleQr(): Promise<void> {
    if (this.#qr) this.#qr = null;
    else {
      const {qrCode} = await import('./qr.js');
      const {link} = this.sheet;
      this.#qr = {link, code: qrCode(link)};
    }
    this.changed();
  }

  /** The code follows the shot while it is shown. */
  #followQr(link: string): void {
    if (!this.#qr || this.#qr.link === link) return;
    this.#qr = {...this.#qr, link};
    void import('./qr.js').then(({qrCode}) => {
      this.#qr &&= {link, code: qrCode(link)};
      this.changed();
    });
  }

  #import(text: string, name: string): void {
    const read = readDocument(text);
    if (isFault(read)) {
      this.#fault = faultWords(read, name);
      this.#pasted = name ? this.#pasted : text;
    } else {
      this.#fault = this.#pasted = '';
      this.sheet.addShots(read);
    }
    this.changed();
  }

  async #open(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    input.value = '';
    if (!file) return;
    const text = file.size > LARGEST_FILE ? null : await file.text().catch(() => null);
    if (text !== null) this.#import(text, file.name);
    else {
      this.#fault = unreadableWords(file.name);
      this.changed();
    }
  }

  // —— drawing ——

  #copyButton(id: string, label: string, text: () => string): TemplateResult {
    const {done} = this.#copying?.id === id ? this.#copying : {done: false};
    return html`<button type="button" data-copy=${id} @click=${() => { void this.#copy(id, text()); }}>${label}${done ? html` <span role="status">· ${ALONG.copied}</span>` : nothing}</button>`;
  }

  #byHand(...ids: readonly string[]): TemplateResult | typeof nothing {
    const copying = this.#copying;
    if (!copying || copying.done || !ids.includes(copying.id)) return nothing;
    return html`<div class="field wide"><label for="${copying.id}-by-hand">${ALONG.copyHere}</label>
      <textarea class="code" id="${copying.id}-by-hand" readonly rows="5" .value=${copying.text}></textarea></div>`;
  }

  renderAlong(): TemplateResult {
    const {shots} = this.sheet;
    const options: readonly (readonly [Which, string])[] = [['now', ALONG.now], ...(shots.length ? [['all', ALONG.all] as const] : []),
      ...shots.map(({title}, at) => [`${at}`, optionWords(at + 1, title)] as const)];
    return html`<div class="along">
      ${this.#renderLink()}
      <div>
        <h3>${ALONG.textHead}</h3>
        ${choiceField<Which>({id: 'which', label: ALONG.what, value: options.some(([value]) => value === this.#which) ? this.#which : 'now', options,
          onChoose: (which) => { this.#which = which; this.#copying = null; this.changed(); }})}
        <div class="row">${(Object.keys(FORMS) as SheetForm[]).map((form) => this.#copyButton(form, FORMS[form], () => this.#text(form)))}</div>
        ${this.#byHand(...Object.keys(FORMS))}
        <h3>${ALONG.cardHead}</h3>
        <div class="row">
          <button type="button" @click=${() => { void this.#saveCard('svg'); }}>${ALONG.svg}</button>
          <button type="button" @click=${() => { void this.#saveCard('png'); }}>${ALONG.png}</button>
          <button type="button" @click=${() => { void this.#saveCard('print'); }}>${ALONG.print}</button>
        </div>
        ${this.#cardFault ? html`<p class="problem" role="alert">${this.#cardFault}</p>` : nothing}
      </div>
      ${this.#renderFile()}
    </div>`;
  }

  #renderLink(): TemplateResult {
    const {link} = this.sheet;
    this.#followQr(link);
    const qr = this.#qr;
    return html`<div>
      <h3>${ALONG.linkHead}</h3>
      <p class="address">${link}</p>
      <div class="row">
        ${this.#copyButton('link', ALONG.copyLink, () => link)}
        <button type="button" class="show-qr" aria-expanded=${qr ? 'true' : 'false'} @click=${() => { void this.#toggleQr(); }}>${qr ? ALONG.hideQr : ALONG.showQr}</button>
      </div>
      ${this.#byHand('link')}
      ${qr?.code ? html`<svg class="qr" viewBox="0 0 ${qr.code.size} ${qr.code.size}" role="img" aria-label=${ALONG.qr} shape-rendering="crispEdges">
        <rect width=${qr.code.size} height=${qr.code.size}></rect><path d=${qr.code.path}></path></svg>` : nothing}
      ${qr && !qr.code ? html`<p class="problem">${longLinkWords(link.length)}</p>` : nothing}
    </div>`;
  }

  #renderFile(): TemplateResult {
    return html`<div>
      <h3>${ALONG.fileHead}</h3>
      <div class="row">
        <button type="button" class="save" @click=${() => { saveFile(this.#fileName('json'), new Blob([writeDocument(this.#records)], {type: 'application/json'})); }}>${ALONG.save}</button>
        ${this.#copyButton('file', ALONG.copyFile, () => writeDocument(this.#records))}
        <label class="pick">${ALONG.open}<input type="file" accept=".json,application/json" @change=${(event: Event) => { void this.#open(event.target as HTMLInputElement); }}></label>
      </div>
      ${this.#byHand('file')}
      <div class="field">
        <label for="pasted">${ALONG.paste}</label>
        <textarea class="code" id="pasted" rows="3" spellcheck="false" .value=${live(this.#pasted)} aria-invalid=${this.#fault ? 'true' : nothing} aria-describedby=${this.#fault ? 'fault' : nothing}
          @input=${(event: Event) => { this.#pasted = (event.target as HTMLTextAreaElement).value; }}></textarea>
        ${this.#fault ? html`<p class="problem" id="fault" role="alert">${this.#fault}</p>` : nothing}
      </div>
      <button type="button" class="add" @click=${() => { this.#import(this.#pasted, ''); }}>${ALONG.take}</button>
    </div>`;
  }

  renderPage(): TemplateResult {
    const {sheet} = this;
    const root = sheet.getRootNode() as Document | ShadowRoot;
    const keys = (sheet.constructor as typeof ShotSheet).shotKeys;
    const shown = shownOn(root, sheet.bench, {tag: sheet.localName, keys, bench: sheet.bench});
    const {tag, ...rest} = (shown.find((one) => one.tag === this.#tag) ?? shown[0]) as Shown;
    const settings = settingsText(this.state().values);
    const fallback = snippetFallback(settings);
    const snippets = [
      ['tag', ALONG.tagSnippet, tagSnippet({tag, ...rest}, this.state(), fallback)],
      ['script', ALONG.scriptSnippet, scriptSnippet(tag, sheet.scripts)],
      ['frame', ALONG.frameSnippet, frameSnippet(sheet.link, settings)],
      ['plain', ALONG.plainSnippet, writeSheets([sheetOf(sheet.record)], 'text')],
    ] as const;
    return html`<div class="along">
      ${shown.length > 1 ? html`<div class="wide">${choiceField({id: 'tag', label: ALONG.tag, value: tag, options: shown.map((one) => [one.tag, one.tag] as const),
        onChoose: (chosen) => { this.#tag = chosen; this.#copying = null; this.changed(); }})}</div>` : nothing}
      ${snippets.map(([id, label, text]) => html`<div>
        <div class="field"><label for="snippet-${id}">${label}</label><textarea class="code" id="snippet-${id}" readonly rows="6" spellcheck="false" .value=${text}></textarea></div>
        ${this.#copyButton(`snippet-${id}`, ALONG.copy, () => text)}
        ${this.#byHand(`snippet-${id}`)}
      </div>`)}
    </div>`;
  }
}
