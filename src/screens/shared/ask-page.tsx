import type { ComponentChildren } from 'preact';
import type { Tape } from '../../length/tape';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import type { Ask } from './ask';
import { AskDock } from './ask-dock';
import { UndoButton } from './undo-button';

type AskPageProps = {
  readonly bench: Bench;
  readonly title: string;
  readonly sub: string;
  readonly leave: { readonly label: string; readonly onTap: () => void };
  readonly tape: Tape;
  /** The blank in hand, and what is said while it is keyed. */
  readonly asked: {
    readonly open: Ask | undefined;
    readonly close: () => void;
    readonly says?: readonly string[];
    readonly onTry?: Parameters<typeof AskDock>[0]['onTry'];
  };
  readonly children: ComponentChildren;
};

/** A page with blanks: its bar with undo, and below it what docks when a blank is tapped. */
export const AskPage = ({ bench, title, sub, leave, tape, asked, children }: AskPageProps) => {
  const { open, close, says = [], onTry = () => undefined } = asked;
  return (
    <>
      <Bar title={title} sub={sub} leave={leave}>
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>{children}</main>
      <AskDock ask={open} {...{ tape, says, onTry }} act={bench.act} onClose={close} />
    </>
  );
};
