/** The form with which a job begins: who, which machine, which numbers, and what is wrong with them. */

export const beginTexts = {
  area: 'begin',
  texts: {
    fetching: 'Fetching the numbers.',
    unreadable: '{title} cannot be read',
    noFlow: 'No such flow',
    noFlowWhy: 'It is not on the Shelf of this page.',
    beginJob: 'Begin the job',
    numbers: 'Numbers of this piece',
    numbersHint:
      'Type it as you would write it: 25, 24.95, 1 in, 1 1/8 in. Without a unit it is in the unit that stands beside it.',
    card: 'Machine card',
    noCard: 'No card for this kind of machine. Write one in the Toolroom.',
    cardHint: 'Speeds, feeds and limits come from it. Cards are kept in the Toolroom.',
    labelUnit: '{label}, {unit}',
    range: '{low} to {high} {unit}',
    notUnderstood: 'Not understood yet. {range}',
    readAs: 'Read as {size}. {range}',
    whoMissing: 'Write who is making it.',
    empty: '{label} is empty: type a number.',
    wrong: '{label}: {fault}',
    outOfRange: '{label} must be {range}.',
    chooseFirst: 'Choose a flow and a machine card first.',
  },
} as const;
