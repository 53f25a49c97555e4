import { editKerfTest } from '../../job/edits';
import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import { type blades, type KerfTested, kerfsTested } from '../../plan/kerf-plan';
import type { OwnMachine, Shop } from '../../trade/machines/shop';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { Caution } from '../shared/caution';
import { countRefused, lengthRefused } from '../shared/refused-words';
import { Sentence } from '../shared/sentence';
import { keepLists, listsOf } from '../shared/shop-lists';
import * as words from './kerf-test-words';
import { keep } from './look-back-words';

/** More cuts than that nobody counts. Common practice, no source. */
const mostCuts = 24;

type Field = keyof typeof words.titles;

function askFor(tested: KerfTested, field: Field): Ask {
  const { id, read } = tested;
  const title = words.titles[field](tested);
  if (field === 'cuts')
    return {
      as: 'count',
      title,
      now: read.cuts,
      word: words.oneCut,
      unit: words.cutsOf,
      refuse: countRefused(mostCuts, words.cutsOf),
      save: (cuts) => editKerfTest(id, { cuts }),
    };
  return {
    as: 'length',
    title,
    kind: 'place',
    now: read[field],
    refuse: lengthRefused,
    save: (value) => editKerfTest(id, { [field]: value }),
  };
}

/** All that is wrong with the tests of a job. */
export const kerfWrongs = (job: Job, shop: Shop): readonly string[] =>
  kerfsTested(job, shop).flatMap(({ found }) => (found && !found.ok ? [words.errorText(found.error)] : []));

type TestsProps = {
  readonly bench: Bench;
  /** The job as it is keyed. */
  readonly job: Job;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** The kerf of each blade by a test cut, kept with the job; a tap gives it to Shop figures. */
export function KerfTests({ bench, job, open, onOpen }: TestsProps) {
  return (
    <section aria-label={words.title}>
      <h2 class="sec pad-x">{words.title}</h2>
      <p class="pad-x note">{words.how}</p>
      {kerfsTested(job, bench.shop.value).map((tested) => (
        <OneTest key={tested.id} {...{ bench, tested, open, onOpen }} />
      ))}
    </section>
  );
}

type OneProps = Omit<TestsProps, 'job'> & { readonly tested: KerfTested };

const cautions = { kerf: 'sheet-cut', single: 'rip' } as const satisfies Record<
  (typeof blades)[number],
  string
>;

/** Gives a kerf to the shop, or to the machine of its own it was found on. */
function keepKerf(bench: Bench, { blade, own: of }: KerfTested, kerf: Length): void {
  if (!of) return void bench.keepShop(blade, kerf);
  const { own = [] } = listsOf(bench.settings.value);
  const told = (one: OwnMachine) => ({ ...one, figures: { ...one.figures, [blade]: kerf } });
  keepLists(bench, { own: own.map((one) => (one.id === of.id ? told(one) : one)) });
}

function OneTest({ bench, tested, open, onOpen }: OneProps) {
  const { blade, found, now, off } = tested;
  const name = words.nameOf(tested);
  const blank = (field: Field) => <AskBlank ask={askFor(tested, field)} open={open} onOpen={onOpen} />;
  const isCut = bench.folded.value.ticks.size > 0;
  return (
    <>
      <Caution bench={bench} code={cautions[blade]} />
      <Sentence label={name}>
        {words.line({ name, blank })}
        {found && !found.ok && (
          <p class="wrongline pushed">
            <Icon name="warn" />
            {words.errorText(found.error)}
          </p>
        )}
        {found?.ok && (
          <p class="note pushed rests">
            {words.foundText(found.value, tested)} {(off || !now) && isCut && words.asCut}{' '}
            {(off || !now) && <Chip label={keep} onTap={() => keepKerf(bench, tested, found.value)} />}
          </p>
        )}
      </Sentence>
    </>
  );
}
