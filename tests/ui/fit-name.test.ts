import { expect, test } from 'vitest';
import { fitName } from '../../src/ui/fit-name';

const stands = (name: string, wide: number, tall: number) => fitName(name, { wide, tall });

test('a name goes across where each of its words does and its lines leave room for the figure', () => {
  expect(stands('Left side', 100, 60)).toBe('across');
  expect(stands('Left side', 50, 80)).toBe('across'); // in two lines
  expect(stands('Left side', 50, 60)).toBe('key');
});

test('in a low patch it stands in one row with its figure', () => {
  expect(stands('Bottom rail', 190, 30)).toBe('row');
  expect(stands('Bottom rail', 150, 30)).toBe('key');
});

test('in a narrow strip it runs up the strip', () => {
  expect(stands('Left side', 24, 200)).toBe('upright');
  expect(stands('Drawer 2, left side', 24, 120)).toBe('key');
});

test('a name is never cut short: what goes in no way has a number', () => {
  expect(stands('Left side', 18, 500)).toBe('key');
  expect(stands('Partition', 60, 30)).toBe('key');
});
