/** Counts passed and failed tests in a JSON report of vitest. */

/**
 * A test file that could not even be loaded has no tests to fail; it counts as one failed.
 * @param {{ numPassedTests?: number, numFailedTests?: number,
 *   testResults?: { status: string, assertionResults: unknown[] }[] }} report
 */
export function count({ numPassedTests = 0, numFailedTests = 0, testResults = [] }) {
  const unloaded = testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  return { passed: numPassedTests, failed: numFailedTests + unloaded.length };
}
