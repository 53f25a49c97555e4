import { addIcons } from '../ui/icon';
import { moreIcons } from '../ui/more-icons';

/** The page of the job in hand, in a file of its own: a start at a machine does without it, and a first visit too. */
export { JobScreen } from '../screens/job/job';

addIcons(moreIcons);
