/** What people call the materials, tools and operations of the tables. */

export type SaidNames = Readonly<Record<string, readonly string[]>>;

export const materialsSaid: SaidNames = {
  'low-carbon-steel': ['mild steel', 'low carbon steel', 'steel'],
  'medium-carbon-steel': ['medium carbon steel', 'carbon steel'],
  'free-machining-steel': ['free machining steel', 'free cutting steel', 'leaded steel'],
  'tool-steel': ['tool steel', 'silver steel', 'gauge plate'],
  'stainless-304': ['stainless', 'stainless steel', 'three oh four'],
  'stainless-416': ['free machining stainless', 'four sixteen'],
  'grey-cast-iron': ['cast iron', 'grey iron', 'gray cast iron', 'iron'],
  'aluminium-6061': ['aluminium', 'aluminum'],
  'free-cutting-brass': ['brass'],
  bronze: ['phosphor bronze', 'tin bronze'],
  acetal: ['plastic', 'pom'],
  nylon: ['polyamide'],
  'titanium-6-4': ['titanium'],
};

export const toolsSaid: SaidNames = {
  hss: ['high-speed steel', 'high speed steel'],
  carbide: ['uncoated carbide', 'brazed carbide'],
  'coated-carbide': ['coated carbide', 'insert'],
};

export const operationsSaid: SaidNames = {
  turn: ['turning'],
  face: ['facing'],
  chamfer: ['chamfering'],
  bore: ['boring'],
  knurl: ['knurling'],
  part: ['parting', 'parting off', 'cutting off'],
  groove: ['grooving'],
  thread: ['threading', 'screw cutting'],
  drill: ['drilling'],
  'centre-drill': ['centre drilling', 'center drilling', 'center drill'],
  'spot-drill': ['spotting', 'spot drilling'],
  counterbore: ['counterboring'],
  countersink: ['countersinking'],
  ream: ['reaming'],
  tap: ['tapping'],
  mill: ['milling'],
};

/** The option that a person names by one of its said names, or the words as they came. */
export function optionSaid(words: string, said: SaidNames | undefined): string {
  const wanted = words.trim().toLowerCase();
  const found = Object.entries(said ?? {}).find(([, names]) => names.includes(wanted));
  return found?.[0] ?? words.trim();
}
