/**
 * The steel in the section: how much of the band carries, what re-sharpening takes of it, and the handle's setting
 * for another band at the same stress. The mill is the invented one with a trapezoidal screw and a ball bearing.
 * Units: SI.
 * Source: A = w t and two strands on the wheel (core/section), exact screw (core/screw), torque for a stress
 * (core/tensioner). Width lost by one re-sharpening 0.1 to 0.3 mm: common practice, no source.
 */
import { efficiency, stressFromTorque, torqueForStress } from '../../core/screw.ts';
import { sectionArea, strandForce, wheelForce } from '../../core/section.ts';
import { defineModel } from '../../models/define-model.ts';
import { OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import { toSi } from '../../units/si-value.ts';

/** The teeth as they are drawn: from tip to tip, and how far a tip is bent out of the plane. */
export const TEETH = { pitch: 0.022, set: 0.0005 } as const;

/** Width that one re-sharpening takes off. */
export const LOST_BY_SHARPENING = 0.0002;

const { dragTorque, threadFriction } = OTTERSLEIGH;
const screw = screwWith(threadFriction.middle);
const tensioner = { lead: screw.lead, efficiency: efficiency(screw), dragTorque };

/** Width, thickness and teeth of one band; the same band sharpened; another band. */
export const steelInTheSection = defineModel({
  name: 'steel-in-the-section',
  inputs: {
    bodyWidth: {
      kind: 'length',
      default: 0.029,
      min: 0.016,
      max: 0.04,
      step: { metric: 0.0005, us: 0.0254 / 32 },
    },
    thickness: {
      kind: 'thickness',
      default: 0.001,
      min: 0.0006,
      max: 0.0016,
      step: { metric: 0.00005, us: 0.0000254 },
    },
    toothDepth: {
      kind: 'length',
      default: 0.006,
      min: 0.003,
      max: 0.01,
      step: { metric: 0.0005, us: 0.0254 / 32 },
    },
    sharpenings: { kind: 'count', default: 5, min: 0, max: 15, step: { metric: 1, us: 1 } },
    otherWidth: {
      kind: 'length',
      default: 0.0265,
      min: 0.016,
      max: 0.04,
      step: { metric: 0.0005, us: 0.0254 / 32 },
    },
    otherThickness: {
      kind: 'thickness',
      default: 0.0009,
      min: 0.0006,
      max: 0.0016,
      step: { metric: 0.00005, us: 0.0000254 },
    },
    wantedStress: {
      kind: 'stress',
      default: OTTERSLEIGH.targetStress,
      min: 60e6,
      max: 170e6,
      step: { metric: 5e6, us: toSi(500, 'stress', 'us') },
    },
  },
  outputs: {
    area: 'area',
    widthOverTeeth: 'length',
    catalogueArea: 'area',
    catalogueExcess: 'percent',
    rodDiameter: 'length',
    targetStress: 'stress',
    strandForce: 'force',
    wheelForce: 'force',
    torque: 'torque',
    dragTorque: 'torque',
    lostWidth: 'length',
    sharpenedWidth: 'length',
    sharpenedArea: 'area',
    sharpenedStress: 'stress',
    sharpenedRise: 'percent',
    sharpenedTorque: 'torque',
    otherArea: 'area',
    otherTorque: 'torque',
    scaledWhole: 'torque',
    scaledBare: 'torque',
    scaledBackwards: 'torque',
    otherStress: 'stress',
  },
  constants: { dragTorque, lostWidth: LOST_BY_SHARPENING },
  evaluate: ({ bodyWidth, thickness, toothDepth, wantedStress: targetStress, ...others }) => {
    const { sharpenings, otherWidth, otherThickness } = others;
    const settingFor = (section: number) =>
      torqueForStress(tensioner, { area: section }, targetStress);
    const area = sectionArea({ width: bodyWidth, thickness });
    const widthOverTeeth = bodyWidth + toothDepth;
    const catalogueArea = sectionArea({ width: widthOverTeeth, thickness });
    const pull = strandForce(targetStress, area);
    const torque = settingFor(area);
    const sharpenedWidth = bodyWidth - sharpenings * LOST_BY_SHARPENING;
    const sharpenedArea = sectionArea({ width: sharpenedWidth, thickness });
    const sharpenedStress = stressFromTorque(tensioner, { area: sharpenedArea }, torque);
    const otherArea = sectionArea({ width: otherWidth, thickness: otherThickness });
    return {
      area,
      widthOverTeeth,
      catalogueArea,
      catalogueExcess: catalogueArea / area - 1,
      rodDiameter: Math.sqrt((4 * area) / Math.PI),
      targetStress,
      strandForce: pull,
      wheelForce: wheelForce(pull),
      torque,
      sharpenedWidth,
      sharpenedArea,
      sharpenedStress,
      sharpenedRise: sharpenedStress / targetStress - 1,
      sharpenedTorque: settingFor(sharpenedArea),
      otherArea,
      otherTorque: settingFor(otherArea),
      scaledWhole: (torque * otherArea) / area,
      scaledBare: settingFor(otherArea) - dragTorque,
      scaledBackwards: dragTorque + ((torque - dragTorque) * area) / otherArea,
      otherStress: stressFromTorque(tensioner, { area: otherArea }, torque),
    };
  },
});
