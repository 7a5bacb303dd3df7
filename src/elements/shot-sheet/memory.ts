/** Why this device keeps nothing: the page or the reader forbids it, or there is no room. */
export type Forgetful = 'blocked' | 'full';

/** Name under which the shots of a bench are kept on the device. */
export function memoryKey(bench: string | null): string {
  return bench ? `lampblack-shots.${bench}` : 'lampblack-shots';
}

/** What was kept under `key`: text, `null` when nothing, or why nothing can be. */
export function recall(key: string): {readonly text: string | null} | Forgetful {
  return attempt((storage) => ({text: storage.getItem(key)}));
}

/** Keeps text. @returns why it could not, if it could not; what was kept before stays then */
export function remember(key: string, text: string): Forgetful | undefined {
  return attempt((storage) => { storage.setItem(key, text); return undefined; });
}

export function forget(key: string): void {
  attempt((storage) => { storage.removeItem(key); });
}

/** Browsers answer with a DOMException where storage is forbidden, and without storage where there is none. */
function attempt<T>(act: (storage: Storage) => T): T | Forgetful {
  try {
    const storage = globalThis.localStorage as Storage | null | undefined;
    return storage ? act(storage) : 'blocked';
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return error.name === 'QuotaExceededError' || error.name === 'NS_ERROR_DOM_QUOTA_REACHED' ? 'full' : 'blocked';
  }
}
