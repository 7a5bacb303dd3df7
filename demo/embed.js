/** Loads the one check that the address or the page asks for. An ordinary script: a sandboxed frame may load no modules. */
(() => {
  const own = document.querySelector('meta[name="lampblack-tag"]')?.content;
  const tag = own ?? new URLSearchParams(location.search).get('tag') ?? '';
  const say = (text) => { document.querySelector('#check > p').textContent = text; };
  if (!/^[a-z]+(-[a-z]+)+$/.test(tag)) {
    say(tag ? `There is no check called “${tag.slice(0, 40)}”.` : 'The address names no check: ?tag=stop-trade-dial does.');
    return;
  }
  if (parent === window) {
    const alone = document.createElement('script');
    alone.src = new URL('embed-alone.js', document.currentScript.src).href;
    alone.dataset.tag = tag;
    document.head.append(alone);
  }
  const script = document.createElement('script');
  script.src = new URL(`lampblack/frame/${tag}.js`, document.currentScript.src).href;
  script.addEventListener('error', () => { say(`The check “${tag}” could not be loaded.`); });
  document.head.append(script);
})();
