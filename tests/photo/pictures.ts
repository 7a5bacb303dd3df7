/** Pictures made in the test, so that what should be read from them is known. */

/** A file drawn on a canvas. */
export async function drawn(
  width: number, height: number, draw: (pen: OffscreenCanvasRenderingContext2D) => void,
  {type = 'image/png', quality = 0.95, name = 'drawn'}: {type?: string; quality?: number; name?: string} = {},
): Promise<File> {
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d')!;
  draw(pen);
  const blob = await canvas.convertToBlob({type, quality});
  if (blob.type !== type) throw new Error(`this browser writes no ${type}`);
  return new File([blob], name, {type});
}

/** Fills a rectangle with a colour given as codes. */
export function fill(
  pen: OffscreenCanvasRenderingContext2D, colour: readonly [number, number, number], x: number, y: number, w: number, h: number,
): void {
  pen.fillStyle = `rgb(${colour.join(' ')})`;
  pen.fillRect(x, y, w, h);
}

/** A PNG with the given header and chunks; the image data is packed by the browser's own deflate. */
export async function png(
  {width, height, bits, type, rows, chunks = []}:
  {width: number; height: number; bits: number; type: number; rows: Uint8Array; chunks?: readonly (readonly [string, Uint8Array])[]},
): Promise<File> {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header.set([bits, type, 0, 0, 0], 8);
  const packed = new Response(new Blob([rows as BlobPart]).stream().pipeThrough(new CompressionStream('deflate')));
  const parts = [
    Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), chunk('IHDR', header),
    ...chunks.map(([name, body]) => chunk(name, body)),
    chunk('IDAT', new Uint8Array(await packed.arrayBuffer())), chunk('IEND', new Uint8Array(0)),
  ];
  return new File(parts as BlobPart[], 'made.png', {type: 'image/png'});
}

function chunk(name: string, body: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(body.length + 12);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, body.length);
  bytes.set(Array.from(name, (letter) => letter.charCodeAt(0)), 4);
  bytes.set(body, 8);
  view.setUint32(body.length + 8, crc(bytes.subarray(4, body.length + 8)));
  return bytes;
}

/** CRC-32 as PNG uses it. Source: PNG specification, annex D. */
function crc(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  }
  return (rest ^ 0xffffffff) >>> 0;
}

/** Bytes of a file. */
export async function bytesOf(file: Blob): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await file.arrayBuffer());
}

/** One of the sample shots. */
export async function shot(name: string): Promise<File> {
  const response = await fetch(new URL(`../../demo/shots/${name}`, import.meta.url));
  if (!response.ok) throw new Error(`no shot ${name}`);
  return new File([await response.blob()], name, {type: 'image/jpeg'});
}
