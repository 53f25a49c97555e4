import type { Job } from '../../job/job';
import { casesInRoom } from '../../plan/case-in-room';
import type { Plan } from '../../plan/plan';
import { Icon } from '../../ui/icon';
import { briefly, notMeasured, room } from '../shared/in-room-words';

type LineProps = { readonly job: Job; readonly plan: Plan | undefined };

/** The room of the job, and whether the first case that does not go in does, or the first that does. */
export function RoomLine({ job, plan }: LineProps) {
  const cases = plan ? casesInRoom(job, plan.worked) : [];
  const worst = cases.find(({ goesIn }) => goesIn === false) ?? cases.find(({ goesIn }) => goesIn);
  return (
    <a class="sect" href="#/room">
      <b>{room}</b>
      <span>{worst?.goesIn === false && <Icon name="warn" />}</span>
      <span class="muted">{worst ? briefly(worst) : notMeasured}</span>
    </a>
  );
}
