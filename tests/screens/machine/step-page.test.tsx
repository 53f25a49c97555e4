import { expect, test } from 'vitest';
import { editBank, editPutUp, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { editAcross, editFoot, editGap, editRoom } from '../../../src/job/room-edits';
import { feetStandOf, footStep } from '../../../src/plan/feet-set';
import { StepPage } from '../../../src/screens/machine/step-page';
import type { Route } from '../../../src/screens/routes';
import { installId } from '../../../src/trade/setups/install-steps';
import { l } from '../../length/write-figures';
import { caseDecided } from '../../plan/carried-cabinet-case';
import { worked } from '../../plan/job-of';
import { all, hostTree } from '../host-tree';

/** Where the ways of a step lead, in the order they stand. */
function waysOf(step: Parameters<typeof installId>[1], ...more: readonly Change[]): readonly Route[] {
  const { job, plan, folded } = worked([...caseDecided, ...more]);
  const op = plan.byId.get(installId('case', step));
  if (!op) throw new Error(`no step ${step}`);
  const feet = feetStandOf(job, 'case', folded.ticks);
  const went: Route[] = [];
  const go = ((to: Route) => went.push(to)) as never;
  for (const chip of all(hostTree(<StepPage go={go} job={job} op={op} feet={feet} />), 'chip'))
    (chip.props.onClick as () => void)();
  return went;
}

test('carry in leads to its lift and to the way in, level to the feet', () => {
  expect(waysOf('carry-in')).toEqual([
    { at: 'lift', id: 'case' },
    { at: 'room', page: 'way' },
  ]);
  expect(waysOf('level')).toEqual([{ at: 'level', id: 'case' }]);
});

test('level leads to the first foot that is not set, until all are', () => {
  const read = (['front1', 'front2', 'back1', 'back2'] as const).flatMap((foot) =>
    editFoot('case', foot, { drop: l('36') }),
  );
  const set = (foot: string) => tickOf(footStep('case', foot), l('0'));
  const page = { at: 'level', id: 'case' };
  expect(waysOf('level', ...read, ...set('front1'))).toEqual([{ ...page, foot: 'next' }, page]);
  const all = ['front1', 'front2', 'back1', 'back2'].flatMap(set);
  expect(waysOf('level', ...read, ...all)).toEqual([page]);
});

test('the scribe is led to where a gap to a wall was read', () => {
  const gap = editGap('case', 'g', { side: 'left', at: l('0'), gap: l('1/8') });
  expect(waysOf('level', ...gap)).toContainEqual({ at: 'scribe', id: 'case' });
  expect(waysOf('anchor', ...gap)).toContainEqual({ at: 'scribe', id: 'case' });
});

test('a cleat on the wall leads to its screws and to its marks, one by one', () => {
  const onWall = editPutUp('case', { cleatOn: 'wall' });
  expect(waysOf('cleat', ...onWall)).toEqual([
    { at: 'screws', id: 'case' },
    { at: 'room', page: 'wall', step: 'next' },
    { at: 'screws', id: 'case', step: 'next' },
  ]);
  expect(waysOf('anchor', ...onWall)).toEqual(waysOf('cleat', ...onWall));
});

test('the steps that close a case to its walls lead to the scribe, and to its figures one by one', () => {
  const gap = editGap('case', 'g', { side: 'left', at: l('0'), gap: l('1/8') });
  const page = { at: 'scribe', id: 'case' };
  expect(waysOf('scribe', ...gap)).toEqual([page, { ...page, step: 'next' }]);
  const walls = [
    ...editRoom({ apart: l('40') }),
    ...editAcross('a', { at: l('0'), left: l('3/8'), right: l('1') }),
  ];
  expect(waysOf('filler', ...walls)).toEqual([page]);
});

test('loading leads to shelves and to each bank of the case', () => {
  expect(waysOf('load', ...editBank('b', { name: 'Drawers', of: 'case' }))).toEqual([
    { at: 'loads', id: 'case' },
    { at: 'contents', id: 'b' },
  ]);
});
