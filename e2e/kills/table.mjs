// What the runs came to, one line each.

const columns = [
  'kills',
  'rounds',
  'acts',
  'pictures',
  'refused',
  'lost',
  'changed',
  'torn',
  'twice',
  'unsaid',
];
const ofPictures = ['half', 'single'];
const wiped = ['wipes', 'healed', 'unshown', 'restored', 'slowest', 'slowest fill'];

/** @param cases `{ name, verdict, sum }` each @returns the table as text */
export function tableOf(cases) {
  const used = [...columns, ...ofPictures, ...wiped].filter((name) =>
    cases.some(({ sum }) => sum[name] !== undefined),
  );
  const cell = (n) => (n === undefined ? '-' : String(Math.round(n)));
  const rows = cases.map(({ name, verdict, sum }) => [
    name,
    verdict,
    ...used.map((column) => cell(sum[column])),
  ]);
  const table = [['', '', ...used], ...rows];
  const widths = used.map((_, k) => Math.max(...table.map((row) => row[k + 2].length)));
  const name = Math.max(...table.map(([first]) => first.length));
  const line = ([first, verdict, ...cells]) =>
    [first.padEnd(name), verdict.padEnd(8), ...cells.map((text, k) => text.padStart(widths[k]))].join('  ');
  return table.map(line).join('\n');
}

const words = [
  'acts: acknowledged. lost: entries and figures acknowledged and not there; changed: of those, another is in their place.',
  'torn: acts there in part. twice: acts there two times. unsaid: refused and kept all the same. slowest: opening, ms.',
  'pictures: of the acts, those that took one in. half: named by the log and not shown whole; single: not whole in both copies.',
  'unshown: not yet there when the store opened; slowest fill: until the database has everything again, ms.',
];
const oneCopy =
  'ONE COPY: the database was wiped and this build keeps no second copy: nothing to heal from, and no test passed.';

/** What the words of the table mean; a verdict is explained where it was given. */
export const legendOf = (cases) =>
  [...words, ...(cases.some(({ verdict }) => verdict === 'ONE COPY') ? [oneCopy] : [])].join('\n');
