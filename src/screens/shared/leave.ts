import type { Bench } from '../bench';
import type { Route } from '../routes';

/**
 * To the page before. Where the app was started anew on this page there is none: then to the one it is reached from.
 */
export const leave = (bench: Bench, reachedFrom: Route): void =>
  history.state === null ? bench.go(reachedFrom, true) : history.back();
