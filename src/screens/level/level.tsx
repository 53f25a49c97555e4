import type { ComponentChildren } from 'preact';
import type { Job } from '../../job/job';
import { footId, standIn } from '../../job/room';
import { editFoot } from '../../job/room-edits';
import { forDrawing, isZero } from '../../length/length';
import { fineOf } from '../../length/tape';
import { writeLength } from '../../length/write';
import { feetAcross } from '../../plan/feet-places';
import { footFigures, type LevelPlan, levelPlanOf, overOf } from '../../plan/level-plan';
import { outsideOf } from '../../plan/outside';
import type { FootPlace } from '../../trade/room/feet';
import { Bar } from '../../ui/bar';
import { Dots } from '../../ui/blank';
import { Button } from '../../ui/button';
import { FeetDrawing } from '../../ui/feet-drawing';
import { Given } from '../../ui/given';
import { Icon } from '../../ui/icon';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { GonePage } from '../shared/gone-page';
import { leave } from '../shared/leave';
import { lengthRefused } from '../shared/refused-words';
import { Sentence } from '../shared/sentence';
import { UndoButton } from '../shared/undo-button';
import { useTried } from '../shared/use-tried';
import { standAsks } from './asks';
import { FootByFoot } from './foot';
import { levelSteps } from './steps';
import * as words from './words';
import { wrongsOf } from './wrongs';
import '../shared/places.css';

type LevelProps = { readonly bench: Bench; readonly id: string; readonly foot?: string | undefined };

/** The feet of a case: what was read from the level line, and what goes under each. */
export function LevelScreen({ bench, id, foot }: LevelProps) {
  const job = bench.job.value;
  const c = job?.cases.find((each) => each.id === id);
  if (!job || !c)
    return (
      <GonePage
        title={words.title}
        leave={{ label: words.back, word: true, onTap: () => leave(bench, { at: 'room' }) }}
        says={words.noCase}
      />
    );
  const level = levelPlanOf(job, id);
  const across = feetAcross(standIn(job, id));
  const name = c.name || words.aCase;
  if (foot !== undefined)
    return (
      <FootByFoot
        {...{ bench, id, name }}
        steps={levelSteps(id, level, { tape: job.tape, across })}
        step={foot}
      />
    );
  return <Feet {...{ bench, job, id, name, level, across }} />;
}

type FeetProps = {
  readonly bench: Bench;
  readonly job: Job;
  readonly id: string;
  readonly name: string;
  readonly level: LevelPlan;
  readonly across: number;
};

function Feet({ bench, job, id, name, level, across }: FeetProps) {
  const tried = useTried({ bench, kept: job, wrongs: (each) => wrongsOf(each, id) });
  const { open, onOpen } = tried;
  const stand = standIn(job, id);
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <>
      <Bar
        title={words.title}
        sub={name}
        leave={{ label: words.back, onTap: () => leave(bench, { at: 'room' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <DrawnFeet {...{ bench, id, level, across }} tape={job.tape} />
        <p class="pad-x empty-line">{words.when}</p>
        {!level.scribed && <Caution bench={bench} code="shims" />}
        <Drops
          {...{ level, across, stand }}
          onOpen={(place) => onOpen(dropAsk(id, place, { level, across }))}
        />
        <Found {...{ level, across }} tape={job.tape} />
        <Under {...{ id, level, stand, blank }} />
      </main>
      {footFigures(level).size > 0 && (
        <div class="fixedbar">
          <Button
            look="main"
            label={words.footByFoot}
            onTap={() => bench.go({ at: 'level', id, foot: 'next' })}
          />
        </div>
      )}
      <AskDock
        ask={open}
        tape={job.tape}
        says={tried.says}
        act={(label, changes) => void bench.act(label, changes)}
        onTry={tried.onTry}
        onClose={tried.close}
      />
    </>
  );
}

type UnderProps = Pick<FeetProps, 'id' | 'level'> & {
  readonly stand: ReturnType<typeof standIn>;
  readonly blank: (ask: Ask) => ComponentChildren;
};

/** How the case stands: on shims, on feet that screw, or on a plinth scribed to the floor. */
function Under({ id, level, stand, blank }: UnderProps) {
  const asks = standAsks(id, stand);
  const row = { across: blank(asks.across), middle: blank(asks.middle) };
  if (level.scribed)
    return (
      <>
        <Sentence label={words.acrossTitle}>{words.plinthStandLine(row)}</Sentence>
        <p class="pad-x note">{words.plinthLine}</p>
      </>
    );
  const more =
    stand.footHow === 'screw'
      ? {
          label: words.footTitles.footHigh,
          says: words.screwLine({
            footShort: blank(asks.footShort),
            footLong: blank(asks.footLong),
            footHigh: blank(asks.footHigh),
          }),
        }
      : {
          label: words.footTitles.wedgeLong,
          says: words.wedgeLine({
            wedgeThin: blank(asks.wedgeThin),
            wedgeThick: blank(asks.wedgeThick),
            wedgeLong: blank(asks.wedgeLong),
          }),
        };
  return (
    <>
      <Sentence label={words.acrossTitle}>{words.standLine({ ...row, how: blank(asks.how) })}</Sentence>
      <Sentence label={more.label}>{more.says}</Sentence>
    </>
  );
}

/** The blank of one foot's drop. */
function dropAsk(
  id: string,
  place: FootPlace,
  { level, across }: { readonly level: LevelPlan; readonly across: number },
): Ask {
  const key = footId(place);
  return {
    as: 'length',
    title: words.dropAsk(words.footName(place, across)),
    kind: 'place',
    now: level.read.find((foot) => footId(foot) === key)?.drop,
    refuse: lengthRefused,
    save: (drop) => editFoot(id, key, { drop }),
  };
}

type FoundProps = Pick<FeetProps, 'level' | 'across'> & { readonly tape: Job['tape'] };
type DropsProps = Pick<FeetProps, 'level' | 'across'> & { readonly onOpen: (place: FootPlace) => void };

/** What was read under every foot. */
const Drops = ({ level, across, onOpen }: DropsProps) => (
  <div class="pad-x places">
    {level.places.map((place) => {
      const read = level.read.find((foot) => footId(foot) === footId(place));
      return (
        <button
          key={footId(place)}
          type="button"
          class="chip place-chip"
          data-name={words.dropAsk(words.footName(place, across))}
          onClick={() => onOpen(place)}
        >
          <span class="s">{words.footName(place, across)}</span>
          <span>{read ? <Given value={read.drop} /> : <Dots />}</span>
        </button>
      );
    })}
  </div>
);

const Wrong = ({ says }: { readonly says: string }) => (
  <p class="wrongline pad-x">
    <Icon name="warn" />
    {says}
  </p>
);

/** What goes under each foot, and what does not go. */
function Found({ level, across, tape }: FoundProps) {
  const { found, sets, wedges, missing, asks } = level;
  const name = (place: FootPlace) => words.footName(place, across);
  const figures = footFigures(level);
  return (
    <>
      {missing > 0 && <p class="pad-x note">{words.missing(missing)}</p>}
      {found && !found.ok && <Wrong says={words.feetErrorText(found.error, across)} />}
      {found?.ok && found.value.oneRow && <Wrong says={words.oneRow} />}
      {overOf(level).map((foot) => (
        <Wrong key={footId(foot)} says={words.over(name(foot), foot.limit, foot.by)} />
      ))}
      {found?.ok && asks.length > 0 && <p class="pad-x note">{words.askText(asks)}</p>}
      {sets && !sets.ok && <Wrong says={words.travelErrorText(sets.error)} />}
      {sets?.ok && (
        <>
          {sets.value.feet.flatMap((foot) =>
            foot.past ? [<Wrong key={footId(foot)} says={words.past(name(foot), foot.past)} />] : [],
          )}
          {sets.value.between && (
            <p class="pad-x note">{words.between(sets.value.between.least, sets.value.between.most)}</p>
          )}
          {sets.value.fallsMore && <Wrong says={words.fallsMore(sets.value.fallsMore)} />}
        </>
      )}
      {found?.ok && (
        <ul class="rests">
          {found.value.shims.map((foot) => {
            const wedge = wedges[footId(foot)];
            const figure = figures.get(footId(foot));
            return (
              <li key={footId(foot)} class="nextset">
                <span class="grow">{name(foot)}</span>
                {isZero(foot.shim) && !sets?.ok && !level.scribed && (
                  <span class="muted">{words.highPoint}</span>
                )}
                {wedge && (
                  <span class="muted">
                    {wedge.ok ? words.wedgeIn(wedge.value, tape) : words.wedgeErrorText(wedge.error)}
                  </span>
                )}
                {figure && <Inline value={figure} tape="1/64" />}
              </li>
            );
          })}
        </ul>
      )}
    </>
  );
}

type DrawnProps = Pick<FeetProps, 'bench' | 'id' | 'level' | 'across'> & { readonly tape: Job['tape'] };

function DrawnFeet({ bench, id, level, across, tape }: DrawnProps) {
  const { found } = level;
  const figures = footFigures(level);
  const worked = bench.plan.value?.worked.get(id);
  if (!found?.ok || !worked?.ok) return null;
  const size = outsideOf(worked.value).stands;
  const rows = [...new Set(level.places.map(({ row }) => row))].reverse();
  const feet = found.value.shims.map((foot) => {
    const figure = figures.get(footId(foot));
    return {
      column: foot.number - 1,
      row: rows.indexOf(foot.row),
      text: figure ? writeLength(figure, fineOf(tape)) : '',
      high: isZero(foot.shim),
    };
  });
  return (
    <FeetDrawing
      wide={forDrawing(size.width)}
      deep={forDrawing(size.depth)}
      columns={across}
      rows={rows.length}
      feet={feet}
      label={words.drawn(feet.length)}
      front={words.front}
    />
  );
}
