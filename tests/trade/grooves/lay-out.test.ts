import { describe, expect, test } from 'vitest';
import { add, isNegative, subtract } from '../../../src/length/length';
import type { Board, Run } from '../../../src/trade/grooves/board';
import { thinnestWeb } from '../../../src/trade/grooves/lands';
import { datumOf, fromOther, layOut, mostCuts, spacerFor } from '../../../src/trade/grooves/lay-out';
import { centredStart } from '../../../src/trade/grooves/place';
import { board, codes, l, nears, one, run, w, wide } from './sample';

/** Tray grooves of the mineral cabinet: 13/32 wide, 1 13/16 apart, filling a clear bay. */
const trays = run({
  spacing: 'fill',
  width: l('13/32'),
  pitch: l('1 13/16'),
  first: l('2 1/8'),
  endRoom: l('2 1/2'),
  part: l('11/32'),
});

describe('layOut', () => {
  test('Example 5 of grooves: a bottom of 18 mm in place of 23/32 moves the side’s marks and the spacer, not the marks from the datum', () => {
    const datum = datumOf(l('4 1/8'), l('18 mm'));
    const first = nears(layOut(board({ length: l('64 1/4'), datum, runs: [one('2 1/8', '13/32')] })))[0];
    expect([w(datum), first, w(spacerFor(datum, l('9/32')).spacer)]).toEqual([
      '4 847/1016',
      '6 487/508',
      '4 2245/4064',
    ]);
  });

  test('Example 1 of grooves: fills a bay of 58 11/16 with thirty grooves, 1 3/32 left over', () => {
    const layout = layOut(board({ length: l('58 11/16'), runs: [trays] }));
    expect(layout.problems).toEqual([]);
    expect(layout.grooves).toHaveLength(30);
    expect(w(layout.facts[0]?.leftOver)).toBe('1 3/32');
    expect(nears(layout).slice(0, 2)).toEqual(['2 1/8', '3 15/16']);
  });

  test('says what stands clear between loose trays: the pitch less the tray', () => {
    expect(w(layOut(board({ length: l('58 11/16'), runs: [trays] })).facts[0]?.clear)).toBe('1 15/32');
  });

  test('Example 2 of grooves: adds half of what is left over to the start of a centred run', () => {
    const layout = layOut(board({ length: l('58 11/16'), runs: [{ ...trays, centred: true }] }));
    expect(nears(layout)[0]).toBe('2 43/64');
    expect(w(layout.facts[0]?.endLand)).toBe(w(subtract(l('58 11/16'), l('55 41/64'))));
  });

  test('Example 3 of grooves: carries marks from the datum to the side and to the partition', () => {
    const at = { spacing: 'given', at: [l('2 1/8'), l('3 15/16')], width: l('13/32') } as const;
    const on = (datum: string) =>
      nears(layOut(board({ length: l('64 1/4'), datum: l(datum), runs: [run(at)] })));
    expect(on('4 27/32')).toEqual(['6 31/32', '8 25/32']);
    expect(on('9/32')).toEqual(['2 13/32', '4 7/32']);
  });

  test('Example 4 of grooves: the thirtieth of a run started at the datum falls at 59 17/32 on the side, 54 31/32 on the partition', () => {
    const last = (datum: string) =>
      nears(
        layOut(board({ length: l('64 1/4'), datum: l(datum), runs: [{ ...trays, span: l('58 11/16') }] })),
      )[29];
    expect(last('4 27/32')).toBe('59 17/32');
    expect(last('9/32')).toBe('54 31/32');
  });

  test('Example 6 of grooves: opens eleven trays equally over a span, grooves centred on the trays', () => {
    const eleven = run({
      spacing: 'openings',
      count: 11,
      width: l('13/32'),
      part: l('11/32'),
      span: l('24 5/16'),
    });
    const layout = layOut(board({ length: l('64 1/4'), datum: l('4 27/32'), runs: [eleven] }));
    expect(w(layout.facts[0]?.opening)).toBe('1 91/128');
    expect(w(layout.facts[0]?.pitch)).toBe('2 7/128');
    expect(nears(layout).slice(0, 3)).toEqual(['6 67/128', '8 37/64', '10 81/128']);
  });

  test('Example 13 of grooves: drops the narrow grooves a wide one meets, and the others keep their numbers', () => {
    const narrow = run({
      count: 9,
      width: l('13/32'),
      depth: l('5/16'),
      pitch: l('1 13/16'),
      first: l('1 5/16'),
    });
    const wides = ['8 1/8', '13 3/8'].map((near, k) =>
      wide({ id: `w${k + 1}`, near: l(near), width: l('23/32'), depth: l('5/16') }),
    );
    const layout = layOut(board({ length: l('24'), runs: [narrow], wides }));
    const kept = layout.grooves.filter((g) => !g.wide).map((g) => g.no);
    expect(kept).toEqual(['1', '2', '3', '4', '6', '7', '9']);
    expect(layout.dropped.map((d) => [d.groove.no, d.by.no, d.why, w(d.amount)])).toEqual([
      ['5', 'W1', 'overlap', '9/32'],
      ['8', 'W2', 'overlap', '3/32'],
    ]);
    expect(layout.grooves.map((g) => g.id)).toEqual([
      'r~1',
      'r~2',
      'r~3',
      'r~4',
      'w1',
      'r~6',
      'r~7',
      'w2',
      'r~9',
    ]);
  });

  // The larger of the depth and 1/4: common practice, no source.
  test.each([
    ['1/8', '1/4', 0],
    ['1/8', '15/64', 1],
    ['5/16', '5/16', 0],
    ['5/16', '19/64', 1],
  ])('a narrow groove %s deep with %s of land beside a wide one: %s dropped', (depth, land, count) => {
    const narrow = one('3', '1/2', { depth: l(depth) });
    const near = add(l('3 1/2'), l(land));
    const { dropped } = layOut(
      board({ length: l('24'), runs: [narrow], wides: [wide({ near, width: l('3/4') })] }),
    );
    expect(dropped.map((d) => [d.why, w(d.amount)])).toEqual(count ? [['land', land]] : []);
  });

  test('a wide groove on the other face drops nothing', () => {
    const wides = [wide({ face: 'B', near: l('3'), width: l('3/4') })];
    expect(layOut(board({ length: l('24'), runs: [one('3', '1/4')], wides })).dropped).toEqual([]);
  });

  test('Example 14 of grooves: three grooves with equal ends are end-for-end safe; the same three from 3 1/16 are not', () => {
    const three = (first: string) =>
      layOut(
        board({
          length: l('37 1/2'),
          runs: [run({ count: 3, width: l('13/32'), pitch: l('1 13/16'), first: l(first) })],
        }),
      );
    expect(three('3 1/16').endForEndSafe).toBe(false);
    expect(three('16 47/64').endForEndSafe).toBe(true);
    expect(w(centredStart(l('37 1/2'), l('1 13/16'), { n: 3, width: l('13/32') }))).toBe('16 47/64');
  });

  test('a stopped groove is never end-for-end safe: turning swaps front and back', () => {
    const middle = { count: 1, width: l('1/2'), first: l('4 3/4') };
    const safe = (over: object) =>
      layOut(board({ length: l('10'), runs: [run({ ...middle, ...over })] })).endForEndSafe;
    expect([safe({ stopped: l('3/4') }), safe({})]).toEqual([false, true]);
  });

  test.each([
    ['near', '3'],
    ['centre', '2 3/4'],
    ['far', '2 1/2'],
  ] as const)('a first groove given by its %s has its near edge at %s', (point, near) => {
    const runs = [run({ count: 1, width: l('1/2'), first: l('3'), point })];
    expect(nears(layOut(board({ length: l('10'), runs })))).toEqual([near]);
  });

  test('orders face A before face B, each along the board', () => {
    const runs = [
      one('5', '1/4', { id: 'x', face: 'B' }),
      one('7', '1/4', { id: 'y' }),
      one('2', '1/4', { id: 'z' }),
    ];
    expect(layOut(board({ length: l('10'), runs })).grooves.map((g) => g.id)).toEqual(['z~1', 'y~1', 'x~1']);
  });
});

describe('layOut refuses', () => {
  const long = { length: l('10') };
  const four = { count: 4, width: l('1/2'), pitch: l('2'), first: l('1') };

  test.each([
    ['width', { width: undefined }],
    ['count', { count: undefined }],
    ['pitch', { pitch: undefined }],
    ['first', { first: undefined }],
  ] as const)('a run at a pitch without its %s, by name', (field, over) => {
    expect(layOut(board({ ...long, runs: [run({ ...four, ...over })] })).problems).toEqual([
      { code: 'missing', in: 'r', field },
    ]);
  });

  test('one groove needs no pitch', () => {
    const runs = [run({ ...four, count: 1, pitch: undefined })];
    expect(layOut(board({ ...long, runs })).problems).toEqual([]);
  });

  test('a board without a length, and then does not call a fill too short', () => {
    expect(layOut(board({ runs: [trays] })).problems).toEqual([{ code: 'missing', field: 'length' }]);
  });

  test('a list of positions that is empty, and a wide groove without its place', () => {
    const found = layOut(
      board({ ...long, runs: [run({ spacing: 'given', width: l('1/2') })], wides: [wide()] }),
    );
    expect(found.problems).toEqual([
      { code: 'missing', in: 'r', field: 'at' },
      { code: 'missing', in: 'w', field: 'near' },
      { code: 'missing', in: 'w', field: 'width' },
    ]);
  });

  test.each([0, -1, 1.5, 1001, Number.NaN])('%s grooves', (count) => {
    expect(codes(layOut(board({ ...long, runs: [run({ ...four, count })] })).problems)).toEqual([
      'count-not-whole',
    ]);
  });

  test.each(['length', 'thickness', 'cutter', 'across'] as const)('a board whose %s is nothing', (field) => {
    const found = layOut(board({ ...long, [field]: l('0'), runs: [run(four)] })).problems;
    expect(found).toContainEqual({ code: 'not-positive', field });
  });

  test('room of less than nothing at the far end, by how much; none at all is well', () => {
    const { problems } = layOut(
      board({ ...long, runs: [run({ ...four, spacing: 'fill', endRoom: l('-1/64') })] }),
    );
    expect(problems).toContainEqual({ code: 'negative', in: 'r', field: 'endRoom', by: l('1/64') });
    const none = board({ ...long, runs: [run({ ...four, spacing: 'fill', endRoom: l('0') })] });
    expect(layOut(none).problems).toEqual([]);
  });

  test('a thousand grooves are laid out', () => {
    const runs = [run({ count: 1000, width: l('1/128'), pitch: l('1/64'), first: l('1') })];
    expect(layOut(board({ length: l('96'), runs })).grooves).toHaveLength(1000);
  });

  const fine = (id: string, count: number) =>
    run({ id, count, width: l('1/128'), pitch: l('1/64'), first: l('1') });

  const grooved: readonly (readonly [string, Partial<Board>, number, number])[] = [
    ['two thousand cuts are the most of one layout', { copies: 2 }, 1000, 0],
    ['a pair is two boards', { made: 'pair' }, 1000, 0],
    ['one cut more is too many', { copies: 3 }, 667, 1],
    ['a thousand boards of nine hundred are', { copies: 1000 }, 900, 1],
    ['a partition is one board, whatever it says', { made: 'partition', copies: 1000 }, 900, 0],
  ];
  test.each(grooved)('%s', (_, of, count, found) => {
    const { problems, grooves } = layOut(board({ length: l('96'), ...of, runs: [fine('r', count)] }));
    expect(problems).toHaveLength(found);
    expect(grooves).toHaveLength(found ? 0 : count);
    if (found)
      expect(problems).toEqual([{ code: 'too-many', grooves: count, copies: of.copies, most: mostCuts }]);
  });

  test('many runs, without placing those past the most', () => {
    const runs = Array.from({ length: 5000 }, (_, k) => fine(`r${k}`, 1000));
    const { problems, facts } = layOut(board({ length: l('96'), runs }));
    expect(problems).toEqual([{ code: 'too-many', grooves: 3000, copies: 1, most: mostCuts }]);
    expect(facts).toHaveLength(5000);
  });

  test('a fill of more than a thousand grooves, without working them out', () => {
    const runs = [run({ spacing: 'fill', width: l('1/100000'), pitch: l('1/50000'), first: l('0') })];
    expect(codes(layOut(board({ ...long, runs })).problems)).toEqual(['count-not-whole']);
  });

  test.each(['0', '-1/2'])('a width of %s', (width) => {
    expect(layOut(board({ ...long, runs: [run({ ...four, width: l(width) })] })).problems).toEqual([
      { code: 'not-positive', in: 'r', field: 'width' },
    ]);
  });

  test.each(['1/2', '1/4'])('a pitch of %s for grooves 1/2 wide', (pitch) => {
    expect(codes(layOut(board({ ...long, runs: [run({ ...four, pitch: l(pitch) })] })).problems)).toEqual([
      'pitch-too-small',
    ]);
  });

  test('a first groove off the end, by how much', () => {
    const [problem] = layOut(board({ ...long, runs: [run({ ...four, first: l('-1/8') })] })).problems;
    expect(problem).toMatchObject({ code: 'off-the-end', no: '1' });
    expect(problem?.code === 'off-the-end' && w(problem.by)).toBe('1/8');
  });

  test('a last groove past the end, by how much, how many fit and where all would', () => {
    const [problem] = layOut(board({ ...long, runs: [run({ ...four, count: 6 })] })).problems;
    if (problem?.code !== 'past-the-end') throw new Error('not past the end');
    expect([problem.no, w(problem.by), problem.fits]).toEqual(['6', '1 1/2', 5]);
    expect(isNegative(problem.startAt)).toBe(true);
  });

  const past = (over: Partial<Run>, more: Partial<Board> = {}) => {
    const found = layOut(board({ ...long, runs: [run({ ...four, ...over })], ...more })).problems;
    const [problem] = found.filter((p) => p.code === 'past-the-end');
    if (problem?.code !== 'past-the-end') throw new Error('not past the end');
    return problem;
  };

  test.each([
    ['near', '3 3/4', '3 1/2'],
    ['centre', '4', '3 3/4'],
    ['far', '4 1/4', '4'],
  ] as const)('a start given by its %s at %s is answered by its %s too: %s', (point, first, startAt) => {
    const problem = past({ point, first: l(first) });
    expect([w(problem.by), w(problem.startAt)]).toEqual(['1/4', startAt]);
    const moved = [run({ ...four, point, first: problem.startAt })];
    expect(layOut(board({ ...long, runs: moved })).problems).toEqual([]);
  });

  test('a start whose groove would stick out at the near end is no answer', () => {
    // moved by 3/16 the centre would stand 3/16 in, and the groove 1/16 out
    const problem = past({ point: 'centre', first: l('3/8'), count: 5, pitch: l('2 7/16') });
    expect([w(problem.by), isNegative(problem.startAt), problem.fits]).toEqual(['3/8', true, 4]);
  });

  test('the ones a wide groove displaced count among those that fit, and the start is the run’s own', () => {
    const wides = [wide({ near: l('3'), width: l('1') })];
    const problem = past({ count: 5, first: l('1 3/4') }, { wides });
    expect([w(problem.by), problem.fits, w(problem.startAt)]).toEqual(['1/4', 4, '1 1/2']);
  });

  test('no start is offered where none lets all fit: a list, a fill of too long a span', () => {
    const list = past({ spacing: 'given', at: [l('1'), l('9 3/4')] });
    const filled = past({ spacing: 'fill', span: l('12') });
    expect([isNegative(list.startAt), list.fits]).toEqual([true, 1]);
    expect([isNegative(filled.startAt), filled.fits]).toEqual([true, 5]);
  });

  test('openings past the end are answered by where their span would have to start', () => {
    const spread = { spacing: 'openings', count: 2, span: l('7') } as const;
    const problem = past({ ...spread, first: l('6') });
    expect([w(problem.by), w(problem.startAt), problem.fits]).toEqual(['1', '5', 1]);
    const moved = [run({ ...four, ...spread, first: problem.startAt })];
    expect(layOut(board({ ...long, runs: moved })).problems).toEqual([]);
  });

  test('openings that leave no wood between grooves wider than their parts', () => {
    const runs = [
      run({ spacing: 'openings', count: 2, width: l('1'), part: l('1/2'), first: l('3'), span: l('2') }),
    ];
    const [problem] = layOut(board({ ...long, runs })).problems;
    expect(problem?.code === 'pitch-too-small' && [w(problem.pitch), w(problem.width)]).toEqual(['5/6', '1']);
  });

  test.each(['0', '-1'])('a groove stopped %s short of the front', (stopped) => {
    expect(layOut(board({ ...long, runs: [run({ ...four, stopped: l(stopped) })] })).problems).toEqual([
      { code: 'not-positive', in: 'r', field: 'stopped' },
    ]);
  });

  test('a start given from the datum is answered from the datum', () => {
    const runs = [run({ ...four, first: l('3') })];
    const [problem] = layOut(board({ length: l('12'), datum: l('3'), runs })).problems;
    if (problem?.code !== 'past-the-end') throw new Error('not past the end');
    expect([w(problem.by), w(problem.startAt)]).toEqual(['1/2', '2 1/2']);
    const moved = [run({ ...four, first: problem.startAt })];
    expect(layOut(board({ length: l('12'), datum: l('3'), runs: moved })).problems).toEqual([]);
  });

  test('a fill with no room for one, by how much it is short', () => {
    const runs = [run({ spacing: 'fill', width: l('1/2'), pitch: l('2'), first: l('9'), endRoom: l('1') })];
    const [problem] = layOut(board({ ...long, runs })).problems;
    expect(problem?.code === 'none-fit' && w(problem.short)).toBe('1/2');
  });

  test('parts that take the whole span, and says how many leave an opening', () => {
    const runs = [run({ spacing: 'openings', count: 20, width: l('1/2') })];
    const [problem] = layOut(board({ ...long, runs })).problems;
    expect(problem).toMatchObject({ code: 'no-openings', fits: 19 });
  });

  test('a part thicker than its groove', () => {
    const runs = [run({ spacing: 'openings', count: 2, width: l('1/2'), part: l('9/16') })];
    expect(codes(layOut(board({ ...long, runs })).problems)).toEqual(['part-too-thick']);
  });

  test('two runs of one face that meet, and not of two faces', () => {
    const on = (face: 'A' | 'B') =>
      layOut(
        board({ ...long, runs: [one('3', '1/2', { id: 'a' }), one('3 1/4', '1/2', { id: 'b', face })] }),
      );
    const [problem] = on('A').problems;
    expect(problem).toMatchObject({ code: 'overlap', face: 'A', a: 'a~1', b: 'b~1' });
    expect(problem?.code === 'overlap' && w(problem.by)).toBe('1/4');
    expect(on('B').problems).toEqual([]);
  });

  test.each(['23/32', '1'])('a depth of %s in a board 23/32 thick', (depth) => {
    const runs = [one('3', '1/2', { depth: l(depth) })];
    expect(codes(layOut(board({ ...long, thickness: l('23/32'), runs })).problems)).toEqual(['too-deep']);
  });

  test('opposed grooves that meet through the board', () => {
    const runs = [
      one('3', '1/2', { id: 'a', depth: l('3/8') }),
      one('3 1/4', '1/2', { id: 'b', face: 'B', depth: l('3/8') }),
    ];
    const [problem] = layOut(board({ ...long, thickness: l('23/32'), runs })).problems;
    expect(problem?.code === 'no-web' && w(problem.by)).toBe('1/32');
  });

  test('everything at once, not the first thing only', () => {
    const found = layOut(
      board({
        length: l('0'),
        copies: 0,
        runs: [run({ count: 0 })],
        wides: [wide({ near: l('1'), width: l('0') })],
      }),
    );
    expect(codes(found.problems)).toEqual(
      expect.arrayContaining(['not-positive', 'missing', 'count-not-whole']),
    );
    expect(found.problems.length).toBeGreaterThanOrEqual(6);
    expect(found.endForEndSafe).toBe(false);
  });
});

// Limits of these warnings: common practice, no source.
describe('layOut warns', () => {
  const t = { length: l('20'), thickness: l('23/32') };
  const opposed = (a: string, b: string) =>
    layOut(
      board({
        ...t,
        runs: [
          one('5', '1/2', { id: 'a', depth: l(a) }),
          one('5 1/4', '1/2', { id: 'b', face: 'B', depth: l(b) }),
        ],
      }),
    );

  test('Example 8 of grooves: of a web of 5/32 between two dadoes 9/32 deep in 23/32, not of 1/4 or 11/32', () => {
    const [warning] = opposed('9/32', '9/32').warnings;
    expect(warning).toMatchObject({ code: 'web', a: 'a~1', b: 'b~1' });
    expect(warning?.code === 'web' && w(warning.web)).toBe('5/32');
    expect(opposed('9/32', '3/16').warnings).toEqual([]);
    expect(opposed('3/16', '3/16').warnings).toEqual([]);
  });

  test('Example 8 of grooves: the web is told where it is sound too', () => {
    const web = (a: string, b: string) => thinnestWeb(opposed(a, b).grooves, l('23/32'));
    expect(w(web('3/16', '3/16')?.web)).toBe('11/32');
    expect(web('9/32', '3/16')).toMatchObject({ a: 'a~1', b: 'b~1', web: l('1/4') });
  });

  test('the web behind grooves of one face is that of the deepest; without depths there is none to tell', () => {
    const at = (depth?: string) =>
      layOut(
        board({
          ...t,
          runs: [
            one('5', '1/2', depth ? { depth: l(depth) } : {}),
            one('9', '1/2', { id: 'q', depth: l('1/8') }),
          ],
        }),
      );
    expect(thinnestWeb(at('3/16').grooves, l('23/32'))).toMatchObject({ a: 'r~1', web: l('17/32') });
    expect(thinnestWeb(at().grooves, l('23/32'))).toMatchObject({ a: 'q~1', web: l('19/32') });
    expect(thinnestWeb(layOut(board({ ...t, runs: [one('5', '1/2')] })).grooves, l('23/32'))).toBeUndefined();
  });

  test('of a web of 3/16 behind a groove with nothing opposite, once a run', () => {
    const runs = [run({ count: 3, pitch: l('3'), first: l('3'), width: l('1/2'), depth: l('17/32') })];
    const { warnings } = layOut(board({ ...t, runs }));
    expect(
      warnings.filter((x) => x.code === 'web').map((x) => x.code === 'web' && [x.a, x.b, w(x.web)]),
    ).toEqual([['r~1', undefined, '3/16']]);
    expect(codes(warnings)).toContain('deep');
  });

  test.each([
    ['5/32', ['web']],
    ['1/8', []],
  ])('a groove %s deep in thin stuff 5/16 leaves less than 3/16 behind it or not', (depth, want) => {
    const runs = [one('5', '1/2', { depth: l(depth) })];
    const { warnings } = layOut(board({ length: l('20'), thickness: l('5/16'), runs }));
    expect(codes(warnings).filter((code) => code === 'web')).toEqual(want);
  });

  test.each([
    ['3/8', '1/4', []],
    ['11/32', '1/4', ['end-land']],
    ['7/16', '1/2', ['end-land']],
  ])('at the end: land %s beside a groove %s deep', (near, depth, want) => {
    expect(
      codes(layOut(board({ length: l('20'), runs: [one(near, '1/2', { depth: l(depth) })] })).warnings),
    ).toEqual(want);
  });

  test('of land at the other end, and between neighbours', () => {
    const runs = [
      run({ spacing: 'given', at: [l('18'), l('18 11/16'), l('19 1/4')], width: l('1/2'), depth: l('3/16') }),
    ];
    const { warnings } = layOut(board({ length: l('20'), runs }));
    expect(warnings).toMatchObject([
      { code: 'end-land', at: 'r~3', end: 'other' },
      { code: 'land', a: 'r~1', b: 'r~2' },
      { code: 'land', a: 'r~2', b: 'r~3' },
    ]);
  });

  test('by the deeper of two neighbours of two runs', () => {
    const runs = [
      one('4', '1/2', { id: 'a', depth: l('1/8') }),
      one('4 13/16', '1/2', { id: 'b', depth: l('3/8') }),
    ];
    const turned = [
      one('4', '1/2', { id: 'a', depth: l('3/8') }),
      one('4 13/16', '1/2', { id: 'b', depth: l('1/8') }),
    ];
    expect(codes(layOut(board({ length: l('20'), runs })).warnings)).toEqual(['land']);
    expect(codes(layOut(board({ length: l('20'), runs: turned })).warnings)).toEqual(['land']);
  });

  test.each([
    ['1/2', []],
    ['33/64', ['deep']],
  ])('of a groove %s deep in a board 1 thick, half and no more being well', (depth, want) => {
    const runs = [one('5', '1/2', { depth: l(depth) })];
    expect(codes(layOut(board({ length: l('20'), thickness: l('1'), runs })).warnings)).toEqual(want);
  });
});

describe('datumOf', () => {
  test('is floor to bottom and the bottom itself', () => {
    expect(w(datumOf(l('4 1/8'), l('23/32')))).toBe('4 27/32');
  });
});

describe('spacerFor', () => {
  test('Example 3 of grooves: is 4 9/16 for a partition housed 9/32 when the side stands 4 27/32 below the datum', () => {
    const { spacer, at } = spacerFor(l('4 27/32'), l('9/32'));
    expect([w(spacer), at]).toEqual(['4 9/16', 'mate']);
  });

  test('goes with the board when the mate has the larger datum', () => {
    const { spacer, at } = spacerFor(l('9/32'), l('4 27/32'));
    expect([w(spacer), at]).toEqual(['4 9/16', 'board']);
  });
});

describe('fromOther', () => {
  test.each([
    ['3 1/16', '34 1/32'],
    ['4 7/8', '32 7/32'],
    ['6 11/16', '30 13/32'],
  ])('a groove 13/32 wide at %s of 37 1/2 stands at %s from the other end', (near, other) => {
    expect(w(fromOther(l('37 1/2'), l(near), l('13/32')))).toBe(other);
  });
});

describe('places given one by one', () => {
  const given = (at: readonly (ReturnType<typeof l> | undefined)[]) =>
    layOut(board({ length: l('40'), runs: [run({ spacing: 'given', width: l('1/2'), at })] })).grooves.map(
      (g) => [g.id, g.no, w(g.near)],
    );

  test('one taken away from the middle leaves the others their numbers, so no tick moves', () => {
    expect(given([l('5'), undefined, l('15')])).toEqual([
      ['r~1', '1', '5'],
      ['r~3', '3', '15'],
    ]);
  });

  test('a number once taken away is not given again', () => {
    expect(given([l('5'), undefined, l('20')]).map(([id]) => id)).toEqual(['r~1', 'r~3']);
  });

  test('with every place taken away the places are asked for', () => {
    const layout = layOut(
      board({ length: l('40'), runs: [run({ spacing: 'given', width: l('1/2'), at: [undefined] })] }),
    );
    expect(layout.problems).toEqual([{ code: 'missing', in: 'r', field: 'at' }]);
  });
});
