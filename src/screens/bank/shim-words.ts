export const heading = 'Shims, gap by gap';
export const over = 'Over front 1';
export const between = (no: number): string => `Between ${no} and ${no + 1}`;
export const under = (no: number): string => `Under front ${no}`;
export const left = (pile: string): string => `left ${pile}`;
export const right = (pile: string): string => `right ${pile}`;
export const comeBack =
  'Fronts go on one after another, so the shims come back. What is in the drawer: Shop figures.';
