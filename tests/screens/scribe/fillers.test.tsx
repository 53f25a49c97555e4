import { expect, test, vi } from 'vitest';
import { editCase, editStock, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { editAcross, editRoom } from '../../../src/job/room-edits';
import { ScribeScreen } from '../../../src/screens/scribe/scribe';
import { caseDecided } from '../../plan/carried-cabinet-case';
import { l } from '../../trade/grooves/sample';
import { benchOf } from '../bench-of';
import { hostTree, texts } from '../host-tree';

vi.mock('preact/hooks', () => ({
  useState: (first: unknown) => [typeof first === 'function' ? first() : first, () => undefined],
  useRef: (current: unknown) => ({ current }),
  useEffect: () => undefined,
  useLayoutEffect: () => undefined,
}));
vi.stubGlobal('document', { documentElement: { dataset: {} } });
vi.stubGlobal('navigator', {});

/** 40 + 3/8 + 1 3/16 between the walls, 38 3/4 of case: 1/2 free at the left, 2 5/16 at the right. */
const walls: readonly Change[] = [
  ...editRoom({ apart: l('40') }),
  ...editAcross('a', { at: l('0'), left: l('3/8'), right: l('1 3/16') }),
];
function said(...more: readonly Change[]): string {
  const { bench } = benchOf([...caseDecided, ...walls, ...more]);
  return [texts(hostTree(<ScribeScreen bench={bench} id="case" />))].flat().join(' ');
}
const rip = 'cut/case~fillerright/rip/1';

test('a strip says how wide it is ripped, what it is of, and leads to itself among the parts', () => {
  const page = said();
  expect(page).toContain('Left: rip a strip of 5/8.');
  expect(page).toContain('Right: rip a strip of 2 7/16.');
  expect(page).toContain('the same as the face frame: Oak');
  expect(page).toContain('Right filler strip');
  expect(said(...editCase('case', { hasFrame: false }))).toContain('the same as the sides: Sheet A');
});

test('what has no thickness is to be measured, and no part is led to', () => {
  const page = said(
    ...editStock('new', { name: 'Maple B', kind: 'stick' }),
    ...editCase('case', { fillerStock: 'new' }),
  );
  expect(page).toContain('Maple B has no thickness yet.');
  expect(page).not.toContain('Right filler strip');
});

test('ripped wider, more comes off; too narrow is told by how much, and whether it covers', () => {
  // 2 1/2 - 2 5/16
  expect(said(...tickOf(rip, l('2 1/2')))).toContain('At 0 over the floor 3/16 comes off.');
  const thin = said(...tickOf(rip, l('2 3/8')));
  expect(thin).toContain('2 7/16 is wanted now: the strip is 1/16 too narrow. It still covers the gap');
  expect(thin).toContain('At 0 over the floor 1/16 comes off.');
  const short = said(...tickOf(rip, l('2 1/4')));
  expect(short).toContain('the strip is 3/16 too narrow. It does not cover the gap');
});

test('where a stile is to be wider no strip is told of', () => {
  const page = said(...editRoom({ apart: l('60') }));
  expect(page).not.toContain('Right: rip a strip');
});
