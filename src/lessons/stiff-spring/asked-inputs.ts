/**
 * The pull that the lesson asks about first, round in the reader's own unit, as the page says it.
 * Units: SI.
 * Source: definition.
 */
import { inputsAt } from '../../models/define-model.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { asked, stiffSpring } from './model.ts';

/** The inputs at that pull. */
export const askedInputs = (system: UnitSystem) => inputsAt(stiffSpring, asked, system);
