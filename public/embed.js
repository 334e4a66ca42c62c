// For pages that hold a figure of this site in a frame: gives each such frame the height that its figure asks for.
(() => {
  const { origin } = new URL(document.currentScript.src);
  addEventListener('message', ({ origin: from, source, data }) => {
    const height = Number(data?.notebookHeight);
    if (from !== origin || !(height > 0 && height < 10_000)) return;
    for (const frame of document.querySelectorAll('iframe'))
      if (frame.contentWindow === source) frame.height = String(Math.ceil(height));
  });
})();
