/** Under a torque of the plan without a unit, where the wrench has another than the box: what counts, and a button for the other. */
import type { BoxPath } from '../../form/paths.ts';
import { isBareNumber } from '../../form/units.ts';
import { unitLabel } from '../../units/label.ts';
import { part } from '../kit/part.tsx';
import { settingUnit } from '../words/plan-words.ts';

/** The sentence with its button. */
export const WrenchUnit = part<{ readonly path: BoxPath }>(({ path }, sheet) => {
  const shown = sheet.shown();
  const [typed, unit] = [sheet.text(path).trim(), settingUnit(shown)];
  const own = unitLabel(shown.load.name, shown.system);
  if (unit === own || !isBareNumber(typed)) return null;
  const text = `${typed} ${unit}`;
  return (
    <p class="hint">
      {typed} counts as {typed} {own} here; your wrench has {unit}.{' '}
      <button
        class="button plain"
        type="button"
        onClick={() => sheet.run({ do: 'fill', path, texts: [[path, text]] })}
      >
        Write {text}
      </button>
    </p>
  );
});
