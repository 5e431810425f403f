import { describe, expect, it } from 'vitest';
import { levelOf, RoomEcho } from '../../../src/voice/page/room-echo.ts';

/** A tenth of a second at 16 kHz, so many decibels below full scale. */
function piece(decibels: number): Float32Array {
  const loudness = 10 ** (decibels / 20) * Math.SQRT2;
  return Float32Array.from({ length: 1600 }, (_, i) => loudness * Math.sin(i / 5));
}

function roomOf(decibels: number): RoomEcho {
  const echo = new RoomEcho();
  for (let i = 0; i < 20; i++) echo.learn(piece(decibels));
  return echo;
}

describe('the tail after the mouth', () => {
  it('lasts while the room rings, and is over at the room as it was', () => {
    const echo = roomOf(-55);
    expect(echo.isOver(piece(-20))).toBe(false);
    expect(echo.isOver(piece(-40))).toBe(false);
    expect(echo.isOver(piece(-53))).toBe(true);
  });

  it('is measured against the room with its machine, not against silence', () => {
    expect(roomOf(-30).isOver(piece(-28))).toBe(true);
    expect(roomOf(-60).isOver(piece(-28))).toBe(false);
  });

  it('is not stretched by speech that came before', () => {
    const echo = roomOf(-55);
    for (let i = 0; i < 10; i++) echo.learn(piece(-15));
    expect(echo.isOver(piece(-40))).toBe(false);
  });

  it('is over at once where nobody has listened yet, and in a room of digital silence', () => {
    expect(new RoomEcho().isOver(piece(-10))).toBe(true);
    const echo = new RoomEcho();
    echo.learn(new Float32Array(1600));
    expect(echo.isOver(piece(-66))).toBe(true);
  });

  it('measures in decibels of full scale', () => {
    expect(levelOf(piece(-20))).toBeCloseTo(-20, 0);
  });
});
