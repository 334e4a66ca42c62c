// Before the first paint of the worksheet: its parts stand open as they were left; on a first visit the first alone does.
(() => {
  let parts = 'start';
  try {
    parts = localStorage.getItem('worksheet-parts') ?? parts;
  } catch {
    // nothing is remembered where storage is forbidden
  }
  const open = parts.split(' ');
  const observer = new MutationObserver((changes) => {
    for (const node of changes.flatMap(({ addedNodes }) => [...addedNodes])) {
      if (node instanceof Element && node.matches('.part > details'))
        node.open = open.includes(node.parentElement.id);
    }
  });
  observer.observe(document.documentElement, { childList: true, subtree: true });
  addEventListener('DOMContentLoaded', () => observer.disconnect());
})();
