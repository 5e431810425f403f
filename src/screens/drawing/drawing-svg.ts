/** The drawing as a file of its own: SVG text, black on white unless a page says otherwise. */
import { type AnyPiece, drawingOf } from './any-piece.ts';
import { describePiece } from './describe.ts';
import { ENGLISH_DRAWING } from './drawing-words.ts';
import type { Ink } from './ink.ts';
import { inkOf } from './ink.ts';
import type { LayoutOptions } from './layout.ts';
import type { PieceState } from './piece.ts';

export interface SvgOptions extends LayoutOptions {
  readonly title: string;
}

/** A whole SVG document of the piece, its title and description inside. */
export function drawingSvg(piece: AnyPiece, state: PieceState, options: SvgOptions): string {
  const layout = drawingOf(piece, state, options);
  const [width, height] = [layout.width, Math.ceil(layout.height)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="'DejaVu Sans', Arial, sans-serif">`,
    `<title>${escaped(options.title)}</title>`,
    `<desc>${escaped(describePiece(piece, state, options.words ?? ENGLISH_DRAWING))}</desc>`,
    `<rect width="${width}" height="${height}" fill="var(--ground, #fff)"/>`,
    ...inkOf(layout).map(written),
    '</svg>',
    '',
  ].join('\n');
}

/** One element as text. */
export function written({ tag, attributes, text, inside }: Ink): string {
  const named = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  const open = `<${tag}${named.join('')}`;
  if (text === undefined && inside === undefined) return `${open}/>`;
  return `${open}>${escaped(text ?? '')}${(inside ?? []).map(written).join('\n')}</${tag}>`;
}

/** Text made safe between tags and in quotes. Characters that XML cannot hold are dropped. */
export function escaped(text: string | number): string {
  const entities: Readonly<Record<string, string>> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
  };
  return [...String(text)]
    .filter((letter) => letter >= ' ' || letter === '\n' || letter === '\t')
    .map((letter) => entities[letter] ?? letter)
    .join('');
}
