import { describe, expect, test, vi } from 'vitest';
import { editColumn, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { OneScreen } from '../../../src/screens/bank/one';
import { MachineScreen } from '../../../src/screens/machine/machine';
import { l } from '../../length/write-figures';
import { benchOf } from '../bench-of';
import { all, hostTree, texts } from '../host-tree';
import { sample } from '../sample';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

/** The opening read, so that no step waits for it. */
const measured = editColumn('drawers', 1, {
  usedLeft: l('29 5/16'),
  usedRight: l('29 5/16'),
  usedFront: l('17'),
  usedBack: l('17'),
});
const at = (...more: readonly Change[]) => benchOf([...sample, ...more]);

const ticksIn = (acts: readonly (readonly Change[])[]) =>
  acts.flat().flatMap((change) => (change.kind === 'tick' ? [change] : []));
function tap(box: ReturnType<typeof all>[number] | undefined): void {
  if (!box) throw new Error('there is nothing to tap');
  (box.props.onClick as () => void)();
}

describe.each([
  ['marks', 'f1top', 'cut/case~bench/frameon/1'],
  ['sticks', 'd1', 'cut/case~bench/frameon/1'],
] as const)('%s, one at a time', (what, step, first) => {
  test('what the machine holds back is not ticked: why is said in its words, and the bar leads there', () => {
    const { bench, acts, went } = at(...measured);
    const tree = hostTree(<OneScreen bench={bench} id="drawers" what={what} step={step} />);
    const says = all(tree, 'note')
      .flatMap(({ inside }) => texts(inside))
      .find((line) => line.startsWith('Blocked: '));
    expect(says).toBeDefined();
    for (const box of all(tree, 'bigtick')) tap(box);
    tap(all(tree, 'main').find((main) => main.props.onClick));
    expect(acts).toEqual([]);
    const to = went.pop();
    if (to?.at !== 'setup') throw new Error('the bar leads to the machine');
    const there = texts(hostTree(<MachineScreen bench={bench} id={to.id} />)).join(' ');
    expect(there).toContain(says?.replace('Blocked: ', ''));
  });

  test('once that is done it is ticked as the machine ticks it', () => {
    const { bench, acts, list } = at(...measured, ...tickOf(first, l('0')));
    const tree = hostTree(<OneScreen bench={bench} id="drawers" what={what} step={step} />);
    tap(all(tree, 'main').find((main) => main.props.onClick));
    const [tick] = ticksIn(acts);
    const card = list.cards.find(({ operations }) => operations.some((op) => op.id === tick?.op));
    acts.length = 0;
    for (const box of all(hostTree(<MachineScreen bench={bench} id={card?.id ?? ''} />), 'mpiece')) tap(box);
    expect(tick).toBeDefined();
    expect(ticksIn(acts)).toContainEqual(tick);
  });
});
