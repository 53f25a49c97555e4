import { editPutUp } from '../../job/edits';
import { roomIn } from '../../job/room';
import type { Plan } from '../../plan/plan';
import { anchorOf, putUpOf, usualCleat } from '../../plan/put-up-plan';
import { Icon } from '../../ui/icon';
import { type Ask, AskBlank } from '../shared/ask';
import '../shared/rows.css';
import * as words from './anchor-words';

type AnchorProps = {
  readonly plan: Plan;
  readonly place: string;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** The anchor card of a case: what always holds, what is lacking, and where nothing may be fastened. */
export function Anchor({ plan, place, open, onOpen }: AnchorProps) {
  const card = anchorOf(plan, place);
  const blank = (ask: Ask) => <AskBlank {...{ ask, open, onOpen }} />;
  const asks = asksOf(plan, place);
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
        })}
      </p>
      <div class="pad-x">
        {!card && <p class="note">{words.notHigh}</p>}
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
        {roomIn(plan.job).zones.map(({ id, what, from, to }) => (
          <p key={id} class="lit">
            {words.zone(what, from, to)}
          </p>
        ))}
        {roomIn(plan.job).zones.length === 0 && <p class="note">{words.noZones}</p>}
        <p class="note">{words.notReckoned}</p>
      </div>
    </section>
  );
}

function asksOf(plan: Plan, place: string) {
  const own = putUpOf(plan.job, place);
  const usual = usualCleat(plan, place);
  const length = (title: string, field: 'cleatThick' | 'cleatWide', stands: typeof usual.thick): Ask => ({
    as: 'length',
    title,
    kind: field === 'cleatThick' ? 'thickness' : 'place',
    now: own[field],
    usual: stands,
    word: 'as planned',
    save: (value) => editPutUp(place, { [field]: value }),
  });
  const wall: Ask = {
    as: 'choice',
    title: words.wall,
    now: own.wall ?? 'framing',
    choices: Object.entries(words.walls).map(([value, said]) => ({ value, ...said })),
    save: (value) => editPutUp(place, { wall: value === 'sheathing' ? 'sheathing' : 'framing' }),
  };
  const fixings: Ask = {
    as: 'count',
    title: words.fixings,
    now: own.fixings,
    save: (value) => editPutUp(place, { fixings: value }),
  };
  const washers: Ask = {
    as: 'choice',
    title: words.washers,
    now: own.washers ? 'yes' : 'no',
    choices: Object.entries(words.washerWords).map(([value, label]) => ({ value, label })),
    save: (value) => editPutUp(place, { washers: value === 'yes' }),
  };
  return {
    wall,
    fixings,
    washers,
    thick: length(words.thick, 'cleatThick', usual.thick),
    wide: length(words.wide, 'cleatWide', usual.wide),
  };
}
