/** A heading that can take the focus when what had it is gone: a list after its form, or after one of its rows. */

import { useLayoutEffect, useRef } from 'preact/hooks';

interface FocusHeadingProps {
  readonly id: string;
  /** True when it has come in place of what had the focus. */
  readonly takes?: boolean;
  readonly children: string;
}

export function FocusHeading({ id, takes = false, children }: FocusHeadingProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (takes) heading.current?.focus();
  }, []);
  return (
    <h2 id={id} ref={heading} tabIndex={-1}>
      {children}
    </h2>
  );
}

/** For the heading of a list from which a row was taken. */
export function focusHeading(id: string): void {
  document.getElementById(id)?.focus();
}
