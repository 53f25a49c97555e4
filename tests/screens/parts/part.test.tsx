import { expect, test, vi } from 'vitest';
import { editBoard } from '../../../src/job/edits';
import { PartScreen } from '../../../src/screens/parts/part';
import { PartsScreen } from '../../../src/screens/parts/parts';
import { l } from '../../length/write-figures';
import { benchOf } from '../bench-of';
import { hostTree, texts } from '../host-tree';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
  useMemo: (made: () => unknown) => made(),
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

const said = (screen: Parameters<typeof hostTree>[0]) =>
  texts(hostTree(screen)).join(' ').replace(/ +/g, ' ');

test('a size nobody gave is not said to be nothing', () => {
  const { bench } = benchOf(editBoard('b', { name: 'Label rail', made: 'alike', length: l('30') }));
  const part = said(<PartScreen bench={bench} id="b" />);
  expect(part).toContain('why? 30 inches Wide why? not said');
  expect(said(<PartsScreen bench={bench} />)).toContain('Label rail one 30 inches not said');
});
