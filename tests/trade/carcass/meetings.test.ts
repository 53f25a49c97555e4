import { expect, test } from 'vitest';
import {
  asksDepth,
  housedIn,
  jointAt,
  meetingAt,
  pastOf,
  reachOf,
  seenOf,
} from '../../../src/trade/carcass/meetings';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { l, w } from '../grooves/sample';
import { plainCase, sheets } from './sample-case';

const sized = sizesOf({ ...plainCase, dado: l('1/4'), topRabbet: l('11/32') }, sheets());
if (!sized.ok) throw new Error('the case does not work out');

test('a bottom reaches into both sides and hides it; a top reaches into its rabbets and shows it', () => {
  expect([w(reachOf(sized.value, 'bottom')), w(seenOf(sized.value, 'bottom'))]).toEqual(['1/4', '0']);
  expect([w(reachOf(sized.value, 'top')), w(seenOf(sized.value, 'top'))]).toEqual(['11/32', '11/32']);
});

const bare = { ...plainCase, partitions: 0, hasTop: false, hasBack: false, cleats: 0, inside: [] };
const full = { ...plainCase, partitions: 1, hasTop: true, hasBack: true, cleats: 1 };
const shelf = { id: 's', kind: 'fixed', bay: 1, at: l('20') } as const;

test('a case has the joints of the parts it has', () => {
  expect(housedIn(bare)).toEqual(['bottom']);
  expect([...housedIn({ ...full, inside: [shelf] })].sort()).toEqual(
    ['back', 'bottom', 'cleat', 'inPartition', 'partition', 'shelf', 'top'].sort(),
  );
  const depthOf = (c: typeof plainCase) =>
    housedIn(c).includes('back') ? meetingAt(c, 'back').depth : undefined;
  const backs = [full, { ...full, backHow: 'groove' }, { ...full, backHow: 'applied' }] as const;
  expect(backs.map(depthOf)).toEqual(['backDeep', 'backGroove', undefined]);
});

test('what is not said is joined the usual way, and keeps it', () => {
  expect(
    (['bottom', 'top', 'partition', 'shelf', 'inPartition'] as const).map((at) => jointAt(bare, at)),
  ).toEqual(['dado', 'rabbet', 'dado', 'dado', 'dado']);
});

test('a depth is asked for while something is cut so deep: shelves in dadoes ask for it where the bottom is butted', () => {
  const butted = {
    ...full,
    inside: [],
    bottomJoint: 'butt',
    partitionJoint: 'butt',
    topJoint: 'over',
  } as const;
  const asked = (c: typeof plainCase) =>
    (['dado', 'partitionDado', 'bottomRabbet', 'topRabbet'] as const).filter((field) => asksDepth(c, field));
  expect(asked(butted)).toEqual([]);
  expect(asked({ ...butted, inside: [shelf] })).toEqual(['dado', 'partitionDado']);
  expect(asked({ ...butted, inside: [shelf], shelfJoint: 'butt' })).toEqual([]);
  expect(asked({ ...butted, bottomJoint: 'rabbet' })).toEqual(['bottomRabbet']);
});

test('a butted end reaches nowhere; one that lies over reaches over the side and as far past it as is said', () => {
  const thick = () => l('23/32');
  const at = (c: typeof plainCase) => ({ ...sized.value, thick, case: c });
  expect(w(reachOf(at({ ...full, bottomJoint: 'butt' }), 'bottom'))).toBe('0');
  // 23/32 and 1/2 past it: 39/32
  const over = { ...full, topJoint: 'over', topPast: l('1/2') } as const;
  expect([w(reachOf(at(over), 'top')), w(pastOf(over, 'top'))]).toEqual(['1 7/32', '1/2']);
  expect(w(pastOf({ ...over, topJoint: 'butt' }, 'top'))).toBe('0');
});
