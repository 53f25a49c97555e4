import { editJoin } from '../../job/edits';
import type { Join, JoinBy } from '../../job/install';
import type { Length } from '../../length/length';
import { isNegative } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import { type JoinPlace, joinPlace, joinsOf, middlesOf } from '../../plan/join-place';
import type { Plan } from '../../plan/plan';
import { buttedIn } from '../../trade/carcass/butted';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { dowelFails, dowelWarning } from '../shared/dowel-words';
import { Acts, Sentence } from '../shared/sentence';
import { listsOf } from '../shared/shop-lists';
import { Wrong } from './found';
import { joinAsks } from './join-asks';
import { JoinSection } from './join-section';
import * as words from './join-words';

type JoinsProps = {
  readonly bench: Pick<Bench, 'act' | 'newId' | 'settings'>;
  readonly plan: Plan;
  /** The case. */
  readonly of: string;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** What holds the joints of a case from inside them: which, where and how deep. */
export function Joins(props: JoinsProps) {
  const { bench, plan, of } = props;
  const joins = joinsOf(plan.job, of);
  const { screws } = listsOf(bench.settings.value);
  const c = plan.job.cases.find(({ id }) => id === of);
  const free = c ? buttedIn(c).filter((at) => joins.every((join) => join.at !== at)) : [];
  return (
    <>
      <h2 class="sec pad-x">{words.title}</h2>
      <p class="pad-x note">{joins.length === 0 ? words.none : words.caution}</p>
      {joins.map((join) => (
        <One key={join.id} {...props} place={joinPlace(plan, join, screws)} />
      ))}
      {free.map((at) => (
        <div key={at} class="pad-x" role="group" aria-label={words.meetingWords[at]}>
          <p class="s muted">{words.holdIt(at)}</p>
          <div class="chips">
            {(Object.keys(words.holdBy) as JoinBy[]).map((by) => (
              <Chip
                key={by}
                label={words.holdBy[by]}
                onTap={() => void bench.act(words.added, editJoin(bench.newId(), { by, of, at }))}
              />
            ))}
          </div>
        </div>
      ))}
      <div class="pad-x">
        <p class="s muted">{words.add}</p>
        <div class="chips">
          {(Object.keys(words.byWords) as JoinBy[]).map((by) => (
            <Chip
              key={by}
              label={words.byWords[by]}
              onTap={() => void bench.act(words.added, editJoin(bench.newId(), { by, of }))}
            />
          ))}
        </div>
      </div>
    </>
  );
}

type OneProps = JoinsProps & { readonly place: JoinPlace };

function One({ bench, plan, place, open, onOpen }: OneProps) {
  const { join } = place;
  const blanks = Object.fromEntries(
    Object.entries(joinAsks(place)).map(([name, ask]) => [
      name,
      <AskBlank key={name} {...{ ask, open, onOpen }} />,
    ]),
  ) as unknown as Parameters<typeof words.says>[1];
  return (
    <>
      <Sentence label={words.nameOf(join)}>
        <p>
          <b>{blanks.name}</b>
        </p>
        <p>{words.says(place, blanks)}</p>
        <Acts>
          <Chip label={words.remove} onTap={() => takeOut(bench, join)} />
        </Acts>
      </Sentence>
      <FoundJoin place={place} tape={plan.job.tape} />
    </>
  );
}

const takeOut = ({ act }: Pick<Bench, 'act'>, join: Join): void =>
  void act(words.removed(words.nameOf(join)), editJoin(join.id, { gone: true }));

type FoundProps = { readonly place: JoinPlace; readonly tape: Tape };

function FoundJoin({ place, tape }: FoundProps) {
  const { join, missing, is, count, meets } = place;
  const at = (x: Length) => writeMark(markAt(x, tape), tape);
  const marks = is ? middlesOf(is).map(at) : [];
  return (
    <div class="pad-x">
      {missing.map((blank) => (
        <p key={blank} class="note">
          {words.missing[blank]}
        </p>
      ))}
      {meets?.ends.length === 0 && <Wrong says={words.notButted} />}
      <JoinSection {...place} />
      {is && <What is={is} />}
      {[...new Set(meets?.faults.map((found) => words.fault(found, join.by)))].map((says) => (
        <Wrong key={says} says={says} />
      ))}
      {marks.length > 0 && <p>{words.marks(marks, meets !== undefined)}</p>}
      {count && (
        <p class="s muted">
          {words.inAll(count)} {meets && <a href="#/cuts">{words.inCuts[join.by]}</a>}
        </p>
      )}
    </div>
  );
}

/** What holds it; or why nothing on the shelf does, and by how much. */
function What({ is }: { readonly is: NonNullable<JoinPlace['is']> }) {
  if (is.by === 'dowel') {
    if (!is.found.ok) return <Wrong says={dowelFails(is.found.error)} />;
    const { warnings } = is.found.value;
    return (
      <>
        <p>{words.dowels(is.found.value)}</p>
        {warnings.map((warning) => (
          <Wrong key={warning.code} says={dowelWarning(warning)} />
        ))}
      </>
    );
  }
  if (is.by === 'biscuit') {
    if (!is.found.ok) return <Wrong says={words.biscuitFails(is.found.error)} />;
    const { refused } = is.found.value;
    return (
      <>
        <p>{words.biscuits(is.found.value)}</p>
        {refused.length > 0 && <p class="note">{refused.map(words.lack).join(' ')}</p>}
      </>
    );
  }
  if (!is.found.ok) return <Wrong says={words.slantFails(is.found.error)} />;
  const out = isNegative(is.found.value.covered);
  return (
    <>
      <p>{words.slant(is.found.value)}</p>
      {out ? <Wrong says={words.head(is.found.value)} /> : <p>{words.head(is.found.value)}</p>}
    </>
  );
}
