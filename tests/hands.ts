import {executeServerCommand} from '@web/test-runner-commands';

/** Presses the last key while the others are held: `chord('Shift', 'ArrowLeft')`. Works in every engine. */
export async function chord(...keys: string[]): Promise<void> {
  await executeServerCommand('chord', keys);
}
