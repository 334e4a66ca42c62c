// Before the first paint: what is known of the reader, and boxes in their units. Inside another site's page, nothing but a way out,
// unless the page is made to be there.
(() => {
  const root = document.documentElement;
  try {
    if (root.dataset.embed === undefined) void top.location.href; // another site's address may not be read
  } catch {
    addEventListener('DOMContentLoaded', () => {
      const { href } = location;
      const way = document.createElement('a');
      document.body.replaceChildren(
        Object.assign(way, { href, target: '_blank', textContent: 'Open this page by itself' }),
      );
    });
  }
  root.dataset.script = '';
  if (location.search === '?projector') root.dataset.projector = '';
  let units = null;
  try {
    units = localStorage.getItem('units');
    if (localStorage.getItem('worksheet-open')) root.dataset.kept = ''; // a sheet will be drawn
    if (localStorage.getItem('lessons')) root.dataset.leftOff = '';
  } catch {
    // nothing is remembered where storage is forbidden
  }
  if (units !== 'metric' && units !== 'us') {
    units = /-(US|LR|MM)$/.test(navigator.language) ? 'us' : 'metric';
  }
  root.dataset.units = units;
  if (units !== 'us') return;
  const observer = new MutationObserver(() => {
    for (const box of document.querySelectorAll('[data-us]')) {
      const us = Object.entries(JSON.parse(box.dataset.us));
      for (const [name, value] of us) box.setAttribute(name, value);
      box.removeAttribute('data-us');
    }
  });
  observer.observe(root, { childList: true, subtree: true });
  addEventListener('DOMContentLoaded', () => observer.disconnect());
})();
