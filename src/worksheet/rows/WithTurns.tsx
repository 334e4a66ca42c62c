/** Whether turns of the screw are noted too: their column is there only for who does. */
import { part } from '../kit/part.tsx';
import { isInUse } from './columns.ts';

/** The check box; it stays checked while something stands in the column. */
export const WithTurns = part((_, sheet) => {
  if (sheet.shown().load.name !== 'torque') return null;
  const isUsed = isInUse(sheet.cells('readings'), 'turns');
  return (
    <div class="choice no-print needs-script">
      <label>
        <input
          type="checkbox"
          checked={isUsed || sheet.withTurns.value}
          disabled={isUsed}
          onChange={({ currentTarget }) => {
            sheet.withTurns.value = currentTarget.checked;
          }}
        />
        <span>I also noted turns of the screw</span>
      </label>
    </div>
  );
});
