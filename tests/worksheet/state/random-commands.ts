/** Commands as anyone might give them, for laws. */
import fc from 'fast-check';
import { documentOf } from '../../../src/form/document.ts';
import { placedTexts } from '../../../src/form/pasting.ts';
import type { ChoicePath } from '../../../src/form/paths.ts';
import { bareUnits } from '../../../src/form/units.ts';
import type { Command } from '../../../src/worksheet/state/project.ts';
import { anyPath, anySheet, anyTyping } from '../../form/random-sheet.ts';

const anyList = fc.constantFrom('readings', 'ways', 'ways.2.readings' as const);
const anyCells = fc.array(fc.array(fc.string({ maxLength: 5 }), { maxLength: 6 }), {
  maxLength: 6,
});

/** Everything but a change of units. */
export const anyStep: fc.Arbitrary<Command> = fc.oneof(
  anyTyping.map(([path, text]): Command => ({ do: 'type', path, text })),
  anyTyping.map(([path, text]): Command => ({ do: 'choose', path: path as ChoicePath, text })),
  fc
    .tuple(anyPath, anyCells)
    .map(([path, cells]): Command => ({ do: 'fill', path, texts: placedTexts(path, cells) })),
  anyPath.map((path): Command => ({ do: 'clear', path })),
  fc
    .tuple(fc.constantFrom('addRow', 'removeRow'), anyList, fc.nat(15))
    .map(([act, path, row]): Command => ({ do: act, path, row })),
  anySheet.map((typed): Command => ({ do: 'load', document: documentOf(typed, bareUnits('us')) })),
);

/** Any command. */
export const anyCommand: fc.Arbitrary<Command> = fc.oneof(
  { weight: 6, arbitrary: anyStep },
  {
    weight: 1,
    arbitrary: fc.constantFrom('metric', 'us').map((system): Command => ({ do: 'units', system })),
  },
);
