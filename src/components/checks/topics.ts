/** The topics of the published checks: their name in the cases, their title on the page. In the order of the page. */

/** One topic. */
export interface CheckTopicWords {
  readonly topic: string;
  readonly title: string;
  readonly says: string;
}

/** Every topic that has printed figures. */
export const CHECK_TOPICS: readonly CheckTopicWords[] = [
  {
    topic: 'screw, belt, elasticity worked examples',
    title: 'Screws, belts and stretch',
    says: 'Worked examples of textbooks: from torque to thrust, grip round a rim, stretch of rods, half a turn of a nut.',
  },
  {
    topic: 'thread dimensions',
    title: 'Sizes of threads',
    says: 'What the standards print for the threads that a tensioning screw may have.',
  },
  {
    topic: 'vibrating string and tensioned beam',
    title: 'The note of a string',
    says: 'The plucked span is a string to begin with.',
  },
  {
    topic: 'material constants',
    title: 'Young’s modulus of steel',
    says: 'The notebook takes one middle figure with a half-width. Each printed one must lie inside it, to its last digit.',
  },
  {
    topic: 'unit factors',
    title: 'Factors between units',
    says: 'Exact by definition, or rounded in print to seven digits.',
  },
  {
    topic: 'NIST StRD linear regression',
    title: 'Straight lines',
    says: 'Fits certified to many digits, on data that make a careless program lose them.',
  },
  {
    topic: 'York straight line',
    title: 'Straight lines with errors both ways',
    says: 'Torque and dial are both uncertain; so are the two sides of this old problem.',
  },
  {
    topic: 'NIST StRD univariate',
    title: 'Means and spreads',
    says: 'Small differences of large numbers, as dial readings are.',
  },
  {
    topic: 'GUM',
    title: 'Uncertainty',
    says: 'The worked examples of the Guide and of its supplement, its table of Student’s t, and one of NIST.',
  },
  {
    topic: 'En and zeta scores',
    title: 'Agreement of two results',
    says: 'The score that tells whether theory and measurement agree.',
  },
];
