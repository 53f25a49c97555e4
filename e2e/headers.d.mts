import type { Plugin } from 'vite';

export type Rule = {
  readonly pattern: string;
  readonly headers: readonly (readonly [string, string])[];
};

/** The rules of a headers file: a pattern at the start of a line, the headers under it set in. */
export declare function readHeaders(text: string): readonly Rule[];
/** The headers of a path, by name in small letters. */
export declare function headersFor(rules: readonly Rule[], at: string): Readonly<Record<string, string>>;
/** The rules that lie in a folder to be served; none where it has no headers file. */
export declare function rulesIn(folder: string): readonly Rule[];
/** A Vite plugin: the preview server sends what the folder it serves says. */
export declare const asHosted: Plugin;
