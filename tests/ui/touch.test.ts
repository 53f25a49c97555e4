import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { guardTouches } from '../../src/ui/touch';

/** As much of a page as the guard looks at: controls with a place, 100 px wide and 56 high at the origin. */
class Control extends EventTarget {
  readonly dataset: Record<string, string>;
  clicks = 0;
  constructor(quick = false) {
    super();
    this.dataset = quick ? { quick: '' } : {};
  }
  closest = () => this;
  click = () => {
    this.clicks += 1;
  };
  getBoundingClientRect = () => ({ left: 0, right: 100, top: 0, bottom: 56 });
}

let page: EventTarget & { visibilityState: string };

function touch(kind: string, on: Control, x = 50, y = 28): Event {
  const event = new Event(kind, { cancelable: true });
  Object.assign(event, { changedTouches: [{ identifier: 1, target: on, clientX: x, clientY: y }] });
  page.dispatchEvent(event);
  return event;
}

function tap(on: Control, { x = 50, y = 28, held = 40 } = {}): Event {
  touch('touchstart', on);
  vi.advanceTimersByTime(held);
  return touch('touchend', on, x, y);
}

/** A click as a browser sends it: by a mouse with a count of 1, by a keyboard or a screen reader with none. */
function click(on: Control, detail: number): boolean {
  const event = new Event('click', { cancelable: true });
  Object.defineProperties(event, {
    target: { value: on },
    detail: { value: detail },
    isTrusted: { value: true },
  });
  page.dispatchEvent(event);
  return !event.defaultPrevented;
}

let act: ReturnType<typeof guardTouches>;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance', 'setTimeout'] });
  vi.advanceTimersByTime(10_000);
  vi.stubGlobal('Element', Control);
  page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  act = guardTouches(page as never);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('guardTouches', () => {
  test('a touch acts when the finger lifts, and the browser’s own click is called off', () => {
    const key = new Control();
    touch('touchstart', key);
    expect(key.clicks).toBe(0);
    expect(touch('touchend', key).defaultPrevented).toBe(true);
    expect(key.clicks).toBe(1);
  });

  test('what acts for a touch that came before counts as one: the next on that control is its bounce', () => {
    const box = new Control();
    act(box as never);
    expect(box.clicks).toBe(1);
    vi.advanceTimersByTime(200);
    tap(box);
    expect(box.clicks).toBe(1);
    vi.advanceTimersByTime(350);
    tap(box);
    expect(box.clicks).toBe(2);
  });

  test.each([
    ['slid 24 px off the side', { x: 124 }, 1],
    ['slid 25 px off the side', { x: 125 }, 0],
    ['slid 24 px off the top', { y: -24 }, 1],
    ['slid 25 px below', { y: 81 }, 0],
    ['was held for two seconds', { held: 2000 }, 1],
  ])('a finger that %s acts %j: %i', (_, how, times) => {
    const key = new Control();
    tap(key, how);
    expect(key.clicks).toBe(times);
  });

  test.each([
    ['any control', false, 349, 1],
    ['any control', false, 350, 2],
    ['a figure key', true, 59, 1],
    ['a figure key', true, 60, 2],
  ])('on %s (quick: %s) a second touch %i ms later makes %i', (_, quick, later, times) => {
    const key = new Control(quick);
    tap(key, { held: 0 });
    vi.advanceTimersByTime(later);
    tap(key, { held: 0 });
    expect(key.clicks).toBe(times);
  });

  test('another control straight after acts: only bounce on the same one is dropped', () => {
    const [one, two] = [new Control(), new Control()];
    tap(one);
    tap(two);
    expect([one.clicks, two.clicks]).toEqual([1, 1]);
  });

  test('a touch begun within 400 ms of waking does nothing, however late it lifts', () => {
    const key = new Control();
    page.dispatchEvent(new Event('visibilitychange'));
    vi.advanceTimersByTime(399);
    tap(key, { held: 600 });
    expect(key.clicks).toBe(0);
    tap(key);
    expect(key.clicks).toBe(1);
  });

  test('a touch the browser took for scrolling, or that stops a moving page, is left to the browser', () => {
    const key = new Control();
    touch('touchstart', key);
    touch('touchcancel', key);
    expect(touch('touchend', key).defaultPrevented).toBe(false);
    page.dispatchEvent(new Event('scroll'));
    expect(tap(key).defaultPrevented).toBe(false);
    expect(key.clicks).toBe(0);
  });

  test('a mouse bounces like a glove; a keyboard or a screen reader is never held back', () => {
    const key = new Control();
    expect([click(key, 1), click(key, 1)]).toEqual([true, false]);
    expect([click(key, 0), click(key, 0)]).toEqual([true, true]);
  });
});
