import type { ComponentChildren } from 'preact';
import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import * as words from './one-number-words';
import type { InRow } from './steps-in-row';
import type { Wake } from './wake';
import './knuckle.css';
import './one-number.css';
import '../../ui/bar.css';

type Action = { readonly label: string; readonly onTap: () => void };

type OneNumberProps = {
  readonly bench: Pick<Bench, 'undo' | 'undoLabel'>;
  /** What a reader hears first: the place and what is worked on. */
  readonly heading: string;
  readonly leave: Action;
  readonly wake: Wake;
  /** A further button of the bar, before undo. */
  readonly tool?: ComponentChildren;
  readonly row: InRow;
  /** How far it is, for the stick of progress. */
  readonly progress: string;
  /** What the figure is set on. */
  readonly title: string;
  readonly figure: Rounded;
  readonly tape: Tape;
  /** What stands between the figure and the big bar. */
  readonly children: ComponentChildren;
  /** The ticks need room: all else is set closer. */
  readonly crowded?: boolean;
  readonly goTo: (k: number) => void;
  /** The big bar: it says the next true thing. Nothing moves on by itself. */
  readonly main: Action;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
};

/** One number at a time, giant, with its step in the row, its ticks and one big bar. */
export function OneNumber(props: OneNumberProps) {
  const { heading, row, progress, title, figure, tape, children, crowded, onKeyDown } = props;
  return (
    <main class={crowded ? 'saw crowded' : 'saw'} onKeyDown={onKeyDown} tabIndex={-1}>
      <h1 class="sr">{heading}</h1>
      <TopBar {...props} />
      <div class="prog">
        <StoryStick done={row.done} now={row.at} label={progress} />
      </div>
      <div class="what">
        <span>{title}</span>
        <span class="muted">{words.placeSays(row.at, row.done.length)}</span>
      </div>
      <div class="giant" aria-live="polite">
        <Mixed value={figure.value} rest={figure.rest} size="huge" tape={tape} />
        <Remainder tape={tape} rest={figure.rest} />
      </div>
      {children}
      <Knuckle {...props} />
    </main>
  );
}

function TopBar({ bench, leave, wake, tool }: OneNumberProps) {
  const act = bench.undoLabel.value;
  return (
    <header class="bar">
      <button type="button" class="icon back" aria-label={leave.label} onClick={leave.onTap}>
        <Icon name="back" />
        {words.leave}
      </button>
      <span class="row barright">
        <span class="icon stays" role="status">
          <Icon name="light" />
          {words.wakeSays(wake)}
        </span>
        {tool}
        <button
          type="button"
          class="icon"
          aria-label={words.undoSays(act)}
          aria-disabled={act === undefined}
          onClick={() => void bench.undo()}
        >
          <Icon name="undo" />
          <span class="word-label">{words.undo}</span>
        </button>
      </span>
    </header>
  );
}

function Knuckle({ row: { at, done }, goTo, main }: OneNumberProps) {
  return (
    <div class="knuckle">
      <button type="button" class="btn" aria-disabled={at === 0} onClick={() => goTo(at - 1)}>
        {words.back}
      </button>
      <button
        type="button"
        class="btn skip"
        aria-disabled={at >= done.length - 1}
        onClick={() => goTo(at + 1)}
      >
        {words.skip}
      </button>
      <Button label={main.label} look="main" onTap={main.onTap} />
    </div>
  );
}
