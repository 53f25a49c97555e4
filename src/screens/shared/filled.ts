import type { ComponentChildren } from 'preact';

/**
 * A sentence with its blanks filled: a name in braces is replaced by the node of that name.
 *
 * @example filled('Each bay {wide} wide.', () => '3') // ['Each bay ', '3', ' wide.']
 */
export const filled = (
  sentence: string,
  blank: (name: string) => ComponentChildren,
): readonly ComponentChildren[] =>
  sentence.split(/[{}]/).map((part, k) => (k % 2 === 1 ? blank(part) : part));
