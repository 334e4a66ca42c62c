/**
 * Every lesson's model, each imported by its name: what is loaded by the name of a file alone costs a lesson's page the
 * bundler's wrapping of it.
 */
import type { Model } from '../models/define-model.ts';
import { aFewHundredths } from './a-few-hundredths/model.ts';
import { countingTurns } from './counting-turns/model.ts';
import { handleToBand } from './handle-to-band/model.ts';
import { roundTheWheel } from './round-the-wheel/model.ts';
import { screwTakesItsCut } from './screw-takes-its-cut/model.ts';
import { secondOpinion } from './second-opinion/model.ts';
import { steelInTheSection } from './steel-in-the-section/model.ts';
import { stiffSpring } from './stiff-spring/model.ts';
import { theoryMeetsMeasurement } from './theory-meets-measurement/model.ts';
import { whatTensionBuys } from './what-tension-buys/model.ts';
import { whenItWarms } from './when-it-warms/model.ts';
import { whereIsZero } from './where-is-zero/model.ts';

const inOrder: readonly Model[] = [
  aFewHundredths,
  countingTurns,
  handleToBand,
  roundTheWheel,
  screwTakesItsCut,
  secondOpinion,
  steelInTheSection,
  stiffSpring,
  theoryMeetsMeasurement,
  whatTensionBuys,
  whenItWarms,
  whereIsZero,
];

/** Models by name. */
export const models: Readonly<Record<string, Model>> = Object.fromEntries(
  inOrder.map((model) => [model.name, model]),
);
