// What a row of measurements comes to, and the table they are printed in.

const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const at = (numbers, share) =>
  sorted(numbers)[Math.min(numbers.length - 1, Math.floor(numbers.length * share))];

export const median = (numbers) => at(numbers, 0.5);
export const p95 = (numbers) => at(numbers, 0.95);

const figure = (x) => {
  if (x === undefined) return '-';
  return x.toLocaleString('en-US', { maximumFractionDigits: Math.abs(x) < 100 ? 1 : 0 });
};

/** One plain table of rows `{ name, app, beside, unit }`; `beside` is what the name says it is. */
export function table(rows) {
  const cells = [
    ['', 'this app', 'beside', 'unit'],
    ...rows.map(({ name, app, beside, unit }) => [name, figure(app), figure(beside), unit]),
  ];
  const widths = [0, 1, 2, 3].map((k) => Math.max(...cells.map((row) => row[k].length)));
  return cells
    .map(([name, app, beside, unit]) =>
      [name.padEnd(widths[0]), app.padStart(widths[1]), beside.padStart(widths[2]), unit].join('  '),
    )
    .join('\n');
}
