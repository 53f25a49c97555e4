import { expect, test } from 'vitest';
import { byHand } from '../../../src/trade/carcass/by-hand';
import { faultOf, type HandJoint, sideOf, withHandJoints } from '../../../src/trade/joints/by-hand';
import { l, w } from '../../length/write-figures';
import { board } from '../grooves/sample';

const part = byHand(
  board({ id: 'b', length: l('24'), across: l('12'), thickness: l('3/4'), end: 'bottom' }),
  { tape: '1/32' },
);
const joint = (own: Partial<HandJoint>): HandJoint => ({
  id: 'j',
  part: 'b',
  kind: 'rabbet',
  at: 'back',
  takes: 'a panel',
  width: l('3/8'),
  depth: l('1/4'),
  ...own,
});

test('each kind stands among the cuts of its part, along the edge or end that was said', () => {
  const made = withHandJoints(part, [
    joint({}),
    joint({ id: 'g', kind: 'groove', at: 'other', near: l('1/2') }),
    joint({ id: 'n', kind: 'notch', near: l('4') }),
    joint({ id: 'h', kind: 'lap', near: l('6') }),
  ]);
  expect(made.rabbets.map(({ id, along, takes }) => [id, along, takes])).toEqual([
    ['xj', { at: 'edge', named: 'back' }, { said: 'a panel' }],
  ]);
  expect(made.along?.map(({ edge, near }) => [edge, w(near)])).toEqual([
    [{ at: 'end', named: 'top' }, '1/2'],
  ]);
  expect([made.notches.map(({ near }) => w(near)), made.laps.map(({ near }) => w(near))]).toEqual([
    ['4'],
    ['6'],
  ]);
});

test('a joint of another part, or not wholly said, changes nothing: the part is the same', () => {
  const none = [joint({ part: 'c' }), joint({ depth: undefined }), joint({ kind: 'groove' })];
  expect(withHandJoints(part, none)).toBe(part);
});

test('what comes out at the other side or runs off the part is not cut, and it is said by how much', () => {
  const through = joint({ depth: l('7/8') }); // 7/8 in 3/4 stuff: by 1/8
  expect(withHandJoints(part, [through])).toBe(part);
  const found = faultOf(part, through);
  expect(found?.code === 'through' && [w(found.by), w(found.thickness)]).toEqual(['1/8', '3/4']);
  const off = faultOf(part, joint({ kind: 'lap', near: l('23 3/4') })); // 23 3/4 + 3/8 = 24 1/8 on 24
  expect(off?.code === 'off' && [w(off.by), w(off.has)]).toEqual(['1/8', '24']);
  // a notch goes into the width, 12, not into the thickness
  expect(faultOf(part, joint({ kind: 'notch', near: l('1'), depth: l('2') }))).toBeUndefined();
  expect(faultOf(part, joint({ depth: l('0') }))).toEqual({ code: 'nothing', field: 'depth' });
});

test('an end is mitred once, the one it is measured from first, and the part stays as long', () => {
  const mitre = (own: Partial<HandJoint>) =>
    joint({ kind: 'mitre', width: undefined, depth: undefined, ...own });
  const made = withHandJoints(part, [
    mitre({ id: 'a', at: 'other' }),
    mitre({ id: 'b', at: 'end' }),
    mitre({ id: 'c', at: 'end' }),
  ]);
  expect(made.mitres).toEqual(['bottom', 'top']);
  expect(w(made.length.mark.value)).toBe('24');
  // no edge is mitred
  expect(withHandJoints(part, [mitre({ at: 'back' })])).toBe(part);
});

test('an end that goes into another part takes no mitre, one with work by hand alone does', () => {
  const mitre = joint({ kind: 'mitre', at: 'end', width: undefined, depth: undefined });
  const [own] = withHandJoints(part, [joint({ at: 'end' })]).rabbets;
  if (!own) throw new Error('a rabbet is wanted');
  expect(faultOf({ ...part, rabbets: [own] }, mitre)).toBeUndefined();
  expect(faultOf({ ...part, rabbets: [{ ...own, id: 'top' }] }, mitre)).toEqual({
    code: 'taken',
    end: 'bottom',
  });
  expect(faultOf({ ...part, rabbets: [{ ...own, id: 'top' }] }, { ...mitre, at: 'other' })).toBeUndefined();
});

test('an edge is that which was said, by any of their names', () => {
  for (const at of ['back', 'front', 'bottom', 'top', 'left', 'right'] as const)
    expect(sideOf({ end: 'left' }, at)).toEqual({ at: 'edge', named: at });
});

test('the other end is the one across from the end it is measured from', () => {
  expect(sideOf({ end: 'left' }, 'other')).toEqual({ at: 'end', named: 'right' });
  expect(sideOf({ end: 'left' }, 'end')).toEqual({ at: 'end', named: 'left' });
  expect(sideOf({ end: 'marked' }, 'other')).toEqual({ at: 'end', named: 'other' });
});
