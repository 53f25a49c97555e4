import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, type Length, subtract } from '../../../src/length/length';
import { markAt, tapes } from '../../../src/length/tape';
import { fenceMarkShift } from '../../../src/trade/grooves/fence-marks';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { marksOf } from '../../../src/trade/grooves/marks';
import { spoilsFit } from '../../../src/trade/grooves/second-mark';
import { settingsFor } from '../../../src/trade/grooves/settings';
import { runs } from '../../runs';
import { board, codes, l, one, run, set, w } from './sample';

/** The figure before the scale's own rounding. */
const exact = (r: { readonly value: Length; readonly rest: Length } | undefined): string =>
  r ? w(add(r.value, r.rest)) : 'none';

const dado = one('19 11/16', '93/128');

describe('settingsFor a stop', () => {
  test('Example 9 of grooves: reads near teeth 19 11/16, far teeth 20 53/128', () => {
    const [s] = set({ runs: [dado] }).settings;
    expect([s?.measures, exact(s?.figure), exact(s?.farTeeth)]).toEqual([
      'stop-to-near-teeth',
      '19 11/16',
      '20 53/128',
    ]);
    expect([s?.id, s?.wall, s?.passes, exact(s?.otherEnd)]).toEqual(['r~1~only', 'only', 1, '44 9/16']);
  });

  test('Example 9 of grooves: with the other end on it reads 43 107/128, and warns that lengths go into the groove', () => {
    const found = set({ runs: [dado], against: 'other' });
    expect(exact(found.settings[0]?.figure)).toBe('43 107/128');
    expect(found.settings[0]?.measures).toBe('other-stop-to-teeth');
    expect(codes(found.warnings)).toEqual(['lengths-must-match']);
  });

  test('all settings of a groove carry the one remainder of its near mark', () => {
    const found = set({ runs: [one('10 3/64', '3/4')], cutter: l('1/2') }, {}, '1/16').settings;
    // 10 3/64 is 10 1/16 scant by 1/64; the far wall, 1/4 on by both, is 10 5/16 scant by as much
    expect(found.map((s) => [w(s.figure.value), w(s.figure.rest), w(s.nearTeeth.rest)])).toEqual([
      ['10 1/16', '-1/64', '-1/64'],
      ['10 5/16', '-1/64', '-1/64'],
    ]);
    // from the other end 54 13/64 and 53 61/64
    expect(found.map((s) => [w(s.otherEnd.value), w(s.otherEnd.rest)])).toEqual([
      ['54 3/16', '1/64'],
      ['53 15/16', '1/64'],
    ]);
  });

  test('with the other end on it stands on the length as marked, so both figures meet', () => {
    const found = set({ runs: [one('10', '1/2')], against: 'other', length: l('64 17/64') }, {}, '1/16');
    // 64 17/64 is marked 64 1/4, strong by 1/64: as much is left of what stands off its end
    expect(found.settings.map((s) => [w(s.figure.value), w(s.figure.rest)])).toEqual([['53 3/4', '1/64']]);
  });

  test('with the other end on it stands on the length as it is cut, down where that must enter', () => {
    const length = l('64 15/64');
    const down = markAt(length, '1/16', 'floor');
    const found = set({ runs: [one('10', '1/2')], against: 'other', length, lengthMark: down }, {}, '1/16');
    // 64 15/64 down is 64 3/16, strong by 3/64
    expect(found.settings.map((s) => [w(s.figure.value), w(s.figure.rest)])).toEqual([['53 11/16', '3/64']]);
  });

  test('set for a groove wider than the stack takes both walls, then what stands between', () => {
    const { settings } = set({ runs: [one('10', '2 13/16')], cutter: l('5/8') });
    expect(settings.map((s) => [s.id, s.wall, exact(s.figure)])).toEqual([
      ['r~1~near', 'near', '10'],
      ['r~1~far', 'far', '12 3/16'],
      ['r~1~b1', 'between', '10 35/64'],
      ['r~1~b2', 'between', '11 3/32'],
      ['r~1~b3', 'between', '11 41/64'],
    ]);
  });

  test('beyond the reach of the stop offers the other end', () => {
    const [problem] = set({ runs: [one('60', '1/2')] }, { stopReach: l('48') }).problems;
    if (problem?.code !== 'beyond-fence') throw new Error('within reach');
    expect([w(problem.figure), w(problem.capacity), w(problem.fromOther)]).toEqual(['60', '48', '3 3/4']);
  });

  test('what is offered from the other end is what the stop reads with that end on it, and back', () => {
    const runs = [one('60 7/128', '93/128')];
    const offered = (against: 'reference' | 'other', near: string) => {
      const [p] = set({ runs: [one(near, '93/128')], against }, { stopReach: l('48') }).problems;
      return p?.code === 'beyond-fence' ? w(p.fromOther) : undefined;
    };
    expect(offered('reference', '60 7/128')).toBe(
      w(set({ runs, against: 'other' }).settings[0]?.figure.value),
    );
    expect(offered('other', '5')).toBe('5');
  });

  test('says once for a groove that it is beyond reach, however many passes it takes', () => {
    const found = set({ runs: [one('60', '2')], cutter: l('1/2') }, { stopReach: l('48') });
    expect(found.settings.length).toBeGreaterThan(2);
    expect(codes(found.problems)).toEqual(['beyond-fence']);
  });

  test('an overlap of less than nothing is refused where several passes are cut, and has no say in one', () => {
    const odd = { overlap: l('-1/4') };
    const [problem] = set({ runs: [one('10', '2')], cutter: l('1/2') }, odd).problems;
    expect(problem?.code === 'overlap-negative' && w(problem.by)).toBe('1/4');
    expect(set({ runs: [one('10', '2')], cutter: l('2') }, odd).problems).toEqual([]);
  });

  test.each([
    ['capacity', '0'],
    ['stopReach', '0'],
    ['stopReach', '-1'],
    ['block', '-1/64'],
  ] as const)('a shop whose %s is %s is told so, and nothing is set by it', (field, figure) => {
    const { settings, problems } = set({ runs: [dado], cutter: l('93/128') }, { [field]: l(figure) });
    expect([settings, problems]).toEqual([[], [{ code: 'shop-figure-wrong', field, figure: l(figure) }]]);
  });

  test('a block of nothing is well', () => {
    expect(set({ runs: [dado], cutter: l('93/128') }, { block: l('0') }).problems).toEqual([]);
  });

  test('beyond reach from both ends offers nothing', () => {
    const [problem] = set({ runs: [one('32', '1/2')] }, { stopReach: l('24') }).problems;
    expect(problem?.code === 'beyond-fence' && w(problem.fromOther)).toBe('none');
  });

  test('a stack wider than the groove is refused', () => {
    const { settings, problems } = set({ runs: [one('10', '1/2')], cutter: l('5/8') });
    expect([settings, codes(problems)]).toEqual([[], ['cutter-too-wide']]);
  });

  test('an overlap as wide as the cutter is refused', () => {
    const found = set({ runs: [one('10', '1/2')], cutter: l('1/8') }, { overlap: l('1/8') });
    expect(codes(found.problems)).toEqual(['overlap-too-big']);
  });
});

describe('settingsFor a fence', () => {
  const fence = { runs: [dado], machine: 'fence' } as const;

  test('Example 10 of grooves: zeroed to a 1/8 blade reads 20 37/128 when the stack grows toward it', () => {
    const [s] = set(fence, { single: l('1/8') }).settings;
    expect([s?.measures, exact(s?.figure)]).toEqual(['fence-scale', '20 37/128']);
  });

  test('reads the near edge when the stack grows away, and the block beside it', () => {
    const away = { ...fence, grows: 'away' } as const;
    expect(exact(set(away, { single: l('1/8') }).settings[0]?.figure)).toBe('19 11/16');
    expect(exact(set(away, { single: l('1/8'), block: l('3/4') }).settings[0]?.figure)).toBe('20 7/16');
  });

  test('asks for the single blade, unless the stack grows away and it does not count', () => {
    const asked = [{ code: 'shop-figure-missing', field: 'single' }];
    expect(set(fence).problems).toEqual(asked);
    expect(set(fence, { single: l('0') }).problems).toEqual(asked);
    expect(set({ ...fence, grows: 'away' }).problems).toEqual([]);
  });

  test('offers the other end by the same sum, whatever the growth: near teeth from there, grown 77/128', () => {
    const far = { ...fence, runs: [one('50', '93/128')] };
    const [problem] = set(far, { single: l('1/8'), capacity: l('30') }, '0.001').problems;
    if (problem?.code !== 'beyond-fence') throw new Error('within reach');
    // 64 1/4 - 50 - 93/128 + (93/128 - 1/8) = 14 1/8
    expect(w(problem.fromOther)).toBe('14 1/8');
  });

  test('past its capacity offers the other end with the block and the growth still on it', () => {
    const far = { ...fence, runs: [one('50', '3/4')] };
    const [problem] = set(far, { single: l('1/8'), block: l('1'), capacity: l('30') }).problems;
    if (problem?.code !== 'beyond-fence') throw new Error('within reach');
    expect([w(problem.figure), w(problem.fromOther)]).toEqual(['51 5/8', '15 1/8']);
  });

  test('offers no end where the scale would read less than nothing', () => {
    const far = { ...fence, runs: [one('64 3/16', '1/16')] };
    const [problem] = set(far, { single: l('1/8'), capacity: l('30') }).problems;
    expect(problem).toMatchObject({ code: 'beyond-fence' });
    expect(problem?.code === 'beyond-fence' && problem.fromOther).toBeUndefined();
  });

  // Common practice, no source.
  test('warns of a part narrower along it than its reach from it', () => {
    const found = set({ ...fence, across: l('17 1/2') }, { single: l('1/8') });
    expect(codes(found.warnings)).toEqual(['narrow-at-fence']);
    expect(set({ ...fence, across: l('20') }, { single: l('1/8') }).warnings).toEqual([]);
  });
});

describe('settingsFor a router', () => {
  const router = { runs: [dado], machine: 'router' } as const;
  const shop = { routerBase: l('2 31/32'), bit: l('1/2') };

  test('Example 11 of grooves: lays the guide at 16 31/32 or 23 17/128, strip 29/128 in and then out, the farther wall first', () => {
    const { settings } = set(router, shop);
    expect(settings.map((s) => [s.wall, exact(s.figure), exact(s.otherGuide), w(s.strip)])).toEqual([
      ['far', '16 31/32', '23 17/128', '29/128'],
      ['near', '16 31/32', '23 17/128', '0'],
    ]);
  });

  test('with the guide on the far side the near wall is the farther one', () => {
    const { settings } = set({ ...router, guide: 'far' }, shop);
    expect(settings.map((s) => [s.wall, exact(s.figure), w(s.strip)])).toEqual([
      ['near', '23 17/128', '29/128'],
      ['far', '23 17/128', '0'],
    ]);
  });

  test('a guide off the near end is refused, with its place on the other side', () => {
    const [problem] = set({ ...router, runs: [one('2', '1/2')] }, shop).problems;
    if (problem?.code !== 'guide-off-board') throw new Error('on the board');
    expect([w(problem.figure), w(problem.otherSide)]).toEqual(['-23/32', '5 7/32']);
  });

  test('a guide past the far end is refused, with its place on the reference side', () => {
    const [problem] = set({ ...router, guide: 'far', runs: [one('62', '1/2')] }, shop).problems;
    if (problem?.code !== 'guide-off-board') throw new Error('on the board');
    expect([w(problem.figure), w(problem.otherSide)]).toEqual(['65 7/32', '59 9/32']);
  });

  test('a guide off a short board on both sides is said to be', () => {
    const [problem] = set({ ...router, length: l('5'), runs: [one('2', '1/2')] }, shop).problems;
    if (problem?.code !== 'guide-off-board') throw new Error('on the board');
    expect([problem.otherSide, problem.neither]).toEqual([undefined, true]);
    const long = set({ ...router, runs: [one('2', '1/2')] }, shop).problems;
    expect(long).toMatchObject([{ code: 'guide-off-board', neither: false }]);
  });

  test('asks for what was not measured', () => {
    expect(set(router).problems).toMatchObject([{ field: 'routerBase' }, { field: 'bit' }]);
  });
});

describe('settingsFor a circular saw', () => {
  const kerf = l('5/64');
  const cut = { machine: 'saw', runs: [one('17 3/4', '5/64')] } as const;

  test('Example 18 of grooves: guide lying on the keep piece, shoe 5 1/32: 12 23/32', () => {
    expect(exact(set(cut, { kerf, shoeKeep: l('5 1/32') }).settings[0]?.figure)).toBe('12 23/32');
  });

  test('Example 18 of grooves: guide lying on the waste, shoe 1 7/16: 19 17/64', () => {
    const found = set({ ...cut, guide: 'far' }, { kerf, shoeWaste: l('1 7/16') });
    expect(exact(found.settings[0]?.figure)).toBe('19 17/64');
    expect(found.settings[0]?.otherGuide).toBeUndefined();
  });

  test('keeps the kerf of each wall inside the groove, and sets the guide for the walls alone', () => {
    const { settings } = set({ machine: 'saw', runs: [one('10', '1/2')] }, { kerf, shoeKeep: l('5') });
    expect(settings.map((s) => [s.id, s.pass, s.passes])).toEqual([
      ['r~1~near', 1, 2],
      ['r~1~far', 2, 2],
    ]);
    const wall = (name: string) => settings.find((s) => s.wall === name);
    expect([exact(wall('near')?.nearTeeth), exact(wall('near')?.farTeeth)]).toEqual(['10', '10 5/64']);
    expect([exact(wall('far')?.nearTeeth), exact(wall('far')?.farTeeth)]).toEqual(['10 27/64', '10 1/2']);
  });

  test('a guide off the sheet is refused', () => {
    const near = { machine: 'saw', runs: [one('4', '5/64')] } as const;
    expect(codes(set(near, { kerf, shoeKeep: l('5 1/32') }).problems)).toEqual(['guide-off-board']);
  });
});

describe('settingsFor spacers', () => {
  const three = run({ spacing: 'given', at: [l('6 31/32'), l('8 25/32'), l('10 19/32')], width: l('13/32') });

  test('Example 19 of grooves: with the stop at the last: 3 5/8, 1 13/16, 0', () => {
    const { settings } = set({ machine: 'spacers', runs: [three] });
    expect(settings.map((s) => exact(s.figure))).toEqual(['3 5/8', '1 13/16', '0']);
  });

  test('the stop stands for the farthest, and is beyond reach if that one is', () => {
    const far = {
      machine: 'spacers',
      runs: [three, one('49', '1/2'), one('50', '3/4')].map((r, k) => ({ ...r, id: 'rsx'.charAt(k) })),
    } as const;
    const [problem, ...more] = set(far, { stopReach: l('48') }).problems;
    if (problem?.code !== 'beyond-fence') throw new Error('within reach');
    expect([problem.groove.id, w(problem.figure), problem.fromOther, more]).toEqual([
      'x~1',
      '50',
      undefined,
      [],
    ]);
    expect(set(far, { stopReach: l('50') }).problems).toEqual([]);
  });

  test('the farthest cut is the far wall of a groove wider than the stack', () => {
    const { settings } = set({ machine: 'spacers', runs: [one('20', '3/4')], cutter: l('1/2') });
    expect(settings.map((s) => [s.wall, exact(s.figure)])).toEqual([
      ['near', '1/4'],
      ['far', '0'],
    ]);
  });

  test('one stop serves narrow and wide grooves alike', () => {
    const { settings } = set({ machine: 'spacers', runs: [three, one('20', '3/4', { id: 'x' })] });
    expect(settings.map((s) => w(add(s.figure.value, s.nearTeeth.value)))).toEqual(['20', '20', '20', '20']);
  });
});

describe('settingsFor fence pencil marks', () => {
  test('are the near teeth', () => {
    const [s] = set({ machine: 'index', runs: [dado] }).settings;
    expect([s?.measures, exact(s?.figure)]).toEqual(['fence-mark', '19 11/16']);
  });
});

describe('fenceMarkShift', () => {
  test('Example 20 of grooves: is the change of the stack when it grows toward the reference side, nothing when away', () => {
    expect(w(fenceMarkShift(l('1/2'), l('17/32'), 'toward'))).toBe('1/32');
    expect(w(fenceMarkShift(l('17/32'), l('1/2'), 'toward'))).toBe('-1/32');
    expect(w(fenceMarkShift(l('1/2'), l('17/32'), 'away'))).toBe('0');
  });
});

describe('settingsFor any machine', () => {
  const shop = {
    single: l('1/8'),
    block: l('3/4'),
    routerBase: l('3 1/32'),
    bit: l('1/4'),
    kerf: l('5/64'),
    shoeKeep: l('5 1/32'),
    shoeWaste: l('1 7/16'),
  };

  test('the figure with what it leaves leads back to the exact place, whatever the machine', () => {
    const property = fc.property(
      fc.constantFrom('stop', 'fence', 'router', 'saw', 'spacers', 'index' as const),
      fc.constantFrom('reference', 'far' as const),
      fc.bigInt(100n, 900n),
      (machine, guide, n) => {
        const b = board({
          machine,
          guide,
          length: l('96'),
          runs: [run({ spacing: 'given', at: [inches(n, 13n), l('80')], width: l('1/2') })],
        });
        const layout = layOut(b);
        const mark = marksOf(b, layout, '1/32')[0]?.near.value;
        const { settings } = settingsFor(layout, { board: b, shop, tape: '1/32' });
        const s = settings.find((x) => x.wall === 'near' || x.wall === 'only');
        if (!s || !mark) throw new Error('no setting');
        const figure = add(s.figure.value, s.figure.rest);
        const back = {
          stop: figure,
          index: figure,
          spacers: l('80').sub(figure),
          fence: figure.sub(l('3/4')).sub(l('3/8')),
          router: guide === 'reference' ? figure.add(l('2 29/32')) : figure.sub(l('2 29/32')).sub(l('1/2')),
          saw: guide === 'reference' ? figure.add(l('5 1/32')) : figure.sub(l('1 7/16')).sub(l('5/64')),
        }[machine];
        expect(w(back as Length)).toBe(w(inches(n, 13n)));
        expect(w(s.nearTeeth.value)).toBe(w(mark));
      },
    );
    fc.assert(property, { numRuns: runs(400) });
  });

  /** Where the near teeth of a pass cut, inches: the set-up read backwards, from the machine alone. */
  const cutAt = (machine: string, figure: Length, at: { guide: string; cutter: Length; strip: Length }) => {
    const { guide, cutter, strip } = at;
    const back: Record<string, () => Length> = {
      stop: () => figure,
      index: () => figure,
      other: () => subtract(subtract(long, figure), cutter),
      fence: () => subtract(figure, add(shop.block, subtract(cutter, shop.single))),
      spacers: () => subtract(l('80'), figure),
      saw: () =>
        guide === 'reference'
          ? add(figure, shop.shoeKeep)
          : subtract(subtract(figure, shop.shoeWaste), shop.kerf),
      // the base rides against the guide, or against the strip that lies between
      router: () =>
        guide === 'reference'
          ? subtract(add(add(figure, strip), shop.routerBase), inches(cutter.n, cutter.d * 2n))
          : subtract(subtract(subtract(figure, strip), shop.routerBase), inches(cutter.n, cutter.d * 2n)),
    };
    return (back[machine] ?? back.stop)?.() ?? figure;
  };
  const long = l('96 5/128');

  test('with every remainder kept both walls stand where they are drawn, so the groove is as wide as wanted', () => {
    const property = fc.property(
      fc.constantFrom('stop', 'other', 'fence', 'router', 'saw', 'spacers', 'index'),
      fc.constantFrom('reference', 'far' as const),
      fc.constantFrom(...tapes),
      fc.bigInt(100n, 900n),
      fc.bigInt(501n, 1500n),
      (named, guide, tape, n, wide) => {
        const [near, width] = [inches(n, 13n), inches(wide, 1000n)];
        const b = board({
          machine: named === 'other' ? 'stop' : (named as 'stop'),
          against: named === 'other' ? 'other' : 'reference',
          guide,
          length: long,
          // the last, at 80, is on a mark of every inch tape, and the only pass of its groove
          runs: [run({ spacing: 'given', at: [near], width }), one('80', '1/4', { id: 'last' })],
          ...(named === 'saw' || named === 'router' ? {} : { cutter: l('1/4') }),
        });
        const kerf = named === 'saw' ? shop.kerf : l('1/4');
        const { settings } = settingsFor(layOut(b), { board: b, shop, tape });
        const wall = (which: string) => {
          const s = settings.find((x) => x.groove.run === 'r' && x.wall === which);
          if (!s) throw new Error('no such wall');
          const figure = add(s.figure.value, s.figure.rest);
          return cutAt(named, figure, { guide, cutter: kerf, strip: s.strip ?? l('0') });
        };
        expect(w(wall('near'))).toBe(w(near));
        expect(w(add(wall('far'), kerf))).toBe(w(add(near, width)));
      },
    );
    fc.assert(property, { numRuns: runs(400) });
  });

  test('Example 22 of grooves: a second mark is told with its spacer, and by how much it spoils the groove', () => {
    const found = set({ runs: [one('20 45/128', '.7275')], cutter: l('1/2') }, {}, '1/32');
    const [, far] = found.settings;
    expect([w(far?.figure.value), w(far?.second?.spacer), w(far?.second?.off)]).toEqual([
      '20 9/16',
      w(l('.2275')),
      w(l('-.00875')),
    ]);
    expect(far?.second && spoilsFit(far.second)).toBe(true);
    const other = set({ runs: [one('20 45/128', '.7275')], cutter: l('1/2'), against: 'other' }, {}, '1/32');
    // from the other end the figure runs toward the near wall: 64 1/4 − 20.57125 − 1/2 = 43.17875, marked 43 3/16
    const [, toward] = other.settings;
    expect([w(toward?.figure.value), w(toward?.second?.off)]).toEqual(['43 3/16', w(l('-.00875'))]);
  });

  test('a second mark off by no more than .003 is not worth a word, and one that has a strip has none', () => {
    const [, far] = set({ runs: [one('20', '.753')], cutter: l('1/2') }, {}, '1/32').settings;
    expect([w(far?.second?.off), far?.second && spoilsFit(far.second)]).toEqual([w(l('-.003')), false]);
    const shop = { routerBase: l('3'), bit: l('1/2') };
    const routed = set({ runs: [one('20', '.7275')], machine: 'router' }, shop, '1/32');
    expect(routed.settings.every((s) => s.second === undefined)).toBe(true);
  });

  test('every operation has an id of its own that does not depend on the sizes round it', () => {
    const ids = (first: string) =>
      set({
        runs: [run({ count: 3, width: l('1/2'), pitch: l('3'), first: l(first) })],
        cutter: l('3/8'),
      }).settings.map((s) => s.id);
    expect(ids('4')).toEqual(ids('5 1/64'));
    expect(new Set(ids('4')).size).toBe(6);
  });
});
