/** Standard tolerance grades IT4 to IT13 in µm, a row a grade, a column a main size step. */

/**
 * Source: ISO 286-1 table 1 (IT5 to IT9 also printed as h-shaft limits in catalogue
 * tables, IT4 of the steps up to 3 mm and from there on from memory: ISO 286-1). The bare formula gives
 * other values in some cells, so this table rules.
 */
export const gradeTable: Readonly<Record<number, readonly number[]>> = {
  4: [3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20],
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
  12: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630],
  13: [140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970],
};

/** How many tolerance units i make a grade. Source: from memory: ISO 286-1 annex, as in Narayana et al., Machine Drawing. */
export const unitsInGrade: Readonly<Record<number, number>> = {
  5: 7,
  6: 10,
  7: 16,
  8: 25,
  9: 40,
  10: 64,
  11: 100,
  12: 160,
  13: 250,
};
