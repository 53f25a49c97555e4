/**
 * Screens that are not the first thing seen. They come in a second file, fetched (from the phone's own copy) right
 * after the first screen stands, so that a page never depends on a file a newer version may have cleared away.
 */
export { doubledIn } from '../job/doubled';
export { Calipers } from '../screens/calipers/calipers';
export { CaseLines } from '../screens/job/case-lines';
export { CopyLine } from '../screens/job/copy-line';
export { JobDocks } from '../screens/job/job-docks';
export { NewVersion } from '../screens/job/new-version';
export { PutUp } from '../screens/job/put-up';
export { HalfDone } from '../screens/shared/half-done';
export { TimersOver } from '../screens/timers/timers-over';
export { allHere, tidyUp } from './all-here';
export { copiesOf } from './copies';
export { keepPicture } from './keep-picture';
export { LaterScreen } from './later-screens';
export { startUpdate } from './offline';
export { shareFile } from './share';
export { sharePdf } from './share-pdf';
export { tapAgain } from './tap-again';
export { Trouble } from './trouble';
