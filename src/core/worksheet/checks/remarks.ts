/**
 * What is odd about screw or cylinder though the sheet may agree with itself: less or more arrives than such a thing can
 * pass on, or theory and measurement agree only by the lever that was typed.
 * Units: none.
 * Source: definition; what is usual, own-assumptions.ts.
 */
import { agreementNumber } from '../../agreement.ts';
import type { AgreementResult } from '../decide/agreement.ts';
import type { EfficiencyResult } from '../decide/efficiency.ts';
import type { Worksheet } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { sealFriction } from '../own-assumptions.ts';
import type { PredictedResult } from '../predict/prediction.ts';
import { worksheetScrew } from '../predict/screw.ts';

/** Something odd. */
export interface Remark {
  readonly code: 'tooLittleArrives' | 'tooMuchArrives' | 'agreesByLever';
  readonly values: Readonly<Record<string, number>>;
  readonly asChosen: number; // the prediction, over what it would be with nothing chosen to fit
}

/** What the sheet has come to. */
export interface Remarked {
  readonly efficiency: Outcome<EfficiencyResult>;
  readonly predicted: Outcome<PredictedResult>;
  readonly agreement: Outcome<AgreementResult>;
}

interface Range {
  readonly low: number;
  readonly high: number;
}

/** What such a screw passes on, whatever its grease and whatever lies under its nut; what a cylinder does, whatever its seal. */
function usualEfficiency({ tensioner }: Worksheet): Range | undefined {
  if (tensioner.kind === 'cylinder')
    return { low: 1 - sealFriction.high, high: 1 - sealFriction.low };
  const friction = { kind: 'unknown', low: undefined, high: undefined } as const;
  const screw = worksheetScrew({ ...tensioner, friction, collar: { kind: 'unknown' } });
  return screw.ready ? { low: screw.efficiencyLow, high: screw.efficiencyHigh } : undefined;
}

/** The efficiency out of the readings, where even its interval is beyond what is usual. */
function ofEfficiency(worksheet: Worksheet, { efficiency, predicted }: Remarked): Remark[] {
  const usual = usualEfficiency(worksheet);
  if (!efficiency.ready || !usual) return [];
  const isLittle = efficiency.high < usual.low;
  if (!isLittle && efficiency.low <= usual.high) return [];
  const believed = predicted.ready ? predicted.operands.efficiency : usual.low;
  const nearest = Math.min(usual.high, Math.max(usual.low, believed));
  const values = { efficiency: efficiency.efficiency, usual: isLittle ? usual.low : usual.high };
  const code = isLittle ? 'tooLittleArrives' : 'tooMuchArrives';
  return [{ code, values, asChosen: believed / nearest }];
}

/** A lever with which the two agree, and without which they would not. */
function ofLever({ agreement, predicted }: Remarked): Remark[] {
  if (!agreement.ready || !predicted.ready || agreement.verdict !== 'agree') return [];
  const { advantage } = predicted.operands;
  const { measured, predicted: stress, expandedMeasured, expandedPredicted } = agreement.operands;
  const withoutLever = agreementNumber(
    { value: measured, expanded: expandedMeasured },
    { value: stress / advantage, expanded: expandedPredicted / advantage },
  );
  if (Math.abs(withoutLever) <= 1) return [];
  return [{ code: 'agreesByLever', values: { advantage }, asChosen: advantage }];
}

/** Everything odd. */
export const worksheetRemarks = (worksheet: Worksheet, found: Remarked): readonly Remark[] => [
  ...ofEfficiency(worksheet, found),
  ...ofLever(found),
];
