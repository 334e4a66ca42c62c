/**
 * Torque by efficiency as a table whose cells are coloured by what they hold; the reader's cell is framed thick, and
 * the cells that the range of friction reaches are framed thin.
 * Units: SI in the state.
 */

import { formatNumber } from '../../../units/format-number.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import { fromSi } from '../../../units/si-value.ts';
import { EDGES } from '../edge-words.ts';
import type { State } from '../state.ts';
import { fieldClass } from './field.ts';
import { cellQuantity, cellText, cellValue, reachedColumns, tableEdges } from './thrust-cells.ts';

type Mark = 'own' | 'possible' | undefined;

const SPOKEN = { own: ', your screw', possible: ', possible' } as const;

/** How a cell is framed. */
function markOf(
  { values }: State,
  torque: number,
  share: number,
  efficiencies: readonly number[],
): Mark {
  const { efficiency } = values;
  if (torque !== values.torque) return undefined;
  if (share === efficiency) return 'own';
  const { least, most } = reachedColumns(efficiencies, values);
  return share >= least && share <= most ? 'possible' : undefined;
}

interface CellProps {
  readonly text: string;
  readonly step: string;
  readonly mark: Mark;
}

function Cell({ text, step, mark }: CellProps) {
  return (
    <td class={mark ? `${step} ${mark}` : step}>
      {text}
      {mark && <span class="visually-hidden">{SPOKEN[mark]}</span>}
    </td>
  );
}

interface RowProps {
  readonly state: State;
  readonly torque: number;
  readonly efficiencies: readonly number[];
  /** Value at the darkest end of the colours. */
  readonly most: number;
}

function Row({ state, torque, efficiencies, most }: RowProps) {
  const { values, system } = state;
  const quantity = cellQuantity(values, system);
  const isOwn = torque === values.torque;
  return (
    <tr>
      <th scope="row" class={isOwn ? 'own hand' : undefined}>
        {formatNumber(fromSi(torque, 'torque', system), { significant: 3, trim: true })}
      </th>
      {efficiencies.map((share, column) => {
        const value = cellValue(values, quantity, torque, share);
        return (
          <Cell
            key={column}
            text={cellText(value, quantity, system)}
            step={fieldClass(Math.sqrt(value), 0, Math.sqrt(most))}
            mark={markOf(state, torque, share, efficiencies)}
          />
        );
      })}
    </tr>
  );
}

/** The table, with its caption. */
export function ThrustTable({ state }: { readonly state: State }) {
  const { values, system, idPrefix } = state;
  const { torques, efficiencies } = tableEdges(values, system);
  const quantity = cellQuantity(values, system);
  const most = cellValue(values, quantity, Math.max(...torques), Math.max(...efficiencies));
  const lead = formatQuantity(values.lead, 'length', system);
  const what = quantity.name === 'thrust' ? 'Thrust' : 'Stress in each strand';
  return (
    <table class="field-table" aria-describedby={`${idPrefix}-description`}>
      <caption>
        {what}, {quantity.unit}, for a lead of {lead}
      </caption>
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            M − M<sub>0</sub>, {unitLabel('torque', system)}
          </th>
          <th scope="colgroup" colSpan={efficiencies.length}>
            {EDGES.efficiency}
          </th>
        </tr>
        <tr>
          {efficiencies.map((share, column) => (
            <th key={column} scope="col" class={share === values.efficiency ? 'own' : undefined}>
              {formatQuantity(share, 'percent', system, { digits: 2 })}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {torques.map((torque, row) => (
          <Row key={row} state={state} torque={torque} efficiencies={efficiencies} most={most} />
        ))}
      </tbody>
    </table>
  );
}
