/** Draws any machine picture: scenery, parts from back to front, touch areas, the lit part's arrow and name. */
import type { ComponentChildren } from 'preact';
import { DirectionArrow } from './DirectionArrow.tsx';
import { PartLabel } from './PartLabel.tsx';
import type { Look, PartArt, PartFacts, PictureProps } from './picture.ts';
import { DIRECTIONS, LINE, LIT, METAL, PICTURE_WIDTH } from './picture.ts';

interface FrameProps<Id extends string> extends PictureProps<Id> {
  readonly kind: string;
  readonly height: number;
  readonly parts: readonly PartArt<Id>[];
  readonly facts: Readonly<Record<Id, PartFacts>>;
  /** What stands behind the parts and is none of them: legs, floor. */
  readonly scenery: ComponentChildren;
}

/** The picture as one SVG; every part can be touched or reached with the arrow keys when `onPart` is given. */
export function MachineFrame<Id extends string>(props: FrameProps<Id>) {
  const { kind, height, parts, scenery, title, lit } = props;
  const look: Look = { guard: props.guard ?? 'open' };
  const shown = parts.find((part) => part.id === lit);
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class={`machine-picture machine-${kind}`}
      viewBox={`0 0 ${PICTURE_WIDTH} ${height}`}
      role={props.onPart ? 'group' : 'img'}
      aria-label={shown ? `${title}: ${nameOf(props, shown.id)}` : title}
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
          name={nameOf(props, shown.id)}
          way={props.direction && (props.words?.directions ?? DIRECTIONS)[props.direction]}
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
  const { parts, lit, onPart, look } = props;
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
          aria-label={nameOf(props, id)}
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

function nameOf<Id extends string>(props: FrameProps<Id>, id: Id): string {
  return (props.words?.parts ?? props.facts)[id].name;
}
