import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readJobFile } from '../../../src/job/file';
import { jobOf } from '../../../src/job/job';
import { fold } from '../../../src/job/log';
import { planOf } from '../../../src/plan/plan';
import { type Caution, cautionOf, cautions } from '../../../src/trade/cautions/caution';
import type { MachineId } from '../../../src/trade/machines/machines';
import type { What } from '../../../src/trade/setups/operation';

/**
 * Every machine there is, and the caution of a cut on it. A machine that is added does not compile until it stands
 * here.
 */
const atMachine: Record<MachineId, Caution> = {
  rip: 'rip',
  crosscut: 'crosscut',
  mitre: 'mitre',
  stop: 'stop',
  fence: 'fence',
  router: 'router',
  saw: 'saw',
  spacers: 'spacers',
  index: 'index',
  sliding: 'sliding',
  tablerouter: 'tablerouter',
  slidingcut: 'crosscut',
  rabbet: 'rabbet',
  notch: 'notch',
  lap: 'lap',
  slidingnotch: 'sliding',
  slidinglap: 'sliding',
  dovetail: 'dovetail',
  finger: 'finger',
  routertable: 'routertable',
  stick: 'stick',
  jig: 'jig',
  press: 'press',
  template: 'press',
  slant: 'press',
  plate: 'plate',
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
  corner: 'of its machine',
  tails: 'of its machine',
  pins: 'of its machine',
  bore: 'of its machine',
  slot: 'of its machine',
  fingers: 'of its machine',
  test: 'of its machine',
  hand: 'of its machine',
  slide: 'of its machine',
  runner: 'of its machine',
  pulls: 'of its machine',
  'dry-fit': 'dry-fit',
  'finish-inside': 'finish-inside',
  'glue-up': 'glue-up',
  'frame-on': 'frame-on',
  marks: 'marks',
  'box-up': 'box-up',
  hang: 'hang',
  'stop-block': 'stop-block',
  'carry-in': 'carry-in',
  level: 'level',
  scribe: 'scribe',
  filler: 'filler',
  cleat: 'cleat',
  anchor: 'anchor',
  'check-again': 'check-again',
  'front-on': 'front-on',
  finish: 'finish-inside',
  cure: 'cure',
  load: 'load',
  label: 'label',
  'look-back': 'look-back',
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
      'anchor on bench: anchor',
      'box-up on bench: box-up',
      'carry-in on bench: carry-in',
      'check-again on bench: check-again',
      'cure on bench: cure',
      'dry-fit on bench: dry-fit',
      'filler on bench: filler',
      'finish on bench: finish-inside',
      'finish-inside on bench: finish-inside',
      'frame-on on bench: frame-on',
      'front-on on bench: front-on',
      'glue-up on bench: glue-up',
      'groove on stop: stop',
      'hang on bench: hang',
      'label on bench: label',
      'length on crosscut: crosscut',
      'level on bench: level',
      'load on bench: load',
      'look-back on bench: look-back',
      'marks on stick: marks',
      'pins on dovetail: dovetail',
      'pulls on jig: jig',
      'rabbet on rabbet: rabbet',
      'rip on rip: rip',
      'scribe on bench: scribe',
      'slide on stick: stick',
      'tails on dovetail: dovetail',
      'test on fence: fence',
      'test on rabbet: rabbet',
      'test on stop: stop',
    ]);
  });
});

describe('cautions', () => {
  // stands in addresses, which phones keep
  test('of a plunge saw is its own, wherever it cuts; of another machine of the shop’s own that of what it works like', () => {
    const at = (like: 'plunge' | 'circular') =>
      cautionOf({ what: 'rip', setup: { machine: 'saw', own: { id: 'own1', name: '', like } } });
    expect([at('plunge'), at('circular')]).toEqual(['plunge', 'saw']);
  });

  test('is spelled so, for ever', () => {
    expect(cautions.join(' ')).toBe(
      'rip crosscut mitre stop fence router saw spacers index sliding tablerouter rabbet notch lap dovetail finger routertable ' +
        'stick jig press plate hand ' +
        'dry-fit finish-inside glue-up frame-on marks box-up hang carry-in level front-on ' +
        'anchor check-again cure load label look-back scribe filler cleat stop-block ' +
        'sheet-cut stick-cut carry stack shims as-built old-finish plunge',
    );
  });
});
