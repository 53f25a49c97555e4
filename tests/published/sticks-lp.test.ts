import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { expectFewest, expectSameValue, provable, writtenOut } from '../trade/sheets/one-d/beside-highs';
import { instancesIn } from '../trade/sheets/one-d/instances';

// The instances are published (sources in sticks.test.ts); the values beside them are not printed anywhere: HiGHS, a
// published solver, works them out at every run (source in tests/trade/sheets/one-d/beside-highs.ts). Only instances
// whose full sticks are few enough to be written out one by one are compared.
const written = writtenOut(instancesIn(path.join(import.meta.dirname, 'data')));

describe('published instances, beside HiGHS', () => {
  test('four of them can be written out', () => expect(written).toHaveLength(4));

  test.each(written)('$name has the value HiGHS finds', (one) => expectSameValue(one));

  test.each(provable(written))('$name takes the fewest sticks HiGHS proves', (one) => expectFewest(one));
});
