/** What the build tells the service worker of the files of the site, and the worker tells a page. */

/** A file to keep, by its path below the base. */
export interface KeptFile {
  readonly path: string;
  readonly bytes: number;
  readonly integrity: string;
  /** Whether its name holds a hash of what is in it. */
  readonly isHashed: boolean;
}

/** One version of the site: the files without which it is not kept, and those that may come later. */
export interface SiteFiles {
  readonly base: string;
  readonly version: string;
  readonly essential: readonly KeptFile[];
  readonly further: readonly KeptFile[];
}

/** What the worker has. */
export interface StoreState {
  readonly missing: number; // files
  readonly bytes: number; // of the missing ones
}
