/** The sizes of a piece by name, as its drawing has them. A feature is known by its id, out of the table of choices. */

export const pieceTexts = {
  area: 'piece',
  texts: {
    sizeOf: '{feature} {size}',
    stockDiameter: 'stock diameter',
    stockLength: 'stock length',
    stockWidth: 'stock width',
    stockHeight: 'stock height',
    diameter: 'diameter',
    largeDiameter: 'large diameter',
    smallDiameter: 'small diameter',
    from: 'from',
    to: 'to',
    fromLeft: 'from the left',
    fromFront: 'from the front',
    width: 'width',
    depth: 'depth',
    size: 'size',
    angle: 'angle',
    pointAngle: 'point angle',
    lower: 'lower',
    upper: 'upper',
    widthLower: 'width, lower',
    widthUpper: 'width, upper',
  },
} as const;
