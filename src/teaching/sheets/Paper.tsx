/** What goes to paper: the sheets, the key, or one after the other. */
import type { JSX } from 'preact';
import type { SheetChoices } from './choices.ts';
import type { DrawnSheet } from './drawn.ts';
import { Key } from './Key.tsx';
import { Sheets } from './Sheets.tsx';

/** A set as it is drawn. */
export interface PaperView extends Pick<SheetChoices, 'perPage' | 'print'> {
  readonly sheets: readonly DrawnSheet[];
}

/** The set. */
export function Paper({ sheets, perPage, print }: PaperView): JSX.Element {
  return (
    <>
      {print !== 'key' && <Sheets sheets={sheets} perPage={perPage} />}
      {print !== 'sheets' && <Key sheets={sheets} />}
    </>
  );
}
