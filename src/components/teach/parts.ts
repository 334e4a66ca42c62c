/** The parts of the teaching pack, in the order in which a teacher uses them, and the parts of the site that it leads to. */

/** One part: its name, its address, what it is for. */
export interface TeachingPart {
  readonly title: string;
  readonly address: string;
  readonly says: string;
}

/** The pack itself. */
export const TEACHING_PARTS: readonly TeachingPart[] = [
  {
    title: 'Plans',
    address: '/teach/plans/',
    says: 'One workshop and four plans of 45 minutes, minute by minute, with what to say when numbers disagree.',
  },
  {
    title: 'Hand-outs',
    address: '/teach/hand-outs/',
    says: 'A printed sheet for each lesson: its drawing, blanks to fill, a table where you measure.',
  },
  {
    title: 'Problem sheets',
    address: '/teach/sheets/',
    says: 'As many sheets as you have learners, each with other numbers, and the key to all of them.',
  },
  {
    title: 'Classroom rig',
    address: '/teach/rig/',
    says: 'A strip of band steel that a screw pulls, to build: drawing, parts, numbers, cautions.',
  },
  {
    title: 'Before and after',
    address: '/teach/before-and-after/',
    says: 'Ten questions to ask twice, and how much your class has gained between.',
  },
  {
    title: 'Class board',
    address: '/teach/board/',
    says: 'Everyone’s worksheets on one chart, and whether uncertain readings explain the spread.',
  },
];
