/** Puts text on the clipboard. @returns whether it is there: a page without a secure origin, or a reader, may forbid it */
export function copyText(text: string): Promise<boolean> {
  return Promise.resolve().then(() => navigator.clipboard.writeText(text)).then(() => true, () => false);
}

/** Gives the reader a file to keep. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  setTimeout(() => { URL.revokeObjectURL(link.href); }, 60_000);
}

/** A name any file system takes: `lantern-bearer.json`. */
export function fileName(title: string, ending: string): string {
  const plain = title.normalize('NFKD').replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '').toLowerCase().slice(0, 60);
  return `${plain || 'shots'}.${ending}`;
}
