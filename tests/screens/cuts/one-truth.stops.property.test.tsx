import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { editJob, letAheadOf, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { viewOf } from '../../../src/plan/board-layout';
import type { Checklist } from '../../../src/plan/checklist';
import { GrooveScreen, MachineScreen } from '../../../src/screens/machine/machine';
import { StopList } from '../../../src/screens/marks/stops';
import { allBoards } from '../../../src/screens/shared/board-of';
import { anyCase } from '../../plan/any-case';
import { runs } from '../../runs';
import { benchOf } from '../bench-of';
import { all, hostTree, text, texts } from '../host-tree';

// Boxes are tapped and words read, as a person would: nothing here asks the plan what is blocked.

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });

type Tree = ReturnType<typeof hostTree>;
type Box = ReturnType<typeof all>[number];
const tap = (box: Box) => (box.props.onClick as () => void)();

/** Everything on a page that can be ticked or unticked. */
const boxesOn = (tree: Tree): readonly Box[] =>
  tree.flatMap((host) =>
    typeof host === 'string'
      ? []
      : [...(host.props.role === 'checkbox' ? [host] : []), ...boxesOn(host.inside)],
  );

/** What a tap on each box of a page writes: by operation of a groove, its tick with all that goes with it. */
function written(tree: Tree, { list, acts }: Pick<ReturnType<typeof benchOf>, 'list' | 'acts'>) {
  acts.length = 0;
  for (const box of boxesOn(tree)) tap(box);
  return acts.flatMap((made) =>
    made.flatMap((change) =>
      change.kind !== 'edit' && list.plan.byId.get(change.op)?.groove
        ? [[change.op, allOf(made, change.op)] as const]
        : [],
    ),
  );
}

/** Of one act, what is of one operation, and what stands on the machine after it. */
const allOf = (made: readonly Change[], op: string): string =>
  JSON.stringify(
    made.filter((change) =>
      change.kind === 'edit'
        ? change.path === 'standing' || change.path.includes(op.replace(/^cut/, ''))
        : change.op === op,
    ),
  );

/** Some way into the job: all before a card is cut, some more, some let go ahead; another card may stand. */
const someWay = fc.record({
  at: fc.nat(),
  atGroove: fc.boolean(),
  stands: fc.option(fc.nat(), { freq: 3 }),
  more: fc.array(fc.nat(), { maxLength: 20 }),
  ahead: fc.array(fc.nat(), { maxLength: 3 }),
  back: fc.array(fc.nat(), { maxLength: 3 }),
});

type Way = typeof someWay extends fc.Arbitrary<infer T> ? T : never;

function into(fresh: Checklist, way: Way): readonly Change[] {
  const { cards, plan } = fresh;
  // far into what is put up nothing of a board is left to be seen
  const ops = plan.operations.filter((op) => !op.part.endsWith('~bench'));
  const grooved = cards.flatMap((card, k) => (card.operations.some((op) => op.groove) ? [k] : []));
  const last = (grooved.at(-1) ?? 0) + 2;
  const k = way.atGroove ? (grooved[way.at % grooved.length] ?? 0) : way.at % last;
  const some = (picks: readonly number[]) => picks.flatMap((n) => ops[n % ops.length] ?? []);
  const back = new Set(some(way.back));
  const cut = new Set([...cards.slice(0, k).flatMap((card) => card.operations), ...some(way.more)]);
  const stands = cards[(way.stands ?? k) % cards.length];
  return [
    ...[...cut].filter((op) => !back.has(op)).flatMap((op) => tickOf(op.id, op.figure)),
    ...some(way.ahead).flatMap((op) => letAheadOf(op.id, 'measured another way')),
    ...(stands ? editJob({ standing: stands.id }) : []),
  ];
}

/** What a blocked setting says stands as well on the screen that a tap on it leads to. */
function leadsToTheSame(row: Box, { bench, went }: ReturnType<typeof benchOf>): string {
  const says = all(row.inside, 'heldby').map(text).join('');
  const [shut] = all(row.inside, 'blocked');
  if (!shut) return says;
  expect(boxesOn(row.inside)).toEqual([]);
  tap(shut);
  const to = went.pop();
  if (to?.at !== 'saw') throw new Error('a tap leads to the machine');
  const there = hostTree(<GrooveScreen bench={bench} board={to.board} setting={to.setting} />);
  const same = says.replace(/^Blocked: /, '').replace(/^(change|set|put) (.*) first$/, '$1 $2');
  expect(texts(there).join(' ').toLowerCase()).toContain(same.toLowerCase());
  return says;
}

test('the settings of Marks offer what the machine offers, write the same, and say what else is blocked by', () => {
  const seen = { free: 0, waits: 0, change: 0, back: 0 };
  fc.assert(
    fc.property(anyCase, someWay, fc.nat(), (changes, way, pick) => {
      const { list: fresh } = benchOf(changes);
      const made = benchOf([...changes, ...into(fresh, way)]);
      const { bench, list } = made;
      const boards = allBoards(bench);
      const board = boards[pick % boards.length];
      if (!board) throw new Error('a board is wanted');

      const cards = list.cards.filter(({ operations }) =>
        operations.some((op) => op.groove?.board === board.id),
      );
      const own = new Set(list.plan.operations.flatMap((op) => (op.groove?.board === board.id ? op.id : [])));
      const machine = cards.flatMap((card) =>
        written(hostTree(<MachineScreen bench={bench} id={card.id} />), made).filter(([op]) => own.has(op)),
      );

      const view = viewOf(board, {}, list.plan.job.tape);
      const tree = hostTree(<StopList {...{ view, bench }} still={false} />);
      const marks = written(tree, made);
      for (const row of all(tree, 'stop')) {
        const says = leadsToTheSame(row, made);
        if (says) seen[/^Blocked: (change|set|put) /.test(says) ? 'change' : 'waits'] += 1;
        else expect(boxesOn(row.inside)).toHaveLength(1);
      }
      const open = (ticks: typeof marks) => ticks.filter(([op]) => !list.doing.done(op)).sort();
      expect(open(marks)).toEqual(open(machine));
      expect(new Set(marks.map(([op]) => op)).size).toBe(marks.length);
      seen.free += open(marks).length;
      seen.back += marks.length - open(marks).length;
    }),
    { numRuns: runs(80) },
  );
  for (const [kind, n] of Object.entries(seen)) expect(n, kind).toBeGreaterThan(0);
});
