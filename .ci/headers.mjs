/**
 * What a host should say with every file of the site, and why. Our own server says it; the README tells others.
 * The pages carry the same policy in themselves, as far as a page can.
 */

/** Headers for every file. */
export const HEADERS = [
  {
    name: 'Content-Security-Policy',
    value: "frame-ancestors 'none'",
    why: 'no other site shows ours inside a page of its own; the rest of the policy stands in each page',
  },
  {
    name: 'Cross-Origin-Opener-Policy',
    value: 'same-origin',
    why: 'a window that opens ours cannot reach into it',
  },
  {
    name: 'Permissions-Policy',
    value: 'camera=(), geolocation=(), microphone=(self), payment=(), usb=()',
    why: 'one lesson listens to a plucked band, once the reader asks it to; the site needs none of the others, so nothing on it may ask',
  },
  {
    name: 'Referrer-Policy',
    value: 'no-referrer',
    why: 'a site that a reader goes on to is not told from where',
  },
  {
    name: 'X-Content-Type-Options',
    value: 'nosniff',
    why: 'a file is what the host says it is',
  },
];

/** For the pages that are made to stand inside other sites' pages, instead of the policy above. */
export const EMBEDDED = {
  folder: 'embed/',
  name: 'Content-Security-Policy',
  value: 'frame-ancestors *',
  why: 'a figure for other people’s pages; it takes nothing from them and tells them its height alone',
};

/** For a file whose name holds a hash of what is in it, and for every other. */
export const CACHING = {
  hashed: 'public, max-age=31536000, immutable',
  other: 'no-cache',
};

const HASHED = /(^|\/)assets\/[^/]+\.[\w-]{8,}\.\w+$/;

/** Whether the name of a file, by its address below the base, holds a hash. */
export const isHashed = (address) => HASHED.test(address);

/** The headers of one file, by its address below the base. */
export function headersFor(address) {
  return {
    ...Object.fromEntries(HEADERS.map(({ name, value }) => [name, value])),
    ...(address.startsWith(EMBEDDED.folder) ? { [EMBEDDED.name]: EMBEDDED.value } : {}),
    'Cache-Control': isHashed(address) ? CACHING.hashed : CACHING.other,
  };
}
