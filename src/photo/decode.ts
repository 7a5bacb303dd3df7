import type {Pixels} from '../core/tone/pixels.js';

/** Gives way to whoever waits, when the page's thread has been held long enough; does nothing in a worker. */
export type Breathe = () => Promise<void> | void;

/** Pixels read out of the browser's decoder at a time: a couple of milliseconds' work. */
const BAND_PIXELS = 2 ** 18;

/**
 * The picture in a file, turned the right way up and in sRGB. Whatever the file's profile, the browser converts it;
 * colours outside sRGB are cut off at its edge.
 * @throws when the browser cannot decode it
 */
export async function decodeBitmap(file: Blob): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file, {
      imageOrientation: 'from-image', premultiplyAlpha: 'none', colorSpaceConversion: 'default',
    });
  } catch (error) {
    // Browsers that do not know an option refuse it as a type error, and turn the picture anyway.
    if (!(error instanceof TypeError)) throw error;
    return createImageBitmap(file);
  }
}

/**
 * Pixels of a decoded picture. They are read in bands through a small canvas, so that no canvas has to be as large as
 * the picture: those are limited, and need the memory twice.
 * @throws {RangeError} when there is no memory for them
 */
export async function pixelsOf(bitmap: ImageBitmap, alpha: boolean, breathe: Breathe): Promise<Pixels> {
  const {width, height} = bitmap;
  const data = new Uint8ClampedArray(width * height * 4);
  const rows = Math.min(height, Math.max(1, Math.floor(BAND_PIXELS / width)));
  const pen = penOn(width, rows, alpha);
  for (let y = 0; y < height; y += rows) {
    const band = Math.min(rows, height - y);
    pen.drawImage(bitmap, 0, y, width, band, 0, 0, width, band);
    data.set(pen.getImageData(0, 0, width, band).data, y * width * 4);
    await breathe();
  }
  return {data, width, height};
}

function penOn(width: number, height: number, alpha: boolean): OffscreenCanvasRenderingContext2D | CanvasRenderingContext2D {
  const options: CanvasRenderingContext2DSettings = {alpha, willReadFrequently: true, colorSpace: 'srgb'};
  const pen = typeof OffscreenCanvas === 'undefined'
    ? pageCanvas(width, height).getContext('2d', options) : new OffscreenCanvas(width, height).getContext('2d', options);
  if (!pen) throw new RangeError(`no canvas of ${width} × ${height}`);
  pen.imageSmoothingEnabled = false;
  pen.globalCompositeOperation = 'copy';
  return pen;
}

function pageCanvas(width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [width, height];
  return canvas;
}

/** A small copy to show. */
export function previewOf(bitmap: ImageBitmap, longestSide: number): Promise<ImageBitmap> {
  const scale = Math.min(1, longestSide / Math.max(bitmap.width, bitmap.height));
  return createImageBitmap(bitmap, {
    resizeWidth: Math.max(1, Math.round(bitmap.width * scale)),
    resizeHeight: Math.max(1, Math.round(bitmap.height * scale)),
    resizeQuality: 'high',
  });
}
