/** Asks one trade rule from the command line. Wires only: reading, checking and working stand in the trade room. */

import { askHelp } from './ask-help.ts';
import { replyTo } from './ask-reply.ts';

const words = process.argv.slice(2);
const reply = words.length === 0 || words.includes('--help') ? { out: askHelp } : replyTo(words);

if (reply.out !== undefined) process.stdout.write(`${reply.out}\n`);
if (reply.fault !== undefined) {
  process.stderr.write(`${reply.fault}\n`);
  process.exitCode = 2;
}
