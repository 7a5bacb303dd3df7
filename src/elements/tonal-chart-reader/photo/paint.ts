import type {Photo} from '../../../photo/open.js';
import {isClosed} from '../../shared/photo/opener.js';

/** Shows the preview of a photo on a canvas. */
export class Painter {
  #drawn: Photo | undefined;

  paint(photo: Photo, canvas: HTMLCanvasElement): void {
    const {preview, width, height} = photo;
    if (isClosed(photo) || (this.#drawn === photo && canvas.width === preview.width)) return;
    this.#drawn = photo;
    canvas.width = preview.width;
    canvas.height = preview.height;
    // Frames later: the sheet is laid out in the first, the chart drawn anew in the second, and each is enough for one.
    requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => { void this.#handOver(photo, canvas); })));
    canvas.parentElement?.style.setProperty('--ratio', String(width / height));
  }

  /** Shows a copy, since the preview itself is shared on the bench; it is handed over, not drawn, which takes no time. */
  async #handOver(photo: Photo, canvas: HTMLCanvasElement): Promise<void> {
    if (this.#drawn !== photo || isClosed(photo)) return;
    const copy = await createImageBitmap(photo.preview);
    if (this.#drawn === photo) canvas.getContext('bitmaprenderer')?.transferFromImageBitmap(copy);
  }
}
