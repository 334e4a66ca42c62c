/**
 * The parts of the sheet in the order in which the hands work: what each is called, why it is there, and the lesson
 * that explains it.
 * Units: none. Source: definition.
 */

/** One part. */
export interface SheetPart {
  readonly title: string;
  readonly why: string;
  readonly lesson?: string; // the key of its lesson
  readonly ofPressure?: { readonly why: string; readonly lesson: string }; // where a cylinder tightens
  readonly holds?: RegExp; // the paths of its boxes
}

/** All parts by their anchors. */
export const SHEET_PARTS = {
  start: {
    title: 'Four numbers',
    why: 'Thread, torque, body width and thickness already say roughly what the band carries.',
    ofPressure: {
      why: 'Piston, pressure, body width and thickness already say roughly what the band carries.',
      lesson: 'counting-turns',
    },
    lesson: 'handle-to-band',
    holds: /^(use|band|tensioner\.(kind|thread|cylinder\.(piston|rod)Diameter))\b/,
  },
  tensioner: {
    title: 'Screw or cylinder',
    why: 'Friction takes most of your work. What you know of it narrows the range.',
    ofPressure: {
      why: 'The seal takes a little, the gauge may be off by more. What you know of both narrows the range.',
      lesson: 'counting-turns',
    },
    lesson: 'screw-takes-its-cut',
    holds: /^tensioner\.(?!kind|thread|cylinder\.(piston|rod)Diameter)/,
  },
  mill: {
    title: 'Wheels',
    why: 'Bending over a wheel adds to the tension. Its maker may limit the force on it.',
    lesson: 'steel-in-the-section',
    holds: /^mill\b/,
  },
  rig: {
    title: 'Bar and dial',
    why: 'A dial on a long bar shows how far the band stretches. That needs no friction at all.',
    lesson: 'stiff-spring',
    holds: /^rig\b/,
  },
  readings: {
    title: 'Readings',
    why: 'The steeper the line through them, the more stress each step of torque gives.',
    ofPressure: {
      why: 'The steeper the line through them, the more stress each step of pressure gives.',
      lesson: 'stiff-spring',
    },
    lesson: 'stiff-spring',
    holds: /^readings\b/,
  },
  compare: {
    title: 'Theory and measurement',
    why: 'Two routes with little in common. Where both are narrow and agree, you may trust both.',
    lesson: 'theory-meets-measurement',
    holds: /^second\b/,
  },
  ways: {
    title: 'Ways of setting',
    why: 'A paint mark, a count of turns, a feel in the arm: how well does each hit?',
    lesson: 'counting-turns',
    holds: /^ways\b/,
  },
  setting: {
    title: 'Target and bands',
    why: 'What you want in the steel becomes a torque, for this band and for others.',
    ofPressure: {
      why: 'What you want in the steel becomes a pressure, for this band and for others.',
      lesson: 'what-tension-buys',
    },
    lesson: 'what-tension-buys',
    holds: /^(target|demands|bands)\b/,
  },
  log: {
    title: 'Log',
    why: 'Whether the setting keeps is seen over weeks, not in one day.',
    holds: /^log\b/,
  },
  card: { title: 'Setting card', why: 'One sheet to hang at the mill.' },
} as const satisfies Readonly<Record<string, SheetPart>>;

/** The anchor of a part. */
export type PartId = keyof typeof SHEET_PARTS;

/** The anchors in their order. */
export const PART_IDS = Object.keys(SHEET_PARTS) as readonly PartId[];

/** The number that stands before the title of a part. */
export const partNumber = (id: PartId): number => PART_IDS.indexOf(id) + 1;

/** The part after one; undefined after the last. */
export const partAfter = (id: PartId): PartId | undefined => PART_IDS[partNumber(id)];

const found = new Map<string, PartId | undefined>(); // as many as the form has boxes

/** The part that holds a box. */
export function partOf(path: string): PartId | undefined {
  if (!found.has(path)) {
    const part = PART_IDS.find((id) => (SHEET_PARTS[id] as SheetPart).holds?.test(path));
    found.set(path, part);
  }
  return found.get(path);
}

/** Whether a text is the anchor of a part. */
export const isPartId = (text: string): text is PartId => Object.hasOwn(SHEET_PARTS, text);
