import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { editBank, editBoard, editCase, editStock } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { readJobFile } from '../../src/job/file';
import { editHanging } from '../../src/job/hanging';
import { jobOf } from '../../src/job/job';
import { type Folded, fold } from '../../src/job/log';
import { ratio } from '../../src/length/length';
import { type BuyView, buyOp, buyView, gotChanges, type Row, tickChanges } from '../../src/plan/buying';
import { type Plan, planOf } from '../../src/plan/plan';
import { goneText } from '../../src/screens/buy/gone-words';
import { amountWords, changedText, decimal, lineName, notText, whyText } from '../../src/screens/buy/words';
import type { SheetNeed } from '../../src/trade/buying/need';
import { screwFor } from '../../src/trade/install/screw';
import { l } from '../trade/grooves/sample';

const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
if (!file.ok) throw new Error(file.error.code);
const sample = file.value;

const entriesOf = (changes: readonly Change[]): readonly Entry[] =>
  changes.map((change, k) => ({
    job: sample.job,
    device: 'p1',
    count: 1000 + k,
    at: '2026-11-02T09:00:00Z',
    act: `p1.${1000 + k}`,
    label: 'bought',
    ...change,
  }));

type At = { readonly plan: Plan; readonly folded: Folded };
function jobWith(...changes: readonly Change[]): At {
  const folded = fold([...sample.entries, ...entriesOf(changes)]);
  return { plan: planOf(jobOf(sample.job, folded.values), {}), folded };
}

/** Sheets as a layout of the sample job might take them: 64 1/4 × 17 1/2 twice goes on one sheet. */
const needs: readonly SheetNeed[] = [
  {
    stock: 'sheeta',
    name: 'Sheet A, birch ply',
    kind: 'sheet',
    long: l('96'),
    wide: l('48'),
    count: 2,
    how: 'proved',
    pieces: 2,
    have: 0,
    spare: { long: l('30'), wide: l('17 1/2') },
  },
];

const screw = screwFor({
  through: l('5/8'),
  into: l('23/32'),
  sunk: l('0'),
  leastBite: l('3/8'),
  margin: l('1/8'),
  lengths: [l('3/4'), l('1')],
});

const viewAt = ({ plan, folded }: At, over: Partial<Parameters<typeof buyView>[0]> = {}): BuyView =>
  buyView({ plan, needs, ticks: folded.ticks, frontScrew: () => undefined, ...over });
const rowsIn = (view: BuyView): readonly Row[] => [...view.open.flatMap((g) => g.rows), ...view.got];
function rowOf(view: BuyView, op: string): Row {
  const row = rowsIn(view).find((r) => r.op === op);
  if (!row) throw new Error(op);
  return row;
}
const says = (row: Row): string => {
  const { figure, unit } = amountWords(row.line);
  return `${figure} ${unit}: ${lineName(row.line)}. ${whyText(row.line.why)}`;
};

describe('the buying list of the sample job', () => {
  const view = viewAt(jobWith());

  test('every line says why so many', () => {
    expect(rowsIn(view).map(says)).toEqual([
      '2 sheets: Sheet A, birch ply, 96\u00a0×\u00a048. 2 pieces come out of 2 sheets, the fewest possible. What is left holds a piece of 30\u00a0×\u00a017\u00a01/2 for test cuts.',
      // the filler strip is in it: the lines hang 40 apart; the left edge, scribed, closes where its wall is 17/32 out
      // of its line: 38 3/4 wide the case ends 38 7/32 from that line, and at the floor, 1 3/16 out of the other,
      // 41 3/16 - 38 7/32 = 2 31/32 are open; 1/8 over. It holds 64 1/4 × 3 3/32 × 3/4 / 144 = 1.035; the frame 2.284:
      // 3.32, and a fifth over 3.98, up to a tenth 4
      '4 board ft: Maple, for the frame. 7 pieces hold 3.32, and 20\u00a0% for waste. Counted 3/4 thick, as measured; sold rough it counts thicker.',
      '5 pairs: Slides 16 long. One pair a drawer: 5 drawers (Mineral drawers).',
    ]);
  });

  test('boxes that run in wood want no slides, and nobody asks for them', () => {
    const hung = viewAt(jobWith(...editHanging('drawers', { hung: 'runners' })));
    expect(rowsIn(hung).some(({ op }) => op.startsWith('buy/slides'))).toBe(false);
    expect(hung.not.map(notText).join()).not.toContain('slides');
    const blank = viewAt(jobWith(...editBank('drawers', { slideLong: undefined })));
    expect(blank.not.map(notText).join()).toContain('say how long the slides are');
  });

  test('what is asked for and not counted is named', () => {
    const said = view.not.map(notText);
    expect(said).toContain('Sheet B, birch ply: 11 pieces, and no sheets counted for them yet.');
    expect(said.some((text) => text.startsWith('Sheet A'))).toBe(false);
    expect(said.some((text) => text.includes('of no stock'))).toBe(false);
    const unsaid = viewAt(jobWith(...editBoard('shellcase', { stock: undefined }))).not.map(notText);
    expect(unsaid.some((text) => text.startsWith('2 pieces of no stock'))).toBe(true);
  });

  test('every tick is two words an operation may be made of', () => {
    for (const { op } of rowsIn(view)) expect(op).toMatch(/^buy(\/[A-Za-z0-9~]{1,60}){2}$/);
  });

  test('slides longer than the case inside allows say by how much', () => {
    // the case is 17 1/2 deep; twenty-inch slides stand out of it at the back
    const long = viewAt(jobWith(...editBank('drawers', { slideLong: l('20') })));
    expect(says(rowOf(long, 'buy/slides/20'))).toContain('too long for the depth there is');
    expect(says(rowOf(view, 'buy/slides/16'))).not.toContain('too long');
  });

  test('a stick turned into a sheet at the rack leaves the board feet and is named instead', () => {
    const turned = viewAt(jobWith(...editStock('maple', { kind: 'sheet' })));
    expect(rowsIn(turned).some((r) => r.op === 'buy/solid/maple')).toBe(false);
    expect(turned.not.map(notText)).toContain(
      'Maple, for the frame: 7 pieces, and no sheets counted for them yet.',
    );
  });

  test('the screw of the fronts is named, and not counted while nobody says how many a front', () => {
    const at = jobWith();
    const open = viewAt(at, { frontScrew: () => screw });
    expect(open.not.map(notText)).toContain(
      '5 fronts of Mineral drawers screwed on from inside, screws 1 long: say how many a front.',
    );
    expect(rowsIn(open).some((r) => r.line.group === 'screws')).toBe(false);
    const said = viewAt(at, { frontScrew: () => screw, screwsEach: () => 4 });
    expect(says(rowOf(said, 'buy/screws/1'))).toBe(
      '50 screws: Screws 1 long. 5 fronts of Mineral drawers at 4 each: 20. In boxes, 1 of fifty.',
    );
    expect(said.not.some((x) => x.code === 'screws-not-said')).toBe(false);
  });

  test('with no screw on the shelf that does, the lengths that would are said', () => {
    const none = { least: l('1'), most: l('1 7/32'), fails: 'too-short' } as const;
    const open = viewAt(jobWith(), { frontScrew: () => none });
    expect(open.not.map(notText).some((text) => text.includes('between 1 and 1 7/32'))).toBe(true);
  });
});

describe('ticks in the yard', () => {
  const row = rowOf(viewAt(jobWith()), 'buy/sheets/sheeta');

  test('a bought line goes down to what is got; unticked it comes back', () => {
    const got = viewAt(jobWith(...tickChanges(row)));
    expect(got.got.map((r) => [r.op, changedText(r)])).toEqual([['buy/sheets/sheeta', undefined]]);
    const back = viewAt(jobWith(...tickChanges(row), ...tickChanges(rowOf(got, row.op))));
    expect(back.got).toEqual([]);
  });

  const now = (count: number) =>
    viewAt(jobWith(...tickChanges(row)), { needs: needs.map((x) => ({ ...x, count })) });

  test('ticked at 2, now 3: said, still ticked, and up where it is seen until the rest is got', () => {
    const more = rowOf(now(3), row.op);
    expect([changedText(more), more.now]).toEqual(['ticked at 2, now 3', 'more']);
    expect(now(3).got).toEqual([]);
    const rest = viewAt(jobWith(...tickChanges(row), ...gotChanges(more)), {
      needs: needs.map((x) => ({ ...x, count: 3 })),
    });
    expect(rest.got.map(changedText)).toEqual([undefined]);
  });

  test('ticked at 2, now 1: said, and stays with what is got', () => {
    expect(now(1).got.map(changedText)).toEqual(['ticked at 2, now 1']);
  });

  test('bought and no longer asked for: never dropped from sight', () => {
    const gone = viewAt(jobWith(...tickChanges(row)), { needs: [] }).gone;
    const name = (id: string) => (id === 'sheeta' ? 'Sheet A' : undefined);
    expect(gone.map((g) => goneText(g, name))).toEqual([
      '2 sheets, Sheet A: nothing in the job asks for it now.',
    ]);
  });

  test('slides got at one length, the job at another: the old ones are said, the new ones are to buy', () => {
    const slides = rowOf(viewAt(jobWith()), 'buy/slides/16');
    const after = viewAt(jobWith(...tickChanges(slides), ...editBank('drawers', { slideLong: l('14 1/2') })));
    expect(rowOf(after, 'buy/slides/29~2').now).toBe('open');
    expect(after.gone.map((g) => goneText(g, () => undefined))).toEqual([
      '5 pairs, slides 16 long: nothing in the job asks for it now.',
    ]);
  });

  test('a strip of stuff not measured yet has a line of its own; got there, it is told when it is a part', () => {
    const unknown = [
      ...editStock('new', { name: 'Maple B', kind: 'stick' }),
      ...editCase('case', { fillerStock: 'new' }),
    ];
    const line = rowOf(viewAt(jobWith(...unknown)), 'buy/fillers/case~right');
    expect(says(line)).toBe(
      '1 strip: Cabinet, right: 3 3/32 wide, 64 1/4 long. As wide as the gap at the right at its widest, and what is scribed off; as long as the case is high.',
    );
    const measured = editStock('new', { readings: [l('3/4')], used: l('3/4') });
    const after = viewAt(jobWith(...unknown, ...tickChanges(line), ...measured));
    expect(after.gone.map((g) => goneText(g, () => undefined))).toEqual([
      '1 strip, filler: a part now, counted with what it is of.',
    ]);
    // 1.035 and a fifth over: 1.24, up to 1.3; the frame alone 2.284 and a fifth: 2.74, up to 2.8
    expect(says(rowOf(after, 'buy/solid/new'))).toContain('1.3 board ft: Maple B. 1 piece');
    expect(says(rowOf(after, 'buy/solid/maple'))).toContain('2.8 board ft: Maple, for the frame. 6 pieces');
  });

  test('a board foot in tenths is kept to the letter', () => {
    const frame = rowOf(viewAt(jobWith(...editCase('case', { fillerStock: 'sheetb' }))), 'buy/solid/maple');
    expect(tickChanges(frame)).toEqual([{ kind: 'tick', op: 'buy/solid/maple', figure: '14/5' }]);
  });

  test('board feet are kept to the letter', () => {
    const oak = rowOf(viewAt(jobWith()), buyOp('solid/maple'));
    expect(tickChanges(oak)).toEqual([{ kind: 'tick', op: 'buy/solid/maple', figure: '4' }]);
    expect(viewAt(jobWith(...tickChanges(oak))).got.map((r) => r.now)).toEqual(['got']);
  });
});

describe('words of the list', () => {
  const layout = (over: Partial<SheetNeed>) => {
    const [first] = needs;
    if (!first) throw new Error('no need');
    return whyText({ code: 'layout', need: { ...first, ...over } });
  };

  test('how sure the count is: proved, laid out, or a bound', () => {
    expect(layout({})).toContain('the fewest possible');
    expect(layout({ how: 'laid' })).toContain('fewer might do');
    expect(layout({ how: 'least', pieces: 1, count: 1 })).toContain(
      '1 piece not laid out yet: 1 sheet at least',
    );
  });

  test('beside sticks the same wood is said by the board foot, to be bought instead', () => {
    const solid = {
      pieces: 6,
      net: ratio(3n),
      buy: ratio(18n, 5n),
      waste: ratio(1n, 5n),
      thick: l('1'),
    } as const;
    const [first] = needs;
    if (!first) throw new Error('no need');
    const text = whyText({
      code: 'layout',
      need: { ...first, kind: 'stick' },
      solid: { ...solid, as: 'rough' },
    });
    expect(text).toContain('Or 3.6 board ft instead, 20\u00a0% for waste in it, 1 thick rough.');
  });

  test('what is at hand is said beside what is taken', () => {
    expect(layout({ count: 3, have: 1 })).toContain('3 sheets, the fewest possible, 1 at hand.');
  });

  test('the one more is for test cuts', () => {
    expect(whyText({ code: 'tests' })).toBe('One part’s worth for test cuts: nothing left that holds one.');
  });

  test('decimals carry no idle noughts and round to the nearest', () => {
    expect(
      [ratio(12n), ratio(18n, 5n), ratio(37n, 20n), ratio(0n), ratio(1n, 25n)].map((x) => decimal(x, 1)),
    ).toEqual(['12', '3.6', '1.9', '0', '0']);
    expect(decimal(ratio(101n, 50n), 2)).toBe('2.02');
  });
});
