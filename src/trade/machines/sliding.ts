import type { GrooveMachine } from './machine';
import { stop } from './stop';

/** Sliding or radial saw with a stack: set like a sled, but the stack comes down on the groove from above. */
export const sliding: GrooveMachine = { ...stop, above: true };
