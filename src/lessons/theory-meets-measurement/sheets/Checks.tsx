/**
 * Three ways to look at a sheet, as rows of a table: the stress, the efficiency, the lead; what was taken for it, what
 * was found, and whether they fit.
 * Units: SI in the result; drawing units otherwise.
 */

import { formatQuantity, formatRange } from '../../../units/format-quantity.ts';
import type { UnitSystem } from '../../../units/kinds.ts';
import type { SheetResult } from '../sheets.ts';

interface CheckRow {
  readonly name: string;
  readonly by: string;
  readonly taken: string;
  readonly found: string;
  readonly fits: boolean;
}

/** The three rows of a sheet. */
export function checkRows(result: SheetResult, system: UnitSystem): readonly CheckRow[] {
  const { measured, predicted, efficiencyLow, efficiencyHigh } = result;
  const stress = (value: number) => formatQuantity(value, 'stress', system);
  const lead = (value: number) => formatQuantity(value, 'length', system);
  return [
    {
      name: 'stress',
      by: 'dial on the band',
      taken: stress(predicted.stress),
      found: stress(measured.stress),
      fits: result.agrees,
    },
    {
      name: 'efficiency',
      by: 'tightening and loosening torque',
      taken: formatRange(efficiencyLow, efficiencyHigh, 'percent', system),
      found: formatQuantity(result.efficiencyByLoosening, 'percent', system),
      fits: result.frictionFits,
    },
    {
      name: 'lead',
      by: 'rule, one whole turn',
      taken: lead(result.lead),
      found: lead(result.travelPerTurn),
      fits: result.leadFits,
    },
  ];
}

interface SheetChecksProps {
  readonly result: SheetResult;
  readonly system: UnitSystem;
  readonly left: number;
  readonly top: number;
  readonly columns: readonly [number, number, number];
  readonly rowHeight: number;
  readonly width: number;
}

/** The table. */
export function Checks(props: SheetChecksProps) {
  const { result, system, left, top, columns, rowHeight, width } = props;
  const [taken, found, verdict] = columns;
  return (
    <g transform={`translate(${left} ${top})`}>
      <text class="note" x={taken} y={0}>
        taken
      </text>
      <text class="note" x={found} y={0}>
        found
      </text>
      <path class="outline" d={`M0 9H${width}`} />
      {checkRows(result, system).map((row, place) => (
        <g key={row.name} transform={`translate(0 ${rowHeight * place + 30})`}>
          <text>{row.name}</text>
          <text class="note" y={18}>
            by {row.by}
          </text>
          <text x={taken}>{row.taken}</text>
          <text class="steel" x={found}>
            {row.found}
          </text>
          <text x={verdict}>{row.fits ? 'fits' : 'does not fit'}</text>
          <path class="grid" d={`M0 ${rowHeight - 20}H${width}`} />
        </g>
      ))}
    </g>
  );
}
