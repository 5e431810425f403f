/** Every sentence a room writes where it works it out: the templates behind its tag, read from its source. */

import { parseAst } from 'vite';

interface Node {
  readonly type: string;
  readonly [part: string]: unknown;
}

/** What stands before a template that is told in another language: worded`…`, tell(job)`…`. */
const tags = ['worded', 'tell'];

/** The templates of one file, as keys: "{0} passes of {1} mm". */
export function templatesIn(source: string): readonly string[] {
  const found: string[] = [];
  visit(parseAst(source, { lang: 'ts' }), (node) => {
    if (node.type !== 'TaggedTemplateExpression') return;
    if (tags.includes(nameOf(node.tag)) || tags.includes(nameOf((node.tag as Node).callee))) {
      found.push(keyOf(node.quasi as Quasi));
    }
  });
  return found;
}

/** Whole texts that a rule tells: of its parts, of what ruled, and why it refuses. */
export function wholeTextsIn(source: string): readonly string[] {
  const found: string[] = [];
  const take = (part: unknown) => {
    if (isNode(part) && part.type === 'Literal' && typeof part.value === 'string') {
      found.push(part.value);
    }
    if (isNode(part) && part.type === 'ConditionalExpression') {
      take(part.consequent);
      take(part.alternate);
    }
  };
  visit(parseAst(source, { lang: 'ts' }), (node) => {
    const callee = nameOf(node.callee);
    const last = Array.isArray(node.arguments) ? node.arguments.at(-1) : undefined;
    if (node.type === 'CallExpression' && ['part', 'lengthPart', 'fault'].includes(callee))
      take(last);
    const told = ['meaning', 'ruledBy', 'fault', 'working'];
    if (node.type === 'Property' && told.includes(nameOf(node.key))) take(node.value);
  });
  return found;
}

function nameOf(part: unknown): string {
  return isNode(part) && typeof part.name === 'string' ? part.name : '';
}

interface Quasi {
  readonly quasis: readonly { readonly value: { readonly cooked: string } }[];
}

function keyOf({ quasis }: Quasi): string {
  return quasis
    .map(({ value }) => value.cooked)
    .reduce((before, after, index) => `${before}{${index - 1}}${after}`);
}

function visit(part: unknown, look: (node: Node) => void): void {
  if (Array.isArray(part)) for (const one of part) visit(one, look);
  else if (isNode(part)) {
    look(part);
    for (const one of Object.values(part)) visit(one, look);
  }
}

function isNode(part: unknown): part is Node {
  return typeof part === 'object' && part !== null && 'type' in part;
}
