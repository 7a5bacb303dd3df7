// Nobody reaches into a sandbox, so what a reader does there is asked for by message, and what there is to see is told.
const reader = document.querySelector('tonal-chart-reader');
addEventListener('message', ({source, data}) => {
  if (source !== parent) return;
  if (data.src) reader.setAttribute('src', data.src);
  if (!data.photo) return;
  const files = new DataTransfer();
  files.items.add(data.photo);
  reader.dispatchEvent(new DragEvent('drop', {dataTransfer: files, bubbles: true, cancelable: true}));
});
setInterval(() => {
  const text = (reader.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ');
  parent.postMessage({origin: self.origin, chart: Boolean(reader.shadowRoot?.querySelector('[part~="chart"]')), text}, '*');
}, 100);
