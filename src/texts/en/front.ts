/** What the hall between the rooms tells a person: refusals, and what came of taking in a file. */

export const frontTexts = {
  area: 'front',
  texts: {
    cannotOpen: 'Followrest cannot open: {why}',
    refused: 'Refused, and nothing is changed. {reasons}',
    takenIn:
      'Taken in: {added, plural, one {# new run} other {# new runs}}; {here, plural, one {# was} other {# were}} here already. {photos, plural, one {# photo} other {# photos}}, {kept, plural, one {# card, name or setting} other {# cards, names and settings}}.',
    leftHere: '{taken} Left as they are here: {names}.',
    strangeRelease:
      'A release in this run was not given on this device. It can be read in the Logbook, and begun again with the same numbers.',
    strangeSource:
      'The flow of this run is not the text that it was begun with. It can be read in the Logbook; begin it again.',
    unprovedRun:
      'No proof says that every path through this run is safe. It can be read in the Logbook; begin it again from the Shelf.',
    otherTab: 'This run is led in another tab. Go on there, or close that tab first.',
    noRun: 'This run is not in the Logbook of this device.',
    runOver: 'This run is over. It can be read in the Logbook.',
    cardTaken: '"{id}" is the id of a card that came with Followrest. Give yours another id.',
    materialLeft: 'The material "{name}" is left out: {faults}',
    notPicture: 'This is no picture that can be kept: JPEG, WebP or PNG.',
    unknownKey: '"{key}" is nothing that this version keeps.',
    unreadable: '"{key}" cannot be read.',
    mustAgree: 'An instructor of this device must agree with a passphrase.',
    writeName: 'Write a name.',
    nameThere: '{name} is in the list already.',
    nameGone: 'This name is not in the list any more.',
    nameMissing: '"{name}" is not in the list.',
    shortPassphrase: 'A passphrase has at least {n, number} letters. Several words are best.',
    wait: 'Too many wrong passphrases. Wait {n, plural, one {# second} other {# seconds}}.',
    wrongPassphrase: 'That is not the passphrase.',
    nobody: 'nobody known',
  },
} as const;
