import 'lampblack/elements/stop-trade-dial';

document.querySelector('stop-trade-dial')?.addEventListener('shot-change', ({shot}) => {
  document.title = `ISO ${shot.iso}`;
});
