// How often each is done: a share with every change, the whole at night. KNIFELINE_KILLS="chromium=50,tabs=1000" sets
// a few.
const share = {
  chromium: 8,
  'chromium-sqlite': 6,
  webkit: 6,
  firefox: 0,
  'pictures-chromium': 3,
  'pictures-chromium-sqlite': 0,
  tabs: 300,
  between: 3,
  under: 1,
  damaged: 1,
  long: 1,
};

const night = {
  chromium: 1000,
  'chromium-sqlite': 300,
  webkit: 300,
  firefox: 100,
  'pictures-chromium': 300,
  'pictures-chromium-sqlite': 100,
  tabs: 10_000,
  between: 120,
  under: 40,
  damaged: 40,
  long: 3,
};

/** @param env the environment: KNIFELINE_NIGHTLY, KNIFELINE_KILLS, KNIFELINE_SEED */
export function sizesOf(env) {
  const base = env.KNIFELINE_NIGHTLY ? night : share;
  const asked = (env.KNIFELINE_KILLS ?? '').split(',').filter(Boolean);
  const own = Object.fromEntries(asked.map((part) => part.split('=')).map(([name, n]) => [name, Number(n)]));
  const strange = Object.entries(own).find(([name, n]) => !(name in base) || !Number.isInteger(n) || n < 0);
  if (strange)
    throw new Error(`KNIFELINE_KILLS: ${strange.join('=')} is not one of ${Object.keys(base).join(', ')}`);
  // what is asked for alone is done alone
  return asked.length > 0
    ? { ...Object.fromEntries(Object.keys(base).map((name) => [name, 0])), ...own }
    : base;
}

export const seedOf = (env) => Number(env.KNIFELINE_SEED ?? Math.floor(Math.random() * 1_000_000));
