/**
 * A picture of 16 × 8 pixels, all gray, that its metadata says to turn by a quarter: JPEG, written by hand after ITU-T T.81
 * and Exif 2.32.
 */
const TURNED = '/9j/4QAiRXhpZgAATU0AKgAAAAgAAQESAAMAAAABAAYAAAAAAAD/2wBDAAEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEB'
  + 'AQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQH/wAALCAAIABABAREA/8QAFAABAAAAAAAAAAAAAAAAAAAAAP/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AD//Z';

let finishes: Promise<boolean> | undefined;

/**
 * Decodes a JPEG picture by the browser's decoder for frames, apart from the page's thread. In some browsers the ordinary
 * one works on the page's thread whoever asks, a worker too: a tenth of a second for a large photo.
 * @returns the picture, the right way up and in sRGB, or `undefined` where there is no decoder for frames, or where it
 *   leaves turning and converting colours to others: those browsers' ordinary one keeps off the page's thread
 */
export async function decodeApart(jpeg: Uint8Array<ArrayBuffer>): Promise<ImageBitmap | undefined> {
  if (typeof ImageDecoder === 'undefined') return undefined;
  return await (finishes ??= finishesPictures()) ? pictureOf(jpeg) : undefined;
}

/** Whether a picture that has to be turned comes out turned. */
async function finishesPictures(): Promise<boolean> {
  const picture = await pictureOf(Uint8Array.from(atob(TURNED), (letter) => letter.charCodeAt(0)));
  const turned = picture?.width === 8;
  picture?.close();
  return turned;
}

/** `undefined` for what cannot be decoded, so that the ordinary decoder says what is wrong, and for unfinished colours. */
async function pictureOf(jpeg: Uint8Array<ArrayBuffer>): Promise<ImageBitmap | undefined> {
  let decoder: ImageDecoder | undefined;
  let frame: VideoFrame | undefined;
  try {
    decoder = new ImageDecoder({type: 'image/jpeg', data: jpeg});
    frame = (await decoder.decode()).image;
    const {primaries, transfer, matrix} = frame.colorSpace;
    // A frame that has colours to tell of is one whose colours are still to be converted, which some browsers then forget.
    return primaries ?? transfer ?? matrix ? undefined : await createImageBitmap(frame);
  } catch {
    return undefined;
  } finally {
    frame?.close();
    decoder?.close();
  }
}
