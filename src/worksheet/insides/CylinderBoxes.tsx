/** What a cylinder and its gauge lose and leave open. */
import type { JSX } from 'preact';
import { sealFriction } from '../../core/worksheet.ts';
import { Box } from '../kit/Box.tsx';
import { RangeBox } from '../kit/RangeBox.tsx';
import { Seldom } from '../kit/Section.tsx';

const inPercent = (share: number) => `${100 * share} %`;
const SEAL_HINT = `Share of the force that it takes while you pump. Left empty: ${inPercent(sealFriction.low)} to ${inPercent(sealFriction.high)}.`;

const SELDOM = ['tensioner.advantage'] as const;

/** The boxes of a cylinder; the lever is among those of the screw where these stand too. */
export function CylinderBoxes({ isAlone }: { readonly isAlone: boolean }): JSX.Element {
  return (
    <>
      <Box path="tensioner.cylinder.gaugeTop" />
      <Box path="tensioner.cylinder.gaugeClass" />
      <RangeBox
        low="tensioner.cylinder.sealLow"
        high="tensioner.cylinder.sealHigh"
        name="Friction of the seal"
        unit="percent"
        hint={SEAL_HINT}
      />
      <Box path="tensioner.cylinder.noLoadPressure" />
      <Box path="tensioner.cylinder.noLoadPressureUncertainty" />
      {isAlone && <Seldom name="A lever, or more than one cylinder" paths={SELDOM} />}
    </>
  );
}
