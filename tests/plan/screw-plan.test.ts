import { describe, expect, test } from 'vitest';
import { editBank, editCase, editPutUp, editScrews, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editRoom } from '../../src/job/room-edits';
import { buyView } from '../../src/plan/buying';
import { anchorScrews, gaugeOf, screwPlace, screwsOf, screwsToBuy } from '../../src/plan/screw-plan';
import { l, w } from '../trade/grooves/sample';
import { worked } from './job-of';

/** A case with cleats of 3/4: what its screws go through follows from that. */
const decided: readonly Change[] = [
  ...editStock('s', { name: 'Ply', kind: 'sheet', planned: l('3/4') }),
  ...editCase('c1', {
    name: 'Cabinet',
    hold: 'outside',
    width: l('36'),
    height: l('64 1/4'),
    depth: l('16'),
    sideStock: 's',
    hasTop: true,
    cleats: 1,
  }),
];
const shelf = ['3/4', '1', '1 1/4', '1 1/2', '2', '2 1/2', '3'].map(l);

const placed = (own: Parameters<typeof editScrews>[1], ...more: readonly Change[]) => {
  const { plan } = worked([...decided, ...editScrews('x', { of: 'c1', ...own }), ...more]);
  const [screws] = screwsOf(plan.job, 'c1');
  if (!screws) throw new Error('no screws');
  return { plan, place: screwPlace(plan, screws, shelf) };
};

describe('screwPlace', () => {
  test('a cleat to the wall: the shortest that bites 1 1/4 in framing, through cleat and board', () => {
    // through 3/4 + 1/2, bite 1 1/4: at least 2 1/2; at most 1 1/4 + 3 1/2 - 1/8 = 4 5/8. Of the shelf 2 1/2, which
    // bites 1 1/4
    const { place } = placed({ kind: 'cleat', cover: l('1/2') });
    expect([w(place.stack), w(place.screw?.least), w(place.screw?.most)]).toEqual([
      '1 1/4',
      '2 1/2',
      '4 5/8',
    ]);
    expect([w(place.screw?.pick), w(place.screw?.bite)]).toEqual(['2 1/2', '1 1/4']);
    expect([place.isWall, place.row, place.count]).toEqual([true, undefined, undefined]);
    expect(placed({ kind: 'cleat', many: 4 }).place.count).toBe(4);
  });

  test('with the board not said as well the screw of 2 is enough: 3/4 + 1 1/4', () => {
    expect(w(placed({ kind: 'cleat' }).place.screw?.pick)).toBe('2');
  });

  test('a butted joint: through the side, into the end of the bottom, across it; what it leaves beside it is told', () => {
    // clear 36 − 1 1/2 = 34 1/2, a dado 1/4 at each end: 35 long, 16 deep. Through 3/4, bite 1 in an edge: from 1 3/4;
    // of the shelf the longest, 3. Number 8 is .164: (.750 − .164) ÷ 2 = .293
    const { place } = placed({ kind: 'butted', end: l('1 1/4'), most: l('6') });
    expect([w(place.stack), w(place.usual.into), w(place.usual.run), w(place.screw?.least)]).toEqual([
      '3/4',
      '35',
      '16',
      '1 3/4',
    ]);
    expect([w(place.screw?.pick), place.count, place.wall]).toEqual(['3', 4, { left: l('.293') }]);
    // in a part of 1/2: (.500 − .164) ÷ 2 = .168, .082 short of 1/4; number 6 is .138: .181
    expect(placed({ kind: 'butted', part: l('1/2') }).place.wall).toEqual({
      left: l('.168'),
      short: l('.082'),
    });
    expect(placed({ kind: 'butted', part: l('1/2'), gauge: '6' }).place.wall?.left).toEqual(l('.181'));
    expect(placed({ kind: 'case' }).place.wall).toBeUndefined();
  });

  test('two cases side by side: the longest that stays inside, in an even row', () => {
    // through 3/4 into 3/4, bite 3/8: 1 1/8 to 3/4 + 3/4 - 1/8 = 1 3/8: 1 1/4. Run 64 1/4, ends 2 1/8, most 12:
    // (64 1/4 - 4 1/4) / 12 = 5 spaces, 6 screws 12 apart; in two rows 12
    const { place } = placed({ kind: 'case', run: l('64 1/4'), end: l('2 1/8'), most: l('12'), rows: 2 });
    expect([w(place.screw?.pick), place.count]).toEqual(['1 1/4', 12]);
    expect(place.row?.ok && place.row.value.marks.map((x) => w(x))).toEqual([
      ...['2 1/8', '14 1/8', '26 1/8', '38 1/8', '50 1/8', '62 1/8'],
    ]);
  });

  test('the same with a washer and a countersink says which limit fails, by how much', () => {
    // a washer of 3/8: 1 1/2 to 1 3/4: 1 1/2 holds. With heads 1/8 below as well, 1 3/8 to 1 5/8: 1 1/2 still
    expect(w(placed({ kind: 'case', washer: l('3/8') }).place.screw?.pick)).toBe('1 1/2');
    // into 1/2: bite 3/8 and margin 1/8 just fit, 1 1/8 alone; a 64th thinner there is no room by that 64th
    const just = placed({ kind: 'case', into: l('1/2') }).place.screw;
    expect([just?.fails, w(just?.by)]).toEqual(['none-between', '1/8']);
    const thin = placed({ kind: 'case', into: l('31/64') }).place.screw;
    expect([thin?.fails, w(thin?.by)]).toEqual(['no-room', '1/64']);
  });

  test('what is not said and follows from nothing is asked', () => {
    expect(placed({ kind: 'other' }).place.missing).toEqual(['through', 'into']);
    expect(placed({ kind: 'top' }).place.missing).toEqual(['into']); // there is no loose top
    expect(placed({ kind: 'base' }).place.missing).toEqual(['into']);
    expect(placed({ kind: 'filler', into: l('3/4'), bite: 'face' }).place.missing).toEqual([]);
  });

  test('a number 8 unless another is said', () => {
    const { place, plan } = placed({ kind: 'case' });
    expect(plan.job.screws.map(gaugeOf)).toEqual([8]);
    // .060 + 8 × .013 = .164, the least 64th over it 11/64
    expect(w(place.holes.clearance)).toBe('11/64');
  });

  test('a row whose spacing would take more than two hundred says the least that would do', () => {
    // 64 between the ends at 1/4 would be 256 spaces; 64 / 199 is the least
    const { place } = placed({ kind: 'case', run: l('66'), end: l('1'), most: l('1/4') });
    expect(place.row?.ok === false && place.row.error).toMatchObject({ code: 'too-many', most: 200 });
    expect(place.count).toBeUndefined();
  });
});

describe('anchorScrews', () => {
  const card = (own: Parameters<typeof editPutUp>[1], ...more: readonly Change[]) => {
    const { plan } = worked([...decided, ...editPutUp('c1', own), ...more]);
    return { plan, place: screwPlace(plan, anchorScrews(plan, 'c1'), shelf) };
  };
  /** Example 7 of room without its pipe: studs at 12, 28 and 44 behind a cleat from 2 to 58. */
  const wall = editRoom({ found: l('11 1/4'), spacing: l('16'), cleatFrom: l('2'), cleatTo: l('58') });

  test('through cleat and board into framing; with a washer the tip is 1/16 less deep', () => {
    // 3/4 + 1/2 + 1 1/4 = 2 1/2 at least; a washer of 1/16 makes it 2 9/16, so 3
    const said = { fixings: 3, cover: l('1/2') };
    expect(w(card(said).place.screw?.pick)).toBe('2 1/2');
    const washers = card({ ...said, washers: true }).place.screw;
    expect([w(washers?.least), w(washers?.pick)]).toEqual(['2 9/16', '3']);
  });

  test('what is said of the cleat on the card is what another cleat goes by as well', () => {
    const { plan } = card({ cleatThick: l('1 1/2') }, ...editScrews('x', { of: 'c1', kind: 'cleat' }));
    const [other] = screwsOf(plan.job, 'c1');
    expect(other && w(screwPlace(plan, other, shelf).stack)).toBe('1 1/2');
  });

  test('one fixing at each stud of the wall until another number is said', () => {
    expect(card({}, ...wall).place.count).toBe(3);
    expect(card({ fixings: 4 }, ...wall).place.count).toBe(4);
    expect(card({}).place.count).toBeUndefined();
    expect(card({}, ...wall, ...editCase('c2', { name: 'Another' })).place.count).toBeUndefined();
  });

  test('solid sheathing is asked for its thickness, and the screw stays inside it', () => {
    expect(card({ wall: 'sheathing' }).place.missing).toEqual(['into']);
    // through 3/4 into 3/4: 3/4 + 3/8 = 1 1/8 to 3/4 + 3/4 - 1/8 = 1 3/8: the longest is 1 1/4
    expect(w(card({ wall: 'sheathing', into: l('3/4') }).place.screw?.pick)).toBe('1 1/4');
  });

  test('they are on the list To buy, beside another cleat', () => {
    const other = editScrews('x', { of: 'c1', kind: 'cleat', name: 'Upper cleat', many: 2 });
    const { plan } = card({ fixings: 3 }, ...other);
    expect(screwsToBuy(plan, shelf).map(({ bank, each, long }) => [bank, each, w(long)])).toEqual([
      ['Cabinet', 3, '2'],
      ['Upper cleat', 2, '2'],
    ]);
    expect(screwsToBuy(card({}).plan, shelf)).toEqual([]);
  });
});

describe('screwsToBuy', () => {
  test('a place with its screw and its count goes on the list, beside the fronts of drawers', () => {
    const { plan } = placed({ kind: 'cleat', name: 'Upper cleat', many: 6, cover: l('1/2') });
    expect(screwsToBuy(plan, shelf)).toMatchObject([{ bank: 'Upper cleat', pieces: 1, each: 6 }]);
    const view = buyView({ plan, needs: [], ticks: new Map(), frontScrew: () => undefined, screws: shelf });
    const rows = view.open.flatMap((g) => (g.group === 'screws' ? g.rows : []));
    // 6 come in a box of fifty
    expect(rows.map((r) => [r.op, Number(r.line.amount)])).toEqual([['buy/screws/5~2~no8', 50]]);
  });

  test('not without a count, nor of a case that is gone', () => {
    expect(screwsToBuy(placed({ kind: 'cleat' }).plan, shelf)).toEqual([]);
    const { plan } = worked([...decided, ...editScrews('x', { of: 'gone', kind: 'cleat', many: 3 })]);
    expect(screwsToBuy(plan, shelf)).toEqual([]);
    expect(worked(editBank('b', { name: 'Drawers' })).plan.job.screws).toEqual([]);
  });
});
