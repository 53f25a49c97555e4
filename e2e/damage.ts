/** A seeded shuffle of numbers, so that a failure can be had again. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

/** Files no app should take: written by hand, and made from a good one by cutting, flipping and swapping. */
export function damaged(good: string, count: number): readonly string[] {
  const byHand = [
    '',
    'null',
    '[]',
    '{}',
    '{"knifeline":2,"job":"a","entries":[]}',
    '{"knifeline":1,"job":"a","entries":[]}',
    '{"knifeline":1,"job":"a","entries":{}}',
    '{"knifeline":1,"job":"a","entries":[null]}',
    '{"knifeline":"1","job":"a","entries":[{}]}',
    good.replace('"knifeline": 1', '"knifeline": 99'),
    good.replace('"job": "mineralshell"', '"job": "../../etc"'),
    good.replace('"job": "mineralshell"', '"__proto__": {"x": 1}, "job": "mineralshell"'),
    good.replace(/"path":"name"/, '"path":"__proto__"'),
    good.replace(/"path":"name"/, '"path":"boards/constructor/prototype"'),
    good.replace(/"value":"257\/4"/, '"value":"257/0"'),
    good.replace(/"value":"257\/4"/, '"value":64.25'),
    good.replace(/"value":"257\/4"/, `"value":"${'9'.repeat(400)}"`),
    good.replace(/"kind":"edit"/, '"kind":"erase"'),
    good.replace(/"count":1,/, '"count":-1,'),
    good.replace(/"count":1,/, '"count":1e308,'),
    good.replace(/"count":2,/, '"count":1,'),
    good.replace(/"label":"[^"]*"/, '"label":"x","extra":true'),
    `${good}${good}`,
    `{"knifeline":1,"job":"a","entries":${'['.repeat(5000)}${']'.repeat(5000)}}`,
  ];
  const next = numbers(20261125);
  const made = new Set<string>();
  while (made.size + byHand.length < count) {
    const text = mutate(good, next);
    if (text !== good && !stillGood(text)) made.add(text);
  }
  return [...byHand, ...made];
}

function mutate(text: string, next: () => number): string {
  const at = Math.floor(next() * text.length);
  const kind = Math.floor(next() * 5);
  if (kind === 0) return text.slice(0, at);
  if (kind === 1) return text.slice(0, at) + text.slice(at + 1 + Math.floor(next() * 40));
  if (kind === 2)
    return text.slice(0, at) + String.fromCharCode(32 + Math.floor(next() * 95)) + text.slice(at + 1);
  if (kind === 3) return text.slice(0, at) + text.slice(Math.floor(next() * text.length));
  return `${text.slice(0, at)}${'"{}[],:\\0-'.charAt(Math.floor(next() * 10))}${text.slice(at)}`;
}

/** A flip inside a name or a label leaves a file that may well be taken: those are no damage. */
function stillGood(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
