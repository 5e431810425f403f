/** The words that always mean the same, in every flow and on every machine. The first of each is the one that is shown. */

export const commandTexts = {
  area: 'commands',
  texts: {
    repeat: ['repeat', 'say again'],
    why: ['why'],
    whyThat: ['why that', 'why that number'],
    where: ['where am i'],
    words: ['what can i say'],
    speed: ['speed', 'what speed'],
    feed: ['feed', 'what feed'],
    depth: ['depth', 'what depth'],
    left: ['how much is left'],
    trouble: ['trouble'],
    next: ['next'],
    'carry-on': ['carry on'],
    back: ['back', 'go back'],
    hold: ['hold'],
    stop: ['stop', 'stop stop'],
    correct: ['correct', 'yes correct'],
    keep: ['keep', 'keep it'],
    wrong: ['wrong', 'no wrong'],
    'first-time': ['first time'],
    familiar: ['familiar'],
    'own-pace': ['own pace'],
    shorter: ['shorter'],
    longer: ['longer'],
    /** Too bare to answer anything. */
    bare: ['yes', 'no'],
    /** Leaves a check question unanswered. */
    pass: ['pass on'],
    note: ['note'],
    /** Before the words of a note. */
    noteHead: ['note', 'take a note', 'take note'],
    /** Before a question to the Slate. */
    slateHead: ['slate', 'work out'],
    /** Before a speed of the card. */
    running: ['running', 'i am running'],
    /** Before a speed that runs; the longer ones first. */
    runningHead: [
      'i am running at',
      'i am running',
      'i m running at',
      'i m running',
      'im running at',
      'im running',
      "i'm running at",
      "i'm running",
      'running at',
      'running',
    ],
    lowerSpeed: ['lower speed'],
    higherSpeed: ['higher speed'],
    finerFeed: ['finer feed'],
    coarserFeed: ['coarser feed'],
    /** A choice that is a yes or a no: {label} is what it is called. */
    withLabel: ['with {label}', '{label} on'],
    withoutLabel: ['no {label}', 'without {label}', '{label} off'],
  },
} as const;
