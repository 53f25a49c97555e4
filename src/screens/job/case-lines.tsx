import type { Job } from '../../job/job';
import { picturesHeld } from '../../job/pictures';
import { casesInRoom } from '../../plan/case-in-room';
import { loadOfCase } from '../../plan/case-load';
import type { Plan } from '../../plan/plan';
import { Icon } from '../../ui/icon';
import { briefly, notMeasured, room } from '../shared/in-room-words';
import * as words from './case-lines-words';

type LineProps = { readonly job: Job; readonly plan: Plan | undefined };

/**
 * Where the cases of the job go, and what goes into them, before there is one too: the room and the things in a row
 * each, the load of each case in its own.
 */
export const CaseLines = ({ job, plan }: LineProps) => (
  <>
    <RoomLine job={job} plan={plan} />
    <Line to="#/things" label={words.things} says={words.thingsTold(job)} wrong={false} />
    {plan &&
      job.cases.map(({ id, name }) => {
        const load = loadOfCase(plan, id);
        return (
          <Line
            key={id}
            to={`#/loads/${encodeURIComponent(id)}`}
            label={words.loads(job.cases.length > 1 ? name : '')}
            says={words.briefly(load)}
            wrong={(load.worst?.heavy ?? load.worst?.sag?.over) !== undefined}
          />
        );
      })}
    <Line to="#/paper" label={words.paper} says={words.paperTold} wrong={false} />
    <Line
      to="#/pictures"
      label={words.noted}
      says={words.firstLine(job.note) || words.picturesTold(picturesHeld(job).count)}
      wrong={false}
    />
  </>
);

/** Of the first case that does not go in, else of the first that a door is in the way of, else of the first. */
function RoomLine({ job, plan }: LineProps) {
  const cases = plan ? casesInRoom(job, plan.worked) : [];
  const read = cases.filter(({ goesIn }) => goesIn !== undefined);
  const worst = read.find(({ goesIn }) => !goesIn) ?? read.find(({ inDoor }) => inDoor) ?? read[0];
  return (
    <Line
      to="#/room"
      label={room}
      says={worst ? briefly(worst) : notMeasured}
      wrong={worst !== undefined && (!worst.goesIn || worst.inDoor)}
    />
  );
}

type RowProps = {
  readonly to: string;
  readonly label: string;
  readonly says: string;
  readonly wrong: boolean;
};

const Line = ({ to, label, says, wrong }: RowProps) => (
  <a class="sect" href={to}>
    <b>{label}</b>
    <span>{wrong && <Icon name="warn" />}</span>
    <span class="muted">{says}</span>
  </a>
);
