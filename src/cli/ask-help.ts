/** The help of the ask command. */

export const askHelp = `Ask one trade rule.

  npm run -s ask -- --list                       all rules with inputs, units and sources, as JSON
  npm run -s ask -- RULE name=value ...          one answer, as a line of JSON
  npm run -s ask -- RULE name=value ... --explain   formula, working, limit and source as text
  npm run -s ask -- RULE name=value ... --json   JSON always: with --explain the formula, source and
                                                 inputs in it, and a fault as {"fault": …}

Values carry units: diameter=25mm, diameter=1.5in, diameter="1 3/8in", surfaceSpeed=90ft/min.
A list has commas: speeds=70,200,450. A bare number is in the rule's own unit (mm, rev/min ...).
A missing, unknown or impossible value ends with 2 and one sentence that says what to change.

  npm run -s ask -- spindle-speed surfaceSpeed=28 diameter=25
  npm run -s ask -- card-speed diameter=25 surfaceSpeed=28 speeds=70,200,350,450 chuckLimit=2000

The numbers are starting values. The marks on machine, chuck and tool, local rules and the people
trained on the machine come first.`;
