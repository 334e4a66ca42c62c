/**
 * How the quantities of the model `what-tension-buys` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { whatTensionBuys } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof whatTensionBuys> = {
  inputs: {
    stress: hand('your tension', '\\sigma'),
    span: hand('guide spacing', 's'),
    power: hand('cutting power', 'P'),
    friction: hand('friction on the rim', '\\mu_r'),
    wish: {
      label: 'set the wish for',
      options: { straight: 'straight cuts', life: 'life', maker: 'the mill’s maker' },
    },
    movement: hand('the push may move the teeth by', 'd_{max}'),
    exponent: hand('exponent of life (an assumption)', 'k'),
    millLimit: hand('the mill’s maker allows on the wheel', 'F_{max}'),
  },
  outputs: {
    push: plain('push of the knot', 'F'),
    pull: steel('pull of the strand', 'T'),
    bow: steel('bow', 'd_b'),
    twist: steel('what the twist adds', 'd_t'),
    teeth: steel('movement of the teeth', 'd'),
    twistShare: steel('share of the twist'),
    tilt: steel('tilt of the band'),
    stringBow: steel('bow of a bare string', 'd_0'),
    halfStress: steel('half of the tension'),
    halfTeeth: steel('movement of the teeth at half of the tension'),
    quarterStress: steel('a quarter of the tension'),
    quarterTeeth: steel('movement of the teeth at a quarter of the tension'),
    doubledSaves: steel('what doubling from half of the tension took off'),
    closerSpan: plain('half of the guide spacing'),
    closerTeeth: steel('movement of the teeth with the guides half as far apart'),
    closerSaves: steel('what half of the guide spacing takes off'),
    strandTeeth: steel('movement of the teeth without guides'),
    strand: plain('free strand, wheel to wheel'),
    steelShare: plain('share of the steel in the resistance to twist'),
    speed: plain('speed of the band', 'v'),
    difference: steel('difference between the strands', '\\Delta T'),
    tight: steel('pull of the tight strand', 'T_1'),
    slack: steel('pull of the slack strand', 'T_2'),
    margin: plain('slip margin'),
    idleMargin: plain('slip margin with no power'),
    slipPower: plain('power at which the band slips'),
    halfSlipPower: plain('the same at half of the tension'),
    quarterSlipPower: plain('the same at a quarter of the tension'),
    powerShare: plain('share of the power at which it slips'),
    straightEdge: steel('least tension for straight cuts'),
    gripEdge: steel('least tension for grip'),
    lifeEdge: steel('most tension for the life to be kept'),
    millEdge: steel('most tension that the mill’s maker allows'),
    yieldEdge: steel('most tension for the bent steel'),
    lowEdge: steel('low edge of the window'),
    highEdge: steel('high edge of the window'),
    isOpen: plain('whether the window is open'),
    today: plain('tension set today'),
    lifeKept: plain('part of today’s life to be kept'),
    leastMargin: plain('least slip margin'),
    exponentLow: plain('least usual exponent of life'),
    exponentHigh: plain('highest usual exponent of life'),
    bending: steel('stress from the bend, at the gullets'),
    rise: steel('stress that speed and cut add'),
    yieldStrength: plain('yield strength'),
    yieldShare: plain('share of the yield strength'),
    mostPeak: plain('highest stress asked of the steel', '\\sigma_{max}'),
    area: plain('load-bearing section', 'A'),
  },
};
