/**
 * What is said to a reading of the dial: right within little more than half a mark, or else the usual slip that it
 * comes from. It is said in the dial's own units.
 * Units: m in and out; marks of the dial inside.
 * Source: definition; the slips, common practice, no source.
 */

import { markOf, unitsOfFace } from '../../../figures/dial/faces.ts';
import { handsAt, MARKS } from '../../../figures/dial/hands.ts';
import type { Values, ValuesOf } from '../../../models/define-model.ts';
import type { ReadOff } from '../../../models/on-page.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { aFewHundredths } from '../model.ts';
import { type Picture, pictureOf } from './picture.ts';

/** The two looks, what is asked of them, and how marks are said in the dial's units. */
interface Asked extends Picture {
  readonly isMove: boolean;
  readonly mark: number; // m
  readonly say: (marks: number) => string;
}

/** A slip: the marks that it comes to, and its name. */
type Slip = readonly [marks: number, says: string];

const CLOSE = 0.6; // marks: half a mark, and a little for the eye
const NEARLY = 4; // marks: misread, not misunderstood
const OTHER_SCALES = [10, 0.1, 25.4, 1 / 25.4, 100, 1000]; // a comma, the other unit, marks for millimeters or inches

function askedOf(values: Values): Asked {
  const { picture, look, face } = values as ValuesOf<typeof aFewHundredths>;
  const mark = markOf(face);
  const say = (marks: number) => formatQuantity(marks * mark, 'stretch', unitsOfFace(face));
  return { ...pictureOf(picture), isMove: look === 'two', mark, say };
}

const movedOf = ({ before, now }: Picture) => Math.abs(now - before);

const answerOf = (asked: Asked) => (asked.isMove ? movedOf(asked) : asked.now);

/** The slips of one reading. */
function slipsOfReading({ now, say }: Asked): readonly Slip[] {
  const { turns, marks } = handsAt(now);
  const counted = `The small hand is past ${turns} and has not reached ${turns + 1}`;
  return [
    [
      marks,
      `That is the big hand alone. ${counted}: add ${turns} whole turns, ${say(turns * MARKS)}.`,
    ],
    [now + MARKS, `That is one turn too many. ${counted}: only ${turns} turns are complete.`],
    [now - MARKS, `A whole turn is lost. ${counted}: ${turns} turns are complete.`],
    [
      turns * MARKS + (MARKS - marks),
      'You counted the marks the wrong way round. The numbers rise clockwise, whichever way the hand runs.',
    ],
  ];
}

/** The slips of the difference of two. */
function slipsOfMove(asked: Asked): readonly Slip[] {
  const { before, now, say } = asked;
  const [was, is] = [handsAt(before), handsAt(now)];
  const moved = movedOf(asked);
  const way = now < before ? 'backwards' : 'forwards';
  const zero =
    'You subtracted the big hands alone, but the hand passed zero on its way. Read the small hand too, both times, and subtract then.';
  return [
    ...(was.turns === is.turns ? [] : [[Math.abs(is.marks - was.marks), zero] as const]),
    [
      moved + MARKS,
      'That is a whole turn too many. Count the turns on the small hand, both times.',
    ],
    [moved - MARKS, 'A whole turn is lost. Count the turns on the small hand, both times.'],
    [
      MARKS * (1 + 2 * Math.floor(moved / MARKS)) - moved,
      `You went round the dial the other way. This hand ran ${way}.`,
    ],
    [
      now,
      'That is what the dial shows now. How far it moved is the difference of before and now, whichever is larger.',
    ],
    [before, `That is what the dial showed before. How far is it from there to ${say(now)}?`],
  ];
}

function slipOf(asked: Asked, marks: number): string | undefined {
  const slips = asked.isMove ? slipsOfMove(asked) : slipsOfReading(asked);
  const usual = slips.find(([slip]) => Math.abs(marks - slip) <= CLOSE);
  if (usual) return usual[1];
  const right = answerOf(asked);
  if (Math.abs(marks - right) <= NEARLY)
    return 'Close, but not on the mark. Start from the nearest number and count the marks again; every fifth one is longer.';
  const isScaled = OTHER_SCALES.some((scale) => Math.abs(marks / scale / right - 1) < 0.02);
  return isScaled
    ? `The digits fit, the scale does not. One mark of this dial is ${asked.say(1)}, one turn ${asked.say(MARKS)}.`
    : undefined;
}

const shownBy = (position: number, say: Asked['say']) => {
  const { turns, marks } = handsAt(position);
  return `small hand past ${turns}, big hand on ${marks}: ${say(position)}`;
};

/** What is right, and why. */
function because(values: Values): string {
  const { before, now, isMove, say } = askedOf(values);
  if (!isMove) return `${shownBy(now, say).replace('small', 'Small')}.`;
  const passed =
    handsAt(before).turns === handsAt(now).turns
      ? 'it did not pass zero'
      : `it passed zero ${Math.abs(handsAt(before).turns - handsAt(now).turns) > 1 ? 'twice ' : ''}on the way`;
  const way = now < before ? 'backwards' : 'forwards';
  return `Before: ${shownBy(before, say)}. Now: ${shownBy(now, say)}. The hand ran ${way}, and ${passed}. It moved ${say(Math.abs(now - before))}.`;
}

/** The reply to a typed reading. A difference may be typed with either sign. */
function replyTo(values: Values, typed: number): string {
  const asked = askedOf(values);
  const marks = (asked.isMove ? Math.abs(typed) : typed) / asked.mark;
  if (Math.abs(marks - answerOf(asked)) <= CLOSE) return `Yes. ${because(values)}`;
  return (
    slipOf(asked, marks) ??
    'Not correct, and not one of the usual slips. Take the small hand first: which number has it passed? Then the big one.'
  );
}

/** What the page needs to reply. */
export const readOff: ReadOff = {
  kind: 'stretch',
  unitsOf: (values) => unitsOfFace(values['face'] === 'inch' ? 'inch' : 'metric'),
  replyTo,
  because,
};
