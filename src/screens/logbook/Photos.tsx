/** Photos of a run: of its set-up and of the finished piece. Taken by the device's own camera, kept on the device. */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { recordTexts, sentenceOf } from '../../texts/index.ts';
import { FocusHeading, focusHeading } from '../frame/FocusHeading.tsx';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { RunPhoto, WorldProps } from '../world.ts';
import { smallerPicture } from './smaller-picture.ts';
import { whenText } from './when.ts';

interface PhotosProps extends WorldProps {
  readonly runId: string;
  /** The step that is on the Bench; none when the run is over. */
  readonly step?: string;
  /** Where they are only shown, as on paper. */
  readonly still?: boolean;
}

/** As the logbook keeps them. */
const MOST = 12;

export function Photos({ world, runId, step = '', still = false }: PhotosProps) {
  const say = useSay(recordTexts);
  const language = useLanguage();
  const [turn, setTurn] = useState(0);
  const [message, setMessage] = useState('');
  const photos = useAwaited(
    useCallback(() => world.photos.of(runId), [world, runId]),
    [world, runId, turn],
  );
  async function taken(file: File | undefined, about: RunPhoto['about']): Promise<void> {
    if (!file) return;
    try {
      const small = await smallerPicture(file);
      const why = small
        ? await world.photos.add(runId, { ...small, step, about })
        : say('photoBad');
      setMessage(why ?? say('photoKept'));
      setTurn(turn + 1);
    } catch (error) {
      setMessage(sentenceOf(error, language));
    }
  }
  async function remove(id: string): Promise<void> {
    await world.photos.remove(id);
    setTurn(turn + 1);
    focusHeading('kept-photos');
  }
  const shown = photos.is === 'here' ? photos.value : [];
  return (
    <section class="stack photos" aria-labelledby="kept-photos">
      <FocusHeading id="kept-photos">{say('photos')}</FocusHeading>
      {shown.length > 0 && (
        <ul class="photo-list">
          {shown.map((photo) => (
            <li key={photo.id}>
              <Photo photo={photo} onRemove={still ? undefined : () => void remove(photo.id)} />
            </li>
          ))}
        </ul>
      )}
      {!still && (
        <div class="stack no-print">
          <p class="soft">{say('photosAbout', { most: MOST })}</p>
          <div class="row">
            <Take name={say('addSetUp')} onTake={(file) => void taken(file, 'set-up')} />
            <Take name={say('addPiece')} onTake={(file) => void taken(file, 'piece')} />
          </div>
          <p role="status">{message}</p>
        </div>
      )}
    </section>
  );
}

interface PhotoProps {
  readonly photo: RunPhoto;
  readonly onRemove: (() => void) | undefined;
}

function Photo({ photo, onRemove }: PhotoProps) {
  const say = useSay(recordTexts);
  const address = useAddress(photo.picture);
  const when = whenText(photo.at, useLanguage());
  const about = say(photo.about === 'set-up' ? 'setUp' : 'finishedPiece');
  return (
    <figure class="card photo">
      <img
        src={address}
        width={photo.width}
        height={photo.height}
        alt={say('photoAlt', { about, when })}
      />
      <figcaption class="hint">
        {about}, {when}
      </figcaption>
      {onRemove && (
        <button type="button" class="button tall no-print" onClick={onRemove}>
          {say('photoRemove')}
          <span class="unseen">
            {' '}
            {about}, {when}
          </span>
        </button>
      )}
    </figure>
  );
}

/** An address that lasts as long as the picture is on the page. */
function useAddress(picture: Blob): string | undefined {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(picture);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [picture]);
  return address;
}

interface TakeProps {
  readonly name: string;
  readonly onTake: (file: File | undefined) => void;
}

/** `capture` opens the camera on a tablet; a desk computer asks for a file. */
function Take({ name, onTake }: TakeProps) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button tall" onClick={() => chooser.current?.click()}>
        {name}
      </button>
      <input
        ref={chooser}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        aria-label={name}
        onChange={(event) => {
          onTake(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}
