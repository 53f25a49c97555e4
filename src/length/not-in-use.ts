/**
 * What nothing calls of a fraction of fraction.js. All of it hangs on one prototype, where no bundler can tell: the
 * build leaves these out, and the type of a length has none of them.
 */
export const notInUse = [
  'clone',
  'mod',
  'gcd',
  'lcm',
  'pow',
  'log',
  'ceil',
  'roundTo',
  'divisible',
  'toString',
  'toLatex',
  'toContinued',
  'simplify',
] as const;
