// What a row of measurements comes to, and the lines they are printed in.

const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const at = (numbers, share) =>
  sorted(numbers)[Math.min(numbers.length - 1, Math.floor(numbers.length * share))];

export const median = (numbers) => at(numbers, 0.5);
export const p95 = (numbers) => at(numbers, 0.95);

const figure = (x) => {
  if (x === undefined) return '-';
  return x.toLocaleString('en-US', { maximumFractionDigits: Math.abs(x) < 100 ? 1 : 0 });
};

const inColumns = (app, beside, unit, name) =>
  [app.padStart(12), beside.padStart(12), unit.padEnd(12), name].join('  ');

export const head = inColumns('this app', 'beside', '', '');

/**
 * One row `{ name, app, beside, unit }`; `beside` is what the name says it is. A row that measured nothing is a
 * mistake.
 */
export function rowLine({ name, app, beside, unit }) {
  if (!Number.isFinite(app)) throw new Error(`${name}: nothing was measured`);
  return inColumns(figure(app), figure(beside), unit, name);
}

/** What a part hands out, as a list. */
export async function listed(rows) {
  const all = [];
  for await (const row of rows) all.push(row);
  return all;
}

/** One line of a planner's own: `{ name, ...columns }`, each figure behind what it is. */
export const planLine = ({ name, ...columns }) =>
  `${name}: ${Object.entries(columns)
    .map(([what, x]) => `${what} ${figure(x)}`)
    .join(', ')}`;
