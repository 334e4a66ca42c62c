/** What the owner tells of the mill, and what calipers and micrometer find. */
import type { QuantityKind } from '../../units/kinds.ts';
import type { View } from '../state/view.ts';
import { say } from '../words/say.ts';
import type { DeskProps } from './desk.ts';

type Fact = readonly [label: string, value: string];

function facts({ mill, bench }: View): readonly Fact[] {
  const { known, told } = mill;
  const said = (value: number, kind: QuantityKind) => say(value, kind, bench.system);
  const { outer, inner } = told.washer;
  const ring = `${said(outer, 'length')} outside, ${said(inner, 'length')} hole`;
  return [
    ['Thread of the screw', known.screwThread],
    [known.collarIsBearing ? 'Ball bearing under the nut' : 'Greased washer under the nut', ring],
    [
      'No-load torque',
      told.dragTorque === undefined ? 'nobody has tried it' : said(told.dragTorque, 'torque'),
    ],
    ['Tightened as a rule to', said(told.usualTorque, 'torque')],
    ['Allowed by the mill’s maker', said(told.mostTorque, 'torque')],
    ['Wheels', said(known.wheelDiameter, 'length')],
    ['Between wheel centers', said(known.centreDistance, 'length')],
    ['Gauge length between the clamps', said(known.gaugeLength, 'length')],
  ];
}

/** The section as the label has it, or as it was measured. */
function section({ mill, bench }: View): readonly Fact[] {
  const { bodyWidth, thickness } = bench.isMeasured ? mill.known : mill.told;
  const by = bench.isMeasured ? 'measured' : 'on the label';
  return [
    [`Body width, ${by}`, say(bodyWidth, 'length', bench.system)],
    [`Thickness, ${by}`, say(thickness, 'thickness', bench.system)],
    ['Teeth stand out by', say(mill.told.teeth, 'length', bench.system)],
  ];
}

/** The card of the mill. */
export function MillCard({ desk }: { readonly desk: DeskProps }) {
  const { view, press } = desk;
  const all = [...facts(view), ...section(view)];
  return (
    <details class="bench-mill">
      <summary>What the owner tells</summary>
      <dl>
        {all.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {!view.bench.isMeasured && (
        <button class="button no-print" type="button" onClick={() => press('measure')}>
          Measure the band
        </button>
      )}
    </details>
  );
}
