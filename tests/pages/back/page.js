/** Goes to another page once every element speaks; come back, it works its elements and tells the test what they say. */
const [dial, bar, chart] = ['stop-trade-dial', 'sharp-zone-bar', 'tonal-chart-reader'].map((tag) => document.querySelector(tag));
const verdict = (el) => el.shadowRoot?.querySelector('.verdict')?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const verdicts = () => [dial, bar, chart].map(verdict);
const until = async (holds) => {
  for (const end = Date.now() + 15_000; !holds() && Date.now() < end;) await new Promise((resolve) => { setTimeout(resolve, 50); });
};
const tell = (said) => fetch('/told', {method: 'POST', body: JSON.stringify({page: location.search, ...said})});

let left;
addEventListener('pageshow', async ({persisted}) => {
  if (!persisted && performance.getEntriesByType('navigation')[0]?.type === 'back_forward') {
    const reasons = performance.getEntriesByType('navigation')[0].notRestoredReasons?.reasons?.map(({reason}) => reason) ?? [];
    await tell({persisted, reasons});
    return;
  }
  if (!persisted) {
    await until(() => verdicts().every(Boolean));
    // A reader's own act: it has to be there still.
    dial.shadowRoot.querySelector('[role=slider]').dispatchEvent(new KeyboardEvent('keydown', {key: 'ArrowRight', bubbles: true, composed: true}));
    await Promise.all([dial, bar].map(({updateComplete}) => updateComplete));
    left = verdicts();
    location.href = 'away.html';
    return;
  }
  const found = verdicts();
  dial.shadowRoot.querySelector('[role=slider]').dispatchEvent(new KeyboardEvent('keydown', {key: 'ArrowRight', bubbles: true, composed: true}));
  chart.setAttribute('crop', '20% 2% 60% 81%');
  await until(() => verdicts().every((said, at) => said !== left[at]));
  await tell({persisted, left, found, turned: verdicts()});
});
