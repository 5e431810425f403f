/** The drills that charts print for threads. */

/**
 * mm by thread as it is written in the thread room. Coarse sizes: metric hole chart, Drill and tap
 * size chart; from memory: ISO 2306. M12 is 10.2 in most charts and 10.3 in one; M10x1.25 8.8 or
 * 8.75, M12x1.25 10.8 or 10.75, M6x0.75 5.25 or 5.2. Above M24: nominal less pitch, from memory: ISO 2306.
 */
export const metricTapDrills: Readonly<Record<string, number>> = {
  'M3x0.5': 2.5,
  'M4x0.7': 3.3,
  'M5x0.8': 4.2,
  M6x1: 5,
  'M8x1.25': 6.8,
  'M10x1.5': 8.5,
  'M12x1.75': 10.2,
  M14x2: 12,
  M16x2: 14,
  'M18x2.5': 15.5,
  'M20x2.5': 17.5,
  'M22x2.5': 19.5,
  M24x3: 21,
  'M4x0.5': 3.5,
  'M5x0.5': 4.5,
  'M6x0.75': 5.25,
  M8x1: 7,
  M10x1: 9,
  'M10x1.25': 8.8,
  M12x1: 11,
  'M12x1.25': 10.8,
  'M12x1.5': 10.5,
  'M14x1.5': 12.5,
  'M16x1.5': 14.5,
  'M18x1.5': 16.5,
  'M20x1.5': 18.5,
  'M22x1.5': 20.5,
  M24x2: 22,
};

/**
 * Name and inches of the drill by thread. Up to 5/8: Tap drill chart ("75 %"); above: Tap drill
 * selector chart, from memory: Machinery's Handbook. 7/8-14 is 13/16 in most and 51/64 in one.
 */
export const unifiedTapDrills: Readonly<Record<string, readonly [name: string, inches: number]>> = {
  '#4-40 UNC': ['#43', 0.089],
  '#4-48 UNF': ['#42', 0.0935],
  '#5-40 UNC': ['#38', 0.1015],
  '#5-44 UNF': ['#37', 0.104],
  '#6-32 UNC': ['#36', 0.1065],
  '#6-40 UNF': ['#33', 0.113],
  '#8-32 UNC': ['#29', 0.136],
  '#8-36 UNF': ['#29', 0.136],
  '#10-24 UNC': ['#25', 0.1495],
  '#10-32 UNF': ['#21', 0.159],
  '#12-24 UNC': ['#16', 0.177],
  '#12-28 UNF': ['#14', 0.182],
  '1/4-20 UNC': ['#7', 0.201],
  '1/4-28 UNF': ['#3', 0.213],
  '5/16-18 UNC': ['F', 0.257],
  '5/16-24 UNF': ['I', 0.272],
  '3/8-16 UNC': ['5/16', 0.3125],
  '3/8-24 UNF': ['Q', 0.332],
  '7/16-14 UNC': ['U', 0.368],
  '7/16-20 UNF': ['25/64', 0.390625],
  '1/2-13 UNC': ['27/64', 0.421875],
  '1/2-20 UNF': ['29/64', 0.453125],
  '9/16-12 UNC': ['31/64', 0.484375],
  '9/16-18 UNF': ['33/64', 0.515625],
  '5/8-11 UNC': ['17/32', 0.53125],
  '5/8-18 UNF': ['37/64', 0.578125],
  '3/4-10 UNC': ['21/32', 0.65625],
  '3/4-16 UNF': ['11/16', 0.6875],
  '7/8-9 UNC': ['49/64', 0.765625],
  '7/8-14 UNF': ['13/16', 0.8125],
  '1-8 UNC': ['7/8', 0.875],
  '1-12 UNF': ['59/64', 0.921875],
};
