/** A way to a part of the sheet, which opens on the way there. */
import type { ComponentChildren, JSX } from 'preact';
import type { PartId } from '../folds/sheet-parts.ts';

/** The link. */
export function PartLink({
  to,
  children,
}: {
  readonly to: PartId;
  readonly children: ComponentChildren;
}): JSX.Element {
  return <a href={`#${to}`}>{children}</a>;
}
