/**
 * What the nut of each mill of the pair has done, by one set of names for both.
 * Units: SI.
 * Source: the model's own outputs.
 */
import { MILLS } from '../mills.worked.ts';
import type { State } from '../state.ts';

/** The nut of the mill without a spring. */
export function stiffNut({ values }: State) {
  return {
    tensioner: 'stiffFrame',
    mill: MILLS.stiffFrame,
    slack: values.slackBoth,
    travel: values.travelStiff,
    slackTravel: values.slackStiff,
    bandTravel: values.bandStiff,
    frameTravel: values.frameStiff,
    springTravel: 0,
    stress: values.stressStiff,
  } as const;
}

/** The nut of the mill with the long soft spring. */
export function softNut({ values }: State) {
  return {
    tensioner: 'softSpring',
    mill: MILLS.softSpring,
    slack: values.slackBoth,
    travel: values.travelSoft,
    slackTravel: values.slackSoft,
    bandTravel: values.bandSoft,
    frameTravel: values.frameSoft,
    springTravel: values.springSoft,
    stress: values.stressSoft,
  } as const;
}

/** Either of them. */
export type NutValues = ReturnType<typeof stiffNut> | ReturnType<typeof softNut>;
