const slop = 24;
const bounce = 350;
const quickBounce = 60;
const afterWake = 400;

const control = (target: EventTarget | null): HTMLElement | null =>
  target instanceof Element ? target.closest<HTMLElement>('button, a[href], [role="checkbox"]') : null;

/**
 * Makes every control act as a gloved hand needs: a finger that slid up to 24 px off still counts; a second touch on
 * the same control within 350 ms is glove bounce and does nothing (60 ms on figure keys, where 11 is two quick taps);
 * all touches for 400 ms after the screen wakes are a wiping thumb. Keyboard and screen-reader clicks pass untouched.
 */
export function guardTouches(root: Document): void {
  let last: { readonly at: number; readonly on: HTMLElement } | undefined;
  let woke = Number.NEGATIVE_INFINITY;
  let down: HTMLElement | null = null;
  root.addEventListener('visibilitychange', () => {
    if (root.visibilityState === 'visible') woke = performance.now();
  });
  root.addEventListener('pointerdown', (event) => {
    down = control(event.target);
  });
  root.addEventListener('pointerup', (event) => {
    const from = down;
    down = null;
    if (from && event.pointerType === 'touch' && control(event.target) !== from && near(from, event))
      from.click();
  });
  root.addEventListener(
    'click',
    (event) => {
      const on = control(event.target);
      if (!on || !(event instanceof PointerEvent) || event.pointerType === '') return;
      const now = performance.now();
      const wait = on.dataset.quick === undefined ? bounce : quickBounce;
      const bounced = last?.on === on && now - last.at < wait;
      if (bounced || now - woke < afterWake) {
        event.preventDefault();
        event.stopImmediatePropagation();
        return;
      }
      last = { at: now, on };
    },
    { capture: true },
  );
}

function near(element: HTMLElement, { clientX, clientY }: PointerEvent): boolean {
  const box = element.getBoundingClientRect();
  return (
    clientX >= box.left - slop &&
    clientX <= box.right + slop &&
    clientY >= box.top - slop &&
    clientY <= box.bottom + slop
  );
}
