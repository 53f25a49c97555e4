import { add, compare, type Length, longest, shortest, subtract, sum, zero } from '../length/length';
import type { Rounded } from '../length/round';
import { markAt, type Tape } from '../length/tape';
import { partitionFace } from '../trade/carcass/boards';
import type { PartName } from '../trade/carcass/part-name';
import type { Worked } from '../trade/carcass/parts';
import { numberOf } from '../trade/carcass/stands-as';
import type { Board } from '../trade/grooves/board';
import { type Layout, layOut } from '../trade/grooves/lay-out';
import type { Face } from '../trade/grooves/layout';
import { lengthMark, marksOf } from '../trade/grooves/marks';
import type { BankPlan } from './bank-plan';
import { handBoard } from './hand-board';
import type { Plan } from './plan';

/** What lies between two edges on a stick: a groove, whose wood is waste, or wood that stands there. */
export type StickSpan = {
  /** From the end the stick is read from, exact. Inches. */
  readonly from: Length;
  readonly to: Length;
  /** The edge nearer to that end as the job marks it. */
  readonly mark: Rounded;
} & ({ readonly is: 'groove'; readonly groove: string } | { readonly is: 'part'; readonly name: PartName });

/** Which stick of a thing, with a frozen spelling: it stands in addresses. */
type StickOf =
  | { readonly is: 'face'; readonly of: Board; readonly layout: Layout; readonly face?: Face }
  | { readonly is: 'height'; readonly named: string; readonly bay?: number }
  | { readonly is: 'width'; readonly named: string }
  | { readonly is: 'fronts'; readonly named: string; readonly end: 'top' | 'bottom' };

/** A story stick: marks along one line, read from one end. Inches. */
export type Stick = {
  /** The board, case or bank it is of, and which of its sticks. */
  readonly of: string;
  readonly which: string;
  readonly about: StickOf;
  /** Where wood begins: below nothing where a front covers the end. */
  readonly from: Length;
  readonly to: Length;
  readonly long: Rounded;
  readonly spans: readonly StickSpan[];
};

/** Every stick of a job: cases up and across, fronts of banks, boards with grooves; none of what does not work out. */
export function sticksOf(plan: Pick<Plan, 'job' | 'parts' | 'worked' | 'banks'>): readonly Stick[] {
  const { job, parts } = plan;
  const { tape } = job;
  const boards = [
    ...parts.flatMap(({ of, board }) => (of !== '' && board ? [board] : [])),
    ...job.boards.map((b) => handBoard(job, b)),
  ];
  return [
    ...job.cases.flatMap((c) => {
      const worked = plan.worked.get(c.id);
      return worked?.ok ? caseSticks(worked.value, tape) : [];
    }),
    ...[...plan.banks.values()].flatMap((bank) => bankStick(bank, tape)),
    ...boards.flatMap((board) => boardSticks(board, tape)),
  ];
}

/** The sticks of a board: one for each face that has grooves. */
function boardSticks(board: Board, tape: Tape): readonly Stick[] {
  const layout = layOut(board);
  if (!board.length || layout.problems.length > 0) return [];
  const marks = marksOf(board, layout, tape);
  const faces = [...new Set(layout.grooves.map(({ face }) => face))].sort();
  const { length } = board;
  return faces.map((face) => ({
    of: board.id,
    which: face,
    about: { is: 'face', of: board, layout, ...(faces.length > 1 ? { face } : {}) },
    from: zero,
    to: length,
    long: lengthMark(board, tape),
    spans: marks
      .filter(({ groove }) => groove.face === face)
      .map(({ groove, near }) => ({
        is: 'groove',
        groove: groove.id,
        from: groove.near,
        to: add(groove.near, groove.width),
        mark: near,
      })),
  }));
}

/** Wood that stands on a stick. */
const wood =
  (tape: Tape) =>
  (name: PartName, from: Length, thick: Length): StickSpan => ({
    is: 'part',
    name,
    from,
    to: add(from, thick),
    mark: markAt(from, tape),
  });

/** A case upward, bay by bay where they differ, and across. */
function caseSticks(worked: Worked, tape: Tape): readonly Stick[] {
  const { case: c, height } = worked.sizes;
  const stands = [...new Set(c.inside.flatMap((i) => (i.kind === 'fixed' ? [i.bay] : [])))].sort();
  const bays = stands.length > 0 ? stands : [undefined];
  const several = worked.sizes.bays.length > 1;
  const upward = bays.map(
    (bay): Stick => ({
      of: c.id,
      which: `height${bay ?? ''}`,
      about: { is: 'height', named: c.name, ...(several && bay ? { bay } : {}) },
      from: zero,
      to: height.value,
      long: markAt(height.value, tape),
      spans: upwardIn(worked, bay, tape),
    }),
  );
  return [...upward, acrossOf(worked, tape)];
}

function upwardIn({ sizes }: Worked, bay: number | undefined, tape: Tape): readonly StickSpan[] {
  const { case: c, thick, datum, clearHeight } = sizes;
  const at = wood(tape);
  const shelves = c.inside
    .filter((i) => i.kind === 'fixed' && i.bay === bay)
    .map((i) => {
      const no = numberOf(c, i);
      const name = { role: 'inside', kind: 'fixed', ...(no ? { no } : {}) } as const;
      return at(name, add(datum.value, i.at ?? zero), thick('shelf'));
    });
  const top = c.hasTop ? [at({ role: 'top' }, add(datum.value, clearHeight.value), thick('top'))] : [];
  const bottom = at({ role: 'bottom' }, subtract(datum.value, thick('bottom')), thick('bottom'));
  return [bottom, ...shelves.sort((a, b) => compare(a.from, b.from)), ...top];
}

function acrossOf({ sizes }: Worked, tape: Tape): Stick {
  const { case: c, thick, width, clearWidth } = sizes;
  const at = wood(tape);
  const side = thick('side');
  const inner = (k: number): PartName => ({ role: 'partition', ...(c.partitions > 1 ? { no: k } : {}) });
  const between = Array.from({ length: c.partitions }, (_, k) =>
    at(inner(k + 1), add(side, partitionFace(sizes, k + 1)), thick('partition')),
  );
  return {
    of: c.id,
    which: 'width',
    about: { is: 'width', named: c.name },
    from: zero,
    to: width.value,
    long: markAt(width.value, tape),
    spans: [
      at({ role: 'left' }, zero, side),
      ...between,
      at({ role: 'right' }, sum([side, clearWidth.value]), side),
    ],
  };
}

/** The fronts of a bank as planned, from the end they go on from. */
function bankStick({ bank, fronts }: BankPlan, tape: Tape): readonly Stick[] {
  if (!fronts.ok) return [];
  const { marks, columns } = fronts.value;
  const high = columns[0]?.opening.high.value;
  if (!high) return [];
  const end = bank.order === 'down' ? 'top' : 'bottom';
  const spans = marks.map((m): StickSpan => {
    const [from, to] = end === 'top' ? [m.top, m.bottom] : [m.bottomUp, m.topUp];
    return { is: 'part', name: { role: 'front', no: m.no }, from, to, mark: markAt(from, tape) };
  });
  const ordered = spans.sort((a, b) => compare(a.from, b.from));
  return [
    {
      of: bank.id,
      which: 'fronts',
      about: { is: 'fronts', named: bank.name ?? '', end },
      from: shortest(zero, ...ordered.map(({ from }) => from)),
      to: longest(high, ...ordered.map(({ to }) => to)),
      long: markAt(high, tape),
      spans: ordered,
    },
  ];
}
