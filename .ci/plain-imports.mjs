/**
 * A script that is fetched when it is wanted is fetched by the browser's own `import()`. The bundler's helper would look
 * for styles to fetch beside it; no such script here has styles of its own, and the build stops where one has. The
 * helper's lists of what to look for go with it.
 */
const HELPER = '\0vite/preload-helper.js';
const PLAIN = 'export const __vitePreload = (fetchIt) => fetchIt();';
const LISTS = /^const __vite__mapDeps=.*\n|,\s*__vite__mapDeps\(\[[\d,]*\]\)/gm;

const isStyled = ({ isDynamicEntry, viteMetadata }) =>
  isDynamicEntry && viteMetadata?.importedCss.size > 0;

/** The Vite plugin; the pages' own modules, which run in the build alone, are left as they are. */
export const plainImports = () => ({
  name: 'plain-imports',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  load: (id) => (id === HELPER ? PLAIN : undefined),
  generateBundle: {
    order: 'post',
    handler(_, files) {
      const styled = Object.values(files).find(isStyled);
      if (styled) this.error(`${styled.fileName} would be fetched without its styles`);
      for (const file of Object.values(files))
        if (file.type === 'chunk') file.code = file.code.replace(LISTS, '');
    },
  },
});
