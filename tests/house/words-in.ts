/** Finds the words that a program file would show to a person by itself, with a real parser. */

import { parseSync } from 'vite';
import type { nodesIn } from './imports.ts';

type Node = ReturnType<typeof nodesIn>[number];

/** Attributes that a person reads or hears, whatever stands in them. */
const readAloud = new Set([
  ...['aria-label', 'aria-description', 'aria-valuetext', 'aria-roledescription'],
  ...['alt', 'label', 'placeholder', 'title', 'hint', 'heading-text'],
]);

/** Attributes for the browser alone: looks, shapes, links between parts of the page. */
const forTheBrowser = new Set([
  ...['class', 'style', 'id', 'for', 'name', 'type', 'role', 'rel', 'accept', 'look', 'href'],
  ...['aria-labelledby', 'aria-describedby', 'aria-controls', 'aria-live', 'heading'],
  ...['d', 'transform', 'viewBox', 'points', 'font-family', 'xmlns', 'preserveAspectRatio', 'part'],
]);

/** Two words beside each other, or one that begins like a sentence or a label. */
const twoWords = /\p{L}{2,}[,;:.?!]? +["“„({]?\p{L}{2,}/u;
const oneLabel = /^\p{Lu}\p{Ll}{2,}[.:!?…]?$/u;
const aWord = /\p{L}{2,}/u;

/** The texts of a file that read like words, in the order in which they stand. */
export function wordsIn(path: string, source: string): readonly string[] {
  const { program, errors } = parseSync(path, source);
  if (errors.length > 0) throw new Error(`${path} does not parse: ${errors[0]?.message}`);
  return textsBelow(program).map((text) => text.replace(/\s+/g, ' ').trim());
}

function textsBelow(root: unknown): readonly string[] {
  if (Array.isArray(root)) return root.flatMap(textsBelow);
  if (typeof root !== 'object' || root === null) return [];
  const node = root as Node;
  const own = textsOf(node);
  return own ?? Object.values(node).flatMap(textsBelow);
}

/** What this node says, or that nothing below it does; undefined to look further down. */
function textsOf(node: Node): readonly string[] | undefined {
  const type = String(node.type ?? '');
  if (type.startsWith('TS') && !/As|Satisfies|NonNull/.test(type)) return [];
  switch (type) {
    case 'ImportDeclaration':
    case 'ImportExpression':
    case 'ExportAllDeclaration':
      return [];
    case 'JSXText':
      return aWord.test(String(node.value)) ? [String(node.value)] : [];
    case 'JSXAttribute':
      return attributeTexts(node);
    case 'Literal':
      return typeof node.value === 'string' ? sayings(node.value) : [];
    case 'TemplateLiteral': {
      const { quasis, expressions } = node as unknown as Template;
      const whole = quasis.map(({ value }) => value.cooked).join('{}');
      return [...sayings(whole), ...textsBelow(expressions)];
    }
    default:
      return undefined;
  }
}

interface Template {
  readonly quasis: readonly { readonly value: { readonly cooked: string } }[];
  readonly expressions: readonly unknown[];
}

function attributeTexts(node: Node): readonly string[] | undefined {
  const name = String(Reflect.get(Object(node.name), 'name'));
  if (forTheBrowser.has(name) || name.startsWith('data-')) return [];
  const text = Reflect.get(Object(node.value), 'value');
  if (!readAloud.has(name) || typeof text !== 'string') return undefined;
  return aWord.test(text) ? [text] : [];
}

function sayings(text: string): readonly string[] {
  return twoWords.test(text) || oneLabel.test(text) ? [text] : [];
}
