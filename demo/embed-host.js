/**
 * For pages that show checks in frames: gives every frame marked data-lampblack the height that it asks for.
 *
 *   <iframe data-lampblack src="https://your.site/embed.html?tag=stop-trade-dial#shot=1&aperture=f/8"
 *           title="The same light, another setting" sandbox="allow-scripts" width="100%" height="820"></iframe>
 *   <script src="https://your.site/embed-host.js" async></script>
 *
 * A message counts when it comes from the window of such a frame, from the origin the frame was loaded from (a sandbox
 * without allow-same-origin has the origin "null"), and is {lampblack: 1, height} with a height that is a number.
 */
(() => {
  const LEAST = 80;
  const MOST = 4000;
  const frames = () => document.querySelectorAll('iframe[data-lampblack]');

  /** The origin a frame's messages come from. */
  function originOf(frame) {
    const sandboxed = frame.hasAttribute('sandbox') && !frame.sandbox.contains('allow-same-origin');
    return sandboxed ? 'null' : new URL(frame.src, document.baseURI).origin;
  }

  addEventListener('message', ({source, origin, data}) => {
    if (typeof data !== 'object' || data === null || data.lampblack !== 1) return;
    if (typeof data.height !== 'number' || !Number.isFinite(data.height)) return;
    const frame = [...frames()].find(({contentWindow}) => contentWindow === source);
    if (!frame || origin !== originOf(frame)) return;
    // Where the host's styles count borders in, they come on top.
    const border = getComputedStyle(frame).boxSizing === 'border-box' ? frame.offsetHeight - frame.clientHeight : 0;
    frame.style.height = `${Math.min(MOST, Math.max(LEAST, Math.ceil(data.height))) + border}px`;
  });

  // A frame that was there before this script has told its height to nobody.
  const ask = () => {
    for (const {contentWindow} of frames()) contentWindow?.postMessage({lampblack: 1, ask: 'height'}, '*');
  };
  ask();
  addEventListener('load', ask);
})();
