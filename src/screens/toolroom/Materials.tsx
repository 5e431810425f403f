/** The shop's own materials: written, changed, taken away. */

import { useCallback, useRef, useState } from 'preact/hooks';
import { optionText, shopTexts } from '../../texts/index.ts';
import { findMaterial, type Material, materialTable } from '../../trade/index.ts';
import { FocusHeading, focusHeading } from '../frame/FocusHeading.tsx';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { MaterialForm } from './MaterialForm.tsx';

interface Writing {
  readonly like: Material;
  readonly changing: boolean;
}

export function Materials({ world }: WorldProps) {
  const say = useSay(shopTexts);
  const [writing, setWriting] = useState<Writing | null>(null);
  const [changes, setChanges] = useState(0);
  const returned = useRef(false);
  const rows = useAwaited(
    useCallback(() => world.materials.all(), [world]),
    [world, changes],
  );
  const own = rows.is === 'here' ? rows.value : [];
  const changed = () => setChanges(changes + 1);
  async function remove(name: string): Promise<void> {
    await world.materials.remove(name);
    changed();
    focusHeading('materials-title');
  }
  if (writing) {
    const close = () => {
      returned.current = true;
      setWriting(null);
      changed();
    };
    const taken = own.map(({ name }) => name);
    return <MaterialForm world={world} {...writing} taken={taken} onClose={close} />;
  }
  return (
    <section class="stack" aria-labelledby="materials-title">
      <FocusHeading id="materials-title" takes={returned.current}>
        {say('materials')}
      </FocusHeading>
      <p class="soft">{say('materialsAbout')}</p>
      {rows.is === 'failed' && <p class="fault">{rows.why}</p>}
      {own.length === 0 ? (
        <p>{say('noMaterials')}</p>
      ) : (
        <ul class="machine-cards">
          {own.map((row) => (
            <OneMaterial
              key={row.name}
              row={row}
              onEdit={() => setWriting({ like: row, changing: true })}
              onRemove={() => void remove(row.name)}
            />
          ))}
        </ul>
      )}
      <NewMaterial onWrite={(like) => setWriting({ like, changing: false })} />
    </section>
  );
}

/** A new one begins from the row of the table that is most like it. */
function NewMaterial({ onWrite }: { readonly onWrite: (like: Material) => void }) {
  const say = useSay(shopTexts);
  const language = useLanguage();
  const [first] = materialTable;
  const [name, setName] = useState(first?.name ?? '');
  const like = findMaterial(name) ?? first;
  return (
    <div class="row new-material">
      <div class="field">
        <label for="material-like">{say('likeWhich')}</label>
        <select
          id="material-like"
          value={name}
          onChange={(event) => setName(event.currentTarget.value)}
        >
          {materialTable.map((row) => (
            <option key={row.name} value={row.name}>
              {optionText(language, row.name)}
            </option>
          ))}
        </select>
      </div>
      <button type="button" class="button tall" onClick={() => like && onWrite(like)}>
        {say('writeMaterial')}
      </button>
    </div>
  );
}

interface OneMaterialProps {
  readonly row: Material;
  readonly onEdit: () => void;
  readonly onRemove: () => void;
}

function OneMaterial({ row, onEdit, onRemove }: OneMaterialProps) {
  const say = useSay(shopTexts);
  const [sure, setSure] = useState(false);
  const { title, iso, density, speeds, sources } = row;
  const facts = [
    [say('iso'), iso],
    [say('speedOf', { operation: say('turn'), tool: say('hss') }), `${speeds.turn[0]} m/min`],
    [say('density'), `${density} kg/m³`],
    [say('source'), sources.turn],
  ] as const;
  return (
    <li class="card stack">
      <h3>{title}</h3>
      <dl class="facts">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p class="row">
        <button
          type="button"
          class="button tall"
          onClick={onEdit}
          aria-label={say('editNamed', { name: title })}
        >
          {say('edit')}
        </button>
        <button
          type="button"
          class="button tall"
          aria-label={say(sure ? 'reallyTakeAwayNamed' : 'takeAwayNamed', { name: title })}
          onClick={() => (sure ? onRemove() : setSure(true))}
        >
          {say(sure ? 'reallyTakeAway' : 'takeAway')}
        </button>
      </p>
    </li>
  );
}
