import { expect, test, vi } from 'vitest';
import { editColumn } from '../../../src/job/edits';
import { FrontsScreen } from '../../../src/screens/bank/fronts';
import { PartScreen } from '../../../src/screens/parts/part';
import { l } from '../../length/write-figures';
import { benchOf } from '../bench-of';
import { wordsOn } from '../host-tree';
import { sample } from '../sample';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
  useMemo: (made: () => unknown) => made(),
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

// An inset front goes down to the mark: 17.02 less two gaps of 5/64 is 16.86375, 16 27/32 and 0.020. The nearest
// mark would be 16 7/8, too wide by 0.011.
test('how wide fronts are is one figure, over the drawing, among the sums and at their part', () => {
  const usedFront = l('1702/100');
  const { bench } = benchOf([
    ...sample,
    ...editColumn('drawers', 1, { usedLeft: l('29 5/16'), usedRight: l('29 5/16'), usedFront }),
  ]);
  const page = wordsOn(<FrontsScreen bench={bench} id="drawers" />);
  expect(page).toContain('Fronts are 16 27/32 strong 0.020 wide.');
  expect(page).toContain('Wide why? 16 and 27/32 inches, strong by 0.020');
  const part = wordsOn(<PartScreen bench={bench} id="drawers~c1d1front" />);
  expect(part).toContain('Long why? 16 and 27/32 inches, strong by 0.020');
});
