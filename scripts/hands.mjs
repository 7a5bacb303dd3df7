/** What a tester's hands need beyond the runner: the same keys in every engine. */

/**
 * WebKit's driver takes several keys of one command for a chord, so that a doubled letter is lost. They go one by one.
 * @param launcher - of the webdriver kind
 */
export function oneKeyAtATime(launcher) {
  const send = launcher.sendKeys.bind(launcher);
  launcher.sendKeys = async (session, keys) => {
    for (const key of keys) await send(session, [key]);
  };
  launcher.chord = send;
  return launcher;
}

/** The command `chord`: some keys held while the last is pressed. */
export function chordPlugin() {
  return {
    name: 'chord',
    async executeCommand({command, payload, session}) {
      if (command !== 'chord') return undefined;
      const {browser} = session;
      if (browser.type === 'webdriver') {
        await browser.chord(session.id, payload);
        return true;
      }
      const {keyboard} = browser.getPage(session.id);
      const held = payload.slice(0, -1);
      for (const key of held) await keyboard.down(key);
      await keyboard.press(payload.at(-1));
      for (const key of held.reverse()) await keyboard.up(key);
      return true;
    },
  };
}
