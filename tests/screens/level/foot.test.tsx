import { expect, test, vi } from 'vitest';
import { tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { editFoot, editStand } from '../../../src/job/room-edits';
import { footStep } from '../../../src/plan/feet-set';
import { BySetup } from '../../../src/screens/cuts/by-setup';
import { LevelScreen } from '../../../src/screens/level/level';
import { MachineScreen } from '../../../src/screens/machine/machine';
import { installId } from '../../../src/trade/setups/install-steps';
import { l } from '../../length/write-figures';
import { caseDecided } from '../../plan/carried-cabinet-case';
import { benchOf } from '../bench-of';
import { all, hostTree, text, texts } from '../host-tree';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

const feet = ['front1', 'front2', 'back1', 'back2'] as const;
const drops = ['34 9/16', '34 3/8', '34 11/16', '34 7/16'] as const;
const read: readonly Change[] = feet.flatMap((foot, k) =>
  editFoot('case', foot, { drop: l(drops[k] ?? '34') }),
);
const shims = ['3/16', '0', '5/16', '1/16'] as const;
const set = (n: number) =>
  feet.slice(0, n).flatMap((foot, k) => tickOf(footStep('case', foot), l(shims[k] ?? '0')));
const at = (n: number) =>
  benchOf([...caseDecided, ...tickOf(installId('case', 'carry-in'), l('0')), ...read, ...set(n)]);

function tap(host: ReturnType<typeof all>[number] | undefined): void {
  if (!host) throw new Error('there is nothing to tap');
  (host.props.onClick as () => void)();
}
const main = (tree: ReturnType<typeof hostTree>) => all(tree, 'main').find(({ props }) => props.onClick);

test('while a foot is not set, Cuts, the setting and the feet say so in the same words, and lead to it', () => {
  const { bench, list, acts, went } = at(2);
  const whole = hostTree(<LevelScreen bench={bench} id="case" foot="whole" />);
  expect(texts(whole)).toContain('Blocked: 2 of 4 feet set');
  tap(main(whole));
  expect([acts, went.pop()]).toEqual([[], { at: 'level', id: 'case', foot: 'next' }]);

  // the high point first, then by their places: it and the foot before it are set
  const next = texts(hostTree(<LevelScreen bench={bench} id="case" foot="next" />));
  expect(next).toContain('Shim: back left foot');

  const card = list.cards.find((one) => one.operations.some(({ what }) => what === 'level'));
  const setting = hostTree(<MachineScreen bench={bench} id={card?.id ?? ''} />);
  const [link] = all(setting, 'inlink');
  expect(text(link)).toBe('2 of 4 feet set');
  tap(link);
  expect(went.pop()).toEqual({ at: 'level', id: 'case', foot: 'next' });
  expect(texts(setting)).toContain('set by the level alone');

  const cuts = texts(
    hostTree(<BySetup list={list} stand={undefined} go={((to: never) => went.push(to)) as never} />),
  );
  expect(cuts.some((line) => line.includes('2 of 4 feet set · blocked'))).toBe(true);
});

test('with the last foot set the same tick is offered on both', () => {
  const { bench, list, acts } = at(4);
  tap(main(hostTree(<LevelScreen bench={bench} id="case" foot="whole" />)));
  const card = list.cards.find((one) => one.operations.some(({ what }) => what === 'level'));
  tap(all(hostTree(<MachineScreen bench={bench} id={card?.id ?? ''} />), 'mpiece')[0]);
  const ticks = acts.map((changes) => changes.flatMap((c) => (c.kind === 'tick' ? [c.op] : [])));
  expect(ticks).toEqual([[installId('case', 'level')], [installId('case', 'level')]]);
});

// Drops 34 9/16, 34 3/8, 35 1/2 and 34 7/16: the back left asks 35 1/2 - 34 3/8 = 1 1/8, which is 3/8 over 3/4; a wedge
// of 5/16 at its thick end lacks 1 1/8 - 5/16 = 13/16.
test('a foot whose shim is over what is sound says so on its own screen, and is not ticked', () => {
  const low = [...editFoot('case', 'back1', { drop: l('35 1/2') })];
  const wedge = editStand('case', { wedgeThin: l('0'), wedgeThick: l('5/16'), wedgeLong: l('5') });
  const { bench, acts, went } = benchOf([...caseDecided, ...read, ...low, ...wedge]);
  const tree = hostTree(<LevelScreen bench={bench} id="case" foot="back1" />);
  const said = texts(tree).join(' ');
  expect(said).toContain(
    'Back left: 3/8 over the 3/4 that shims are sound for. Scribe a base to the floor instead.',
  );
  expect(said).toContain('The wedge is 13/16 too thin.');
  expect(said).not.toContain('It stands');
  tap(main(tree));
  expect([acts, went.pop()]).toEqual([[], { at: 'level', id: 'case' }]);
  expect(said.match(/lever/g)).toHaveLength(1);
});

test('feet that screw have no figure while their lengths are not said, and none past its travel is ticked', () => {
  const screw = editStand('case', { footHow: 'screw' });
  const { bench } = benchOf([...caseDecided, ...read, ...screw]);
  const page = texts(hostTree(<LevelScreen bench={bench} id="case" />)).join(' ');
  expect(page).toContain('Say how long a foot is at its shortest');
  expect(page).not.toContain('Foot by foot');
  expect(page).not.toContain('5/16');
  expect(texts(hostTree(<LevelScreen bench={bench} id="case" foot="next" />)).join(' ')).toContain(
    'say what is under it',
  );

  // from 1 1/2 on the high point the back left stands at 1 13/16, a sixteenth past 1 3/4
  const lengths = editStand('case', { footShort: l('1'), footLong: l('1 3/4'), footHigh: l('1 1/2') });
  const past = benchOf([...caseDecided, ...read, ...screw, ...lengths]);
  const tree = hostTree(<LevelScreen bench={past.bench} id="case" foot="back1" />);
  expect(texts(tree).join(' ')).toContain('Back left: 1/16 past its longest.');
  tap(main(tree));
  expect(past.acts).toEqual([]);
});
