/** The class's two charts, in one order of rows; the library that draws them comes with them. */
import type { JSX } from 'preact';
import { type ClassPicture, type ClassPoint, classPlot } from '../../charts/class-board.ts';
import { formatRange } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';
import { isMeasured, type Measured, type MeasuredRow } from './row.ts';
import { spreadOfMeasured } from './spread-words.ts';

/** What the charts are drawn from. */
export interface ChartsView {
  readonly rows: readonly MeasuredRow[];
  readonly system: UnitSystem;
  readonly width: number; // pixels that there are for one
}

interface Shown {
  readonly of: 'stress' | 'efficiency';
  readonly name: string;
  readonly kind: QuantityKind;
}

const CHARTS: readonly Shown[] = [
  { of: 'stress', name: 'Stress at the top torque', kind: 'stress' },
  { of: 'efficiency', name: 'Efficiency of the screw', kind: 'percent' },
];

type Entry = readonly [row: MeasuredRow, result: Measured];

const entriesOf = (rows: readonly MeasuredRow[], of: Shown['of']): readonly Entry[] =>
  rows.flatMap((row): Entry[] => {
    const result = row[of];
    return isMeasured(result) ? [[row, result]] : [];
  });

function pictureOf({ rows, system, width }: ChartsView, shown: Shown): ClassPicture | undefined {
  const { of, name, kind } = shown;
  const entries = entriesOf(rows, of);
  if (entries.length === 0) return undefined;
  const inUnit = (value: number) => fromSi(value, kind, system);
  const points = entries.map(
    ([{ id, name: whose }, { value, expanded }]): ClassPoint => ({
      id,
      name: whose,
      value: inUnit(value),
      low: inUnit(value - expanded),
      high: inUnit(value + expanded),
    }),
  );
  const values = entries.map(([, { value }]) => value);
  const spread = spreadOfMeasured(entries.map(([, result]) => result));
  return {
    points,
    spread: spread && {
      mean: inUnit(spread.mean),
      standardDeviation: inUnit(spread.standardDeviation),
    },
    label: `${of}, ${unitLabel(kind, system)}`,
    title: `${name}: ${formatRange(Math.min(...values), Math.max(...values), kind, system)}`,
    width,
  };
}

/** Both charts, each with what it shows in words. */
export function Charts(view: ChartsView): JSX.Element {
  return (
    <>
      {CHARTS.map((shown) => {
        const picture = pictureOf(view, shown);
        if (!picture) return null;
        const draw = (place: HTMLElement | null) => place?.replaceChildren(classPlot(picture));
        return (
          <figure class="board-chart" key={shown.of}>
            <figcaption>{picture.title}</figcaption>
            <div class="board-plot" ref={draw} />
          </figure>
        );
      })}
    </>
  );
}
