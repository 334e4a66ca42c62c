/** Addresses inside the site, which may live in a sub-folder. */

/** The address of a page or file of ours under the site's base; `address` starts with a slash. */
export function path(address: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}${address}`;
}
