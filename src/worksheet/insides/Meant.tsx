/** Behind a refusal: what to type instead, where what was typed lets it be told. */

import { meantInstead } from '../../form/meant.ts';
import type { FieldPath } from '../../form/paths.ts';
import { part } from '../kit/part.tsx';

/** The sentence; nothing where nothing can be offered. */
export const Meant = part<{ readonly path: FieldPath }>(({ path }, sheet) => {
  const meant = meantInstead(path, sheet.text(path), sheet.shown().system);
  return meant ? ` ${meant.says}` : null;
});
