/** A row that is struck out: its button, and the box for the reason, with which it stays on the sheet unused. */
import type { JSX } from 'preact';
import type { BoxPath } from '../../form/paths.ts';
import { focusSoon } from '../kit/focus-soon.ts';
import { idOf } from '../kit/ids.ts';
import { part } from '../kit/part.tsx';
import type { SheetView } from '../state/view.ts';
import { pathOf } from './columns.ts';

const NO_REASON = 'no reason given';

interface ButtonProps {
  readonly row: number;
  readonly isStruck: boolean;
  readonly isOpen: boolean; // the box for the reason
}

function press({ row, isStruck, isOpen }: ButtonProps, sheet: SheetView): void {
  const path = pathOf(row, 'struck');
  const isUsed = !isStruck && !isOpen;
  sheet.opened.value = isUsed ? path : undefined;
  sheet.run({ do: 'type', path, text: isUsed ? NO_REASON : '' });
  if (isUsed) focusSoon(path);
}

/** Strikes the row out and opens the box for the reason; takes a row that is struck out back. */
export const StrikeButton = part<ButtonProps>((props, sheet) => {
  const { row, isStruck, isOpen } = props;
  const name = sheet.shown().row(row);
  return (
    <button
      class="row-button no-print"
      type="button"
      aria-label={isStruck ? `Use ${name} again` : `Strike out ${name}`}
      aria-expanded={isStruck || isOpen}
      onClick={() => press(props, sheet)}
    >
      {isStruck ? 'use' : 'strike'}
    </button>
  );
});

interface ReasonProps {
  readonly path: BoxPath;
  readonly columns: number;
  readonly children: JSX.Element; // the box
}

/** The line under the row, with its reason; it stays while its box is typed in, whatever stands there. */
export const ReasonLine = part<ReasonProps>(({ path, columns, children }, sheet) => {
  const hold = () => {
    sheet.opened.value = path;
  };
  return (
    <tr class="row-struck" onFocusIn={hold}>
      <td />
      <td colSpan={columns}>
        <label for={idOf(path)}>Struck out and not used. Why?</label>
        {children}
      </td>
    </tr>
  );
});
