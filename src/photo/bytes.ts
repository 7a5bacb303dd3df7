/** The first four letters of the word at `at`, as file formats name their parts; '' past the end. */
export function fourLetters(bytes: Uint8Array, at: number): string {
  return at + 4 <= bytes.length ? String.fromCharCode(...bytes.subarray(at, at + 4)) : '';
}

/** Whether `bytes` has `pattern` at `at`. */
export function startsWith(bytes: Uint8Array, pattern: readonly number[], at = 0): boolean {
  return pattern.every((byte, index) => bytes[at + index] === byte);
}

/** Whole number of two bytes, the highest first unless `little`; 0 past the end. */
export function word16(bytes: Uint8Array, at: number, little = false): number {
  const [first, second] = [bytes[at] ?? 0, bytes[at + 1] ?? 0];
  return little ? first + second * 0x100 : first * 0x100 + second;
}

/** Whole number of four bytes, the highest first unless `little`; 0 past the end. */
export function word32(bytes: Uint8Array, at: number, little = false): number {
  const [low, high] = little ? [at, at + 2] : [at + 2, at];
  return word16(bytes, low, little) + word16(bytes, high, little) * 0x10000;
}
