/** The few words on the drawing of a piece. */

export const drawingTexts = {
  area: 'drawing',
  texts: {
    now: 'now',
    deep: 'deep',
    through: 'through',
    wide: 'wide',
    long: 'long',
    high: 'high',
    slot: 'slot',
    shoulder: 'shoulder',
    taper: 'taper',
    to: 'to',
    centre: 'centre',
    within: 'within',
    rework: 'rework',
    lost: 'lost',
    drawing: 'Half-section drawing',
    views: 'Drawing in several views',
    done: 'done',
    stock: 'not cut yet',
    measured: 'measured',
  },
} as const;
