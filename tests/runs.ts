/** Property runs: `base` in everyday runs; the nightly size (KNIFELINE_NIGHTLY=1) runs a hundred times as many. */
export function runs(base: number): number {
  return process.env.KNIFELINE_NIGHTLY ? base * 100 : base;
}
