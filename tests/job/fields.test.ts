import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bankFields, columnFields, fittedFields, frontFields, thingFields } from '../../src/job/bank-fields';
import * as edits from '../../src/job/edits';
import type { Change, Entry, Json } from '../../src/job/entry';
import {
  boardFields,
  builtFields,
  caseFields,
  insideFields,
  jobFields,
  layoutFields,
  letFields,
  offcutFields,
  partFields,
  pieceFields,
  recipeFields,
  runFields,
  sheetFields,
  spoilFields,
  stockFields,
  wideFields,
  widthFields,
} from '../../src/job/fields';
import { jointFields, workFields } from '../../src/job/hand-fields';
import * as i from '../../src/job/install-fields';
import * as job from '../../src/job/job';
import { liftFields, shelfFields, solidFields } from '../../src/job/loads-fields';
import { fold } from '../../src/job/log';
import { fieldAt } from '../../src/job/paths';
import { printFields } from '../../src/job/print-fields';
import { editPrint } from '../../src/job/prints';
import { roomIn, standIn } from '../../src/job/room';
import * as room from '../../src/job/room-edits';
import * as r from '../../src/job/room-fields';
import { readEntry } from '../../src/job/rows';
import { saidFields } from '../../src/job/said-fields';
import { timerFields } from '../../src/job/timer-fields';
import { editTimer } from '../../src/job/timers';
import { type Length, ratio } from '../../src/length/length';
import { planOf } from '../../src/plan/plan';
import { l } from '../length/write-figures';
import { runs } from '../runs';

const entriesOf = (changes: readonly Change[]): readonly Entry[] =>
  changes.map((change, k) => ({
    job: 'j',
    device: 'p',
    count: k + 1,
    at: '2026-11-02T08:00:00Z',
    act: `p.${k + 1}`,
    label: 'x',
    ...change,
  }));

/** Any length, exact: a thirty-second, and thousandths of a millimetre. */
const long = l('23 5/8');
const odd = l('18.003 mm');

type Patch = Readonly<Record<string, unknown>>;
const wholeCase = Object.fromEntries(
  Object.keys(caseFields).map((name): [string, unknown] => {
    if (name.endsWith('Stock')) return [name, 'sheeta'];
    if (/^has|Off$|^gone$/.test(name)) return [name, name !== 'gone'];
    if (['partitions', 'cleats', 'mitres', 'crosses', 'plinthCrosses', 'nailers'].includes(name))
      return [name, 2];
    if (name === 'bays') return [name, [long, undefined, odd]];
    if (name === 'hold') return [name, 'openings'];
    if (name === 'backHow') return [name, 'groove'];
    if (name.endsWith('Joint')) return [name, 'over'];
    if (name === 'frameHow') return [name, 'floor'];
    if (name === 'frameMeets') return [name, 'lap'];
    if (name === 'toeHow') return [name, 'notch'];
    if (name === 'plinthHow') return [name, 'scribed'];
    if (name.endsWith('Hugs')) return [name, 'near'];
    return [name, name === 'name' ? 'Case' : odd];
  }),
);

const words: Patch = {
  name: 'Drawers',
  of: 'c1',
  over: 'i1',
  fit: 'overlay',
  share: 'weights',
  order: 'up',
  goes: 'last',
  bottomHow: 'slid-in',
  tailsHow: 'template',
};
const wholeBank: Patch = Object.fromEntries(
  Object.keys(bankFields).map((name): [string, unknown] => {
    if (name in words) return [name, words[name]];
    if (name.endsWith('Stock')) return [name, 's1'];
    if (['alike', 'contentsFirst', 'fromBlank', 'gone'].includes(name)) return [name, name !== 'gone'];
    if (['ratio', 'rating', 'slope'].includes(name)) return [name, ratio(-7n, 3n)];
    if (['bay', 'across', 'count', 'tails', 'pulls', 'frontScrews'].includes(name)) return [name, 24];
    return [name, odd];
  }),
);

const cutting: Patch = {
  by: 'own3',
  machine: 'router',
  against: 'other',
  grows: 'toward',
  guide: 'far',
  stopSide: 'right',
  cutter: odd,
};

/** A length for every field of a table; those of another kind are said beside it. */
const lengthsOf = (table: object): Patch => Object.fromEntries(Object.keys(table).map((name) => [name, odd]));

/** Every table with a value for every field, and the edits that write it. */
const tables: readonly (readonly [string, object, Patch, (patch: Patch) => readonly Change[]])[] = [
  [
    'the job',
    jobFields,
    {
      name: 'Shelf',
      place: '',
      note: 'n'.repeat(4000),
      tape: '1/2 mm',
      usual: 'in',
      deleted: '2026-11-02T08:00:00.123Z',
      standing: 'rip~r~35d2~trueedge',
      over: long,
      overStick: odd,
      carry: ratio(101n, 2n),
      guideOnly: true,
      guideSaw: 'own1',
      fenceSaw: 'own2',
      failed: 'The shelf sagged',
      woodNow: ratio(15n, 2n),
      woodLow: ratio(6n),
      woodHigh: ratio(12n),
      airLow: ratio(30n),
      airHigh: ratio(123n, 2n),
    },
    (p) => edits.editJob(p),
  ],
  [
    'a board',
    boardFields,
    {
      ...cutting,
      name: 'Left',
      made: 'pair',
      copies: 1000,
      length: long,
      thickness: odd,
      across: long,
      stock: 'sheeta',
      end: 'top',
      datum: l('0'),
      mate: l('-1/32'),
      mateName: 'partition',
      gone: false,
    },
    (p) => edits.editBoard('b1', p),
  ],
  [
    'a run',
    runFields,
    {
      spacing: 'fill',
      face: 'B',
      point: 'centre',
      width: odd,
      depth: long,
      count: 30,
      pitch: odd,
      first: long,
      endRoom: long,
      centred: true,
      span: long,
      part: odd,
      at: [long, undefined, odd],
      stopped: long,
      gone: false,
    },
    (p) => edits.editRun('b1', 'r1', p),
  ],
  [
    'a wide groove',
    wideFields,
    { face: 'A', near: long, width: odd, depth: long, gone: false },
    (p) => edits.editWide('b1', 'w1', p),
  ],
  [
    'a sheet',
    stockFields,
    {
      name: 'Sheet',
      kind: 'stick',
      readings: [odd, long],
      planned: long,
      used: odd,
      asRead: true,
      long,
      wide: odd,
      trim: l('0'),
      grain: 'wide',
      have: 3,
      noMore: true,
      price: ratio(7999n, 100n),
      like: 's2',
      bad: [long, odd],
      rough: long,
      stuff: 'pressed',
      species: 'hard-maple',
      quartersawn: true,
      perFoot: ratio(11n, 5n),
      stiff: ratio(13n, 10n),
      gone: false,
    },
    (p) => edits.editStock('s1', p),
  ],
  ['a case', caseFields, wholeCase, (p) => edits.editCase('c1', p)],
  [
    'a thing in a bay',
    insideFields,
    {
      kind: 'trays',
      bay: 1,
      count: 0,
      at: long,
      first: long,
      pitch: odd,
      endRoom: long,
      width: odd,
      depth: long,
      slack: odd,
      wide: long,
      heldBy: 'pins',
      front: odd,
      behind: long,
      bore: 'press',
      stripThick: odd,
      stripRoom: long,
      stripSold: odd,
      asideWidth: long,
      asideDepth: odd,
      asideRoom: long,
      spares: 4,
      templateLong: long,
      templateFirst: odd,
      templateHoles: 12,
      templateError: odd,
      templatePlay: long,
      flange: odd,
      play: long,
      frontPlay: odd,
      backPlay: long,
      band: odd,
      gone: false,
    },
    (p) => edits.editInside('c1', 'i1', p),
  ],
  [
    'an opening as built',
    builtFields,
    { frontA: long, frontB: odd, backA: long, backB: odd, used: long },
    (p) => edits.editBuilt('c1', 'frame1w', p),
  ],
  [
    'a part',
    partFields,
    {
      ...cutting,
      ripOn: 'saw',
      lengthOn: 'slidingcut',
      ripBy: 'm1',
      lengthBy: 'm2',
      edgeBy: 'own1',
      alongBy: 'own3',
      shoulderBy: 'usual',
      boreBy: 'own2',
      slotBy: 'own1',
      lies: 'free',
      share: 'A',
      mark: odd,
      markWide: odd,
      alike: 'apart',
      alikeWide: 'together',
    },
    (p) => edits.editPart('c1~left', p),
  ],
  ['a piece', pieceFields, { asLength: odd, asWidth: long }, (p) => edits.editPiece('c1~left', '1', p)],
  [
    'work by hand',
    workFields,
    {
      part: 'c1~left',
      name: 'Drill',
      machine: 'bench',
      figure: long,
      cutter: odd,
      height: long,
      after: 'len',
      gone: false,
    },
    (p) => edits.editWork('h1', p),
  ],
  [
    'a joint by hand',
    jointFields,
    {
      part: 'c1~left',
      kind: 'groove',
      at: 'other',
      takes: 'a panel',
      width: odd,
      depth: long,
      near: odd,
      face: 'B',
      off: long,
      pitch: odd,
      count: 12,
      gone: false,
    },
    (p) => edits.editHandJoint('x1', p),
  ],
  [
    'a recipe',
    recipeFields,
    { stack: [l('1/8'), odd], scale: long, height: long, got: odd, note: 'n' },
    (p) => edits.editRecipe('stop~579d800~9d32', p),
  ],
  [
    'an offcut',
    offcutFields,
    { stock: 's1', length: long, width: odd, gone: false },
    (p) => edits.editOffcut('o1', p),
  ],
  [
    'a sheet of the plan',
    sheetFields,
    {
      stock: 's1',
      no: 2,
      left: 'o1',
      long,
      wide: odd,
      kerf: l('1/8'),
      tree: {
        is: 'cut',
        way: 'rip',
        at: odd,
        near: { is: 'piece', piece: 'c1~left/1', turned: true },
        far: { is: 'cut', way: 'cross', at: long, near: { is: 'left' }, far: { is: 'waste' } },
      },
      gone: false,
    },
    (p) => edits.editSheet('p1', p),
  ],
  [
    'what is proved of a plan',
    layoutFields,
    { least: 0, proved: true, rests: 'a1b2' },
    (p) => edits.editLayout('s1', p),
  ],
  [
    'how wide a groove was cut',
    widthFields,
    { width: odd, depth: long, first: odd, last: long },
    (p) => edits.editJoint('cut/c1~left/bottom~only/1', p),
  ],
  ['a spoiled piece', spoilFields, { spoiled: true }, () => edits.spoilPiece('c1~left', '1', 1)],
  ['a bank of drawers', bankFields, wholeBank, (p) => edits.editBank('d1', p)],
  [
    'what is said of a joint',
    saidFields,
    { how: 'box-joint', size: odd },
    (p) => edits.edits('banks/d1/corner/joint/', saidFields, p),
  ],
  [
    'a front',
    frontFields,
    { high: odd, weight: ratio(5n, 3n), boxHigh: long, stick: odd },
    (p) => edits.editFront('d1', 24, p),
  ],
  [
    'a column',
    columnFields,
    Object.fromEntries(Object.keys(columnFields).map((name) => [name, odd])),
    (p) => edits.editColumn('d1', 2, p),
  ],
  [
    'a fitted front',
    fittedFields,
    { left: long, right: odd, usedLeft: long, usedRight: odd, held: long, trim: l('-1/64') },
    (p) => edits.editFitted({ bank: 'd1', column: 1, front: 3 }, p),
  ],
  [
    'a thing for a drawer',
    thingFields,
    {
      name: 'Quartz',
      tall: odd,
      long,
      wide: odd,
      heavy: ratio(5n, 2n),
      count: 4,
      bank: 'd1',
      front: 5,
      column: 2,
      part: 'c1~i1',
      piece: 3,
      from: long,
      lives: 'the old cupboard',
      gone: false,
    },
    (p) => edits.editThing('t1', p),
  ],
  [
    'the room',
    r.roomFields,
    {
      ...lengthsOf(r.roomFields),
      burned: true,
      inside: false,
      standsUp: true,
      foundEdge: 'right',
    },
    (p) => room.editRoom(p),
  ],
  [
    'a spot of the walls',
    r.acrossFields,
    { at: long, plane: 'back', wide: odd, left: l('-1/4'), right: long, gone: false },
    (p) => room.editAcross('a1', p),
  ],
  [
    'a spot of floor and ceiling',
    r.uprightFields,
    { at: long, plane: 'front', high: odd, drop: long, rise: odd, gone: false },
    (p) => room.editUpright('u1', p),
  ],
  ['a corner', r.cornerFields, { back: long, side: odd, across: long }, (p) => room.editCorner('left', p)],
  [
    'a place not to fasten',
    r.zoneFields,
    { what: 'Water pipe', from: long, to: odd, low: odd, high: long, gone: false },
    (p) => room.editZone('z1', p),
  ],
  [
    'a thing on the way in',
    r.wayFields,
    {
      ...lengthsOf(r.wayFields),
      kind: 'stair',
      name: 'Back stair',
      winders: true,
      wall: 'left',
      corner: 'second',
      hung: 'far',
      swing: 'out',
      gone: false,
    },
    (p) => room.editWay('w1', p),
  ],
  [
    'how a case stands',
    r.standFields,
    { ...lengthsOf(r.standFields), footHow: 'screw', across: 3, middleRow: true },
    (p) => room.editStand('c1', p),
  ],
  ['a foot', r.footFields, { drop: long }, (p) => room.editFoot('c1', 'middle2', p)],
  [
    'a gap to a wall',
    r.gapFields,
    { side: 'right', at: long, gap: odd, gone: false },
    (p) => room.editGap('c1', 'g1', p),
  ],
  [
    'a shelf',
    shelfFields,
    { years: true, glued: false, strip: 's2', tall: odd, use: 'library' },
    (p) => edits.editShelf('c1~i1', p),
  ],
  [
    'how a case is moved in',
    liftFields,
    {
      on: 'c2',
      rest: ratio(10n),
      what: 'd1~c1d2',
      out: long,
      up: odd,
      turn: ratio(45n),
      toOut: odd,
      toUp: long,
      toTurn: ratio(0n),
      careful: true,
      grip: 'fair',
    },
    (p) => edits.editLift('c1', p),
  ],
  [
    'a case put up',
    i.putUpFields,
    {
      wall: 'sheathing',
      fixings: 4,
      cleatThick: odd,
      cleatWide: long,
      cleatOn: 'wall',
      cleatAt: long,
      cleatFrom: odd,
      cleatTo: long,
      washers: true,
      cover: odd,
      into: long,
      gauge: '10',
      finish: 'Shellac',
      cureDays: 14,
    },
    (p) => edits.editPutUp('c1', p),
  ],
  [
    'screws',
    i.screwFields,
    {
      ...lengthsOf(i.screwFields),
      kind: 'cleat',
      name: 'Upper cleat',
      of: 'c1',
      bite: 'stud',
      slant: '30',
      gauge: '10',
      wood: 'soft',
      rows: 2,
      many: 6,
      gone: false,
    },
    (p) => edits.editScrews('s1', p),
  ],
  [
    'what holds a joint',
    i.joinFields,
    {
      ...lengthsOf(i.joinFields),
      by: 'slant',
      name: 'Rails',
      of: 'c1',
      at: 'partition',
      flush: true,
      many: 6,
      gone: false,
    },
    (p) => edits.editJoin('d1', p),
  ],
  [
    'a test of a kerf',
    i.kerfFields,
    { before: long, cuts: 3, pieces: odd, rest: long },
    (p) => edits.editKerfTest('kerf', p),
  ],
  [
    'a note for next time',
    i.nextFields,
    { said: 'Back first', gone: false },
    (p) => edits.editNextTime('n1', p),
  ],
  [
    'a timer',
    timerFields,
    { name: 'Glue', hours: 2, minutes: 30, begun: '2026-11-02T08:30:00.000Z', seen: true, gone: false },
    (p) => editTimer('t1', p),
  ],
  ['a print', printFields, { ...lengthsOf(printFields), paper: 'roll' }, (p) => editPrint('c1~height2', p)],
  ['solid wood', solidFields, { reach: long, shank: odd }, (p) => edits.editSolid('c1~loose', p)],
  ['a reason', letFields, { why: 'it is here' }, (p) => edits.letAheadOf('cut/c1~left/len/1~2', `${p.why}`)],
];

describe.each(tables)('fieldAt: %s', (_, table, patch, edit) => {
  const changes = edit(patch);

  test('every field of the table is tried', () => {
    expect(Object.keys(patch).sort()).toEqual(Object.keys(table).sort());
  });

  test('every path written is a field, and its value reads back to the same', () => {
    expect(changes).toHaveLength(Object.keys(patch).length);
    for (const [k, [name, value]] of Object.entries(patch).entries()) {
      const change = changes[k];
      if (change?.kind !== 'edit') throw new Error(name);
      expect(fieldAt(change.path)?.read(change.value), change.path).toEqual(value);
      expect(JSON.parse(JSON.stringify(change.value))).toEqual(change.value);
    }
  });

  test('every edit is a row of the log, and so is the one that takes it away', () => {
    const empty = edit(Object.fromEntries(Object.keys(patch).map((name) => [name, undefined])));
    const taken = empty.map(
      (c): Change => (c.kind === 'edit' && c.path.startsWith('let/') ? { ...c, value: null } : c),
    );
    for (const entry of entriesOf([...changes, ...taken])) expect(readEntry(entry)).toEqual({ entry });
  });

  test('folded, nothing of it is unread', () => {
    expect(job.jobOf('j', fold(entriesOf(changes)).values).unread).toEqual([]);
  });
});

describe('jobOf', () => {
  const all = tables.flatMap(([, , patch, edit]) => edit(patch));
  const read = job.jobOf('j', fold(entriesOf(all)).values);

  test('what was written stands where it belongs', () => {
    const [first] = read.cases;
    expect(first).toMatchObject({ id: 'c1', name: 'Case', hold: 'openings', partitions: 2, mitres: 2 });
    expect(first?.bays).toEqual([long, undefined, odd]);
    expect(Object.keys(first?.stocks ?? {})).toHaveLength(18);
    expect(first?.inside).toMatchObject([
      { id: 'i1', kind: 'trays', bay: 1, count: 0, at: long, slack: odd },
    ]);
    expect(first?.built.frame1w?.used).toEqual(long);
    expect(read.parts['c1~left']?.machine).toBe('router');
    expect(read.parts['c1~left']?.pieces['1']).toEqual({ recuts: 1, asLength: odd, asWidth: long });
    expect(read.work.map((x) => x.after)).toEqual(['len']);
    expect(read.recipes['stop~579d800~9d32']?.stack).toEqual([l('1/8'), odd]);
    expect(read.widths).toEqual({
      'cut/c1~left/bottom~only/1': { width: odd, depth: long, first: odd, last: long },
    });
    expect(read.let).toEqual({ 'cut/c1~left/len/1~2': 'it is here' });
    expect(read.offcuts).toEqual([{ id: 'o1', stock: 's1', length: long, width: odd }]);
    expect(read.stock[0]?.readings).toEqual([odd, long]);
    expect(roomIn(read)).toMatchObject({
      foundEdge: 'right',
      spotsAcross: [{ id: 'a1', at: long, plane: 'back', left: l('-1/4') }],
      spotsUpright: [{ id: 'u1', drop: long }],
      corners: { left: { side: odd } },
      zones: [{ id: 'z1', what: 'Water pipe' }],
      ways: [{ id: 'w1', kind: 'stair', winders: true }],
    });
    expect(standIn(read, 'c1')).toMatchObject({
      footHow: 'screw',
      feet: [{ row: 'middle', number: 2, drop: long }],
      gaps: [{ id: 'g1', side: 'right', gap: odd }],
    });
    expect([read.standing, read.deleted]).toEqual(['rip~r~35d2~trueedge', '2026-11-02T08:00:00.123Z']);
  });

  test.each<[string, readonly Change[], (from: job.Job) => readonly unknown[]]>([
    ['a case', edits.editCase('c1', { gone: true }), (from) => from.cases],
    ['a thing in a bay', edits.editInside('c1', 'i1', { gone: true }), (from) => from.cases[0]?.inside ?? []],
    ['a spot', room.editAcross('a1', { gone: true }), (from) => roomIn(from).spotsAcross],
    ['a gap', room.editGap('c1', 'g1', { gone: true }), (from) => standIn(from, 'c1').gaps],
    ['work', edits.editWork('h1', { gone: true }), (from) => from.work],
    ['an offcut', edits.editOffcut('o1', { gone: true }), (from) => from.offcuts],
    [
      'a sheet of the plan',
      edits.editSheet('p1', { gone: true }),
      (from) => from.sheets.filter((s) => !s.gone),
    ],
    ['a sheet', edits.editStock('s1', { gone: true }), (from) => from.stock],
    ['a board', edits.editBoard('b1', { gone: true }), (from) => from.boards],
  ])('%s that is gone is not there, and comes back when the word is taken back', (_, gone, list) => {
    const back = gone.map((c): Change => (c.kind === 'edit' ? { ...c, value: null } : c));
    const listed = (more: readonly Change[]) =>
      list(job.jobOf('j', fold(entriesOf([...all, ...more])).values));
    expect(listed([])).toHaveLength(1);
    expect(listed(gone)).toEqual([]);
    expect(listed([...gone, ...back])).toEqual(listed([]));
  });
});

describe('near misses', () => {
  test.each([
    ['nothing', ''],
    ['a slash', '/'],
    ['a field of no table', 'price'],
    ['a table nobody knows', 'racks/s1/name'],
    ['a field of a shelf nobody knows', 'shelves/s1/name'],
    ['a table without a thing', 'cases'],
    ['a thing without a field', 'cases/c1'],
    ['a table under a thing, no more', 'cases/c1/inside'],
    ['a thing under a thing, no field', 'cases/c1/inside/i1'],
    ['a field nobody knows', 'cases/c1/price'],
    ['a field of another table', 'stock/s1/hasBack'],
    ['a table of another thing', 'boards/b1/inside/i1/kind'],
    ['a room with an id', 'room/r1/apart'],
    ['a foot nobody has', 'cases/c1/foot/front0/drop'],
    ['a corner of no wall', 'room/corner/top/back'],
    ['a table under a table under a table', 'cases/c1/inside/i1/built/bay1/used'],
    ['a step too many', 'cases/c1/width/x'],
    ['a step too many at the end', 'cases/c1/width/'],
    ['a step too many before', '/cases/c1/width'],
    ['an empty id', 'cases//width'],
    ['a job field with a step', 'name/x'],
    ['a count of recuts, which is now a word for each spoil', 'parts/c1~left/pieces/1/recuts'],
    ['a spoil without its copy', 'parts/c1~left/spoils/g1/spoiled'],
    ['a spoil of no making', 'parts/c1~left/pieces/1/spoils/spoiled'],
    ['a spoil with a step too many', 'parts/c1~left/pieces/1/spoils/g1/spoiled/x'],
    ['a spoil in capitals', 'parts/c1~left/pieces/1/spoils/G1/spoiled'],
    ['a joined id for a spoil', 'parts/c1~left/pieces/1/spoils/g1~2/spoiled'],
    ['a width with two steps', 'widths/c1~left/len/width'],
    ['a width with four steps', 'widths/c1~left/len/1/2/width'],
    ['a width that is a reason', 'widths/c1~left/len/1/why'],
    ['a width with its cut before it', 'widths/cut/c1~left/len/1/width'],
    ['a piece without its part', 'parts/pieces/1'],
    ['a piece with a step too many', 'parts/c1~left/pieces/1/asLength/x'],
    ['a part with the name of its field twice', 'parts/c1~left/machine/machine'],
    ['a reason with two steps', 'let/c1~left/len/why'],
    ['a reason with four steps', 'let/c1~left/len/1/2/why'],
    ['a reason that is none', 'let/c1~left/len/1/because'],
    ['a recipe in two steps', 'recipes/stop/579d800/got'],
    ['capitals in the id of a case', 'cases/C1/width'],
    ['capitals in the id of a sheet', 'stock/sheetA/used'],
    ['capitals in the id of a board', 'boards/B1/length'],
    ['capitals in the id of a run', 'boards/b1/runs/R1/width'],
    ['capitals in the id of a wide groove', 'boards/b1/wides/W1/width'],
    ['capitals in the id of a thing in a bay', 'cases/c1/inside/I1/kind'],
    ['capitals in the name of an opening', 'cases/c1/built/Bay1/used'],
    ['capitals in the id of work', 'work/H1/part'],
    ['capitals in the id of an offcut', 'offcuts/O1/stock'],
    ['a joined id where none may be', 'cases/c1~left/width'],
    ['an id of 25 letters', `cases/${'c'.repeat(25)}/width`],
    ['a key of 61 letters', `recipes/${'r'.repeat(61)}/got`],
    ['a mark in a key', 'parts/c1-left/machine'],
    ['a blank in a key', 'parts/c1 left/machine'],
    ['a line end in an id', 'cases/c1\n/width'],
    ['an id of other letters', 'cases/ç1/width'],
    ['a prototype for a table', '__proto__/c1/width'],
    ['a prototype for an id', 'cases/__proto__/width'],
    ['a prototype for a part', 'parts/__proto__/machine'],
    ['a prototype for a field', 'cases/c1/__proto__'],
    ['a prototype under a thing', 'cases/c1/__proto__/i1/kind'],
    ['a prototype alone', '__proto__'],
    ['a constructor for a table', 'constructor/c1/width'],
    ['a constructor for a field', 'cases/c1/constructor'],
    ['a constructor for a table under a thing', 'cases/c1/constructor/i1/kind'],
    ['a constructor alone', 'constructor'],
    ['a method for a field', 'recipes/stop/toString'],
    ['a method for a table', 'valueOf/x/y'],
    ['a field in capitals', 'cases/c1/Width'],
  ])('%s is no field: %j', (_, path) => {
    expect(fieldAt(path)).toBeUndefined();
  });

  test.each([
    'parts/C1~Left/machine',
    'parts/c1~left/pieces/A~2/asLength',
    'parts/c1~left/pieces/A/spoils/g2/spoiled',
    'recipes/Stop~23d32/got',
    'widths/c1~left/bottom~only/1~2/width',
    'let/C1/H~x/A/why',
    `recipes/${'r'.repeat(60)}/got`,
    `cases/${'c'.repeat(24)}/width`,
  ])('while %s is one', (path) => {
    expect(fieldAt(path)).toBeDefined();
  });

  const lengthPaths = [
    'cases/c1/width',
    'cases/c1/inside/i1/at',
    'cases/c1/built/bay1/used',
    'parts/c1~left/cutter',
    'parts/c1~left/pieces/1/asLength',
    'widths/c1~left/bottom~only/1/width',
    'work/h1/figure',
    'recipes/stop/got',
    'offcuts/o1/length',
    'stock/s1/used',
  ];
  test.each(lengthPaths)('%s takes no decimal, number, mark, sum or nothing', (path) => {
    const not: readonly Json[] = [
      '64.25',
      64.25,
      0,
      '64 1/4',
      '64 1/4"',
      '1/0',
      '1e3',
      '',
      ' 1',
      '+1',
      '-',
      '--1',
      null,
      true,
      ['1'],
      {},
      '1/-2',
      '9'.repeat(61),
    ];
    for (const json of not) expect(fieldAt(path)?.read(json), JSON.stringify(json)).toBeUndefined();
    expect(fieldAt(path)?.read('257/4')).toEqual(l('64 1/4'));
  });

  test.each(['cases/c1/partitions', 'cases/c1/cleats', 'cases/c1/crosses'])(
    '%s takes a handful, not a thousand',
    (path) => {
      for (const few of [0, 1, 24]) expect(fieldAt(path)?.read(few)).toBe(few);
      for (const json of [25, 1000, 0.5, -1, '1', null]) expect(fieldAt(path)?.read(json)).toBeUndefined();
    },
  );

  const taken = [
    ...[
      'left',
      'right',
      'bottom',
      'top',
      'partition',
      'partition1',
      'partition24',
      'p1',
      'p24',
      'back',
      'cleat',
    ],
    ...['stile', 'middle', 'railtop', 'railbottom', 'toe', 'loose', 'edgefront', 'edgeleft', 'edgeright'],
    ...['nailer', 'baserail', 'basecross', 'plinthrail', 'plinthcross', 'bench'],
  ];
  test.each(taken)('a thing in a bay is not called %s: that names a part or a groove', (id) => {
    expect(fieldAt(`cases/c1/inside/${id}/kind`)).toBeUndefined();
    expect(fieldAt(`cases/c1/inside/${id}x/kind`)).toBeDefined();
  });

  test('no part of a case has a name that a thing in its bays may have', () => {
    const whole = tables.flatMap(([name, , patch, edit]) => (name === 'a case' ? edit(patch) : []));
    const sheet = edits.editStock('sheeta', { readings: [l('3/4')], used: l('3/4') });
    const sized = edits.editCase('c1', {
      hold: 'outside',
      width: l('40'),
      height: l('60'),
      depth: l('17'),
      feet: l('3'),
      bays: [],
      // cleats stand in their place
      hasNailers: false,
    });
    const usual = Object.entries(caseFields).flatMap(([name]) =>
      /Stock$|^has|^gone$|^hold$|^bays$|^(width|height|depth|feet|partitions|cleats|crosses|name)$/.test(name)
        ? []
        : edits.editCase('c1', { [name]: undefined }),
    );
    const log = entriesOf([...sheet, ...whole, ...usual, ...sized]);
    const { parts } = planOf(job.jobOf('j', fold(log).values), {});
    const roles = new Set(parts.map((p) => p.id.replace(/^c1~/, '')));
    expect(roles.size).toBeGreaterThan(10);
    for (const role of roles) expect(fieldAt(`cases/c1/inside/${role}/kind`), role).toBeUndefined();
  });

  test('a thing called as a part is refused when read, and named as unread: the part stands alone', () => {
    const kind = { kind: 'edit', path: 'cases/c1/inside/left/kind', value: 'fixed' } as const;
    const read = job.jobOf('j', fold(entriesOf([...edits.editCase('c1', { name: 'x' }), kind])).values);
    expect(read.unread).toEqual([kind.path]);
    expect(read.cases[0]?.inside).toEqual([]);
  });

  test('a spoil taken back counts no more, and two makings spoiled come to two', () => {
    const spoils = (...changes: readonly Change[]) =>
      job.jobOf('j', fold(entriesOf(changes)).values).parts.x?.pieces['1']?.recuts ?? 0;
    const [first, second] = [edits.spoilPiece('x', '1', 1), edits.spoilPiece('x', '1', 2)];
    const back = second.map((c): Change => (c.kind === 'edit' ? { ...c, value: null } : c));
    expect(spoils(...first)).toBe(1);
    expect(spoils(...first, ...first)).toBe(1);
    expect(spoils(...first, ...second)).toBe(2);
    expect(spoils(...second, ...first)).toBe(2);
    expect(spoils(...first, ...second, ...back)).toBe(1);
  });

  test.each(['cases/c1/inside/i1/bay', 'cases/c1/inside/i1/count', 'boards/b1/copies'])(
    '%s takes whole numbers from 0 to 1000 alone',
    (path) => {
      const not: readonly Json[] = [
        0.5,
        -1,
        1001,
        1e9,
        Number.NaN,
        Number.POSITIVE_INFINITY,
        '1',
        null,
        true,
        [1],
      ];
      for (const json of not) expect(fieldAt(path)?.read(json), `${json}`).toBeUndefined();
      for (const json of [0, 1, 1000]) expect(fieldAt(path)?.read(json)).toBe(json);
    },
  );

  test.each<[string, Json]>([
    ['cases/c1/hold', 'inside'],
    ['cases/c1/hold', 'constructor'],
    ['cases/c1/hasBack', 1],
    ['cases/c1/hasBack', 'true'],
    ['cases/c1/sideStock', 's'.repeat(25)],
    ['cases/c1/bays', ['1', '1.5']],
    ['cases/c1/bays', { length: 1 }],
    ['cases/c1/bays', Array(501).fill(null)],
    ['cases/c1/inside/i1/kind', 'drawer'],
    ['work/h1/machine', 'notch'],
    ['work/h1/part', 'p'.repeat(61)],
    ['parts/c1~left/machine', 'rip'],
    ['recipes/stop/stack', ['1/8', null]],
    ['recipes/stop/stack', '1/8'],
    ['recipes/stop/note', 'n'.repeat(401)],
    ['let/c1~left/len/1/why', 'w'.repeat(201)],
    ['let/c1~left/len/1/why', { toString: 'x' }],
    ['offcuts/o1/stock', 12],
    ['stock/s1/kind', 'plank'],
    ['standing', 's'.repeat(81)],
    ['deleted', '2026-13-01T00:00:00Z'],
    ['tape', '1/128'],
  ])('%s does not read %j', (path, json) => {
    expect(fieldAt(path)).toBeDefined();
    expect(fieldAt(path)?.read(json)).toBeUndefined();
  });
});

describe('names of the language', () => {
  const words = [
    'constructor',
    'prototype',
    'valueof',
    'hasownproperty',
    'toString',
    'valueOf',
    'hasOwnProperty',
    'isPrototypeOf',
  ];
  const lower = words.filter((word) => word === word.toLowerCase());

  test('as ids they are ids and nothing else: the job is plain data and its plan is worked out', () => {
    const changes = [
      ...lower.flatMap((id) => [
        ...edits.editStock(id, { readings: [l('3/4')], used: l('3/4') }),
        ...edits.editCase(id, {
          width: l('30'),
          height: l('30'),
          depth: l('12'),
          sideStock: id,
          hasTop: true,
        }),
        ...edits.editInside(id, id, { kind: 'fixed', bay: 1, at: l('10') }),
        ...edits.editBuilt(id, id, { used: l('28') }),
        ...edits.editBoard(id, { length: l('20'), across: l('10') }),
        ...edits.editRun(id, id, { spacing: 'pitch', count: 2 }),
        ...edits.editWork(id, { part: id, name: id, after: id }),
        ...edits.editOffcut(id, { stock: id, length: long, width: long }),
      ]),
      ...words.flatMap((word) => [
        ...edits.editPart(word, { machine: 'router' }),
        ...edits.editPiece(word, word, { asLength: l('3') }),
        ...edits.spoilPiece(word, word, 1),
        ...edits.editRecipe(word, { note: word }),
        ...edits.letAheadOf(`cut/${word}/${word}/${word}`, word),
      ]),
    ];
    const read = job.jobOf('j', fold(entriesOf(changes)).values);
    expect(read.unread).toEqual([]);
    expect(read.cases.map((c) => c.id)).toEqual(lower);
    const [name = ''] = words;
    for (const found of [read.parts, read.recipes, read.parts[name]?.pieces ?? {}]) {
      expect(Object.getPrototypeOf(found)).toBeNull();
    }
    expect(Object.keys(read.parts).sort()).toEqual([...words].sort());
    expect(read.recipes.valueOf).toEqual({ note: 'valueOf' });
    expect(read.let['cut/constructor/constructor/constructor']).toBe('constructor');
    expect(read.cases[0]?.built[name]).toEqual({ used: l('28') });
    const plan = planOf(read, {});
    expect(plan.parts.length).toBeGreaterThan(8);
  });

  test('what nobody wrote is not there, whatever its name', () => {
    const read = job.jobOf('j', new Map());
    const named: readonly Readonly<Record<string, unknown>>[] = [read.parts, read.recipes];
    for (const found of named)
      for (const word of [...words, '__proto__']) expect(found[word]).toBeUndefined();
  });

  const steps = [
    '__proto__',
    ...words,
    'cases',
    'parts',
    'pieces',
    'let',
    'recipes',
    'work',
    'inside',
    'built',
    'c1',
    'A',
    'name',
    'why',
    'used',
    'width',
    '',
  ];
  const path = fc.array(fc.constantFrom(...steps), { minLength: 1, maxLength: 6 }).map((s) => s.join('/'));
  const value: fc.Arbitrary<Json> = fc.oneof(
    fc.constantFrom<Json>(null, true, 3, '3/4', 'rip', 'router', [], ['1'], {}, { __proto__: null }),
    fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Json>,
  );

  test('whatever paths and values are given, jobOf throws nothing, names what it cannot read and leaves the language alone', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(path, value), { maxLength: 25 }), (pairs) => {
        const values = new Map(pairs);
        const read = job.jobOf('j', values);
        const readable = [...values].filter(([at, json]) => fieldAt(at)?.read(json) !== undefined);
        expect(read.unread).toHaveLength(values.size - readable.length);
        expect(Object.keys(Object.prototype)).toEqual([]);
        expect(Object.hasOwn(Object.prototype, 'machine')).toBe(false);
        expect(() => structuredClone(read)).not.toThrow();
      }),
      { numRuns: runs(300) },
    );
  });
});

test('a length field writes exactly what it reads: any fraction, either sign', () => {
  const field = fieldAt('cases/c1/width');
  fc.assert(
    fc.property(fc.bigInt(-(10n ** 9n), 10n ** 9n), fc.bigInt(1n, 10n ** 6n), (n, d) => {
      const x = l('1').mul(n).div(d) as Length;
      expect(field?.read(field.write(x))).toEqual(x);
    }),
    { numRuns: runs(200) },
  );
});
