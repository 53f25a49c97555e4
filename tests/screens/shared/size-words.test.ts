import { expect, test } from 'vitest';
import { bySize } from '../../../src/screens/shared/size-words';

test('two sizes say their unit once, and each its own where they differ', () => {
  expect(bySize('2440 mm', '1220 mm')).toBe('2440 × 1220 mm');
  expect(bySize('96', '48')).toBe('96 × 48');
  // a size given in millimetres in a job in inches keeps its unit
  expect(bySize('900 mm', '24')).toBe('900 mm × 24');
});
