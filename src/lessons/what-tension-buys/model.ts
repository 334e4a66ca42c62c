/**
 * What tension buys: the teeth of the standing span under a push, by tension and guide spacing; the drive wheel's grip on
 * the running band; and the window of tension between what the cut asks for and what the band bears.
 * Units: SI.
 * Source: core/span, core/running, core/tightness; the mill at Ottersleigh is invented.
 */
import { bandSteel, lifeExponent, windowWishes } from '../../core/assumptions.ts';
import { defineModel } from '../../models/define-model.ts';
import { bandArea, OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { marginAt, runningRise, slipPowerAt, strandsAt } from './grip/drive-wheel.ts';
import { SPACINGS, teethHold } from './hold/teeth-hold.ts';
import { OUTPUTS } from './outputs.ts';
import { CLOSER, PARTS, PUSH, pushedSpan, steelShare } from './push/pushed-span.ts';
import { BENDING, edgesOf, KEPT, MOST_PEAK, TODAY, type Wishes, windowOf } from './window/edges.ts';

/** The tension and the span that the lesson asks about first. */
export const asked = { stress: 120e6, span: 0.7 } as const;

const [, HALF, QUARTER] = PARTS;

/** The push on the reader's span, and what half of the tension or half of the spacing would make of it. */
function pushed(stress: number, span: number) {
  const own = pushedSpan(stress, span);
  const [half, quarter] = [HALF, QUARTER].map((part) => pushedSpan(part * stress, span).teeth);
  const closer = pushedSpan(stress, CLOSER * span).teeth;
  return {
    ...own,
    stringBow: (PUSH * span) / (4 * stress * bandArea),
    halfStress: HALF * stress,
    halfTeeth: half ?? own.teeth,
    quarterStress: QUARTER * stress,
    quarterTeeth: quarter ?? own.teeth,
    doubledSaves: 1 - own.teeth / (half ?? own.teeth),
    closerSpan: CLOSER * span,
    closerTeeth: closer,
    closerSaves: 1 - closer / own.teeth,
    strandTeeth: pushedSpan(stress, OTTERSLEIGH.centreDistance).teeth,
    steelShare: steelShare(stress),
  };
}

/** The drive wheel under a power. */
function gripped(stress: number, power: number, friction: number) {
  const slipPower = slipPowerAt(stress, friction);
  return {
    ...strandsAt(stress, power),
    difference: power / OTTERSLEIGH.speed,
    margin: marginAt(stress, power, friction),
    idleMargin: marginAt(stress, 0, friction),
    slipPower,
    halfSlipPower: slipPowerAt(HALF * stress, friction),
    quarterSlipPower: slipPowerAt(QUARTER * stress, friction),
    powerShare: power / slipPower,
    rise: runningRise(power),
  };
}

/** The window and its edges. */
function framed(wishes: Wishes) {
  const edges = edgesOf(wishes);
  const { low, high, isOpen } = windowOf(edges);
  return {
    straightEdge: edges.straightness,
    gripEdge: edges.grip,
    lifeEdge: edges.life,
    millEdge: edges.millMaker,
    yieldEdge: edges.yield,
    lowEdge: low?.stress ?? 0,
    highEdge: high?.stress ?? 0,
    isOpen: isOpen ? 1 : 0,
  };
}

/** Tension and guide spacing to the teeth's movement; power to the slip margin; wishes to the window. */
export const whatTensionBuys = defineModel({
  name: 'what-tension-buys',
  inputs: {
    stress: {
      kind: 'stress',
      default: OTTERSLEIGH.targetStress,
      min: 60e6,
      max: 160e6,
      step: { metric: 1e6, us: 689475.7 },
    },
    span: {
      kind: 'length',
      default: OTTERSLEIGH.guideSpan,
      min: 0.25,
      max: 0.9,
      step: { metric: 0.01, us: 0.0127 },
    },
    far: {
      kind: 'longLength',
      default: OTTERSLEIGH.centreDistance,
      min: SPACINGS.least,
      max: SPACINGS.most,
      step: { metric: 0.05, us: 0.0508 },
    },
    power: { kind: 'power', default: 9000, min: 0, max: 30e3, step: { metric: 500, us: 745.7 } },
    friction: {
      kind: 'ratio',
      default: 0.25,
      min: 0.1,
      max: 0.4,
      step: { metric: 0.01, us: 0.01 },
    },
    wish: { options: ['straight', 'life', 'maker'], default: 'straight' },
    movement: {
      kind: 'length',
      default: windowWishes.movement,
      min: 0.001,
      max: 0.008,
      step: { metric: 1e-4, us: 1.27e-4 },
    },
    exponent: {
      kind: 'ratio',
      default: lifeExponent.usual,
      min: lifeExponent.low,
      max: lifeExponent.high,
      step: { metric: 0.5, us: 0.5 },
    },
    millLimit: {
      kind: 'force',
      default: 9000,
      min: 4000,
      max: 12e3,
      step: { metric: 100, us: 222.41108076 },
    },
  },
  outputs: OUTPUTS,
  constants: {
    push: PUSH,
    strand: OTTERSLEIGH.centreDistance,
    speed: OTTERSLEIGH.speed,
    today: TODAY,
    lifeKept: KEPT.life,
    leastMargin: KEPT.margin,
    exponentLow: lifeExponent.low,
    exponentHigh: lifeExponent.high,
    bending: BENDING,
    yieldStrength: bandSteel.yieldStrength,
    yieldShare: KEPT.yieldShare,
    mostPeak: MOST_PEAK,
    area: bandArea,
  },
  evaluate: ({ stress, span, far, power, friction, movement, exponent, millLimit }) => ({
    pull: stress * bandArea,
    ...pushed(stress, span),
    hold: teethHold(stress, span),
    farHold: teethHold(stress, far),
    ...gripped(stress, power, friction),
    ...framed({ span, movement, power, friction, exponent, millLimit }),
  }),
});
