/**
 * Everything the worksheet page shows, from what was filled in; a bad box stops only what depends on it.
 * Units: SI only (m, N, Pa, N·m, rad).
 * Source: definition.
 */
import type { AgreementResult, EfficiencyResult } from './worksheet-efficiency.ts';
import type { WorksheetGuard } from './worksheet-guards.ts';
import type { LineResult } from './worksheet-line.ts';
import type { ForcesResult, MeasuredResult, PointsResult } from './worksheet-measured.ts';
import type { Outcome } from './worksheet-outcome.ts';
import type { SeriesResult } from './worksheet-readings.ts';
import type { ScrewResult } from './worksheet-screw.ts';
import type { SectionResult, StrandsResult } from './worksheet-section.ts';
import type {
  ExpectedStretchResult,
  OtherBandResult,
  SettingResult,
  TheorySettingResult,
} from './worksheet-setting.ts';
import type { PredictedRangeResult, PredictedResult } from './worksheet-theory.ts';
import type { TurnsResult } from './worksheet-turns.ts';
import type { WayResult } from './worksheet-ways.ts';
import type { StretchResult, ZeroResult } from './worksheet-zero.ts';

/** All results of one worksheet. */
export interface WorksheetResults {
  readonly section: Outcome<SectionResult>;
  readonly strands: Outcome<StrandsResult>;
  readonly series: Outcome<SeriesResult>;
  readonly zero: Outcome<ZeroResult>;
  readonly stretch: Outcome<StretchResult>;
  readonly measured: Outcome<MeasuredResult>;
  readonly points: Outcome<PointsResult>;
  readonly line: Outcome<LineResult>;
  readonly forces: Outcome<ForcesResult>;
  readonly screw: Outcome<ScrewResult>;
  readonly predicted: Outcome<PredictedResult>;
  readonly predictedRange: Outcome<PredictedRangeResult>;
  readonly agreement: Outcome<AgreementResult>;
  readonly efficiency: Outcome<EfficiencyResult>;
  readonly setting: Outcome<SettingResult>;
  readonly theorySetting: Outcome<TheorySettingResult>;
  readonly expectedStretch: Outcome<ExpectedStretchResult>;
  readonly otherBand: Outcome<OtherBandResult>;
  readonly turns: Outcome<TurnsResult>;
  readonly ways: readonly WayResult[];
  readonly guards: readonly WorksheetGuard[];
}
