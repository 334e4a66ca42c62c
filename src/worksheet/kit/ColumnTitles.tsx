/** The titles of a table's columns, each with the unit that its boxes take. */
import type { JSX } from 'preact';
import type { QuantityKind } from '../../units/kinds.ts';
import { Unit } from './Box.tsx';

/** A column: the cell of a row, its title, and the kind of quantity where it has a unit. */
export type TitledColumn = readonly [cell: string, title: string, kind: QuantityKind | undefined];

/** The cells of a line of titles. */
export function ColumnTitles({
  columns,
}: {
  readonly columns: readonly TitledColumn[];
}): JSX.Element {
  return (
    <>
      {columns.map(([cell, title, kind]) => (
        <th scope="col" key={cell}>
          {title}
          {kind && (
            <span class="unit">
              {' '}
              <Unit kind={kind} />
            </span>
          )}
        </th>
      ))}
    </>
  );
}
