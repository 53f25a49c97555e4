// What was acknowledged, and what of it is there when the store is opened again.

const keyOf = ({ job, device, count }) => `${job} ${device} ${count}`;

/** An entry as a text that is the same whatever order its keys stand in. */
const textOf = (entry) => JSON.stringify(Object.entries(entry).sort(([a], [b]) => (a < b ? -1 : 1)));

export function newLedger() {
  let entries = new Map();
  let figures = new Map();
  let refused = new Set();
  let acts = 0;
  let pictures = 0;
  return {
    /** Takes down one act as it was told: acknowledged or refused. */
    note: (act) => {
      if (act.refused !== undefined) refused.add(act.label);
      else acts += 1;
      if (act.picture !== undefined) pictures += 1;
      // by its text: two entries acknowledged under one key are two, and one of them is lost
      for (const entry of act.entries ?? []) entries.set(textOf(entry), keyOf(entry));
      const [where, n] = act.figure ?? [];
      if (where !== undefined) figures.set(where, Math.max(n, figures.get(where) ?? 0));
    },
    acts: () => acts,
    /** Of the acts, how many took a picture in. */
    pictures: () => pictures,
    refusals: () => refused.size,
    compare: (has) => compare({ entries, figures, refused }, has),
    /** From here on what the store has is what was acknowledged: a loss is counted once. */
    settle: (has) => {
      entries = new Map(has.entries.map((entry) => [textOf(entry), keyOf(entry)]));
      figures = new Map(Object.entries(has.figures));
      refused = new Set();
    },
  };
}

/**
 * @param kept what the ledger holds @param has what an opened store has: `{ entries, figures, setAside }`
 * @returns `lost` acknowledged and not there (entries, and figures gone back); `changed` of those, how many have
 * another entry in their place; `torn` acts of which a part is there; `twice` acts there two times; `unsaid` acts
 * refused and kept all the same
 */
function compare(kept, has) {
  const there = new Set(has.entries.map(textOf));
  const places = new Set(has.entries.map(keyOf));
  const gone = [...kept.entries].filter(([text]) => !there.has(text));
  const back = [...kept.figures].filter(([where, n]) => (has.figures[where] ?? 0) < n);
  return {
    lost: gone.length + back.length,
    changed: gone.filter(([, key]) => places.has(key)).length,
    setAside: has.setAside,
    ...actsOf(has.entries, kept.refused),
  };
}

/** A label ends in how many entries its act was made of. */
function actsOf(entries, refused) {
  const sizes = new Map();
  const labels = new Map();
  for (const { job, act, label } of entries) {
    const key = `${job} ${act} ${label}`;
    sizes.set(key, (sizes.get(key) ?? 0) + 1);
    if (sizes.get(key) === 1) labels.set(label, (labels.get(label) ?? 0) + 1);
  }
  let torn = 0;
  for (const [key, size] of sizes) if (size !== Number(key.split('/').pop())) torn += 1;
  const names = [...labels];
  return {
    torn,
    twice: names.filter(([, times]) => times > 1).length,
    unsaid: names.filter(([label]) => refused.has(label)).length,
  };
}

/** The sum of several comparisons, name by name. */
export function plus(sum, more) {
  for (const [name, n] of Object.entries(more)) sum[name] = (sum[name] ?? 0) + n;
  return sum;
}
