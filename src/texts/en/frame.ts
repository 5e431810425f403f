/** The frame round every screen, the Shelf, and what every screen shares. */

export const frameTexts = {
  area: 'frame',
  texts: {
    shelf: 'Shelf',
    begin: 'Begin',
    bench: 'Bench',
    logbook: 'Logbook',
    slate: 'Slate',
    toolroom: 'Toolroom',
    places: 'Places',
    skip: 'To the content',
    notFetched: 'This part could not be fetched.',
    tryAgain: 'Try again',
    notYet: 'Not yet',
    language: 'Language',
    earEnglish:
      'The ear and the voices of this page know English only. Use those of the browser, or the keys.',
    making: 'What are you making?',
    steps: '{steps, plural, one {# step} other {# steps}} · revision {revision}',
    beginFlow: 'Begin: {title}',
    before: 'Before anything turns',
    unfinished: 'Unfinished',
    goOn: 'Go on with {title}',
    notFinished: 'Not finished',
    placeOf: 'Step {index, number} of {of, number}: {title}',
    caution: 'Caution',
    opening: 'Opening the run.',
    cannotLead: 'This run cannot be led here',
    toShelf: 'To the Shelf',
    toLogbook: 'To the Logbook',
  },
} as const;
