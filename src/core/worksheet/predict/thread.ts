/**
 * The thread of the worksheet's screw, by its name or by its own measures.
 * Units: SI only (m, rad).
 * Source: definition; the steepest lead, assumptions.ts.
 */

import type { ThreadShape } from '../../screw/shape.ts';
import { leadAngle } from '../../screw/shape.ts';
import { pitchDiameter, threadHalfAngle } from '../../threads/form.ts';
import { plainWasher, threadByName, type Washer, washerOfThread } from '../../threads.ts';
import type { WorksheetTensioner, WorksheetThread } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { steepestLead } from '../own-assumptions.ts';

/** Shape of the thread; lead = starts × pitch. Refused (`threadUnknown`, `pitchTooCoarse`, `leadTooSteep`) where it cannot be. */
export function worksheetThread(tensioner: WorksheetTensioner): Outcome<ThreadShape> {
  const starts = knownInputs({ count: ['tensioner.starts', tensioner.starts] });
  const profile = threadProfile(tensioner.thread);
  return whenReady({ starts, profile }, ({ starts: { count }, profile }) => {
    const { meanDiameter, pitch, halfAngle } = profile;
    const shape = { meanDiameter, lead: count * pitch, halfAngle };
    const angle = leadAngle(shape);
    if (angle > steepestLead)
      return refused('leadTooSteep', { angle, steepest: steepestLead }, [
        'tensioner.thread',
        'tensioner.starts',
      ]);
    return ready(shape);
  });
}

/** The plain washer of the thread; waits as the thread does. */
export function worksheetWasher({ thread }: WorksheetTensioner): Outcome<Washer> {
  return whenReady({ profile: threadProfile(thread) }, () => {
    if (thread.kind === 'designation') return ready(washerOfThread(thread.designation) as Washer);
    const system = thread.form === 'acme' ? 'inch' : 'metric';
    return ready(plainWasher(system, thread.outsideDiameter as number)); // the profile is ready with it
  });
}

interface ThreadProfile extends Omit<ThreadShape, 'lead'> {
  readonly pitch: number; // m
}

function threadProfile(chosen: WorksheetThread): Outcome<ThreadProfile> {
  return chosen.kind === 'own' ? ownThread(chosen) : namedThread(chosen.designation);
}

function namedThread(designation: string): Outcome<ThreadProfile> {
  const waitsFor = ['tensioner.thread.designation'] as const;
  if (designation.trim() === '') return { ready: false, waitsFor };
  const named = threadByName(designation);
  if (named === undefined) return refused('threadUnknown', {}, waitsFor);
  const { pitchDiameter, pitch, halfAngle } = named;
  return ready({ meanDiameter: pitchDiameter, pitch, halfAngle });
}

function ownThread(own: Extract<WorksheetThread, { kind: 'own' }>): Outcome<ThreadProfile> {
  const size = knownInputs({
    majorDiameter: ['tensioner.thread.outsideDiameter', own.outsideDiameter],
    pitch: ['tensioner.thread.pitch', own.pitch],
  });
  return whenReady({ size }, ({ size: { majorDiameter, pitch } }) => {
    if (pitch >= majorDiameter / 2)
      return refused('pitchTooCoarse', { majorDiameter, pitch }, [
        'tensioner.thread.outsideDiameter',
        'tensioner.thread.pitch',
      ]);
    const meanDiameter = pitchDiameter(own.form, { majorDiameter, pitch });
    return ready({ meanDiameter, pitch, halfAngle: threadHalfAngle[own.form] });
  });
}
