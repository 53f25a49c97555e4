import { describe, expect, test } from 'vitest';
import { zero } from '../../../src/length/length';
import type { SumWords } from '../../../src/screens/figure/sum-rule';
import * as words from '../../../src/screens/figure/sum-words';
import { l } from '../../length/write-figures';

/** The sentence as it stands before anything is filled in. */
const blank = ({ sentence }: SumWords): string =>
  sentence.map((piece) => (typeof piece === 'string' ? piece : '···')).join('');

describe('the sentences', () => {
  test.each([
    [words.parts, 'Divide ··· into ··· equal parts, with dividers ··· thick between.'],
    [words.diagonal, 'A frame ··· wide and ··· high is square when each diagonal reads'],
    [words.square, 'A case ··· wide and ··· high reads ··· on one diagonal and ··· on the other.'],
    [
      words.strips,
      'A sheet ··· across, ··· trimmed off each edge, cut with a kerf of ···, gives strips ··· wide:',
    ],
  ])('$title', (sum, says) => expect(blank(sum)).toBe(says));

  test('ask for each blank by a name of its own', () => {
    const { otherEnd, parts, diagonal, square, strips, guide, burned } = words;
    for (const { sentence } of [otherEnd, parts, diagonal, square, strips, guide, burned]) {
      const labels = sentence.flatMap((piece) => (typeof piece === 'string' ? [] : piece.label));
      expect(new Set(labels).size).toBe(labels.length);
    }
  });
});

describe('how many would fit', () => {
  const dividers = (most: number, over = l('1/2')) =>
    words.partsText({ code: 'dividers-fill-it', over, most });

  test('one part, or more', () => {
    expect(dividers(1)).toBe('The dividers alone run 1/2 over the length. 1 part would fit.');
    expect(dividers(7)).toBe('The dividers alone run 1/2 over the length. 7 parts would fit.');
  });

  test('dividers that fill it to the end run nothing over', () =>
    expect(dividers(2, zero)).toBe('The dividers alone fill the length. 2 parts would fit.'));
});

test('one strip stands in the singular', () => {
  expect(words.stripWord(1)).toBe('strip');
  expect(words.stripWord(4)).toBe('strips');
});

test('a diagonal is strong or scant of the mark, or on it', () =>
  expect([1, 0, -1].map(words.markIs)).toEqual(['strong', '', 'scant']));
