import { expect, it } from 'vitest';
import { readingsCsv } from '../../src/logbook/index.ts';
import { sampleRun } from './sample-run.ts';

// Expected by hand after RFC 4180, section 2: rules 1 (CRLF), 5 to 7 (quotes). The apostrophe
// before "=": OWASP, "CSV Injection". Times worked out from the seconds with GNU date.
it('has a line a reading, with quotes where they are needed', () => {
  const run = sampleRun('run-1');
  const operator = '=HYPERLINK("http://x")';
  expect(readingsCsv([{ ...run, head: { ...run.head, operator } }])).toBe(
    [
      'run,flow,flow version,operator,started,status,step,reading,label,value,unit,lower,upper,verdict,measured',
      `run-1,Gate hinge pin,1,"'=HYPERLINK(""http://x"")",2026-09-21T14:13:20.000Z,finished,inspect-pin,pin,Pin diameter,15.98,mm,15.957,16,within,2026-09-21T14:26:40.000Z`,
      `run-1,Gate hinge pin,1,"'=HYPERLINK(""http://x"")",2026-09-21T14:13:20.000Z,finished,inspect-length,length,"Length, ""over all""",-0.2,mm,,,,2026-09-21T14:27:30.000Z`,
      '',
    ].join('\r\n'),
  );
});

it('has the names of its columns when there is nothing else', () => {
  expect(readingsCsv([]).split('\r\n')).toHaveLength(2);
});
