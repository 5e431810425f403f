import { describe, expect, it } from 'vitest';
import { readPiece } from '../../../src/screens/drawing/read-piece.ts';

const stock = { diameter: 30, length: 100 };

describe('reading a piece out of a running flow', () => {
  it('names the features that lack a number, and draws the others', () => {
    const { piece, missing } = readPiece(stock, [
      { kind: 'cylinder', id: 'shank', to: 40, diameter: 20 },
      { kind: 'cylinder', id: 'neck', to: 20 },
    ]);
    expect(piece.features).toEqual([
      { kind: 'cylinder', id: 'shank', from: 0, to: 40, diameter: 20 },
    ]);
    expect(missing).toEqual(['neck']);
  });

  it('cuts a thread, and the chamfer at its mouth, into the bore where that is asked for', () => {
    // M10: major diameter 10, minor diameter of the nut 8.376 mm (ISO 724).
    const thread = { kind: 'thread', id: 't', to: 20, diameter: 10, smallDiameter: 8.376 } as const;
    const chamfer = { kind: 'chamfer', id: 'c', size: 1 } as const;
    const internal = true;
    const inside = [thread, chamfer].map((one) => ({ ...one, internal }));
    expect(readPiece(stock, inside).piece.features).toMatchObject([{ internal }, { internal }]);
    for (const feature of readPiece(stock, [thread, chamfer]).piece.features) {
      expect(feature).not.toHaveProperty('internal');
    }
  });

  it('takes limits only in pairs', () => {
    const read = readPiece(stock, [
      { kind: 'cylinder', id: 'a', to: 40, diameter: 20, lower: 19.9 },
      { kind: 'groove', id: 'b', from: 5, to: 8, diameter: 18, lower: 17.9, upper: 18 },
    ]);
    expect(read.piece.features[0]).not.toHaveProperty('lower');
    expect(read.piece.features[1]).toMatchObject({ lower: 17.9, upper: 18 });
  });

  it('puts a chamfer or bore with no place at the face it names', () => {
    const { piece } = readPiece(stock, [
      { kind: 'cylinder', id: 'a', to: 40, diameter: 20 },
      { kind: 'chamfer', id: 'c', end: 'left', size: 1 },
      { kind: 'bore', id: 'b', end: 'left', depth: 12, diameter: 6 },
    ]);
    expect(piece.features[1]).toMatchObject({ at: 40, angle: 45 });
    expect(piece.features[2]).toMatchObject({ from: 40, depth: 12 });
  });
});
