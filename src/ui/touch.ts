const slop = 24;
/** Milliseconds in which a second touch on one control is glove bounce. */
export const bounce = 350;
/** The same on figure keys. */
export const quickBounce = 60;
/** Milliseconds after waking in which a touch is a wiping thumb. */
export const afterWake = 400;
const afterScroll = 100;

type Held = { readonly on: HTMLElement; readonly at: number };

const control = (target: EventTarget | null): HTMLElement | null =>
  target instanceof Element ? target.closest<HTMLElement>('button, a[href], [role="checkbox"]') : null;

/**
 * Makes every control act as a gloved hand needs. A touch acts when the finger lifts, also when it was held long or
 * slid up to 24 px off; a browser clicks only for a finger that held still, so its click is called off and ours sent.
 * A second touch on the same control within 350 ms is glove bounce and does nothing (60 ms on figure keys, where 11 is
 * two quick taps). A touch begun within 400 ms of the screen waking is a wiping thumb; one that stops a moving page is
 * left to the browser. Clicks of a keyboard or a screen reader pass untouched.
 *
 * @returns what acts for a touch that came before: the next on that control may be its bounce
 */
export function guardTouches(root: Document): (on: HTMLElement) => void {
  const held = new Map<number, Held>();
  const mayAct = actsOn(root);
  let scrolled = Number.NEGATIVE_INFINITY;

  function lifted(event: TouchEvent): void {
    for (const touch of event.changedTouches) {
      const from = held.get(touch.identifier);
      held.delete(touch.identifier);
      if (!from) continue;
      if (event.cancelable) event.preventDefault();
      if (near(from.on, touch) && mayAct(from.on, from.at)) from.on.click();
    }
  }

  function began(event: TouchEvent): void {
    const at = performance.now();
    for (const { identifier, target } of event.changedTouches) {
      const on = control(target);
      if (on && at - scrolled > afterScroll) held.set(identifier, { on, at });
    }
  }

  function clicked(event: MouseEvent): void {
    const on = control(event.target);
    if (!on || !event.isTrusted || event.detail === 0 || mayAct(on, performance.now())) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  }

  const moved = () => {
    scrolled = performance.now();
  };
  root.addEventListener('scroll', moved, { capture: true, passive: true });
  root.addEventListener('touchstart', began, { capture: true, passive: true });
  root.addEventListener('touchend', lifted, { capture: true, passive: false });
  root.addEventListener('touchcancel', ({ changedTouches }) => {
    for (const { identifier } of changedTouches) held.delete(identifier);
  });
  root.addEventListener('click', clicked, { capture: true });
  return (on) => {
    if (mayAct(on, performance.now())) on.click();
  };
}

/**
 * Whether a control may act now that was touched at a time, and if so, that it did. Milliseconds of the page's own
 * clock.
 */
function actsOn(root: Document): (on: HTMLElement, begun: number) => boolean {
  let woke = Number.NEGATIVE_INFINITY;
  let acted: Held | undefined;
  root.addEventListener('visibilitychange', () => {
    if (root.visibilityState === 'visible') woke = performance.now();
  });
  return (on, begun) => {
    const now = performance.now();
    const wait = on.dataset.quick === undefined ? bounce : quickBounce;
    if (begun - woke < afterWake || (acted?.on === on && now - acted.at < wait)) return false;
    acted = { on, at: now };
    return true;
  };
}

function near(element: HTMLElement, { clientX, clientY }: Touch): boolean {
  const box = element.getBoundingClientRect();
  return (
    clientX >= box.left - slop &&
    clientX <= box.right + slop &&
    clientY >= box.top - slop &&
    clientY <= box.bottom + slop
  );
}
