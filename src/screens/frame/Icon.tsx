/** Our own line icons, 24 by 24. They stand beside words and are silent to a reader. */

const PATHS = {
  shelf: 'M3 5h18M3 12h18M3 19h18M6 5v7M12 12v7M17 5v7',
  slate: 'M4 4h16v16H4zM8 9h4M8 14h8M14 9h2',
  logbook: 'M5 3h14v18H5zM9 3v18M12 8h4M12 12h4',
  toolroom: 'M14 6a4 4 0 0 1 5-3l-2.5 2.5 2 2L21 5a4 4 0 0 1-5 5L7 20l-3-3 10-9z',
  ear: 'M7 10a5 5 0 0 1 10 0c0 4-4 4-4 7a3 3 0 0 1-5 2M10 10a2 2 0 0 1 4 0c0 2-2 2-2 4',
  'no-ear':
    'M7 10a5 5 0 0 1 10 0c0 4-4 4-4 7a3 3 0 0 1-5 2M10 10a2 2 0 0 1 4 0c0 2-2 2-2 4M3 3l18 18',
  mouth: 'M4 9v6h4l5 4V5L8 9zM16.5 9a4 4 0 0 1 0 6M19 6.5a8 8 0 0 1 0 11',
  hold: 'M8 5v14M16 5v14',
  hand: 'M7 12V6.5a1.5 1.5 0 0 1 3 0V11M10 11V4.5a1.5 1.5 0 0 1 3 0V11M13 11V5.5a1.5 1.5 0 0 1 3 0V12M16 12V8.5a1.5 1.5 0 0 1 3 0V15a6 6 0 0 1-6 6h-1c-3 0-4-1.5-5-3.5L4.5 13a1.5 1.5 0 0 1 2.5-1.5',
  tick: 'M4 12.5 9.5 18 20 6.5',
  next: 'M5 12h13M13 6l6 6-6 6',
  back: 'M19 12H6M11 6l-6 6 6 6',
  rub: 'M9 6h11v12H9l-6-6zM12 9.5l5 5M17 9.5l-5 5',
  say: 'M4 5h16v11H11l-5 4v-4H4z',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[name]} />
    </svg>
  );
}
