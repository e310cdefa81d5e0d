/**
 * What the kernel says of a shop's own file that cannot be taken, and of a price that it does not give, in English. A
 * table of its own, so that it comes along only where they are asked for.
 */
export const SHOP_SAID_EN = {
  quote: {
    cuttingUnlisted:
      'For cutting {{material}} of {{thickness}} by {{process}} there is no list price: the price is on request. Ask {{shop}}.',
    nothing: 'No plate is wanted yet, so there is no price. Say how many.',
    plateLarge:
      'The list prices for {{material}} of {{thickness}} by {{process}} go up to a diameter of {{most}}; “{{plate}}” has {{diameter}}. Its price is on request: ask {{shop}}.',
    plateUnlisted:
      'For plates of {{material}}, {{thickness}}, by {{process}} there is no list price: the price is on request. Ask {{shop}}.',
    pricesUnlisted: '{{shop}} has no list prices here: the price is on request. Ask {{shop}}.',
    rollingUnlisted: 'For rolling “{{plate}}” there is no list price: the price is on request. Ask {{shop}}.',
    tooMuch: 'The amount is larger than a list price is meant for: the price is on request. Ask {{shop}}.',
  },
} as const;
