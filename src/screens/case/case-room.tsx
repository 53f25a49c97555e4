import type { Job } from '../../job/job';
import { caseInRoom } from '../../plan/case-in-room';
import { roomPlanOf } from '../../plan/room-plan';
import type { Worked } from '../../trade/carcass/parts';
import { Button } from '../../ui/button';
import { InRoom } from '../shared/in-room';
import { inRoom, toRoom } from '../shared/in-room-words';

type CaseRoomProps = { readonly job: Job; readonly worked: Worked; readonly onRoom: () => void };

/** Whether the case goes into the room of the job, and by how much, or not. */
export const CaseRoom = ({ job, worked, onRoom }: CaseRoomProps) => (
  <section class="pad-x" aria-label={inRoom}>
    <h2 class="sec">{inRoom}</h2>
    <InRoom found={caseInRoom(job, roomPlanOf(job), worked)} />
    <div class="adds">
      <Button look="quiet" label={toRoom} onTap={onRoom} />
    </div>
  </section>
);
