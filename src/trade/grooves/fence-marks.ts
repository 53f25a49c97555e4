import { type Length, subtract, zero } from '../../length/length';

/**
 * How far every fence pencil mark moves when the stack is rebuilt: away from the blade, toward the reference side, by
 * new - old when the stack grows toward the reference end; not at all when it grows away. Negative moves them back.
 *
 * @example fenceMarkShift(inches(1n, 2n), inches(17n, 32n), 'toward') // 1/32: Example 20 of grooves
 */
export function fenceMarkShift(old: Length, next: Length, grows: 'toward' | 'away'): Length {
  return grows === 'toward' ? subtract(next, old) : zero;
}
