import {expect} from '@open-wc/testing';

/**
 * axe-core's rules, asked in Chromium alone: roles, names and ratios are the same in every engine, and asking costs more
 * than most tests.
 */
export async function expectAccessible(el: Element): Promise<void> {
  if (navigator.userAgent.includes('Chrome/')) await expect(el).to.be.accessible();
}
