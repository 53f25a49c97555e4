import { type ComponentChildren, options } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** A list of more rows than this is drawn as it comes near the screen; a shorter one whole, at once. */
const short = 60;
/** So many rows of a long list fill the screen it opens on. */
const firstRows = 12;
/** What comes near brings so many screens of rows along; so much is drawn at a time while nothing else is done, px. */
const [screensAlong, idleHigh] = [2, 600];
/** Nothing else is done once the page stood still so long, ms. */
const stillFor = 300;

type WhenNearProps = {
  /** What is drawn: as long as it is the same, its block is as high as it last was. */
  readonly of: object;
  /** About how high it will be, px. */
  readonly high: number;
  /** Rows of the list before it, and all its rows. */
  readonly before: number;
  readonly rows: number;
  readonly as?: 'li' | 'div';
  readonly draw: () => ComponentChildren;
};

/**
 * A row or a group of a list that grows with the job. Far from the screen it is an empty block of about its height;
 * within a screen and a half, or once the page stands still and the browser has nothing else to do, it is drawn, and
 * stays: what has the focus, or was read aloud, is never taken away. A row is a row before it is drawn, so a reader
 * counts them all. What is printed is drawn whole.
 */
export function WhenNear({ of, high, before, rows, as: Block = 'div', draw }: WhenNearProps) {
  const block = useRef<HTMLElement>(null);
  const long = rows > short;
  const [near, setNear] = useState(!long || before < firstRows);
  // of a list that has become a short one, all
  const stands = near || !long;
  useEffect(() => {
    if (stands) setNear(true);
    if (!long || !block.current) return undefined;
    return stands ? measured(block.current, of) : watched(block.current, () => setNear(true));
  }, [long, stands, of]);
  const style = stands ? undefined : { height: `${stood.get(of) ?? high}px` };
  return (
    <Block ref={block as never} style={style}>
      {stands && draw()}
    </Block>
  );
}

type NearRowsProps<T> = Pick<WhenNearProps, 'high'> & {
  readonly of: readonly T[];
  readonly id: (one: T) => string;
  /** Rows of the list before these, and all its rows: none and these alone where left out. */
  readonly before?: number;
  readonly rows?: number;
  readonly draw: (one: T) => ComponentChildren;
};

/** Rows of a list, each an item of it, drawn as they come near. */
export const NearRows = <T extends object>(props: NearRowsProps<T>) => {
  const { of, id, high, before = 0, rows = of.length, draw } = props;
  return (
    <>
      {of.map((one, k) => (
        <WhenNear
          key={id(one)}
          as="li"
          of={one}
          before={before + k}
          {...{ high, rows }}
          draw={() => draw(one)}
        />
      ))}
    </>
  );
};

/** How high each stood last: coming back, the page is as long as it was. */
const stood = new WeakMap<object, number>();
const drawn = new WeakMap<Element, object>();
let sizes: ResizeObserver | undefined;

function measured(block: Element, of: object): () => void {
  sizes ??= new ResizeObserver((entries) => {
    for (const { target, contentRect } of entries) {
      const what = drawn.get(target);
      // a block that is taken away has no height any more
      if (what && contentRect.height > 0) stood.set(what, contentRect.height);
    }
  });
  drawn.set(block, of);
  sizes.observe(block);
  return () => sizes?.unobserve(block);
}

/** Blocks that wait, as they stand on the page, and what draws them. */
const waiting = new Map<HTMLElement, () => void>();
let watcher: IntersectionObserver | undefined;

function watched(block: HTMLElement, draw: () => void): () => void {
  watcher ??= watch();
  waiting.set(block, draw);
  watcher.observe(block);
  whenIdle();
  return () => {
    waiting.delete(block);
    watcher?.unobserve(block);
  };
}

function watch(): IntersectionObserver {
  addEventListener('beforeprint', drawAll);
  // of the page, or of a part of it that scrolls by itself
  const scrolled = ({ timeStamp }: Event) => {
    scrolledAt = timeStamp;
  };
  addEventListener('scroll', scrolled, true);
  return new IntersectionObserver(come, { rootMargin: '150% 0px' });
}

/** What comes near brings along what lies behind it, away from the screen: the nearest first. */
function come(entries: readonly IntersectionObserverEntry[]): void {
  const near = entries.filter(({ isIntersecting }) => isIntersecting);
  const isAbove = ({ boundingClientRect: at }: IntersectionObserverEntry) => at.bottom < 0;
  for (const entry of near) if (!isAbove(entry)) drawFrom(entry.target, 1);
  for (const entry of near.reverse()) if (isAbove(entry)) drawFrom(entry.target, -1);
}

function drawFrom(block: Element, way: 1 | -1): void {
  const blocks = [...waiting.keys()];
  const at = blocks.indexOf(block as HTMLElement);
  if (at >= 0)
    drawLot(way > 0 ? blocks.slice(at) : blocks.slice(0, at + 1).reverse(), screensAlong * innerHeight);
}

/** As many of the blocks as are about so high, px. */
function drawLot(blocks: readonly HTMLElement[], high: number): void {
  let sum = 0;
  for (const block of blocks) {
    if (sum >= high) return;
    sum += Number.parseFloat(block.style.height);
    const draw = waiting.get(block);
    waiting.delete(block);
    draw?.();
  }
}

/** When the page was last scrolled, and whether the rest already waits for an idle browser. */
let scrolledAt = Number.NEGATIVE_INFINITY;
let asked = false;

/**
 * A few at a time, from the top, while the page stands still; where a browser does not say when it is idle, they come
 * as they come near.
 */
function whenIdle(): void {
  if (asked || waiting.size === 0 || !globalThis.requestIdleCallback) return;
  asked = true;
  const again = () => {
    asked = false;
    whenIdle();
  };
  requestIdleCallback(() => {
    const stood = performance.now() - scrolledAt;
    if (stood < stillFor) return void setTimeout(again, stillFor - stood);
    drawLot([...waiting.keys()], idleHigh);
    again();
  });
}

/** A print takes the page as it stands when this ends: nothing of the drawing is left for later. */
function drawAll(): void {
  const later = options.debounceRendering;
  options.debounceRendering = (draw) => draw();
  drawLot([...waiting.keys()], Number.POSITIVE_INFINITY);
  if (later) options.debounceRendering = later;
  else delete options.debounceRendering;
}
