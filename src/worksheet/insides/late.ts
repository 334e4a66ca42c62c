/** The boxes of parts that are folded on a first visit: fetched when one is opened, or with the first touch. */
import { late } from '../kit/late.tsx';

/** Each by its part. */
export const LateTensioner = late(() => import('./TensionerBoxes.tsx'), 'TensionerBoxes');
export const LateMill = late(() => import('./MillBoxes.tsx'), 'MillBoxes');
export const LateRig = late(() => import('./RigBoxes.tsx'), 'RigBoxes');
export const LateRows = late(() => import('./ReadingsBoxes.tsx'), 'ReadingsBoxes');
export const LateSetting = late(() => import('./SettingBoxes.tsx'), 'SettingBoxes');

const INSIDES = {
  tensioner: LateTensioner,
  mill: LateMill,
  rig: LateRig,
  readings: LateRows,
  setting: LateSetting,
} as const;

/** Fetches the boxes of parts that stand open already, so that drawing them moves nothing. */
export async function fetchInsides(open: readonly string[]): Promise<void> {
  const wanted = Object.entries(INSIDES).filter(([id]) => open.includes(id));
  await Promise.all(wanted.map(([, inside]) => inside.fetch()));
}

/** Fetches them all. */
export const fetchAllInsides = (): Promise<void> => fetchInsides(Object.keys(INSIDES));
