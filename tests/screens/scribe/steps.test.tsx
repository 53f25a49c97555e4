import { expect, test, vi } from 'vitest';
import type { Change } from '../../../src/job/entry';
import { editGap, editStand } from '../../../src/job/room-edits';
import { ScribeScreen } from '../../../src/screens/scribe/scribe';
import { scribeSteps } from '../../../src/screens/scribe/steps';
import { caseDecided } from '../../plan/carried-cabinet-case';
import { worked } from '../../plan/job-of';
import { l, w } from '../../trade/grooves/sample';
import { benchOf } from '../bench-of';
import { all, hostTree, texts } from '../host-tree';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

/** Example 3 of room, its top read before its middle: compass 9/32; off 5/32, 0 and 3/32. */
const gaps: readonly Change[] = [
  ...editGap('case', 'g1', { side: 'left', at: l('0'), gap: l('1/8') }),
  ...editGap('case', 'g2', { side: 'left', at: l('64'), gap: l('3/16') }),
  ...editGap('case', 'g3', { side: 'left', at: l('32'), gap: l('9/32') }),
];
const hang = (x: string) => editStand('case', { hangLeft: l(x) });

test('the compass first, then what comes off from the floor up', () => {
  const steps = scribeSteps(worked([...caseDecided, ...gaps, ...hang('1/4')]).job, 'case');
  expect(steps.map(({ id, figure }) => [id, w(figure.value)])).toEqual([
    ['left~compass', '9/32'],
    ['left~off1', '5/32'],
    ['left~off2', '0'],
    ['left~off3', '3/32'],
  ]);
});

test('an edge that hangs over too little has no step: its line would run into the case', () => {
  expect(scribeSteps(worked([...caseDecided, ...gaps, ...hang('1/8')]).job, 'case')).toEqual([]);
});

test('a figure stands alone on its screen and is ticked there; with another gap its tick no longer counts', () => {
  const at = (...more: readonly Change[]) => benchOf([...caseDecided, ...gaps, ...hang('1/4'), ...more]);
  const { bench, acts } = at();
  const tree = hostTree(<ScribeScreen bench={bench} id="case" step="next" />);
  expect(texts(tree)).toContain('Left edge: compass');
  const main = all(tree, 'main').find(({ props }) => props.onClick);
  if (!main) throw new Error('there is nothing to tap');
  (main.props.onClick as () => void)();
  const [ticked = []] = acts;
  expect(ticked.map((c) => c.kind === 'tick' && c.op)).toEqual(['cut/case~bench/scribe~left~compass/1']);

  const shown = (...more: readonly Change[]) =>
    texts(hostTree(<ScribeScreen bench={at(...ticked, ...more).bench} id="case" step="next" />));
  expect(shown()).toContain('Left edge, 0 up: off');
  // the widest gap 1/4 now: the compass is set anew
  expect(shown(...editGap('case', 'g3', { gap: l('1/4') }))).toContain('Left edge: compass');
});
