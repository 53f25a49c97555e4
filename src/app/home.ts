import { addIcons } from '../ui/icon';
import { moreIcons } from '../ui/more-icons';

/** The page of the job in hand, and what reads a job, in a file of their own: a first visit does without them. */
export { jobOf } from '../job/job';
export { JobScreen } from '../screens/job/job';

addIcons(moreIcons);
