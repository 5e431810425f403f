/** Tolerances of grade 6 for ISO metric threads in µm, by pitch and by diameter step. */

/**
 * By pitch in mm: es of position g (without its minus), Td of the screw's major diameter, TD1 of the
 * nut's minor diameter. Source: from memory: ISO 965-1 tables 1, 2 and 4; es and Td of M1.6 to M5 and
 * Td of M10 to M64 agree with printed limits (ASME B1.13M; ISO 965-4). The bare formulas
 * −(15 + 11 P), 180 ∛P² − 3.15/√P and 230 P^0.7 give 29 and 37 for es at P 1.25 and 2 and 425 for TD1
 * at P 2.5; the table rules.
 */
export const byPitch: Readonly<Record<string, readonly [es: number, td: number, td1: number]>> = {
  0.35: [19, 85, 100],
  0.4: [19, 95, 112],
  0.45: [20, 100, 125],
  0.5: [20, 106, 140],
  0.6: [21, 125, 160],
  0.7: [22, 140, 180],
  0.75: [22, 140, 190],
  0.8: [24, 150, 200],
  1: [26, 180, 236],
  1.25: [28, 212, 265],
  1.5: [32, 236, 300],
  1.75: [34, 265, 335],
  2: [38, 280, 375],
  2.5: [42, 335, 450],
  3: [48, 375, 500],
  3.5: [53, 425, 560],
  4: [60, 475, 600],
  4.5: [63, 500, 670],
  5: [71, 530, 710],
  5.5: [75, 560, 750],
  6: [80, 600, 800],
};

/** One diameter step: over the last bound, up to and including this one in mm. */
export interface DiameterStep {
  readonly upTo: number;
  /** By pitch in mm: Td2 of the screw, TD2 of the nut. */
  readonly pitchDiameter: Readonly<Record<string, readonly [screw: number, nut: number]>>;
}

/**
 * Source: from memory: ISO 965-1 tables 3 and 5; the coarse pitches agree with a printed tap guide to UNI 4535 (TD2, M1.6 to
 * M20) and ISO 965-4 (Td2, M10 to M64). TD2 = 1.32 Td2 rounded: the formula gives 170 for M10, the
 * table 180.
 */
export const smallestStep = 1.4;
export const diameterSteps: readonly DiameterStep[] = [
  { upTo: 2.8, pitchDiameter: { 0.35: [63, 85], 0.4: [67, 90], 0.45: [71, 95] } },
  {
    upTo: 5.6,
    pitchDiameter: {
      0.35: [67, 90],
      0.5: [75, 100],
      0.6: [85, 112],
      0.7: [90, 118],
      0.75: [90, 118],
      0.8: [95, 125],
    },
  },
  {
    upTo: 11.2,
    pitchDiameter: { 0.75: [100, 132], 1: [112, 150], 1.25: [118, 160], 1.5: [132, 180] },
  },
  {
    upTo: 22.4,
    pitchDiameter: {
      1: [118, 160],
      1.25: [132, 180],
      1.5: [140, 190],
      1.75: [150, 200],
      2: [160, 212],
      2.5: [170, 224],
    },
  },
  {
    upTo: 45,
    pitchDiameter: {
      1: [125, 170],
      1.5: [150, 200],
      2: [170, 224],
      3: [200, 265],
      3.5: [212, 280],
      4: [224, 300],
      4.5: [236, 315],
    },
  },
  {
    upTo: 90,
    pitchDiameter: {
      1.5: [160, 212],
      2: [180, 236],
      3: [212, 280],
      4: [236, 315],
      5: [250, 335],
      5.5: [265, 355],
      6: [280, 375],
    },
  },
];
