import { expect, test } from 'vitest';
import type { PartName } from '../../../src/trade/carcass/part-name';
import { edgesOf } from '../../../src/trade/joints/edges';

// what a part is, the end it is measured from, and its two long edges as it stands in the case
test.each<[PartName, string, string]>([
  [{ role: 'left' }, 'bottom', 'back front'],
  [{ role: 'partition' }, 'bottom', 'back front'],
  [{ role: 'bottom' }, 'left', 'back front'],
  [{ role: 'inside', kind: 'fixed' }, 'left', 'back front'],
  [{ role: 'baserail' }, 'left', 'back front'],
  [{ role: 'basecross' }, 'front', 'left right'],
  [{ role: 'side', no: 1 }, 'back', 'bottom top'],
  [{ role: 'plinthcross' }, 'front', 'bottom top'],
  [{ role: 'front', no: 1 }, 'left', 'bottom top'],
  [{ role: 'boxback', no: 1 }, 'left', 'bottom top'],
  [{ role: 'railtop' }, 'left', 'bottom top'],
  [{ role: 'inside', kind: 'stop' }, 'left', 'bottom top'],
  [{ role: 'stile' }, 'bottom', 'left right'],
  [{ role: 'back' }, 'bottom', 'left right'],
  [{ role: 'board', named: 'A board' }, 'left', 'back front'],
  [{ role: 'board', named: 'A board' }, 'bottom', 'back front'],
])('%o measured from its %s end has the edges %s', (name, end, edges) =>
  expect(edgesOf({ name, end }).join(' ')).toBe(edges),
);
