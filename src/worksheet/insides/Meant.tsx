/** Behind a refusal or a doubt: what to type instead, where what was typed lets it be told, and a button that writes it. */

import { meantInstead } from '../../form/meant.ts';
import type { FieldPath } from '../../form/paths.ts';
import { part } from '../kit/part.tsx';

/** The sentence with its button; nothing where nothing can be offered. */
export const Meant = part<{ readonly path: FieldPath }>(({ path }, sheet) => {
  const [typed, graduation] = [sheet.text(path), sheet.text('rig.graduation')];
  const meant = meantInstead(path, typed, sheet.shown().system, graduation);
  if (!meant) return null;
  const texts = Object.entries(meant.offers);
  return (
    <>
      {` ${meant.says} `}
      <button
        class="button plain no-print"
        type="button"
        onClick={() => sheet.run({ do: 'fill', path, texts })}
      >
        Write {texts.map(([, text]) => text).join(' and ')}
      </button>
    </>
  );
});
