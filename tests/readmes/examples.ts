import type { Length } from '../../src/length/length';

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
 * The numbered examples of a README: `### Example 3: title`, each with one fenced `js` block. A block before the first
 * example is shared by all.
 */
export function examplesIn(readme: string): readonly Example[] {
  const [before = '', ...examples] = readme.split(/^### Example /m);
  const shared = blockIn(before);
  return examples.map((text) => {
    const [, number = '', title = ''] = /^(\d+): (.+)$/m.exec(text) ?? [];
    return { number: Number(number), title, ...linesOf(shared + blockIn(text)) };
  });
}

const blockIn = (text: string): string => /^```js\n([\s\S]*?)^```/m.exec(text)?.[1] ?? '';

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

/**
 * Runs the checks of an example with the names in scope; what each came to, in order. The inner block lets an example
 * give a name that some folder exports as well.
 */
export function run(example: Example, scope: Readonly<Record<string, unknown>>): readonly unknown[] {
  const list = example.checks.map(({ code }) => `(${code})`).join(',\n');
  return new Function(...Object.keys(scope), `'use strict';\n{\n${example.given}\nreturn [${list}];\n}`)(
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
