/**
 * When it warms: what the warmth of band, frame and wheels does to the tension over a day, at one moment, and at a check.
 * Units: SI.
 * Source: core/drift by its own source; the mill and its day are invented.
 */
import { defineModel } from '../../models/define-model.ts';
import { warmthAt } from './day/hours.ts';
import { asides, mill } from './mill.worked.ts';
import { checks, drift, growths, supportShare } from './warmth.ts';

const DEGREES = { metric: 0.5, us: 1 / 1.8 } as const;
const warm = (start: number, max: number) =>
  ({ kind: 'temperatureDifference', default: start, min: 0, max, step: DEGREES }) as const;
const now = (start: number) => ({ ...warm(start, 30), min: -20 }) as const;

/** The day by what is dragged. */
function dayOf(dragged: { bandWarm: number; frameWarm: number; wheelsWarm: number }) {
  const change = (hour: Parameters<typeof warmthAt>[0], tensioner: 'screw' | 'spring' = 'screw') =>
    drift(warmthAt(hour, dragged), tensioner);
  const [first, lunch] = [change('first'), change('lunch')];
  return {
    firstLoss: 0 - first,
    firstShare: 0 - first / mill.setting,
    firstStress: mill.setting + first,
    firstStressSpring: mill.setting + change('first', 'spring'),
    lunchStress: mill.setting + lunch,
    lunchChange: lunch,
    lunchShare: lunch / mill.setting,
    duskStress: mill.setting + change('dusk'),
    frostStress: mill.setting + change('frost'),
    frostChange: change('frost'),
  };
}

/** A day; a moment with three thermometers; a check cold and a check warm. */
export const whenItWarms = defineModel({
  name: 'when-it-warms',
  inputs: {
    bandWarm: warm(15, 30),
    frameWarm: warm(8, 20),
    wheelsWarm: warm(6, 20),
    bandNow: now(15),
    frameNow: now(5),
    wheelsNow: now(5),
    warmer: now(15),
    tensioner: { options: ['rigid', 'screw', 'spring', 'oil'], default: 'screw' },
  },
  outputs: {
    setting: 'stress',
    firstLoss: 'stress',
    firstShare: 'percent',
    firstStress: 'stress',
    firstStressSpring: 'stress',
    lunchStress: 'stress',
    lunchChange: 'stress',
    lunchShare: 'percent',
    duskStress: 'stress',
    frostStress: 'stress',
    frostChange: 'stress',
    bandGain: 'stretch',
    frameTakes: 'stretch',
    wheelsTake: 'stretch',
    slackNow: 'stretch',
    changeNow: 'stress',
    rigidLoss: 'stress',
    supportShare: 'ratio',
    shareTurned: 'ratio',
    checkLoss: 'stress',
    lossTurned: 'stress',
    lossShare: 'percent',
    warmStress: 'stress',
    againStress: 'stress',
    youngsModulus: 'modulus',
    expansion: 'thermalExpansion',
    bandStiffness: 'stiffness',
    frameStiffness: 'stiffness',
    springStiffness: 'stiffness',
    perDegree: 'stressPerTemperature',
    oilColumn: 'length',
    oilBore: 'length',
    oilWarming: 'temperatureDifference',
    oilStiffness: 'stiffness',
    oilFrame: 'stiffness',
    oilPush: 'stretch',
    oilStress: 'stress',
    barWarming: 'temperatureDifference',
    steelBar: 'stress',
    aluminiumBar: 'stress',
    woodenBar: 'stress',
  },
  constants: {
    ...asides,
    setting: mill.setting,
    youngsModulus: mill.youngsModulus,
    expansion: mill.expansion,
    bandStiffness: mill.bandStiffness,
    frameStiffness: mill.frameStiffness,
    springStiffness: mill.springStiffness,
    perDegree: mill.youngsModulus * mill.expansion,
  },
  evaluate: ({ bandNow, frameNow, wheelsNow, warmer, tensioner, ...dragged }) => {
    const moment = { band: bandNow, frame: frameNow, wheels: wheelsNow };
    const { warm: warmStress, tightenedWarm } = checks(
      { band: warmer, frame: 0, wheels: 0 },
      tensioner,
    );
    const share = supportShare(tensioner);
    const rigidLoss = mill.youngsModulus * mill.expansion * warmer;
    const checkLoss = mill.setting - warmStress;
    return {
      ...dayOf(dragged),
      ...growths(moment),
      changeNow: drift(moment, 'screw'),
      rigidLoss,
      supportShare: share,
      shareTurned: 1 - share,
      checkLoss,
      lossTurned: rigidLoss * (1 - share),
      lossShare: checkLoss / mill.setting,
      warmStress,
      againStress: tightenedWarm,
    };
  },
});
