import { assert, constantFrom, oneof, property, record, string } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addressOf, type Route, readRoute } from '../../src/screens/route.ts';

const name = string({ minLength: 1, maxLength: 20, unit: 'grapheme' });
const routes = oneof(
  constantFrom<Route>({ at: 'shelf' }, { at: 'logbook' }, { at: 'slate' }, { at: 'toolroom' }),
  record({ at: constantFrom('run' as const, 'kept' as const), run: name }),
  record({ at: constantFrom('begin' as const), flow: name, like: name }),
  record({ at: constantFrom('slate' as const), rule: name }),
);

describe('an address', () => {
  it('leads back to the screen it was made for, whatever signs stand in it', () => {
    assert(
      property(routes, (route) => {
        expect(readRoute(addressOf(route as Route))).toEqual(route);
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  it.each(['', '#', '#/', '#/attic', '#/run', '#/begin', '#/begin/'])(
    'of no screen leads to the Shelf: "%s"',
    (hash) => {
      expect(readRoute(hash)).toEqual({ at: 'shelf' });
    },
  );

  it('with a stray percent sign is taken as it is', () => {
    expect(readRoute('#/run/50%')).toEqual({ at: 'run', run: '50%' });
  });
});
