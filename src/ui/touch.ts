const slop = 24;
const bounce = 350;
const quickBounce = 60;
const afterWake = 400;
const echo = 700;

type Touch = { readonly on: HTMLElement; readonly at: number };

const control = (target: EventTarget | null): HTMLElement | null =>
  target instanceof Element ? target.closest<HTMLElement>('button, a[href], [role="checkbox"]') : null;

/**
 * Makes every control act as a gloved hand needs: a touch acts when the finger lifts, also when it slid up to 24 px
 * off; a second touch on the same control within 350 ms is glove bounce and does nothing (60 ms on figure keys, where
 * 11 is two quick taps); a touch begun within 400 ms of the screen waking is a wiping thumb. The browser's own click
 * comes only for a finger that held still, so it is swallowed and ours sent instead. Clicks of a keyboard or of a
 * screen reader pass untouched.
 */
export function guardTouches(root: Document): void {
  let woke = Number.NEGATIVE_INFINITY;
  let down: Touch | undefined;
  let lifted: Touch | undefined;
  let acted: Touch | undefined;

  /** Whether the control may act now, and if so, that it did. */
  function mayAct(on: HTMLElement, begun: number): boolean {
    const now = performance.now();
    const wait = on.dataset.quick === undefined ? bounce : quickBounce;
    if (begun - woke < afterWake || (acted?.on === on && now - acted.at < wait)) return false;
    acted = { on, at: now };
    return true;
  }

  const listen = { capture: true };
  root.addEventListener('visibilitychange', () => {
    if (root.visibilityState === 'visible') woke = performance.now();
  });
  root.addEventListener(
    'pointerdown',
    (event) => {
      const on = event.isPrimary && event.pointerType === 'touch' ? control(event.target) : null;
      down = on ? { on, at: performance.now() } : undefined;
    },
    listen,
  );
  root.addEventListener(
    'pointercancel',
    () => {
      down = undefined;
    },
    listen,
  );
  root.addEventListener(
    'pointerup',
    (event) => {
      const from = down;
      down = undefined;
      if (!from || !event.isPrimary) return;
      lifted = { on: from.on, at: performance.now() };
      if (near(from.on, event) && mayAct(from.on, from.at)) from.on.click();
    },
    listen,
  );
  root.addEventListener(
    'click',
    (event) => {
      const on = control(event.target);
      if (!on || !event.isTrusted || event.detail === 0) return;
      const now = performance.now();
      const echoed = lifted?.on === on && now - lifted.at < echo;
      if (!echoed && mayAct(on, now)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    listen,
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
