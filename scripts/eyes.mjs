/** What a tester's eyes need beyond the runner: the page as somebody else sees it. */

/**
 * The command `media`: `{'prefers-color-scheme': 'dark', 'forced-colors': 'active'}`, and `{}` for things as they were.
 * Only Chromium can be asked; elsewhere the answer is `false`.
 */
export function mediaPlugin() {
  const talks = new WeakMap();
  return {
    name: 'media',
    async executeCommand({command, payload, session}) {
      if (command !== 'media') return undefined;
      if (!/^Chrom/.test(session.browser.name)) return false;
      const page = session.browser.getPage(session.id);
      if (!talks.has(page)) talks.set(page, await page.createCDPSession());
      const features = ['prefers-color-scheme', 'forced-colors', 'prefers-reduced-motion']
        .map((name) => ({name, value: payload[name] ?? ''}));
      await talks.get(page).send('Emulation.setEmulatedMedia', {features});
      return true;
    },
  };
}
