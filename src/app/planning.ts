/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, or a
 * board by hand at the saw, never waits for it; a job with a case does.
 */
export { planOf } from '../plan/plan';
