import type { ComponentChildren } from 'preact';
import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { aloud } from './aloud-words';
import * as words from './one-number-words';
import { ReadAloud } from './read-aloud';
import type { InRow } from './steps-in-row';
import type { Wake } from './wake';
import './knuckle.css';
import './one-number.css';
import '../../ui/bar.css';

type Action = { readonly label: string; readonly onTap: () => void };

/** The big bar: what it does, and in a smaller line how. */
type MainAction = Action & { readonly sub?: string | undefined };

type OneNumberProps = {
  readonly bench: Pick<Bench, 'undo' | 'undoLabel' | 'settings'>;
  /** What a reader hears first: the place and what is worked on. */
  readonly heading: string;
  readonly leave: Action;
  readonly wake: Wake;
  /** A further button of the bar, before undo. */
  readonly tool?: ComponentChildren;
  /** What stands on the machine. */
  readonly strip?: ComponentChildren;
  readonly row: InRow;
  /** How far it is, for the stick of progress. */
  readonly progress: string;
  /** What the figure is set on. */
  readonly title: string;
  readonly figure: Rounded | undefined;
  /** What is read aloud after the figure: the piece, and how it lies. */
  readonly aloud?: string | undefined;
  readonly tape: Tape;
  /** What stands between the figure and the big bar. */
  readonly children: ComponentChildren;
  /** The ticks need room: all else is set closer. */
  readonly crowded?: boolean;
  /** It scrolls between the figure and what stands above the bar: a line of caution. */
  readonly scrolls?: ComponentChildren;
  /** Stands in its place, and in that of the bar, until it is answered. */
  readonly instead?: ComponentChildren;
  readonly goTo: (k: number) => void;
  /** The big bar: it says the next true thing. Nothing moves on by itself. */
  readonly main: MainAction;
  /** In place of the button to the next of the row. */
  readonly skip?: Action;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
};

/** One number at a time, giant, with its step in the row, its ticks and one big bar. */
export function OneNumber(props: OneNumberProps) {
  const { heading, strip, row, progress, title, figure, tape, crowded, scrolls, instead, onKeyDown } = props;
  const says = [figure && aloud(figure, tape), props.aloud ?? title].filter(Boolean).join('; ');
  const look = ['saw', ...(crowded ? ['crowded'] : []), ...(scrolls ? ['scrolls'] : [])];
  return (
    <main class={look.join(' ')} onKeyDown={onKeyDown} tabIndex={-1}>
      <h1 class="sr">{heading}</h1>
      <TopBar {...props} />
      {strip}
      <div class="prog">
        <StoryStick done={row.done} now={row.at} label={progress} />
      </div>
      <div class="what">
        <span>{title}</span>
        <span class="muted">
          {words.placeSays(row.at, row.done.length)}
          <ReadAloud settings={props.bench.settings} says={says} />
        </span>
      </div>
      {figure && (
        <div class="giant" aria-live="polite">
          <Mixed value={figure.value} rest={figure.rest} size="huge" tape={tape} />
          <Remainder tape={tape} rest={figure.rest} />
        </div>
      )}
      {instead ?? <Rest {...props} />}
    </main>
  );
}

const Rest = (props: OneNumberProps) => (
  <>
    {props.scrolls ? <div class="middle">{props.children}</div> : props.children}
    {props.scrolls}
    <Knuckle {...props} />
  </>
);

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

function Knuckle({ row: { at, done }, goTo, main, skip }: OneNumberProps) {
  return (
    <div class="knuckle">
      <button type="button" class="btn" aria-disabled={at === 0} onClick={() => goTo(at - 1)}>
        {words.back}
      </button>
      {skip ? (
        <Button label={skip.label} onTap={skip.onTap} />
      ) : (
        <button
          type="button"
          class="btn skip"
          aria-disabled={at >= done.length - 1}
          onClick={() => goTo(at + 1)}
        >
          {words.skip}
        </button>
      )}
      <button type="button" class="btn main" onClick={main.onTap}>
        {main.label}
        {main.sub && <small>{main.sub}</small>}
      </button>
    </div>
  );
}
