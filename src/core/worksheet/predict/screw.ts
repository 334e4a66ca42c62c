/**
 * What the worksheet's screw or cylinder passes on, over the range of losses that is believed.
 * Units: SI only (m); efficiencies have no unit.
 * Source: definition.
 */
import type { Washer } from '../../threads.ts';
import { rectangular } from '../budget.ts';
import type { WorksheetTensioner } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { collarAssumptions, frictionAssumptions } from './assumed.ts';
import { worksheetCollar } from './collar.ts';
import { worksheetCylinder } from './cylinder.ts';
import type { LossRange } from './losses.ts';
import { worksheetLossRange } from './losses.ts';
import { rubbingScrew } from './rubbing-screw.ts';
import type { ScrewModel } from './screw-model.ts';
import { worksheetThread, worksheetWasher } from './thread.ts';

/** The screw or cylinder as far as it is known; refused (`frictionJams`) where the friction believed would jam it. */
export function worksheetScrew(tensioner: WorksheetTensioner): Outcome<ScrewModel> {
  if (tensioner.kind === 'cylinder') return worksheetCylinder(tensioner);
  const range = worksheetLossRange(tensioner);
  const shape = worksheetThread(tensioner);
  const washer = worksheetWasher(tensioner);
  return whenReady({ range, shape, washer }, ({ range, shape, washer }) => {
    if (range.of === 'efficiency') return byEfficiency(range, shape.lead, washer);
    return whenReady({ collar: worksheetCollar(tensioner) }, ({ collar }) =>
      rubbingScrew({ range, shape, collar, washer }, [
        ...frictionAssumptions(range),
        ...collarAssumptions(tensioner.collar, collar),
      ]),
    );
  });
}

function byEfficiency({ low, high }: LossRange, lead: number, washer: Washer): Outcome<ScrewModel> {
  const middle = (low + high) / 2;
  return ready<ScrewModel>({
    drive: { kind: 'screw', lead },
    efficiencyLow: low,
    efficiency: middle,
    efficiencyHigh: high,
    washer,
    operands: undefined,
    inputs: { efficiency: rectangular(middle, (high - low) / 2) },
    efficiencyOf: ({ efficiency = 0 }) => efficiency,
    assumed: [],
  });
}
