/** A fault found in a file: where it stands, what was wrong, and the next move. */

export type Path = readonly (string | number)[];

export interface Fault {
  /** The file the fault is in, when more than one is read. */
  readonly file: string;
  /** JSON path from the root: "$.steps[3].needs.guard". */
  readonly path: string;
  /** Both count from 1; 0 where there is no text to point into. */
  readonly line: number;
  readonly column: number;
  /** One sentence: what came, what was allowed, and a near name where there is one. */
  readonly message: string;
}

/** "$.steps[3].id" from ["steps", 3, "id"]; keys that are no plain words are quoted. */
export function pathText(path: Path): string {
  return `$${path.map(partText).join('')}`;
}

function partText(part: string | number): string {
  if (typeof part === 'number') return `[${part}]`;
  return /^[A-Za-z_][\w]*$/.test(part) ? `.${part}` : `[${JSON.stringify(part)}]`;
}

/** One line for people: "gate-hinge-pin.json:12:5 $.steps[3].next — Step … goes to …". */
export function faultText(fault: Fault): string {
  const place = fault.line > 0 ? `:${fault.line}:${fault.column}` : '';
  return `${fault.file}${place} ${fault.path} — ${fault.message}`;
}
