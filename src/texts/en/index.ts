/** The areas, in English. */

export { apprenticeTexts } from './apprentice.ts';
export { frameTexts } from './frame.ts';
export { glossaryTexts } from './glossary.ts';
export { peopleTexts } from './people.ts';
export { proofTexts } from './proof.ts';
export { recordTexts } from './record.ts';
export { whyTexts } from './why.ts';
