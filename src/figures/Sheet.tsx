/**
 * The sheet a figure is drawn on: its size, and where its finding and its description are to be found by who listens.
 * Units: drawing units.
 * Source: definition.
 */
import type { ComponentChildren } from 'preact';

interface SheetProps {
  /** The figure's own prefix of ids, as its body writes them. */
  readonly idPrefix: string;
  readonly size: { readonly width: number; readonly height: number };
  readonly children: ComponentChildren;
}

/** A group, not a picture: it may hold handles that are dragged and reached by keyboard. */
export function Sheet({ idPrefix, size, children }: SheetProps) {
  return (
    <svg
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="group"
      aria-labelledby={`${idPrefix}-finding`}
      aria-describedby={`${idPrefix}-description`}
    >
      {children}
    </svg>
  );
}
