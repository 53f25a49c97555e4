import { expect, test, vi } from 'vitest';
import { editBoard } from '../../../src/job/edits';
import { PartScreen } from '../../../src/screens/parts/part';
import { PartsScreen } from '../../../src/screens/parts/parts';
import { l } from '../../length/write-figures';
import { benchOf } from '../bench-of';
import { wordsOn } from '../host-tree';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
  useMemo: (made: () => unknown) => made(),
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

test('a size nobody gave is not said to be nothing', () => {
  const { bench } = benchOf(editBoard('b', { name: 'Label rail', made: 'alike', length: l('30') }));
  const part = wordsOn(<PartScreen bench={bench} id="b" />);
  expect(part).toContain('why? 30 inches Wide why? not said');
  expect(wordsOn(<PartsScreen bench={bench} />)).toContain('Label rail one 30 inches not said');
});
