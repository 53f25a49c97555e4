/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, the
 * marks of a board by hand or the figures of its settings never wait for it; the boxes of those settings, a case and
 * the machine do. What looks at files that come in needs the chain too, and is in the same file.
 */
export { planOf } from '../plan/plan';
export { figuresFor, lookAt, nowHanded } from './looking';
