/**
 * The dial, large enough to be read: filled hands where it stands, hollow ones where it stood at the look before.
 * Units: steps of the dial in the view, marks in the drawing.
 */

import { stepsPerTurn } from '../../core/bench.ts';
import { Dial, type Look } from '../../figures/dial/Dial.tsx';
import { markOf, turnOf } from '../../figures/dial/faces.ts';
import { MARKS } from '../../figures/dial/hands.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { dialUnits, type View } from '../state/view.ts';
import type { BenchLayout } from './layout.ts';

interface Props {
  readonly view: View;
  readonly layout: BenchLayout;
}

/** Marks of the dial for a position in its steps. */
export const marksOf = ({ mill }: View, position: number): number =>
  (position * MARKS) / stepsPerTurn(mill);

function looksOf(view: View): readonly Look[] {
  const { dial } = view;
  if (!dial) return [];
  const now: Look = { when: 'now', position: marksOf(view, dial.now.position) };
  const { before } = dial;
  if (!before) return [now];
  return [{ when: 'before', position: marksOf(view, before.position) }, now];
}

/** The dial, and in the corners what a mark and a turn of it are. */
export function BigDial({ view, layout }: Props) {
  const { corner, dial } = layout;
  const say = (length: number) => formatQuantity(length, 'thickness', dialUnits(view.face));
  return (
    <g>
      <Dial place={dial} looks={looksOf(view)} />
      <text class="note" x={corner.left} y={corner.y}>
        one mark
      </text>
      <text class="note" x={corner.left} y={corner.y + 16}>
        {say(markOf(view.face))}
      </text>
      <text class="note" x={corner.right} y={corner.y} text-anchor="end">
        one turn
      </text>
      <text class="note" x={corner.right} y={corner.y + 16} text-anchor="end">
        {say(turnOf(view.face))}
      </text>
    </g>
  );
}
