import { describe, expect, test } from 'vitest';
import { inches } from '../../src/length/length';
import { examplesIn, run, sameFigure, shown } from './examples';

const fence = '```';
const readme = `# Halves

${fence}js
const whole = 3;
${fence}

### Example 1: half of three

${fence}js
whole / 2 //: 3/2
[whole,
  'thirds'] //: 3, thirds
${fence}

### Example 2: a name of its own

${fence}js
const more = whole + 1;
more //: 4
${fence}
`;

describe('examplesIn', () => {
  const examples = examplesIn(readme);

  test('reads number, title and checks, an expression over several lines being one', () => {
    expect(examples.map(({ number, title }) => [number, title])).toEqual([
      [1, 'half of three'],
      [2, 'a name of its own'],
    ]);
    expect(examples[0]?.checks.map((check) => check.want)).toEqual(['3/2', '3, thirds']);
  });

  test('what is named before the first example every one has', () => {
    expect(examples.map((example) => run(example, {}).map(shown))).toEqual([['1.5', '3, thirds'], ['4']]);
  });

  test('a name of its own hides one in scope', () => {
    expect(examples.map((example) => run(example, { more: 9 }).map(shown)).at(-1)).toEqual(['4']);
  });

  test('a line that is neither named nor checked is an error', () => {
    expect(() => examplesIn(`### Example 1: lost\n\n${fence}js\n1 + 1\n${fence}\n`)).toThrow('neither');
  });
});

describe('sameFigure', () => {
  test.each([
    ['1429/2000', '.7145', true],
    ['1.5', '1 1/2', true],
    ['-1/8', '-0.125', true],
    ['1/8, 1/4', '.125, .25', true],
    ['-1/8', '1/8', false],
    ['1/8, 1/4', '1/8', false],
    ['true', 'true', true],
    ['true', 'false', false],
    ['take-more', 'take-less', false],
    ['3 × 1/8', '3 × .125', false],
    ['none', '0', false],
  ])('%s against %s: %s', (found, want, same) => expect(sameFigure(found, want)).toBe(same));
});

describe('shown', () => {
  test('a thing that is not one figure is an error, not a word that anything equals', () => {
    expect([shown(inches(9n, 8n)), shown(undefined), shown([inches(1n), 'near'])]).toEqual([
      '1 1/8',
      'none',
      '1, near',
    ]);
    expect(() => shown({ near: inches(1n) })).toThrow('near');
  });
});
