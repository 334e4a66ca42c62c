/** Things whose every quantity is 1, of which a test spoils one. SI. */

export const still = { expansion: 1, temperatureChange: 0 };

export const warmed = {
  bandStiffness: 1,
  supportStiffness: 1,
  band: { ...still, loopLength: 1 },
  frame: { ...still, centreDistance: 1 },
  wheels: { ...still, diameter: 1 },
};

export const moving = { massPerLength: 1, speed: 1 };

export const twisted = {
  tension: 1,
  youngsModulus: 1,
  shearModulus: 1,
  width: 1,
  thickness: 1,
  span: 1,
  ends: 'pinned',
} as const;
