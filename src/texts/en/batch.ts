/** The pieces of a batch: how a size runs over them, and what is said when it drifts. */

export const batchTexts = {
  area: 'batch',
  texts: {
    rising: 'The last {n} are each larger.',
    falling: 'The last {n} are each smaller.',
    risingDeeper: 'The last {n} are each larger: take {size} off. Set the dial {dial} further.',
    risingBack:
      'The last {n} are each larger: make it {size} smaller. Set the dial {dial} less far.',
    fallingDeeper:
      'The last {n} are each smaller: make it {size} larger. Set the dial {dial} further.',
    fallingBack:
      'The last {n} are each smaller: leave {size} more on. Set the dial {dial} less far.',
    risingElsewhere: 'The last {n} are each larger: make it {size} smaller.',
    fallingElsewhere: 'The last {n} are each smaller: make it {size} larger.',
    leave: '{drift} Leave the dial.',
    batch: 'The batch',
    pieces: '{n, plural, one {# piece} other {# pieces}}',
    chartOf: '{label}: mean and range of {n} pieces at a time',
    tooFew:
      'A chart needs four pieces that were measured; there {n, plural, one {is #} other {are #}}.',
    over: '{label} over the pieces',
    mean: 'Mean',
    spread: 'Largest less smallest',
    cpk: 'Cpk',
    drift: 'Drift',
    readings: 'Readings, piece by piece',
  },
} as const;
