/**
 * Two mills whose nuts are turned by the same amount, one with its nut straight on the frame, one with a long soft spring
 * between: where the travel of each nut goes, and the stress that it adds.
 * Units: SI.
 * Source: springs in a row (nut-travel), by its own sources.
 */
import type { CountingMill } from './mill.ts';
import { MILLS } from './mills.worked.ts';
import { forceAtTravel, gives, nutLead, stressUnder } from './nut-travel.ts';

/** Where the travel of one nut goes; the slack comes first. */
function spent(mill: CountingMill, turns: number, slack: number) {
  const travel = turns * nutLead(mill);
  const force = forceAtTravel(mill, travel - slack);
  const slackTravel = Math.min(slack, travel);
  const share = (part: number) => (travel > 0 ? part / travel : 0);
  return { travel, slackTravel, stress: stressUnder(mill, force), share, ...gives(mill, force) };
}

/** Both mills after so many turns, by the names of the model's outputs. */
export function nutPair(turns: number, slack: number) {
  const stiff = spent(MILLS.stiffFrame, turns, slack);
  const soft = spent(MILLS.softSpring, turns, slack);
  return {
    travelStiff: stiff.travel,
    slackStiff: stiff.slackTravel,
    bandStiff: stiff.band,
    frameStiff: stiff.frame,
    stressStiff: stiff.stress,
    bandShareStiff: stiff.share(stiff.band),
    travelSoft: soft.travel,
    slackSoft: soft.slackTravel,
    bandSoft: soft.band,
    frameSoft: soft.frame,
    springSoft: soft.spring,
    stressSoft: soft.stress,
    bandShareSoft: soft.share(soft.band),
    springShareSoft: soft.share(soft.spring),
    leadSoft: nutLead(MILLS.softSpring),
  };
}
