import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import type { CaseInRoom } from '../../plan/case-in-room';
import { checklistOf } from '../../plan/checklist';
import { isStripAt } from '../../plan/closing-plan';
import { stuffOf } from '../../plan/parts-of-job';
import type { RoomPlan } from '../../plan/room-plan';
import { closedBy, type ScribeSide } from '../../plan/scribe-plan';
import type { Case } from '../../trade/carcass/case';
import { fillerId } from '../../trade/carcass/filler';
import { stockOf } from '../../trade/carcass/sizes';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { measureSheet } from '../shared/measure-sheet';
import { Acts, Sentence } from '../shared/sentence';
import { fillerStock, stripsOf } from './asks';
import { Wrong } from './drawn';
import { Strip } from './strip';
import * as words from './words';

type FillersProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly job: Job;
  readonly room: CaseInRoom | undefined;
  readonly rooms: RoomPlan;
  readonly sides: readonly ScribeSide[];
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** The filler strips of a case: how wide each is ripped, what they are of, and what comes off where. */
export function Fillers({ room, rooms, sides, ...at }: FillersProps) {
  const { fillers } = room ?? {};
  const c = at.job.cases.find((one) => one.id === at.id);
  const strips = room ? sides.filter(({ side }) => isStripAt(room, side)) : [];
  return (
    <section aria-label={words.fillers}>
      <h2 class="sec pad-x">{words.fillers}</h2>
      <div class="pad-x">
        <p class="note">{fillers ? words.fillersTold(rooms.allow.left) : words.noLines}</p>
      </div>
      {c && strips.length > 0 && <Of {...at} c={c} sides={strips} />}
      {fillers && (
        <div class="pad-x">
          {sides.map((side) =>
            closedBy(side) === 'edge' ? (
              <p key={side.side} class="s">
                {words.byEdge(side.side)}
              </p>
            ) : (
              <Strip
                key={side.side}
                side={side.side}
                found={fillers[side.side]}
                isRipped={strips.includes(side)}
                was={rippedTo(at.bench, fillerId(at.id, side.side))}
                tape={at.job.tape}
              />
            ),
          )}
        </div>
      )}
    </section>
  );
}

/** What a strip was ripped to, by its tick or as it came out; the last one made counts. */
function rippedTo({ plan, folded }: Bench, part: string): Length | undefined {
  if (!plan.value) return undefined;
  const rip = plan.value.operations.find((op) => op.part === part && op.what === 'rip');
  return rip && checklistOf(plan.value, folded.value).cutTo(rip.id)?.figure;
}

type OfProps = Pick<FillersProps, 'bench' | 'job' | 'sides' | 'open' | 'onOpen'> & { readonly c: Case };

/** What the strips are of, and the way to each of them among the parts; what has no thickness yet is measured first. */
function Of({ bench, job, c, sides, open, onOpen }: OfProps) {
  const onMeasure = () =>
    void measureSheet(bench, { of: c.id, stick: true, takes: (stock) => stripsOf(c.id, stock) });
  const parts = bench.plan.value?.parts ?? [];
  const made = sides.flatMap(({ side }) =>
    parts.some((part) => part.id === fillerId(c.id, side)) ? [side] : [],
  );
  const stock = job.stock.find(({ id }) => id === stockOf(c, 'filler'));
  const isUnmeasured = stock !== undefined && stuffOf(stock).length === 0;
  return (
    <Sentence label={words.stripsOf}>
      {words.ofLine(<AskBlank ask={fillerStock(c, { job, onMeasure })} open={open} onOpen={onOpen} />)}
      {isUnmeasured && <Wrong says={words.noThickness(stock.name)} />}
      <Acts>
        {isUnmeasured && (
          <Chip label={words.measureIt} onTap={() => bench.go({ at: 'stock', id: stock.id, of: c.id })} />
        )}
        {made.map((side) => (
          <Chip
            key={side}
            label={words.toPart(side)}
            onTap={() => bench.go({ at: 'part', id: fillerId(c.id, side) })}
          />
        ))}
      </Acts>
    </Sentence>
  );
}
