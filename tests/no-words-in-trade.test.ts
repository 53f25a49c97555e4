import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseAst } from 'vite';
import { expect, test } from 'vitest';

const trade = path.resolve(import.meta.dirname, '../src/trade');
const files = readdirSync(trade, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);

/** Spellings of keys: no eye reads them. */
const spellings = ['setups/on.ts', 'sheets/pieces.ts'];

type Node = { readonly type: string; readonly start: number; readonly end: number };
const isNode = (x: unknown): x is Node => typeof x === 'object' && x !== null;

/** What is written between quotes, but for imports and for what is thrown at a programmer. */
function written(text: string): readonly string[] {
  const found: string[] = [];
  const look = (x: unknown): void => {
    if (!isNode(x)) return;
    if (x.type === 'ThrowStatement' || x.type === 'ImportDeclaration') return;
    if (x.type === 'TemplateLiteral' || (x.type === 'Literal' && /^['"]/.test(text.slice(x.start)))) {
      found.push(text.slice(x.start + 1, x.end - 1));
    }
    for (const inside of Object.values(x)) look(inside);
  };
  look(parseAst(text, { lang: 'ts' }));
  return found;
}

/** Two words, or one that begins as a sentence does; what stands in ${} is data. */
const forPeople = (quoted: string): boolean => {
  const bare = quoted.replace(/\$\{[^}]*\}/g, '0');
  return /[a-z]+,? [a-z0]/.test(bare) || /0,? [a-z]/.test(bare) || /^[A-Z][a-z]/.test(bare);
};

test('the trade says nothing in words: it has codes with data, and the screens the words', () => {
  expect(files.length).toBeGreaterThan(100);
  const words = files
    .filter((file) => !spellings.includes(file))
    .flatMap((file) =>
      written(readFileSync(path.join(trade, file), 'utf8'))
        .filter(forPeople)
        .map((quoted) => `${file}: ${quoted}`),
    );
  expect(words).toEqual([]);
});

test('words are found, codes are not', () => {
  const source = "const a = ['floor to the case', 'floor-to-case', `$" + "{n} gaps`, 'Left', 'halfExpand'];";
  expect(written(source).filter(forPeople)).toEqual(['floor to the case', '$' + '{n} gaps', 'Left']);
  expect(written("throw new Error('cut: none left');")).toEqual([]);
});
