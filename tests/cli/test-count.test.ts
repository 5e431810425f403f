import { expect, it } from 'vitest';
import { isOlder } from '../../src/cli/start-packages.mjs';
import { count } from '../../src/cli/test-count.mjs';

it('counts a test file that could not be loaded as one failed', () => {
  const testResults = [
    { status: 'passed', assertionResults: [{}, {}] },
    { status: 'failed', assertionResults: [{}] },
    { status: 'failed', assertionResults: [] },
  ];
  expect(count({ numPassedTests: 2, numFailedTests: 1, testResults })).toEqual({
    passed: 2,
    failed: 2,
  });
});

it('counts nothing where there is no report', () => {
  expect(count({})).toEqual({ passed: 0, failed: 0 });
});

it.each([
  ['20.18.3', '20.19', true],
  ['20.19.0', '20.19', false],
  ['18.99.0', '20.19', true],
  ['24.1.0', '20.19', false],
])('takes Node %s as older than %s: %s', (version, wanted, older) => {
  expect(isOlder(version, wanted)).toBe(older);
});
