import type { Length } from '../../src/length/length';
import { readLength } from '../../src/length/read';

/** One checked line of an example: the code of an expression and what it must come to. */
export type Check = { readonly code: string; readonly want: string };
export type Example = {
  readonly number: number;
  readonly title: string;
  /** Statements that name what the checks use. */
  readonly given: string;
  readonly checks: readonly Check[];
};

/**
 * The numbered examples of a README: `### Example 3: title`, each with one fenced `js` block. What `js` blocks before
 * the first name, every example has.
 */
export function examplesIn(readme: string): readonly Example[] {
  const [before = '', ...texts] = readme.split(/^### Example /m);
  const shared = blocksOf(before).join('');
  return texts.map((text) => exampleOf(text, shared));
}

/** The `js` blocks of a text, in order. */
export const blocksOf = (text: string): readonly string[] =>
  [...text.matchAll(/^```js\n([\s\S]*?)^```/gm)].map(([, block = '']) => block);

function exampleOf(text: string, shared: string): Example {
  const [, number = '', title = ''] = /^(\d+): (.+)$/m.exec(text) ?? [];
  const { given, checks } = linesOf(blocksOf(text)[0] ?? '');
  return { number: Number(number), title, given: `${shared}${given}`, checks };
}

/** A line ending in `;` names something; lines up to one with `//:` are one expression and what it comes to. */
function linesOf(block: string): Pick<Example, 'given' | 'checks'> {
  const checks: Check[] = [];
  let given = '';
  let open = '';
  for (const line of block.split('\n')) {
    const [code = '', want] = line.split(' //: ');
    open += `${code}\n`;
    if (want !== undefined) checks.push({ code: open.trim(), want: want.trim() });
    else if (line.trimEnd().endsWith(';')) given += open;
    if (want !== undefined || line.trimEnd().endsWith(';')) open = '';
  }
  if (open.trim() !== '') throw new Error(`neither named nor checked: ${open}`);
  return { given, checks };
}

/** Runs the checks of an example with the names in scope, its own hiding them; what each came to, in order. */
export function run(example: Example, scope: Readonly<Record<string, unknown>>): readonly unknown[] {
  const list = example.checks.map(({ code }) => `(${code})`).join(',\n');
  return new Function(...Object.keys(scope), `'use strict';\n{${example.given}\nreturn [${list}];}`)(
    ...Object.values(scope),
  );
}

const isLength = (x: unknown): x is Length =>
  typeof x === 'object' && x !== null && 'toFraction' in x && typeof x.toFraction === 'function';

/** As a README writes it: lengths as mixed numbers, lists with commas, nothing as `none`. */
export function shown(x: unknown): string {
  if (x === undefined) return 'none';
  if (isLength(x)) return x.toFraction(true);
  if (Array.isArray(x)) return x.map(shown).join(', ');
  if (typeof x === 'object') throw new Error(`not one figure but ${Object.keys(x ?? {}).join(', ')}`);
  return String(x);
}

/**
 * Whether what was found is what the README wants: `.7145` and `1429/2000` are one figure, words are compared by
 * letter.
 */
export function sameFigure(found: string, want: string): boolean {
  const [a, b] = [found.split(', '), want.split(', ')];
  return a.length === b.length && a.every((x, k) => same(x, b[k] ?? ''));
}

function same(found: string, want: string): boolean {
  if (found === want) return true;
  const [a, b] = [figure(found), figure(want)];
  return a !== undefined && a === b;
}

/** Exact text of a figure, however it was written; nothing where it is none. */
function figure(text: string): string | undefined {
  const read = readLength(text);
  return read.ok ? read.value.value.toFraction() : undefined;
}
