/**
 * What a learner's rows come to on the worksheet, with the mill of the bench filled in.
 * Units: SI only (m, N·m, Pa).
 * Source: the worksheet's own pipeline.
 */
import { sectionArea } from '../section.ts';
import { emptyWorksheet } from '../worksheet/empty.ts';
import type { Worksheet } from '../worksheet/inputs.ts';
import type { MeasuredResult } from '../worksheet/measure/measured.ts';
import { worksheetMeasurement } from '../worksheet/measure/measurement.ts';
import type { Outcome } from '../worksheet/outcome.ts';
import type { LevelMill } from './levels.ts';

/** A row as it was noted: which look of which series, and what the learner read there. */
export interface NotedRow {
  readonly series: number; // its attempt, from 0
  readonly place: number; // of the look in its series
  readonly torque: number; // N·m
  readonly dial: number; // m, whole turns and hand as one number
}

/** What the learner believes of the mill. */
export interface Believed {
  readonly dragTorque: number | undefined; // N·m
  readonly isMeasured: boolean; // the band's section; otherwise as the owner tells
}

/** The section that the learner goes by, m². */
export function believedArea({ known, told }: LevelMill, { isMeasured }: Believed): number {
  const { bodyWidth: width, thickness } = isMeasured ? known : told;
  return sectionArea({ width, thickness });
}

/** The worksheet with the mill and the rows under torque, the only ones of a line; each attempt is a series. */
export function notedWorksheet(
  mill: LevelMill,
  rows: readonly NotedRow[],
  believed: Believed,
): Worksheet {
  const { known, told } = mill;
  const { bodyWidth, thickness } = believed.isMeasured ? known : told;
  const graduation = known.dialTurn / 100;
  return {
    ...emptyWorksheet,
    band: { ...emptyWorksheet.band, bodyWidth, thickness },
    tensioner: { ...emptyWorksheet.tensioner, dragTorque: believed.dragTorque },
    rig: {
      ...emptyWorksheet.rig,
      gaugeLength: known.gaugeLength,
      graduation,
      readTo: known.dialStep,
      dialRunsBackwards: told.runsBackwards,
      travelPerTurn: known.dialTurn,
      dialWritten: 'together',
    },
    readings: rows
      .filter(({ torque }) => torque > 0)
      .map(({ series, torque, dial }) => ({
        torque,
        dial,
        wholeTurns: undefined,
        turns: undefined,
        series: series + 1,
      })),
  };
}

/** The stress that the rows measure at their top torque, with its interval, or why they give none. */
export const notedStress = (
  mill: LevelMill,
  rows: readonly NotedRow[],
  believed: Believed,
): Outcome<MeasuredResult> => worksheetMeasurement(notedWorksheet(mill, rows, believed)).measured;
