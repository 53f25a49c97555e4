import { expect, test } from 'vitest';
import { byStock } from '../../../src/screens/shared/by-stock';
import { at, opened } from '../../plan/laid-sample';

test('byStock leaves no part out, puts each under its own stock once, and those of none apart', () => {
  const { plan } = at(opened.entries);
  const groups = byStock(plan);
  expect(groups.flatMap((g) => g.parts.map((p) => p.id)).sort()).toEqual(plan.parts.map((p) => p.id).sort());
  expect(new Set(groups.map((g) => g.name)).size).toBe(groups.length);
  for (const { name, parts } of groups)
    for (const part of parts) expect(plan.stuff.find((s) => s.id === part.stuff)?.name).toBe(name);
});
