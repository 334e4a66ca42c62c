/** Parts of the site beside the teaching pack that a teacher may want. */

/** Where it is, and what for. */
export const OTHER_PARTS = [
  {
    title: 'Figures for the projector',
    address: '/teach/projector/',
    says: 'Every figure of the lessons alone and large, its controls beside it, worked by keyboard.',
  },
  {
    title: 'Practice bench',
    address: '/bench/',
    says: 'A simulated mill for learners who have none: give everyone the same number, and all have the same readings.',
  },
  {
    title: 'Worked examples',
    address: '/worked/',
    says: 'Examples step by step, each a link that opens with its numbers in place.',
  },
] as const;
