/** Keeps only the WOFF2 faces of KaTeX's stylesheet: every browser that runs the site reads them. */

/** The Vite plugin: drops the .woff and .ttf alternatives before the build copies them. */
export function woff2Only() {
  return {
    name: 'woff2-only',
    enforce: 'pre',
    transform(code, id) {
      if (!/katex[^/]*\.css/.test(id)) return undefined;
      return code.replace(/,url\([^)]*\.(?:woff|ttf)\) format\("(?:woff|truetype)"\)/g, '');
    },
  };
}
