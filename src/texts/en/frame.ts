/** The frame round every screen, and what every screen shares. */

export const frameTexts = {
  area: 'frame',
  texts: {
    shelf: 'Shelf',
    begin: 'Begin',
    bench: 'Bench',
    logbook: 'Logbook',
    slate: 'Slate',
    toolroom: 'Toolroom',
  },
} as const;
