import {applyTables, gainTables, type Gains} from '../../../core/white/gains.js';

/** Widest preview that is worked on, px: a larger one would hold the page for longer than a frame. */
const WIDEST = 720;

/** Draws a picture as shot on the left of a line and with the gains, in linear light, on the right. */
export class Wipe {
  #from: ImageBitmap | undefined;
  #key = '';
  #before: HTMLCanvasElement | undefined;
  #after: HTMLCanvasElement | undefined;

  /**
   * @param picture - preview of the photo, open
   * @param gains - factors on linear light
   * @param stops - exposure to add
   * @param share - where the line stands, 0 to 1
   */
  draw(canvas: HTMLCanvasElement, picture: ImageBitmap, gains: Gains, stops: number, share: number): void {
    const width = Math.min(WIDEST, picture.width);
    const height = Math.max(1, Math.round(width * picture.height / picture.width));
    const key = [gains.red, gains.blue, stops].join();
    if (picture !== this.#from || key !== this.#key || !this.#before || !this.#after) {
      this.#from = picture;
      this.#key = key;
      this.#before = sheet(width, height, picture);
      this.#after = balanced(this.#before, gains, stops);
    }
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
    }
    const pen = canvas.getContext('2d');
    const line = Math.round(width * share);
    pen?.drawImage(this.#after, 0, 0);
    if (line > 0) pen?.drawImage(this.#before, 0, 0, line, height, 0, 0, line, height);
  }
}

function sheet(width: number, height: number, picture?: CanvasImageSource): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  if (picture) penOf(canvas)?.drawImage(picture, 0, 0, width, height);
  return canvas;
}

function balanced(before: HTMLCanvasElement, gains: Gains, stops: number): HTMLCanvasElement {
  const {width, height} = before;
  const after = sheet(width, height);
  const pixels = penOf(before)?.getImageData(0, 0, width, height);
  if (!pixels) return after;
  const {data} = applyTables(pixels, gainTables(gains, stops));
  pixels.data.set(data);
  penOf(after)?.putImageData(pixels, 0, 0);
  return after;
}

/** A pen of a canvas that is read from. */
function penOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D | null {
  return canvas.getContext('2d', {willReadFrequently: true});
}
