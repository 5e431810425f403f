/** The titles of the sources that rules and rows cite, written once. */

export const PRACTICE = 'common practice, no source';
export const GROOVER =
  'Groover, Fundamentals of Modern Manufacturing 4e (solutions to chapter 22 and lecture examples)';
export const CARVILL = "Carvill, Mechanical Engineer's Data Handbook, pp. 187-194";
export const FERROUS = 'Ferrous Metals Data Book, tables 9-1 to 9-3';
export const AISI = 'Speeds and feeds by AISI group';
export const HANDOUT = 'Machine-tool speeds and feeds hand-out';
export const AIR_FORCE = 'US T.O. 1-1A-9 table 2-8';
export const DRILL_TABLES = 'Speed and feed tables for HSS and carbide drills and reamers';
export const NAVY = 'US Navy NAVEDTRA 14345';
export const TUTORIAL = 'Tutorial "Design tables and coefficients"';
export const PLASTICS = 'Plastic turning guidelines';
export const TAPS = 'HSS tap speeds (two tap makers)';
export const THREADING = 'Carbide threading speeds 2022; halved for work by hand (practice)';
export const TC_9_524 = 'from memory: US Army TC 9-524 ch. 7';
export const END_MILLS = 'Solid, headed and coated end mills (three makers)';
export const VDI = 'Material groups VDI 3323 / ISO 513 with kc1.1 and mc, 2017 and 2022 editions';
export const KIENZLE =
  'Kienzle; specific cutting force, text of a tool maker; constants: VDI 3323 groups';
export const SHIGLEY = 'from memory: Shigley, table A-9';
export const HIBBELER = 'Material-property appendices (Hibbeler type; Gere; Triton College)';
export const EXPANSION = 'Thermal expansion charts (three) and a Hibbeler-type appendix';
export const DENSITY = 'from memory: Hibbeler-type appendix and ASM data';
export const DRILL_GUIDE = 'Metal drilling reference guide';
export const HANDBOOK_31 = "Machinery's Handbook 31";
export const POWER_PAGES =
  'Tool-maker technical pages: printed power formulas and worked problems for turning and milling (titles not kept)';
