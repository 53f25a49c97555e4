import { expect, test } from 'vitest';
import { speciesWord } from '../../../src/screens/shared/stuff-words';
import * as words from '../../../src/screens/stock/stuff-words';
import { species } from '../../../src/trade/movement/species';
import { said } from '../said';

test('a sheet is asked for no species, solid wood for species and how it is sawn', () => {
  const at = { heavy: '2.2', stiff: '1.2' };
  expect(said(words.line('plywood', undefined, at))).toBe(
    'It is plywood; 2.2 lb a square foot; 1.2 million pounds a square inch stiff.',
  );
  expect(said(words.line('hardwood', { species: 'red oak', sawn: 'quartersawn' }, at))).toMatch(
    /^It is hardwood, red oak, quartersawn; /,
  );
});

test('every species is written as it is spelled', () => {
  expect(
    ['red-oak', 'douglas-fir', 'yellow-poplar', 'western-redcedar'].map((key) => speciesWord(key as never)),
  ).toEqual(['red oak', 'Douglas-fir', 'yellow-poplar', 'western redcedar']);
  expect(new Set(species.map(speciesWord)).size).toBe(species.length);
});
