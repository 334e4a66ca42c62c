/** Pieces of a torque to be set: what it gives, what the target may need, and how the screw makes it. */
import type { JSX } from 'preact';
import type { ChainOperands, SettingReach } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { reachWords } from '../words/setting-words.ts';
import { part } from './part.tsx';
import { Hand, Steel } from './Result.tsx';

/** The letter of the no-load torque. */
export function NoLoad(): JSX.Element {
  return (
    <Hand>
      M<sub>0</sub>
    </Hand>
  );
}

interface ReachProps {
  readonly of: SettingReach;
  readonly shown: Shown;
}

/** `gives 110 ± 24 MPa; how sure the torque is: 12 to 18 N·m`. */
export function Reach({ of, shown }: ReachProps): JSX.Element {
  const { gives, needs } = reachWords(of, shown);
  return (
    <>
      gives <Steel>{gives}</Steel>; how sure the torque is: <Hand>{needs}</Hand>
    </>
  );
}

/** The formula of a torque by an efficiency. */
export function ScrewFormula({ own = false }: { readonly own?: boolean }): JSX.Element {
  return (
    <>
      <Hand>M</Hand> = <NoLoad /> + <Hand>σ</Hand> target · <Hand>l</Hand> · A · cos β ÷ (π · a · e
      {own && ' own'})
    </>
  );
}

interface SetByScrew {
  readonly torque: number; // N·m
  readonly operands: ChainOperands & { readonly targetStress: number };
}

/** The torque above the drag in the unit in which lead and section give it. */
export const aboveDrag = ({ torque, operands }: SetByScrew, { smallTorque, plain }: Shown) =>
  `Above the no-load torque that is ${smallTorque(torque - operands.dragTorque)}, or ${plain(torque - operands.dragTorque, 'torque')}.`;

/** The arithmetic of a torque by an efficiency. */
export const ScrewTorque = part<{ readonly of: SetByScrew }>(({ of }, sheet) => {
  const { plain, number } = sheet.shown();
  const { dragTorque, targetStress, lead, area, strandHalfAngle, advantage, efficiency } =
    of.operands;
  return (
    <>
      <Hand>{plain(dragTorque, 'torque')}</Hand> + <Hand>{plain(targetStress, 'stress')}</Hand> ×{' '}
      <Hand>{plain(lead, 'thickness')}</Hand> × {plain(area, 'area')}
      {strandHalfAngle !== 0 && ` × ${number(Math.cos(strandHalfAngle))}`} ÷ (π
      {advantage !== 1 && ` × ${number(advantage)}`} × {number(efficiency)}) ={' '}
      <Hand>{plain(of.torque, 'torque')}</Hand>
    </>
  );
});
