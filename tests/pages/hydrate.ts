/** What a page loads that takes server-rendered elements over: before anything of Lit, as its makers ask. */
import '@lit-labs/ssr-client/lit-element-hydrate-support.js';
import '../../src/elements/stop-trade-dial/define.js';
