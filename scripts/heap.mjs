/** What a page has kept, once everything that can be thrown away is: only Chromium can be asked. */

/** The command `heap`: bytes, nodes and listeners after garbage collection, and workers that run. `false` elsewhere. */
export function heapPlugin() {
  const talks = new WeakMap();
  return {
    name: 'heap',
    async executeCommand({command, session}) {
      if (command !== 'heap') return undefined;
      if (!/^Chrom/.test(session.browser.name)) return false;
      const page = session.browser.getPage(session.id);
      if (!talks.has(page)) {
        const talk = await page.createCDPSession();
        await talk.send('Performance.enable');
        talks.set(page, talk);
      }
      const talk = talks.get(page);
      await talk.send('HeapProfiler.collectGarbage');
      await talk.send('HeapProfiler.collectGarbage');
      const {metrics} = await talk.send('Performance.getMetrics');
      const {JSHeapUsedSize: bytes, Nodes: nodes, JSEventListeners: listeners} = Object.fromEntries(metrics.map(({name, value}) => [name, value]));
      return {bytes, nodes, listeners, workers: page.workers().length};
    },
  };
}
