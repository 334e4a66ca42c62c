/**
 * Where the hands of a dial stand, in words: never a number to be read off, so that one who hears the drawing has as much
 * to do as one who sees it.
 * Units: marks of the dial.
 * Source: definition.
 */
import { handsAt } from './hands.ts';

const NUMBERED = 10; // every so many marks have a number

const count = (marks: number) => `${marks} ${marks === 1 ? 'mark' : 'marks'}`;

/** Where the big hand stands among the marks. */
export function bigHand(position: number): string {
  const { marks } = handsAt(position);
  const number = Math.floor(marks / NUMBERED) * NUMBERED;
  const past = marks - number;
  if (past === 0) return `exactly on ${number}`;
  if (Number.isInteger(past)) return `${count(past)} clockwise of ${number}`;
  const whole = Math.floor(past);
  return whole === 0
    ? `half a mark clockwise of ${number}`
    : `${whole} and a half marks clockwise of ${number}`;
}

/** Between which numbers the small hand stands. */
export function smallHand(position: number): string {
  const { turns, marks } = handsAt(position);
  const next = turns + 1;
  if (marks === 0) return `exactly on ${turns}`;
  if (marks < 20) return `just past ${turns}`;
  if (marks > 80) return `just short of ${next}`;
  return `between ${turns} and ${next}`;
}
