/** Draws any machine picture: scenery, parts from back to front, touch areas, the lit part's arrow and name. */
import type { ComponentChildren } from 'preact';
import { machineTexts } from '../../texts/index.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { DirectionArrow } from './DirectionArrow.tsx';
import { PartLabel } from './PartLabel.tsx';
import { partWords } from './part-words.ts';
import type { Look, PartArt, PictureProps } from './picture.ts';
import { LINE, LIT, METAL, PICTURE_WIDTH } from './picture.ts';

interface FrameProps<Id extends string> extends PictureProps<Id> {
  readonly kind: string;
  readonly height: number;
  readonly parts: readonly PartArt<Id>[];
  /** What stands behind the parts and is none of them: legs, floor. */
  readonly scenery: ComponentChildren;
}

/** The picture as one SVG; every part can be touched or reached with the arrow keys when `onPart` is given. */
export function MachineFrame<Id extends string>(props: FrameProps<Id>) {
  const { kind, height, parts, scenery, title, lit } = props;
  const say = useSay(machineTexts);
  const nameOf = useNames(kind);
  const look: Look = { guard: props.guard ?? 'open' };
  const shown = parts.find((part) => part.id === lit);
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class={`machine-picture machine-${kind}`}
      viewBox={`0 0 ${PICTURE_WIDTH} ${height}`}
      role={props.onPart ? 'group' : 'img'}
      aria-label={shown ? `${title}: ${nameOf(shown.id)}` : title}
      font-family="system-ui, 'DejaVu Sans', sans-serif"
      stroke-linejoin="round"
      stroke-linecap="round"
    >
      <title>{title}</title>
      <g class="scenery" fill={METAL} stroke={LINE} stroke-width="2.4">
        {scenery}
      </g>
      {parts.map((part) => (
        <PartDrawing key={part.id} part={part} lit={part.id === lit} look={look} />
      ))}
      {shown && props.direction && <DirectionArrow art={shown} direction={props.direction} />}
      {shown && (
        <PartLabel
          name={nameOf(shown.id)}
          way={props.direction && say(`way.${props.direction}`)}
          at={shown.at}
        />
      )}
      {props.onPart && <TouchAreas {...props} look={look} />}
    </svg>
  );
}

/** A lit part wears a broad band round a thick outline, so that small ones show and grey print does too. */
function PartDrawing<Id extends string>(props: {
  readonly part: PartArt<Id>;
  readonly lit: boolean;
  readonly look: Look;
}) {
  const { part, lit, look } = props;
  const drawing = part.draw(look);
  if (!lit)
    return (
      <g class="part" data-part={part.id} fill={METAL} stroke={LINE} stroke-width="2.4">
        {drawing}
      </g>
    );
  return (
    <g class="part part-lit" data-part={part.id}>
      <g fill={LIT} stroke={LIT} stroke-width="20">
        {part.draw(look)}
      </g>
      <g fill={LIT} stroke={LINE} stroke-width="5">
        {drawing}
      </g>
    </g>
  );
}

/** Touch areas lie above everything. One stop for the tab key; arrow keys go from part to part. */
function TouchAreas<Id extends string>(props: FrameProps<Id> & { readonly look: Look }) {
  const { kind, parts, lit, onPart, look } = props;
  const nameOf = useNames(kind);
  const stop = lit ?? parts[0]?.id;
  return (
    <g class="touch" fill="transparent" stroke="none">
      {parts.map(({ id, touch }) => (
        // biome-ignore lint/a11y/useSemanticElements: an SVG has no button element of its own
        <g
          key={id}
          role="button"
          data-touch={id}
          tabindex={id === stop ? 0 : -1}
          aria-label={nameOf(id)}
          aria-pressed={id === lit}
          onClick={() => onPart?.(id)}
          onKeyDown={(event) => {
            if (event.key === 'Enter' || event.key === ' ') {
              event.preventDefault();
              onPart?.(id);
            } else stepAlong(event);
          }}
        >
          {touch(look).map((box) => (
            <rect key={`${box.x} ${box.y}`} {...box} rx="6" />
          ))}
        </g>
      ))}
    </g>
  );
}

function stepAlong(event: KeyboardEvent & { readonly currentTarget: SVGGElement }): void {
  const next = event.key === 'ArrowRight' || event.key === 'ArrowDown';
  if (!next && event.key !== 'ArrowLeft' && event.key !== 'ArrowUp') return;
  event.preventDefault();
  const { currentTarget: here } = event;
  const to = next ? here.nextElementSibling : here.previousElementSibling;
  if (to instanceof SVGElement) to.focus();
}

function useNames(kind: string): (id: string) => string {
  const language = useLanguage();
  return (id) => partWords(kind, id, language)?.name ?? id;
}
