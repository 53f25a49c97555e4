import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Button } from './button';
import { useClose } from './close';
import { useEntryHeld } from './hold';
import { Icon } from './icon';
import './dock.css';

type DockProps = {
  readonly title: string;
  readonly onClose: () => void;
  /** Keys of a desk keyboard, wherever in the panel they fall. */
  readonly onKey?: (event: KeyboardEvent) => void;
  readonly children: ComponentChildren;
};

/** How many panels stand open on the page. */
export const docksOpen = signal(0);

const settled = 150;

/**
 * A panel of controls docked at the bottom; the page above stays live. Escape and back close it and keep what was
 * typed.
 */
export function Dock({ title, onClose, onKey, children }: DockProps) {
  const box = useRef<HTMLElement>(null);
  useClose(onClose);
  useEntryHeld();
  // as it comes to stand, not after it is painted: a focus that came later would take what is being typed from its
  // field
  useLayoutEffect(() => {
    const before = document.activeElement;
    const page = document.documentElement.style;
    const blank = document.querySelector('.blank[aria-expanded="true"]');
    const inSight = () => {
      if (blank) page.setProperty('--docked', `${box.current?.offsetHeight ?? 0}px`);
      blank?.scrollIntoView({ block: 'nearest' });
    };
    inSight();
    // what is said of a figure as it is keyed makes the panel higher
    const higher = new ResizeObserver(inSight);
    if (box.current) higher.observe(box.current);
    box.current?.focus({ preventScroll: true });
    docksOpen.value += 1;
    return () => {
      higher.disconnect();
      docksOpen.value -= 1;
      page.removeProperty('--docked');
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
      // what was filled changes the page above it: once that has settled the blank is still in sight, not under the bar
      setTimeout(() => blank?.isConnected && blank.scrollIntoView({ block: 'nearest' }), settled);
    };
  }, []);
  /** What is typed in the panel stays in it: the page below has keys of its own. */
  const typed = (event: KeyboardEvent) => {
    onKey?.(event);
    if (event.key !== 'Escape') event.stopPropagation();
  };
  return (
    <section class="dock" role="dialog" aria-label={title} tabIndex={-1} ref={box} onKeyDown={typed}>
      <div class="dock-head">
        <h2>{title}</h2>
        <button type="button" class="icon box" aria-label="Close" onClick={onClose}>
          <Icon name="down" />
        </button>
      </div>
      {children}
    </section>
  );
}

type ChoiceDockProps<T extends string> = {
  readonly title: string;
  readonly choices: readonly { readonly value: T; readonly label: string; readonly hint?: string }[];
  readonly chosen: T | undefined;
  /** What else may be done where none of them will do. */
  readonly more?: { readonly label: string; readonly onTap: () => void } | undefined;
  readonly onChoose: (value: T) => void;
  readonly onClose: () => void;
};

/** A docked list to choose one of. */
export function ChoiceDock<T extends string>({
  title,
  choices,
  chosen,
  more,
  onChoose,
  onClose,
}: ChoiceDockProps<T>) {
  return (
    <Dock title={title} onClose={onClose}>
      <ul class="choices">
        {choices.map(({ value, label, hint }) => (
          <li key={value}>
            <button type="button" aria-pressed={value === chosen} onClick={() => onChoose(value)}>
              <span>
                <b>{label}</b>
                {hint && <span class="s muted">{hint}</span>}
              </span>
              {value === chosen && <Icon name="tick" />}
            </button>
          </li>
        ))}
      </ul>
      {more && (
        <div class="body">
          <Button look="full" icon="measure" label={more.label} onTap={more.onTap} />
        </div>
      )}
    </Dock>
  );
}
