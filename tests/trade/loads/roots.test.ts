import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, inches, less, ratio } from '../../../src/length/length';
import { cubeRootDown, cubeRootUp, squareRootDown } from '../../../src/trade/loads/roots';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

test('a root that is on a mark is that mark, down and up; a hair more is not', () => {
  // 3 1/16 = 49/16: its cube 117649/4096
  const cube = ratio(117649n, 4096n);
  expect([w(cubeRootDown(cube, l('1/16'))), w(cubeRootUp(cube, l('1/16')))]).toEqual(['3 1/16', '3 1/16']);
  const more = cube.add(ratio(1n, 10n ** 12n)) as typeof cube;
  const fewer = cube.sub(ratio(1n, 10n ** 12n)) as typeof cube;
  expect([w(cubeRootUp(more, l('1/16'))), w(cubeRootDown(fewer, l('1/16')))]).toEqual(['3 1/8', '3']);
  expect([w(squareRootDown(ratio(9n), l('1'))), w(squareRootDown(ratio(899n, 100n), l('1')))]).toEqual([
    '3',
    '2',
  ]);
  expect([w(cubeRootDown(ratio(0n), l('1'))), w(cubeRootUp(ratio(0n), l('1')))]).toEqual(['0', '0']);
});

test('a root of a negative, or to no grain, is a mistake in the program', () => {
  expect(() => cubeRootDown(ratio(-1n), l('1'))).toThrow(RangeError);
  expect(() => squareRootDown(ratio(1n), inches(0n))).toThrow(RangeError);
});

test('no mark between the root and what is given', () => {
  const number = fc.tuple(fc.bigInt({ min: 0n, max: 10n ** 14n }), fc.bigInt({ min: 1n, max: 10n ** 6n }));
  fc.assert(
    fc.property(number, fc.constantFrom(1n, 16n, 64n), ([n, d], g) => {
      const [x, grain] = [ratio(n, d), inches(1n, g)];
      const cube = (of: typeof grain) => of.mul(of).mul(of);
      const [root, down, up] = [squareRootDown(x, grain), cubeRootDown(x, grain), cubeRootUp(x, grain)];
      expect(root.mul(root).lte(x) && add(root, grain).mul(add(root, grain)).gt(x)).toBe(true);
      expect(cube(down).lte(x) && cube(add(down, grain)).gt(x)).toBe(true);
      expect(cube(up).gte(x) && (cube(up).equals(x) || less(down, up))).toBe(true);
    }),
    { numRuns: runs(200) },
  );
});
