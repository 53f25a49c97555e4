import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from './icon';
import './bar.css';

type BarProps = {
  readonly title?: string;
  readonly sub?: string;
  readonly leave?: { readonly label: string; readonly onTap: () => void; readonly word?: boolean };
  readonly children?: ComponentChildren;
};

/** Top bar: leave, undo, change, and nothing else. */
export function Bar({ title, sub, leave, children }: BarProps) {
  return (
    <header class="bar">
      {leave && (
        <button type="button" class="icon back" aria-label={leave.label} onClick={leave.onTap}>
          <Icon name="back" />
          {leave.word && <span class="word-label">{leave.label}</span>}
        </button>
      )}
      <div class="grow">
        {title !== undefined && <h1>{title}</h1>}
        {sub && <p class="sub">{sub}</p>}
      </div>
      {children}
    </header>
  );
}

type BarButtonProps = {
  readonly icon?: IconName;
  readonly label: string;
  /** What it says to a reader and on hover, when more than the label. */
  readonly says?: string;
  readonly boxed?: boolean;
  readonly wordless?: boolean;
  readonly disabled?: boolean;
  readonly onTap: () => void;
};

export function BarButton({ icon, label, says, boxed, wordless, disabled, onTap }: BarButtonProps) {
  return (
    <button
      type="button"
      class={boxed ? 'icon box' : 'icon'}
      aria-label={says ?? label}
      title={says}
      aria-disabled={disabled}
      onClick={onTap}
    >
      {icon && <Icon name={icon} />}
      {!wordless && <span>{label}</span>}
    </button>
  );
}

export type Tab = {
  readonly label: string;
  readonly icon: IconName;
  readonly href: string;
  readonly current: boolean;
};

export const Tabs = ({ tabs }: { readonly tabs: readonly Tab[] }) => (
  <nav class="tabs" aria-label="Main">
    {tabs.map(({ label, icon, href, current }) => (
      <a key={label} href={href} aria-current={current ? 'page' : undefined}>
        <Icon name={icon} />
        {label}
      </a>
    ))}
  </nav>
);

type SegmentProps = {
  readonly label: string;
  readonly choices: readonly {
    readonly label: string;
    readonly chosen: boolean;
    readonly onTap: () => void;
  }[];
};

export const Segment = ({ label, choices }: SegmentProps) => (
  <div class="seg" role="group" aria-label={label}>
    {choices.map((choice) => (
      <button key={choice.label} type="button" aria-pressed={choice.chosen} onClick={choice.onTap}>
        {choice.label}
      </button>
    ))}
  </div>
);
