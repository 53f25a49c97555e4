import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

export const src = path.resolve(import.meta.dirname, '../src');

/** Files under `src` whose names end so, by their path from there. */
export const filesOf = (end: RegExp): readonly string[] =>
  readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) => end.test(file));

export const textOf = (file: string): string => readFileSync(path.join(src, file), 'utf8');

/** One selector of a rule: `within` are the at-rules around it, outermost first. */
export type StyleRule = {
  readonly file: string;
  readonly within: readonly string[];
  readonly selector: string;
  readonly body: string;
};

/** Where the block that opens at `open` ends. */
function closing(text: string, open: number): number {
  let depth = 1;
  let at = open + 1;
  for (; depth > 0 && at < text.length; at++) depth += text[at] === '{' ? 1 : text[at] === '}' ? -1 : 0;
  return at - 1;
}

/** A list of selectors at its commas, but for those in brackets. */
const selectorsOf = (list: string): readonly string[] =>
  list.split(/,(?![^(]*\))/).map((selector) => selector.trim().replace(/\s+/g, ' '));

/** The rules of a sheet in their order, frames of animations and faces of type aside. */
function rulesIn(file: string, text: string, within: readonly string[]): readonly StyleRule[] {
  const found: StyleRule[] = [];
  for (let at = 0, open = text.indexOf('{'); open >= 0; open = text.indexOf('{', at)) {
    const close = closing(text, open);
    const head = text.slice(at, open).split(';').at(-1)?.trim() ?? '';
    const body = text.slice(open + 1, close);
    at = close + 1;
    if (/^@(media|supports|layer)/.test(head)) found.push(...rulesIn(file, body, [...within, head]));
    else if (!head.startsWith('@'))
      for (const selector of selectorsOf(head)) found.push({ file, within, selector, body });
  }
  return found;
}

/** Every rule of every sheet of the app. */
export const styleRules = (): readonly StyleRule[] =>
  filesOf(/\.css$/).flatMap((file) => rulesIn(file, textOf(file).replace(/\/\*[\s\S]*?\*\//g, ''), []));

/** Classes of the whole page, which any sheet may ask after. */
const ofPage = new Set(['text-xl', 'text-200', 'hand-left']);

/** The classes that a selector names, in their order, those of the whole page aside. */
export const classesOf = (selector: string): readonly string[] =>
  [...selector.matchAll(/\.([a-z][\w-]*)/gi)].flatMap(([, name = '']) => (ofPage.has(name) ? [] : [name]));
