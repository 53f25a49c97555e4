// The parts of a bench, one after another. What one has measured is printed at once, so a part that breaks off takes
// nothing with it: it is a line that says so, and the next one begins.

/**
 * @param parts `{ name, rows, line }` each: `rows()` hands out rows as they come, `line(row)` writes one
 * @param print called with each line
 * @returns how many parts ran to their end, and how many did not
 */
export async function runParts(parts, print) {
  const counts = { passed: 0, failed: 0 };
  for (const part of parts) {
    print(`${part.name} ...`);
    const why = await runPart(part, print);
    if (why !== undefined) print(`FAILED  ${part.name}: ${why}`);
    counts[why === undefined ? 'passed' : 'failed'] += 1;
  }
  return counts;
}

async function runPart({ rows, line }, print) {
  try {
    let some = false;
    for await (const row of rows()) {
      print(line(row));
      some = true;
    }
    return some ? undefined : 'no row came of it';
  } catch (error) {
    return String(error?.message ?? error).split('\n')[0];
  }
}

/** What several parts need is made when the first asks for it, once; what failed fails each of them. */
export function once(make) {
  let made;
  return () => {
    made ??= make();
    return made;
  };
}
