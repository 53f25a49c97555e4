/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, or the
 * marks of a board by hand, never wait for it; a case and the machine do.
 */
export { planOf } from '../plan/plan';
