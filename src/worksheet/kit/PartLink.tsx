/** A way to a part of the sheet, which opens on the way there. */
import type { ComponentChildren } from 'preact';
import { setOpen } from '../state/open-parts.ts';
import type { PartId } from '../state/sheet-parts.ts';
import { part } from './part.tsx';

/** The link. */
export const PartLink = part<{ readonly to: PartId; readonly children: ComponentChildren }>(
  ({ to, children }, sheet) => (
    <a href={`#${to}`} onClick={() => setOpen(sheet.openParts, to, true)}>
      {children}
    </a>
  ),
);
