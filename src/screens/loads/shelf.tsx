import { editThing } from '../../job/edits';
import type { Job } from '../../job/job';
import { kindIn, type LoadedShelf, pitchFor, type Span, traysFor } from '../../plan/shelf-loads';
import { Icon } from '../../ui/icon';
import { SagDrawing } from '../../ui/sag-drawing';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { exactly } from '../shared/exact-words';
import { LotLine } from '../shared/lot-line';
import * as lot from '../shared/lot-words';
import * as says from '../shared/sag-words';
import * as asks from './asks';
import * as words from './words';
import '../shared/drawer-row.css';

type ShelfProps = {
  readonly bench: Bench;
  readonly job: Job;
  readonly span: Span;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** A shelf or a run of trays: how it spans, what stands on it, how far it sags. */
export function ShelfSection(props: ShelfProps) {
  const { bench, job, span, open, onOpen } = props;
  const name = asks.nameOf(span);
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const { part, loaded } = span;
  const [pitch, trays] = [pitchFor(span), traysFor(span)];
  const off = loaded.some(({ unfit }) => unfit.some(({ code }) => code === 'too-tall'));
  return (
    <section class="drawerrow" aria-label={name}>
      <div class="sechead bare">
        <h2 class="sec">{name}</h2>
        <button type="button" class="chip" onClick={() => void add(bench, part.id)}>
          <Icon name="plus" /> {lot.addThing}
        </button>
      </div>
      <p class="fillin thing">
        {words.shelf(span, {
          stuff: kindIn(job, span),
          strip: blank(asks.stripOf(span, job)),
          tall: span.notes.strip ? blank(asks.tallOf(span)) : undefined,
          back: blank(asks.backOf(span)),
          years: blank(asks.yearsOf(span)),
        })}
      </p>
      <Stiff {...props} />
      {loaded.map((one) => (
        <Loaded key={one.piece} {...props} one={one} />
      ))}
      {loaded.length < part.copies && (
        <p class="s muted">{words.empty(part.copies - loaded.length, part.copies)}</p>
      )}
      {trays && <p class={trays > part.copies ? 'lit' : 's'}>{words.fill(trays, part.copies)}</p>}
      {off && pitch && <p class="lit">{words.pitch(pitch)}</p>}
      <Even {...props} />
    </section>
  );
}

/** What it is reckoned with: as entered, or asked for. */
function Stiff({ job, span, open, onOpen }: ShelfProps) {
  const ask = asks.stiffAsk(span, job);
  const blank = ask && <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const { stiff } = span.shelf;
  if (!stiff) return null;
  return span.stiffSaid ? (
    <p class="fillin thing">{words.reckonedWith(blank)}</p>
  ) : (
    <>
      {blank && <p class="fillin thing">{words.stiffAsked(blank)}</p>}
      <p class="lit">{words.untilThen(stiff)}</p>
    </>
  );
}

const add = (bench: Bench, part: string): Promise<boolean> =>
  bench.act(lot.added, editThing(bench.newId(), { part, count: 1, name: lot.thing }));

/** One of them with what stands on it. */
function Loaded({ bench, job, span, one, open, onOpen }: ShelfProps & { readonly one: LoadedShelf }) {
  const parts = bench.plan.value?.parts ?? [];
  const { sag, ends, unfit, cures, heavy, load, unweighed } = one;
  return (
    <div class="loadedshelf">
      <h3 class="s">{words.piece(one.piece, span.part.copies)}</h3>
      {one.things.map((thing) => (
        <LotLine key={thing.id} {...{ bench, job, parts, thing, open, onOpen }} span={span.shelf.span} />
      ))}
      {unfit.map((x) => (
        <p key={x.thing + x.code} class="wrongline">
          <Icon name="warn" />
          {words.unfit(lot.nameOf(one.things.find(({ id }) => id === x.thing) ?? { name: '' }), x)}
        </p>
      ))}
      {sag.ok && <Drawn span={span} sag={sag.value} />}
      <p class="s">{words.carries(one, span.own, one.unweighed)}</p>
      {sag.ok ? (
        <>
          <p class={sag.value.over ? 'lit' : 's'}>{says.sags(sag.value, unweighed)}</p>
          {heavy && <p class="lit">{says.tooHeavy(load, heavy)}</p>}
          {!heavy && <p class="s muted">{says.couldBe(span.shelf.span, sag.value)}</p>}
        </>
      ) : (
        <p class="wrongline">
          <Icon name="warn" />
          {says.shelfErrorText(sag.error)}
        </p>
      )}
      {ends.ok && <p class="s muted">{words.ends(ends.value)}</p>}
      {cures.length > 0 && <Cures cures={cures} />}
    </div>
  );
}

const Cures = ({ cures }: Pick<LoadedShelf, 'cures'>) => (
  <>
    <h3 class="s">{words.helps}</h3>
    <ul class="plainlist">
      {cures.map((cure) => (
        <li key={cure.code}>{words.cure(cure)}</li>
      ))}
    </ul>
  </>
);

type DrawnProps = Pick<ShelfProps, 'span'> & {
  readonly sag: Extract<LoadedShelf['sag'], { ok: true }>['value'];
};

const Drawn = ({ span, sag }: DrawnProps) => (
  <SagDrawing
    span={span.shelf.span}
    thick={span.shelf.thick}
    tall={span.shelf.edging?.tall}
    sag={sag.sag}
    allowed={sag.allowed}
    label={words.drawn(asks.nameOf(span))}
    across={exactly(span.shelf.span)}
    note={words.tenfold}
  />
);

/** The same shelf evenly loaded, by the standard. */
function Even({ span, open, onOpen }: ShelfProps) {
  const { even, notes, loaded } = span;
  if (!even) return null;
  const foot = says.feet[notes.use ?? 'other'];
  return (
    <>
      {loaded.length === 0 && even.sag.ok && <Drawn span={span} sag={even.sag.value} />}
      <p class="fillin thing">
        {words.standsIn(<AskBlank ask={asks.useOf(span)} open={open} onOpen={onOpen} />)}
      </p>
      {even.by.ok ? (
        <p class={even.by.value.lacks.length > 0 && loaded.length === 0 ? 'lit' : 's'}>
          {says.standardSays(even.by.value, foot)}
        </p>
      ) : (
        <p class="wrongline">{says.shelfErrorText(even.by.error)}</p>
      )}
      {loaded.length === 0 && even.sag.ok && (
        <>
          <p class={even.sag.value.over ? 'lit' : 's'}>{words.underEven(even.load, even.sag.value)}</p>
          <p class="s muted">{says.couldBe(span.shelf.span, even.sag.value)}</p>
        </>
      )}
      {loaded.length === 0 && even.cures.length > 0 && <Cures cures={even.cures} />}
    </>
  );
}
