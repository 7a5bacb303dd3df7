import {noChange} from 'lit';
import {Directive, directive, type DirectiveParameters, type ElementPart, type PartInfo, PartType} from 'lit/directive.js';

type TextControl = HTMLInputElement | HTMLTextAreaElement;

/**
 * Shows text in a field, but never over what a reader is typing: while they are at it the field is theirs, whatever
 * redraws the element. The field is given back when its change has been told.
 */
class TypedText extends Directive {
  #typing = false;
  #listening = false;

  constructor(info: PartInfo) {
    super(info);
    if (info.type !== PartType.ELEMENT) throw new Error('typedText belongs on the field itself');
  }

  render(_text: string): unknown {
    return noChange;
  }

  override update(part: ElementPart, [text]: DirectiveParameters<this>): unknown {
    const field = part.element as TextControl;
    if (!this.#listening) {
      this.#listening = true;
      field.addEventListener('input', () => { this.#typing = true; });
      // In the capture phase: whoever hears the change finds the field given back.
      field.addEventListener('change', () => { this.#typing = false; }, {capture: true});
      field.addEventListener('blur', () => { this.#typing = false; });
    }
    if (!this.#typing && field.value !== text) field.value = text;
    return noChange;
  }
}

/** On an `<input>` or `<textarea>`: `html\`<input ${typedText(text)}>\``. */
export const typedText = directive(TypedText);
