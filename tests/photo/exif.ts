import 'piexifjs';

/** The little of piexifjs that the tests use; it puts itself on the page. */
interface Piexif {
  dump(tags: Readonly<Record<string, Readonly<Record<number, unknown>>>>): string;
  insert(exif: string, jpeg: string): string;
  readonly ImageIFD: Readonly<Record<string, number>>;
  readonly ExifIFD: Readonly<Record<string, number>>;
}
const piexif = () => (globalThis as unknown as {piexif: Piexif}).piexif;

/** The JPEG with these Exif tags written into it, by name; a rational is `[numerator, denominator]`. */
export async function withExif(jpeg: File, tags: Readonly<Record<string, unknown>>): Promise<File> {
  const {dump, insert, ImageIFD, ExifIFD} = piexif();
  const image: Record<number, unknown> = {};
  const exif: Record<number, unknown> = {};
  for (const [name, value] of Object.entries(tags)) {
    if (ExifIFD[name] !== undefined) exif[ExifIFD[name]] = value;
    else if (ImageIFD[name] !== undefined) image[ImageIFD[name]] = value;
    else throw new Error(`piexifjs knows no ${name}`);
  }
  const binary = Array.from(new Uint8Array(await jpeg.arrayBuffer()), (byte) => String.fromCharCode(byte)).join('');
  const written = insert(dump({'0th': image, Exif: exif}), binary);
  return new File([Uint8Array.from(written, (letter) => letter.charCodeAt(0))], jpeg.name, {type: 'image/jpeg'});
}
