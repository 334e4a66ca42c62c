/**
 * The screw of an invented inch mill.
 * Units: SI.
 * Source: invented mill; friction after `screw-friction`, from memory.
 */
import { wornCollarDiameter } from '../../core/screw.ts';
import { sectionArea } from '../../core/section.ts';
import { inch, pitchDiameter } from '../../core/threads.ts';
import { toSi } from '../../units/si-value.ts';

/** An inch mill: Acme 1-5 with a plain greased collar; 1 1/2 in band. Its torque is the one its target stress asks for. */
export const ACME_SCREW = {
  lead: 0.2 * inch,
  meanDiameter: pitchDiameter('acme', { majorDiameter: inch, pitch: 0.2 * inch }),
  threadForm: 'acme',
  threadFriction: 0.13,
  collarFriction: 0.12,
  collarDiameter: wornCollarDiameter({ outerDiameter: 1.75 * inch, innerDiameter: 1.03 * inch }),
  torque: toSi(30.5, 'torque', 'us'),
  area: sectionArea({ width: 1.22 * inch, thickness: 0.05 * inch }),
} as const;
