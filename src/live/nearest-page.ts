/** On the page for a wrong address: which of our own addresses comes nearest to what was asked for. */

const LEAST = 0.5; // share of letter pairs in common; below that a guess helps nobody

/** The pairs of neighbouring letters of an address, its slashes left out. */
function pairs(address: string): ReadonlySet<string> {
  const text = address.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
  return new Set(
    Array.from({ length: Math.max(0, text.length - 1) }, (_, i) => text.slice(i, i + 2)),
  );
}

/** How alike two addresses are, from 0 to 1: twice the pairs in common over all pairs of both. */
function likeness(one: string, other: string): number {
  const [mine, theirs] = [pairs(one), pairs(other)];
  const common = [...mine].filter((pair) => theirs.has(pair)).length;
  return (2 * common) / Math.max(1, mine.size + theirs.size);
}

/** The address most like the one that was asked for; undefined where none is near. */
export function nearestAddress(asked: string, addresses: readonly string[]): string | undefined {
  const [best] = addresses
    .map((address) => ({ address, alike: likeness(asked, address) }))
    .sort((one, other) => other.alike - one.alike);
  return best && best.alike >= LEAST ? best.address : undefined;
}

/** Points to the nearest of the pages that the text links to. */
export function tellNearest(): void {
  const room = document.querySelector<HTMLElement>('[data-nearest]');
  const { length } = document.body.dataset['base'] ?? '/'; // the folder of the site says nothing of the page
  const within = ({ pathname }: { readonly pathname: string }) => pathname.slice(length);
  const links = [...document.querySelectorAll<HTMLAnchorElement>('article li a')];
  const nearest = nearestAddress(within(location), links.map(within));
  const there = links.find((link) => within(link) === nearest);
  if (!room || !there) return;
  room.querySelector('a')?.replaceWith(there.cloneNode(true));
  room.hidden = false;
}
