/** Whether every path of a flow was walked before it is run, and what came of it. */

export const proofTexts = {
  area: 'proof',
  texts: {
    title: 'Every path of this job',
    notAsked: 'Not yet proved. Fill in the numbers, then every path is walked.',
    stopped: 'Not yet proved: you stopped the walk.',
    failed: 'Not yet proved: the walk broke down. Try once more.',
    walking:
      'Every path is being walked, with your machine and these numbers: {places, number} places so far.',
    proved:
      'Proved. {states, number} situations were walked: whatever is said, and whatever is opened or lost on the way, no hazard of this machine kind comes up.',
    believes: 'This holds for what you tell it. It has no eyes on the machine.',
    broken: 'Not safe to begin. {sentence}',
    brokenAt: 'In step “{step}”: {message}',
    way: 'How it comes to that:',
    you: 'you',
    bench: 'bench',
    tooLarge: 'Too large to prove ({reason}). What was not walked is not called safe.',
    unseeable: 'It cannot be proved: {reason}',
    cannotBegin: 'Only proved jobs begin. Tell whoever wrote this flow.',
    notProved: 'This job is not proved, so it does not begin.',
    stop: 'Stop walking',
    again: 'Walk every path',
  },
} as const;
