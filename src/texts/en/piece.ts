/** The sizes of a piece by name, as its drawing has them. A feature is known by its id, out of the table of choices. */

export const pieceTexts = {
  area: 'piece',
  texts: {
    sizeOf: '{feature} {size}',
    stockDiameter: 'stock diameter',
    stockLength: 'stock length',
    diameter: 'diameter',
    largeDiameter: 'large diameter',
    smallDiameter: 'small diameter',
    from: 'from',
    to: 'to',
    depth: 'depth',
    size: 'size',
    angle: 'angle',
    pointAngle: 'point angle',
    lower: 'lower',
    upper: 'upper',
  },
} as const;
