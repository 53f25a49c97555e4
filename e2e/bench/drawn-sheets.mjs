// Sheets of 96 x 48 inches cut up at random, from a seed, into parts that come one to four times, as those of cases
// do: so many sheets are known to do. Parts lose a little of their size until they cover 0.97 to 0.985 of the sheets,
// kerfs not counted. Lengths in sixteenths of an inch: kerf 1/8, 3/16 trimmed off each edge.

const size = { w: 1536, h: 768 };
const kerf = 2;
const trim = 3;
const usable = { w: size.w - 2 * trim, h: size.h - 2 * trim };

/** No part is cut smaller than this, a kerf included: 4 inches. */
const least = 64;

/** Numbers from a seed, the same on every machine (mulberry32). */
function diceOf(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

const counted = (parts) => parts.reduce((sum, p) => sum + p.count, 0);

/** One cut, or two to four equal parts of it; undefined where the part is too small. */
function halved(part, part01) {
  const long = part.w > part.h ? part01() < 0.75 : part01() < 0.25;
  const side = long ? part.w : part.h;
  const many = 2 + Math.floor(part01() * 3);
  const equal = Math.floor(side / many);
  const cut = (x, times) => ({ ...part, [long ? 'w' : 'h']: x, count: times * part.count });
  if (part01() < 0.45 && equal >= least) return [cut(equal, many)];
  if (side <= 2 * least) return undefined;
  const at = least + Math.floor(part01() * (side - 2 * least));
  return [cut(at, 1), cut(side - at, 1)];
}

/** A sheet cut into so many parts or a few more, each a kerf larger than it is. */
function cutUp(wanted, part01) {
  let parts = [{ w: usable.w + kerf, h: usable.h + kerf, count: 1 }];
  for (let turn = 0; turn < 200 && counted(parts) < wanted; turn += 1) {
    parts.sort((a, b) => b.w * b.h - a.w * a.h);
    const k = Math.floor(part01() * Math.min(3, parts.length));
    const halves = halved(parts[k], part01);
    if (halves) parts = [...parts.slice(0, k), ...parts.slice(k + 1), ...halves];
  }
  return parts.map((p) => ({ ...p, w: p.w - kerf, h: p.h - kerf }));
}

/** Takes a little off the parts until they cover no more than so much of the sheets. */
function shave(parts, sheets, use, part01) {
  const room = use * sheets * usable.w * usable.h;
  const covered = () => parts.reduce((sum, p) => sum + p.count * p.w * p.h, 0);
  for (let turn = 0; turn < 5000 && covered() > room; turn += 1) {
    const part = parts[Math.floor(part01() * parts.length)];
    const side = part01() < 0.5 ? 'w' : 'h';
    part[side] = Math.max(least - kerf, part[side] - 1 - Math.floor(part01() * 4));
  }
}

/** `layouts` sheets cut up, each `times` times; some parts may be turned, or all, or none. */
function instanceOf(name, { layouts, times, parts: wanted }, part01) {
  const all = Array.from({ length: layouts }, () => {
    const repeat = times();
    return { repeat, parts: cutUp(wanted / layouts, part01) };
  });
  const sheets = all.reduce((sum, { repeat }) => sum + repeat, 0);
  const items = all.flatMap(({ repeat, parts }) => parts.map((p) => ({ ...p, count: p.count * repeat })));
  shave(items, sheets, 0.97 + 0.015 * part01(), part01);
  const turning = [0, 0.5, 1][Math.floor(part01() * 3)];
  const turned = items.map((item) => ({ ...item, rotate: part01() < turning }));
  return { name, sheet: size, items: turned, rotation: false, kerf, trim, best_known: sheets };
}

const upTo = (part01, from, to) => from + Math.floor(part01() * (to - from + 1));

/** Two to four sheets, 30 parts or more. */
const workshop = (seed) => {
  const part01 = diceOf(104_729 * seed + 7);
  const layouts = upTo(part01, 2, 4);
  return instanceOf(`workshop ${seed}`, { layouts, times: () => 1, parts: upTo(part01, 30, 60) }, part01);
};

/** Two to four layouts, each cut twenty to sixty times. */
const order = (seed) => {
  const part01 = diceOf(15_485_863 * seed + 11);
  const layouts = upTo(part01, 2, 4);
  const times = () => upTo(part01, 20, 60);
  return instanceOf(`order ${seed}`, { layouts, times, parts: upTo(part01, 12, 30) }, part01);
};

/** The two classes; only every so many-th instance of each. */
export function drawnSheets(each) {
  const some = (count, make) =>
    Array.from({ length: count }, (_, k) => k)
      .filter((k) => k % each === 0)
      .map(make);
  return [
    { name: 'workshop sheets drawn, 0.97 covered', instances: some(24, workshop) },
    { name: 'orders of many equal pieces drawn, 0.97 covered', instances: some(8, order) },
  ];
}
