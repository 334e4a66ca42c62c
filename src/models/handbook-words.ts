/**
 * How a handbook's friction is named in the models that show it.
 * Units: none.
 * Source: definition.
 */
import { plain } from './words.ts';

/** The words of each. */
export const HANDBOOK_WORDS = {
  oiledLow: plain('least friction of an oiled thread'),
  oiledHigh: plain('most friction of an oiled thread'),
  dryLow: plain('least friction of a dry thread'),
  dryHigh: plain('most friction of a dry thread'),
  plainCollarLow: plain('least friction of a collar'),
  plainCollarHigh: plain('most friction of a collar'),
};
