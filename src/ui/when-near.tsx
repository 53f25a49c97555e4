import { type ComponentChildren, options } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** A list of more rows than this is drawn as it comes near the screen; a shorter one whole, at once. */
const short = 60;
/** So many rows of a long list fill the screen it opens on. */
const firstRows = 12;
/** One that comes near brings so many about it along; so many are drawn while nothing else is done. */
const [about, idly] = [10, 3];

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
 * within a screen and a half, or once the browser has nothing else to do, it is drawn, and stays: what has the focus,
 * or was read aloud, is never taken away. A row is a row before it is drawn, so a reader counts them all. What is
 * printed is drawn whole.
 */
export function WhenNear({ of, high, before, rows, as: Block = 'div', draw }: WhenNearProps) {
  const block = useRef<HTMLElement>(null);
  const long = rows > short;
  const [near, setNear] = useState(!long || before < firstRows);
  useEffect(() => {
    if (!long || !block.current) return undefined;
    return near ? measured(block.current, of) : watched(block.current, () => setNear(true));
  }, [long, near, of]);
  const style = near ? undefined : { height: `${stood.get(of) ?? high}px` };
  return (
    <Block ref={block as never} style={style}>
      {near && draw()}
    </Block>
  );
}

type NearRowsProps<T> = Pick<WhenNearProps, 'high'> & {
  readonly of: readonly T[];
  /** Rows of the list before these, and all its rows: none and these alone where left out. */
  readonly before?: number;
  readonly rows?: number;
  readonly draw: (one: T) => ComponentChildren;
};

/** Rows of a list, each an item of it, drawn as they come near. */
export function NearRows<T extends { readonly id: string }>(props: NearRowsProps<T>) {
  const { of, high, before = 0, rows = of.length, draw } = props;
  return (
    <ul>
      {of.map((one, k) => (
        <WhenNear
          key={one.id}
          as="li"
          of={one}
          before={before + k}
          {...{ high, rows }}
          draw={() => draw(one)}
        />
      ))}
    </ul>
  );
}

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
const waiting = new Map<Element, () => void>();
let watcher: IntersectionObserver | undefined;

function watched(block: Element, draw: () => void): () => void {
  watcher ??= watch();
  if (waiting.size === 0) whenIdle();
  waiting.set(block, draw);
  watcher.observe(block);
  return () => {
    waiting.delete(block);
    watcher?.unobserve(block);
  };
}

function watch(): IntersectionObserver {
  addEventListener('beforeprint', drawAll);
  const come = (entries: readonly IntersectionObserverEntry[]) => {
    for (const { isIntersecting, target } of entries) if (isIntersecting) drawAbout(target);
  };
  return new IntersectionObserver(come, { rootMargin: '150% 0px' });
}

function drawAbout(block: Element): void {
  const blocks = [...waiting.keys()];
  const at = blocks.indexOf(block);
  if (at < 0) return;
  for (const one of blocks.slice(Math.max(0, at - about), at + about)) waiting.get(one)?.();
}

/** A few at a time, from the top; where a browser does not say when it is idle, they come as they come near. */
function whenIdle(): void {
  globalThis.requestIdleCallback?.(() => {
    for (const draw of [...waiting.values()].slice(0, idly)) draw();
    if (waiting.size > 0) whenIdle();
  });
}

/** A print takes the page as it stands when this ends: nothing of the drawing is left for later. */
function drawAll(): void {
  const later = options.debounceRendering;
  options.debounceRendering = (draw) => draw();
  for (const draw of [...waiting.values()]) draw();
  if (later) options.debounceRendering = later;
  else delete options.debounceRendering;
}
