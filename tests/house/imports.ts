/** Reads every import out of a source file with a real parser, types and workers included. */

import { parseSync } from 'vite';

/** How a file reaches another: for its types, for its values, or by starting it in another realm. */
export type Reach = 'types' | 'values' | 'start';

export interface Import {
  readonly from: string;
  readonly reach: Reach;
}

/** A name that was computed, so that nobody can tell what is loaded. */
export const COMPUTED = '(computed)';

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

/**
 * All imports of one file.
 *
 * @param path only its ending matters: it tells the parser the language
 * @throws when the text does not parse
 */
export function importsOf(path: string, text: string): readonly Import[] {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} does not parse: ${errors[0]?.message}`);
  return nodesIn(program).flatMap(importAt);
}

/** The node and everything below it that is a node. */
export function nodesIn(root: unknown): readonly Node[] {
  if (Array.isArray(root)) return root.flatMap(nodesIn);
  if (typeof root !== 'object' || root === null) return [];
  const below = Object.values(root).flatMap(nodesIn);
  return isNode(root) ? [root, ...below] : below;
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

function importAt(node: Node): readonly Import[] {
  switch (node.type) {
    case 'ImportDeclaration':
      return [staticImport(node, node.importKind)];
    case 'ExportAllDeclaration':
    case 'ExportNamedDeclaration':
      return isNode(node.source) ? [staticImport(node, node.exportKind)] : [];
    case 'ImportExpression':
      return [{ from: nameIn(node.source), reach: 'values' }];
    case 'TSImportType':
      return [{ from: nameIn(node.source ?? node.argument), reach: 'types' }];
    case 'TSExternalModuleReference':
      return [{ from: nameIn(node.expression), reach: 'values' }];
    case 'CallExpression':
      return callImport(node);
    case 'NewExpression':
      return urlImport(node);
    default:
      return [];
  }
}

/** A query such as `?worker&url` starts the file elsewhere instead of importing it. */
function staticImport(node: Node, kind: unknown): Import {
  const [from = '', query] = nameIn(node.source).split('?', 2);
  const started = query !== undefined && /\b(worker|url)\b/.test(query);
  return { from, reach: started ? 'start' : kind === 'type' ? 'types' : 'values' };
}

/** `require("x")`, and `import.meta.glob("x")` of Vite. */
function callImport(node: Node): readonly Import[] {
  const [first] = Array.isArray(node.arguments) ? node.arguments : [];
  const callee = isNode(node.callee) ? node.callee : { type: '' };
  if (callee.type === 'Identifier' && callee.name === 'require') {
    return [{ from: nameIn(first), reach: 'values' }];
  }
  const globs = isNode(callee.object) && callee.object.type === 'MetaProperty';
  return globs ? namesIn(first).map((from) => ({ from, reach: 'values' })) : [];
}

/** `new URL("x", import.meta.url)`, the way a worker is named. */
function urlImport(node: Node): readonly Import[] {
  const [first, second] = Array.isArray(node.arguments) ? node.arguments : [];
  const isUrl = isNode(node.callee) && node.callee.name === 'URL';
  const ofThisFile = nodesIn(second).some((part) => part.type === 'MetaProperty');
  return isUrl && ofThisFile ? [{ from: nameIn(first), reach: 'start' }] : [];
}

function namesIn(node: unknown): readonly string[] {
  return isNode(node) && Array.isArray(node.elements) ? node.elements.map(nameIn) : [nameIn(node)];
}

/** The text of a literal, or of a template that has no holes. */
function nameIn(node: unknown): string {
  if (!isNode(node)) return COMPUTED;
  if (typeof node.value === 'string') return node.value;
  const only = Array.isArray(node.quasis) && node.quasis.length === 1 ? node.quasis[0] : null;
  const cooked: unknown = only?.value?.cooked;
  return typeof cooked === 'string' ? cooked : COMPUTED;
}
