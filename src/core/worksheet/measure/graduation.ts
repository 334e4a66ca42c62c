/**
 * What one graduation of the worksheet's dial is worth as stress.
 * Units: SI only (m, Pa).
 * Source: Hooke's law.
 */
import { stress } from '../../elasticity.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';

/** The stress that moves the dial by one graduation. */
export interface GraduationResult {
  readonly stress: number; // Pa
  readonly operands: {
    readonly graduation: number; // m
    readonly gaugeLength: number; // m
    readonly youngsModulus: number; // Pa
  };
}

/** Stress E·graduation/L₀. */
export function worksheetGraduation({ band, rig }: Worksheet): Outcome<GraduationResult> {
  const known = knownInputs({
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
    graduation: ['rig.graduation', rig.graduation],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  return whenReady({ known }, ({ known: operands }) => {
    const { graduation: elongation, gaugeLength, youngsModulus } = operands;
    return ready({ stress: stress({ elongation, gaugeLength }, youngsModulus), operands });
  });
}
