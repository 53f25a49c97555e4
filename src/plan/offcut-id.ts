/** The same leftover has the same id on every phone. */
export const offcutId = (sheet: string, path: string): string => {
  let n = 0;
  for (const step of path) n = (n * 3 + (step === 'n' ? 1 : step === 'f' ? 2 : 0)) % 2_000_000_011;
  return `${sheet.slice(0, 16)}o${n.toString(36)}`;
};
