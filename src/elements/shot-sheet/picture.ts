import type {CropShare} from '../../core/shot/shot.js';

/** Longer side of a kept picture, pixels. */
export const PICTURE_SIDE = 320;

/** Quality of the JPEG: small, and no blocks that show at this size. */
const QUALITY = 0.8;

/** Draws the part of a picture that is kept, as small as it will be. @returns whether there was anything to draw */
export function drawSmall(canvas: HTMLCanvasElement, picture: ImageBitmap, {left, top, width, height}: CropShare): boolean {
  const [w, h] = [picture.width * width, picture.height * height];
  const context = canvas.getContext('2d');
  if (!context || !(w >= 1 && h >= 1)) return false;
  const scale = Math.min(1, PICTURE_SIDE / Math.max(w, h));
  canvas.width = Math.max(1, Math.round(w * scale));
  canvas.height = Math.max(1, Math.round(h * scale));
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, picture.width * left, picture.height * top, w, h, 0, 0, canvas.width, canvas.height);
  return true;
}

/** The small picture as a data: address. */
export function smallPicture(picture: ImageBitmap, crop: CropShare): string | undefined {
  const canvas = document.createElement('canvas');
  const url = drawSmall(canvas, picture, crop) ? canvas.toDataURL('image/jpeg', QUALITY) : '';
  return url.startsWith('data:image/') ? url : undefined;
}

/**
 * Draws a kept picture. Not as an `<img>`: strict pages forbid pictures from data: addresses, and this needs none.
 * @returns whether it could be drawn
 */
export async function drawKept(canvas: HTMLCanvasElement, url: string): Promise<boolean> {
  const [head = '', body = ''] = url.split(',');
  try {
    const bytes = Uint8Array.from(atob(body), (sign) => sign.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], {type: head.slice(5).split(';')[0] ?? ''}));
    drawSmall(canvas, bitmap, {left: 0, top: 0, width: 1, height: 1});
    bitmap.close();
    return true;
  } catch (error) {
    // A picture that is damaged, or of a kind that this browser does not know.
    if (!(error instanceof DOMException)) throw error;
    return false;
  }
}
