export { shopTools } from '../job/shop-tools';
export { undoable, undoOf } from '../job/undo';
/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, the
 * marks of a board by hand or the figures of its settings never wait for it; the boxes of those settings, a case and
 * the machine do. What a tap sets off is in the same file: what looks at files that come in needs the chain too.
 */
export { planOnce as planOf } from '../plan/plan-once';
export { newCaseIn } from '../screens/job/new-case';
export { layOutBoard } from '../screens/shared/new-board';
export { bringBack, deleteJob, fileOf, makeJob, putAway, stockOf } from './job-acts';
export { lookAt } from './looking';
export { wholeSample } from './sample-file';
export { refit, searchesInto } from './searches';
export { takeOffered, takeSample } from './taking-in';
