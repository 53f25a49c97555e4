/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, the
 * marks of a board by hand or the figures of its settings never wait for it; the boxes of those settings, a case and
 * the machine do.
 */
export { planOf } from '../plan/plan';
