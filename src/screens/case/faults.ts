import type { Job } from '../../job/job';
import type { Plan } from '../../plan/plan';
import { type Span, spansOf, worstOf } from '../../plan/shelf-loads';
import { stopStrikes } from '../../trade/boxes/stop-strikes';
import type { Case } from '../../trade/carcass/case';
import type { PartName } from '../../trade/carcass/part-name';
import type { Worked } from '../../trade/carcass/parts';
import type { CaseProblem, CaseWarning } from '../../trade/carcass/problems';
import { warningsOf } from '../../trade/carcass/warnings';
import type { Bank } from '../../trade/fronts/bank';
import { layOut } from '../../trade/grooves/lay-out';
import type { Problem, Warning } from '../../trade/grooves/layout';
import { problemText } from '../shared/layout-words';
import { partWord } from '../shared/part-words';
import { evenOver, feet, loadedOver, tooHeavy } from '../shared/sag-words';
import { warningText } from '../shared/warning-words';
import { type Place, placeOf, placeOfWarning } from './places';
import { caseProblemText, caseWarningText, onParts } from './problem-words';

/** What is wrong, or worth a look, and the blanks that make it. */
export type Fault = Place & {
  readonly text: string;
  /** It cannot be cut so. */
  readonly stops: boolean;
};

/** What is not said yet is no fault: it is asked for. */
export const isMissing = ({ code }: CaseProblem): boolean => code.startsWith('missing');

/** What keeps the case from being cut, each at the blank that makes it. */
export const problemFaults = (problems: readonly CaseProblem[], c: Case): readonly Fault[] =>
  problems
    .filter((problem) => !isMissing(problem))
    .map((problem) => ({ ...placeOf(problem, c), text: caseProblemText(problem, c), stops: true }));

/** What is to be said of a case that works out: of the grooves of its boards, then what is worth a look. */
export const workedFaults = (
  worked: Worked,
  { job, banks }: { readonly job: Job; readonly banks: Plan['banks'] },
): readonly Fault[] => {
  const { case: c } = worked.sizes;
  const drawers = job.banks.flatMap(({ id, of }) => {
    const found = of === c.id ? banks.get(id)?.drawers : undefined;
    return found?.ok ? [found.value] : [];
  });
  // what boxes that work out run into is said by how much
  const known = baysOfDrawers(
    c,
    drawers.map(({ fronts }) => fronts.bank),
  );
  const isTold = (x: CaseWarning) =>
    x.code === 'stop-on-drawers' && c.inside.some((i) => i.id === x.stop && known.has(i.bay));
  const warnings = [
    ...warningsOf(worked, baysOfDrawers(c, job.banks)).filter((x) => !isTold(x)),
    ...drawers.flatMap((own) => stopStrikes(worked.sizes, own)),
  ];
  return [
    ...layoutFaults(worked),
    ...warnings.map((x) => ({ ...placeOfWarning(x, c), text: caseWarningText(x, c), stops: false })),
    ...spansOf(job, worked).flatMap(sagFault),
  ];
};

/** A shelf that would sag too far says so in its sentence: under what stands on it, else evenly loaded. */
function sagFault(span: Span): readonly Fault[] {
  const worst = worstOf(span);
  const place = { at: `in ${span.inside.id}`, blanks: [], stops: false } as const;
  const heavy = worst?.heavy ? [{ ...place, text: tooHeavy(worst.load, worst.heavy) }] : [];
  const found = worst?.sag ?? span.even?.sag;
  if (!found?.ok || !found.value.over) return heavy;
  const { sag, over } = { sag: found.value, over: found.value.over };
  const foot = feet[span.notes.use ?? 'other'];
  const text = worst
    ? loadedOver(span.shelf.span, worst, sag, over)
    : evenOver(span.shelf.span, foot, sag, over);
  return [{ ...place, text }, ...heavy];
}

/**
 * What is said beside the keys of a blank: what is wrong with it, and what the figure in hand makes wrong elsewhere.
 *
 * @param before what was wrong before the figure was keyed
 */
export const saysFor = (
  { title }: { readonly title: string },
  faults: readonly Fault[],
  before: readonly Fault[],
): readonly string[] =>
  faults
    .filter(({ stops, blanks, text }) =>
      blanks.includes(title) ? stops : stops && !before.some((x) => x.text === text),
    )
    .map(({ text }) => text);

/** The bays of a case that drawers stand in. */
const baysOfDrawers = (c: Case, banks: readonly Bank[]): ReadonlySet<number> =>
  new Set(
    banks
      .filter((bank) => bank.of === c.id)
      .flatMap((bank) => Array.from({ length: Math.max(1, bank.across) }, (_, k) => bank.bay + k)),
  );

type Said = { readonly ids: readonly string[]; readonly text: string; readonly stops: boolean };

/** What the grooves of the case's own boards come to: what two parts have alike is said once, of both. */
function layoutFaults({ parts, sizes }: Worked): readonly Fault[] {
  const found: { readonly said: Said; readonly names: PartName[] }[] = [];
  for (const { name, board } of parts) {
    if (!board) continue;
    const layout = layOut(board);
    const all = [
      ...layout.problems.map((p) => said(p, problemText(p, board, layout), true)),
      ...layout.warnings.map((x) => said(x, warningText(x, layout), false)),
    ];
    for (const one of all) {
      const same = found.find((x) => x.said.text === one.text);
      if (same) same.names.push(name);
      else found.push({ said: one, names: [name] });
    }
  }
  return found.map(({ said: { ids, text, stops }, names }) => ({
    ...grooved(sizes.case, ids),
    text: onParts(
      names.map((name) => partWord(name)),
      text,
    ),
    stops,
  }));
}

const said = (of: Problem | Warning, text: string, stops: boolean): Said => ({ ids: idsOf(of), text, stops });

/** The runs and grooves it is of. */
const idsOf = (of: Problem | Warning): readonly string[] =>
  [
    'in' in of ? of.in : undefined,
    'a' in of ? of.a : undefined,
    'b' in of ? of.b : undefined,
    'at' in of ? of.at : undefined,
  ].flatMap((id) => id ?? []);

/** What stands in the groove a fault is of: its sentence. A groove of a run is called by its run and its number. */
function grooved(c: Case, ids: readonly string[]): Place {
  const own = ids.map((id) => id.split('~')[0] ?? '');
  const i = c.inside.find((x) => own.includes(x.id) || own.includes(`${x.id}b`));
  return { at: i ? `in ${i.id}` : 'whole', blanks: [] };
}
