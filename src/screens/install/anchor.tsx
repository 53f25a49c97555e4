import { roomIn } from '../../job/room';
import { writeMark } from '../../length/write';
import { nailerIsCleat } from '../../plan/cleat-on';
import { ownStretch } from '../../plan/cleat-plan';
import type { Plan } from '../../plan/plan';
import { anchorOf, placesOnWall } from '../../plan/put-up-plan';
import { anchorScrews, screwPlace } from '../../plan/screw-plan';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { CleatLines } from '../shared/cleat-lines';
import { listsOf } from '../shared/shop-lists';
import '../shared/rows.css';
import { anchorAsks } from './anchor-asks';
import * as words from './anchor-words';
import { Found } from './found';

type AnchorProps = {
  readonly bench: Pick<Bench, 'go' | 'settings'>;
  readonly plan: Plan;
  readonly place: string;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** The anchor card of a case: what is always so, what is lacking, and where nothing may be fastened. */
export function Anchor({ bench, plan, place, open, onOpen }: AnchorProps) {
  const card = anchorOf(plan, place);
  const blank = (ask: Ask) => <AskBlank {...{ ask, open, onOpen }} />;
  const asks = anchorAsks(plan, place);
  const screws = anchorScrews(plan, place);
  const { zones } = roomIn(plan.job);
  return (
    <section aria-label={words.anchors}>
      <h2 class="sec pad-x">{words.anchors}</h2>
      <p class="fillin run">
        {words.sentence({
          wall: blank(asks.wall),
          fixings: blank(asks.fixings),
          thick: blank(asks.thick),
          wide: blank(asks.wide),
          washers: blank(asks.washers),
        })}{' '}
        {words.between({
          cover: blank(asks.cover),
          gauge: blank(asks.gauge),
          into: screws.bite === 'face' ? blank(asks.into) : undefined,
        })}{' '}
        {words.stands({ where: blank(asks.where), at: blank(asks.at) })}
      </p>
      {nailerIsCleat(plan.job, place) && <p class="pad-x note">{words.nailerIsCleat}</p>}
      <Found
        place={screwPlace(plan, screws, listsOf(bench.settings.value).screws)}
        tape={plan.job.tape}
        missing={words.missing}
      />
      <AtWall {...{ bench, plan, place }} />
      <div class="pad-x">
        {!card && <p class="note">{words.notHigh}</p>}
        {card?.asks.map((x) => (
          <p key={x} class="note">
            {words.ask[x]}
          </p>
        ))}
        {card?.lacks.map((x) => (
          <p key={x.code} class="wrongline">
            <Icon name="warn" />
            {words.lack(x)}
          </p>
        ))}
        <ul class="problems">
          {card?.facts.map((x) => (
            <li key={x.code}>{words.fact(x)}</li>
          ))}
        </ul>
        {zones.map((zone) => (
          <p key={zone.id} class="lit">
            {words.zone(zone)}
          </p>
        ))}
        {zones.length === 0 && <p class="note">{words.noZones}</p>}
        <p class="note">{words.notReckoned}</p>
      </div>
    </section>
  );
}

/** Where the cleat stands along the wall, and which places take a screw: read and said on the page of the wall. */
function AtWall({ bench, plan, place }: Pick<AnchorProps, 'bench' | 'plan' | 'place'>) {
  const { cleatFrom, cleatTo } = roomIn(plan.job);
  const { from = cleatFrom, to = cleatTo } = ownStretch(plan.job, place) ?? {};
  const found = placesOnWall(plan, place);
  const { tape } = plan.job;
  const at = found?.ok ? found.value.fix.map((mark) => writeMark(mark, tape)) : undefined;
  return (
    <div class="pad-x">
      <CleatLines on={plan} place={place} />
      <p>{words.atWall(from, to, at)}</p>
      <p class="chips">
        <Chip label={words.toWall} onTap={() => bench.go({ at: 'room', page: 'wall' })} />
      </p>
    </div>
  );
}
