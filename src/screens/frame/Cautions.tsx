/** Cautions as a list beside the warning sign. */

import { WarningSign } from './WarningSign.tsx';

export function Cautions({ lines }: { readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div class="cautions">
      <WarningSign />
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
