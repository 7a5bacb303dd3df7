import {settingsFromTags} from './settings.js';
import type {PhotoSettings, Tags} from './settings.js';

/**
 * Settings from the metadata in a picture file. The reader is loaded when the first file with metadata comes along.
 * Never fails: metadata that cannot be read is as good as none.
 * @param bytes - the whole file
 * @param size - pixels as stored
 */
export async function readSettings(
  bytes: Uint8Array<ArrayBuffer>, size: {readonly width: number; readonly height: number},
): Promise<PhotoSettings> {
  try {
    const {load} = await import('exifreader');
    const {exif} = load(bytes.buffer, {expanded: true, includeTags: {exif: true}});
    return settingsFromTags((exif ?? {}) as Tags, size.width > 0 ? size : undefined);
  } catch {
    return {leftOut: []};
  }
}
