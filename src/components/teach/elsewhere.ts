/** Parts of the site beside the teaching pack that a teacher may want; one that is not there yet is not linked. */

/** Where it is, what for, and whether it is there. */
export const OTHER_PARTS = [
  {
    title: 'Practice bench',
    address: '/bench/',
    says: 'A simulated mill for learners who have none: give everyone the same number, and all have the same readings.',
    isThere: false,
  },
  {
    title: 'Worked examples',
    address: '/worked/',
    says: 'Examples step by step, each a link that opens with its numbers in place.',
    isThere: false,
  },
] as const;
