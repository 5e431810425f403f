/** The areas, in English. */

export { apprenticeTexts } from './apprentice.ts';
export { batchTexts } from './batch.ts';
export { benchTexts } from './bench.ts';
export { commandTexts } from './commands.ts';
export { dockTexts } from './dock.ts';
export { earTexts } from './ear.ts';
export { flowTexts } from './flow.ts';
export { frameTexts } from './frame.ts';
export { glossaryTexts } from './glossary.ts';
export { optionTexts } from './options.ts';
export { peopleTexts } from './people.ts';
export { proofTexts } from './proof.ts';
export { recordTexts } from './record.ts';
export { shopTexts } from './shop.ts';
export { voiceTexts } from './voice.ts';
export { whyTexts } from './why.ts';
