/** Pieces of a torque or a pressure to be set: what it gives, what the target may need, and how screw or cylinder make it. */
import type { JSX } from 'preact';
import type { ChainOperands, SettingReach } from '../../core/worksheet.ts';
import { topReading } from '../state/carried.ts';
import type { Shown } from '../state/shown.ts';
import { reachWords, untriedWords } from '../words/setting-words.ts';
import { DividedBy, Letter, NoLoad, PerLoad, Times, TimesSection } from './Pull.tsx';
import { part } from './part.tsx';
import { Hand, Steel } from './Result.tsx';

interface ReachProps {
  readonly of: SettingReach & { readonly torque: number };
  readonly shown: Shown;
}

/** `gives 110 ± 24 MPa; the target may need 12 to 18 N·m (your readings end at 15 N·m)`. */
export const Reach = part<ReachProps>(({ of, shown }, sheet) => {
  const { gives, needs } = reachWords(of, shown);
  return (
    <>
      gives <Steel>{gives}</Steel>; the target may need <Hand>{needs}</Hand>
      {untriedWords(of, topReading(sheet), shown)}
    </>
  );
});

/** The formula of a torque or a pressure by an efficiency. */
export function ScrewFormula({ own = false }: { readonly own?: boolean }): JSX.Element {
  return (
    <>
      <Letter /> = <NoLoad /> + <Hand>σ</Hand> target · <TimesSection /> ÷ (<PerLoad /> · e
      {own && ' own'})
    </>
  );
}

interface SetByScrew {
  readonly torque: number; // N·m
  readonly operands: ChainOperands & { readonly targetStress: number };
}

/** The load above that of the empty screw or cylinder, in the unit in which the section gives it. */
export function aboveDrag({ torque, operands }: SetByScrew, { smallLoad, plain, load }: Shown) {
  const above = torque - operands.dragTorque;
  return `Above the ${load.noLoad} that is ${smallLoad(above)}, or ${plain(above, load.name)}.`;
}

/** The arithmetic of a torque or a pressure by an efficiency. */
export const ScrewTorque = part<{ readonly of: SetByScrew }>(({ of }, sheet) => {
  const { plain, number, load } = sheet.shown();
  const { dragTorque, targetStress, efficiency } = of.operands;
  return (
    <>
      <Hand>{plain(dragTorque, load.name)}</Hand> + <Hand>{plain(targetStress, 'stress')}</Hand> ×{' '}
      <Times of={of.operands} /> ÷ (<DividedBy of={of.operands} /> × {number(efficiency)}) ={' '}
      <Hand>{plain(of.torque, load.name)}</Hand>
    </>
  );
});
