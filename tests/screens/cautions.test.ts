import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readJobFile } from '../../src/job/file';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { planOf } from '../../src/plan/plan';
import { type Part, partOf, parts, partWords } from '../../src/screens/cautions/parts';
import { readRoute, writeRoute } from '../../src/screens/routes';
import { cautionWords } from '../../src/screens/shared/caution-words';
import { grooveCaution } from '../../src/screens/shared/groove-caution';
import { type Caution, cautionOf, cautions } from '../../src/trade/cautions/caution';
import type { Machine } from '../../src/trade/grooves/board';
import { machines as grooveMachines } from '../../src/trade/grooves/machines';
import type { What } from '../../src/trade/setups/operation';
import type { SetupMachine } from '../../src/trade/setups/setup';

/**
 * Every machine there is, and the caution of a cut on it. A machine that is added does not compile until it stands
 * here.
 */
const atMachine: Record<SetupMachine, Caution> = {
  rip: 'rip',
  crosscut: 'crosscut',
  mitre: 'mitre',
  stop: 'stop',
  fence: 'fence',
  router: 'router',
  saw: 'saw',
  spacers: 'spacers',
  index: 'index',
  rabbet: 'rabbet',
  notch: 'notch',
  lap: 'lap',
  dovetail: 'dovetail',
  stick: 'stick',
  jig: 'jig',
  hand: 'hand',
  bench: 'hand',
};

/** Everything that is done: a step with a caution of its own, or a cut that has its machine's. */
const atWhat: Record<What, Caution | 'of its machine'> = {
  rip: 'of its machine',
  length: 'of its machine',
  groove: 'of its machine',
  rabbet: 'of its machine',
  notch: 'of its machine',
  lap: 'of its machine',
  mitre: 'of its machine',
  along: 'of its machine',
  tails: 'of its machine',
  pins: 'of its machine',
  test: 'of its machine',
  hand: 'of its machine',
  slide: 'of its machine',
  pulls: 'of its machine',
  'dry-fit': 'dry-fit',
  'finish-inside': 'finish-inside',
  'glue-up': 'glue-up',
  'frame-on': 'frame-on',
  marks: 'marks',
  'box-up': 'box-up',
  hang: 'hang',
  level: 'level',
  'front-on': 'front-on',
};

const keysOf = <K extends string>(table: Readonly<Record<K, unknown>>): readonly K[] =>
  Object.keys(table) as K[];
const rows = keysOf(atWhat).flatMap((what) => keysOf(atMachine).map((machine) => [what, machine] as const));

describe('cautionOf', () => {
  test.each(rows)('%s on %s', (what, machine) => {
    const own = atWhat[what];
    expect(cautionOf({ what, setup: { machine } })).toBe(own === 'of its machine' ? atMachine[machine] : own);
  });

  test('is, on every kind of operation of the sample job, the one of this table', () => {
    const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
    if (!file.ok) throw new Error(file.error.code);
    const { operations } = planOf(jobOf(file.value.job, fold(file.value.entries).values), {});
    const found = new Set(operations.map((op) => `${op.what} on ${op.setup.machine}: ${cautionOf(op)}`));
    expect([...found].sort()).toEqual([
      'along on fence: fence',
      'box-up on bench: box-up',
      'dry-fit on bench: dry-fit',
      'finish-inside on bench: finish-inside',
      'frame-on on bench: frame-on',
      'front-on on bench: front-on',
      'glue-up on bench: glue-up',
      'groove on stop: stop',
      'hang on bench: hang',
      'length on crosscut: crosscut',
      'level on bench: level',
      'marks on stick: marks',
      'pins on dovetail: dovetail',
      'pulls on jig: jig',
      'rabbet on rabbet: rabbet',
      'rip on rip: rip',
      'slide on stick: stick',
      'tails on dovetail: dovetail',
      'test on fence: fence',
      'test on rabbet: rabbet',
      'test on stop: stop',
    ]);
  });
});

describe('a caution', () => {
  // stands in addresses, which phones keep
  test('is spelled so, for ever', () => {
    expect(cautions.join(' ')).toBe(
      'rip crosscut mitre stop fence router saw spacers index rabbet notch lap dovetail stick jig hand ' +
        'dry-fit finish-inside glue-up frame-on marks box-up hang level front-on ' +
        'sheet-cut stick-cut carry stack shims as-built load old-finish',
    );
  });

  test.each(keysOf(grooveMachines) as readonly Machine[])(
    'of the machine %s has words in the first file',
    (machine) => {
      expect(cautionWords(machine)).toEqual(grooveCaution(machine));
    },
  );

  test.each(cautions.map((c) => [c]))(
    '%s: one short line of a sentence, then more; plain, not shouting',
    (caution) => {
      const [short, more] = cautionWords(caution);
      expect(short.length).toBeLessThanOrEqual(40);
      expect(short).toMatch(/^[A-Z0-9].*[^.]\.$/);
      expect(more).toMatch(/^[A-Z].*\.$/);
      // five lines of a phone's width, in the bar of a card
      expect(`${short} ${more}`.length).toBeLessThanOrEqual(200);
      expect(`${short} ${more}`).not.toMatch(/!|[Pp]lease|[A-Z]{2}/);
    },
  );

  test.each([
    ['finish-inside', ['air', 'rags', 'cure', 'oak', 'glue', 'acid', 'shell', 'lime']],
    [
      'level',
      [
        'pipes',
        'wires',
        'heating tubes',
        'licensed electrician',
        'stud',
        'solid fixing',
        'children',
        'tip',
        'rawers out',
      ],
    ],
    ['stack', ['nplugged', 'with care', 'loves']],
    ['load', ['nchored before', 'estimates']],
    ['crosscut', ['pulls itself along']],
    ['stop', ['pulls itself along']],
    ['dovetail', ['never raised', 'scrap behind', 'lamps']],
    ['hang', ['nchored', 'One drawer']],
    ['old-finish', ['lead']],
    ['fence', ['uard', 'nothing freehand', 'itre gauge']],
  ] as const)('%s says what it must', (caution, words) => {
    const said = cautionWords(caution).join(' ');
    for (const word of words) expect(said).toContain(word);
  });

  test('of the story stick says nothing of short sticks, that of finishing nothing of lifting', () => {
    expect(cautionWords('marks').join(' ')).not.toMatch(/short|fence|blade/);
    expect(cautionWords('finish-inside').join(' ')).not.toMatch(/50 lb|lift/);
  });
});

describe('Before you cut', () => {
  test('has a part for each caution, and none but that of all cutting without one', () => {
    const reached = new Set<Part>(cautions.map(partOf));
    expect(parts.filter((part) => !reached.has(part))).toEqual(['all-cutting']);
  });

  test.each([
    [
      'all-cutting',
      ['manual', 'eyes', 'ears', 'dust', 'gloves', 'Unplug', 'Stop the machine before you touch the phone'],
    ],
    [
      'table-saw',
      ['straight back on', 'insert', 'push block', 'freehand', 'too narrow', 'mitre gauge', 'stand-off'],
    ],
    ['crosscut-saw', ['pull itself along', 'outside the line', 'clear of chips', 'stopped']],
    ['circular-saw', ['both halves', 'past the sheet', 'behind', 'over the knee']],
    ['router', ['against the turn', 'no light pass', 'Clamp', 'stopped before you lift']],
    ['dovetails', ['Do not raise', 'lamps', 'scrap behind']],
    ['small-pieces', ['long stock', 'block, not fingers']],
    ['fasteners', ['grain', 'pipes, wires and heating tubes', 'licensed electrician', 'local code']],
    ['old-finishes', ['lead', 'est before', 'wet', 'local rule']],
    ['lifting', ['50 lb', 'ath cleared', 'obody below', 'held by hand']],
    ['tall-units', ['before anything is loaded', 'one loaded drawer', 'child', 'tips']],
    ['finish', ['air', 'ags', 'cure', 'acid']],
    ['loads', ['estimates', 'engineer', 'museum']],
  ] as const)('says under %s what is usual there', (part, words) => {
    const said = partWords(part).lines.join(' ');
    for (const word of words) expect(said).toContain(word);
  });

  test('keeps in its address the caution that was tapped and where it stood', () => {
    const from = writeRoute({ at: 'saw', board: 'shell case', setting: 'r1~3~near/%' }).slice(2);
    const route = { at: 'before', caution: 'fence', from } as const;
    const back = readRoute(writeRoute(route));
    expect(back).toEqual(route);
    expect(readRoute(back.at === 'before' ? (back.from ?? '') : '')).toEqual({
      at: 'saw',
      board: 'shell case',
      setting: 'r1~3~near/%',
    });
    expect(readRoute(writeRoute({ at: 'before' }))).toEqual({ at: 'before' });
  });
});
