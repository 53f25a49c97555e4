import { describe, expect, test } from 'vitest';
import { add, negate, subtract } from '../../../src/length/length';
import { partitionFace } from '../../../src/trade/carcass/boards';
import type { Case } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { frameOf } from '../../../src/trade/carcass/frame';
import { partsOf, type Worked } from '../../../src/trade/carcass/parts';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { warningsOf } from '../../../src/trade/carcass/warnings';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { l, w } from '../../length/write-figures';
import { framedCase, part, plainCase, sheet, sheets, work } from './sample-case';

const size = (worked: Worked, role: string) => {
  const { length, width } = part(worked, role);
  return `${w(length.sum.value)} × ${w(width.sum.value)}`;
};

describe('partsOf', () => {
  const worked = work(plainCase);

  test.each([
    ['left', '64 1/4 × 17 1/2'],
    ['right', '64 1/4 × 17 1/2'],
    ['bottom', '37 1/2 × 17 7/32'],
    ['top', '37 5/8 × 17 7/32'],
    ['partition1', '59 1/4 × 17 7/32'],
    ['fixed1', '18 43/64 × 17 7/32'],
    ['back', '60 1/16 × 37 9/16'],
  ])('Example 1 of carcass: %s is %s', (role, want) => expect(size(worked, role)).toBe(want));

  test('Example 1 of carcass: clear 36 15/16, bays 18 7/64, clear height 58 11/16, tray 18 7/16', () => {
    const { clearWidth, clearHeight, bays } = worked.sizes;
    expect([clearWidth, clearHeight, ...bays].map((s) => w(s.value))).toEqual([
      '36 15/16',
      '58 11/16',
      '18 7/64',
      '18 7/64',
    ]);
    expect(w(part(worked, 'trays').length.sum.value)).toBe('18 7/16');
    expect(part(worked, 'trays').length.mode).toBe('floor');
  });

  test('Example 2 of carcass: the partition stands 18 25/64 from the end of the bottom, 18 29/64 from that of the top', () => {
    const face = partitionFace(worked.sizes, 1);
    expect(w(add(face, worked.sizes.joints.dado))).toBe('18 25/64');
    expect(w(add(face, worked.sizes.joints.topRabbet))).toBe('18 29/64');
    const near = (role: string) => part(worked, role).board?.wides[0]?.near;
    const top = near('top');
    const bottom = near('bottom');
    expect(top && bottom && w(subtract(top, bottom))).toBe('1/16');
  });

  test('Example 3 of carcass: parts add back to the outside, across and up', () => {
    const lines = checkOf(worked);
    expect(lines.every((line) => line.meets)).toBe(true);
    expect(lines.map((line) => w(line.sum.value))).toEqual([
      '38 3/8',
      '38 3/8',
      '38 3/8',
      '64 1/4',
      '64 1/4',
    ]);
  });

  test('Example 9 of carcass: the tray run stands on one datum: 6 31/32 on the side, 2 13/32 on the partition', () => {
    const nears = (role: string) => {
      const board = part(worked, role).board;
      return board
        ? layOut(board)
            .grooves.filter((g) => !g.wide)
            .map((g) => w(g.near))
        : [];
    };
    expect(nears('left')).toHaveLength(30);
    expect(nears('left').slice(0, 2)).toEqual(['6 31/32', '8 25/32']);
    expect(nears('left')[29]).toBe('59 17/32');
    expect([nears('partition1')[0], nears('partition1')[29]]).toEqual(['2 13/32', '54 31/32']);
    expect(nears('right')).toEqual([]);
    expect(part(worked, 'trays').copies).toBe(30);
  });

  test('the bottom is housed in the sides just under the datum, a glue line over the sheet', () => {
    const board = part(worked, 'left').board;
    const bottom = board && layOut(board).grooves.find((g) => g.id === 'bottom');
    // 4 1/8 to the bottom, half of .005 below it
    expect(bottom && [w(bottom.near), w(bottom.width)]).toEqual([
      w(subtract(l('4 1/8'), l('1/400'))),
      w(add(l('23/32'), l('1/200'))),
    ]);
  });

  test('Example 4 of carcass: the same case of 18 mm: openings 18 253/2032, bottom 37 1057/2032', () => {
    const metric = { ...plainCase, stocks: { side: 'b', back: 'k', tray: 't' } };
    const drawn = sizesOf(metric, sheets('18 mm'));
    expect(drawn.ok && w(drawn.value.bays[0]?.value ?? l('0'))).toBe('18 253/2032');
    expect(w(part(work(metric, sheets('18 mm')), 'bottom').length.sum.value)).toBe('37 1057/2032');
  });

  test('Example 5 of carcass: planned 3/4, got 23/32: outside held, each opening grows 3/64', () => {
    const of = (thickness: string) =>
      work({ ...plainCase, stocks: { side: 'b', back: 'k', tray: 't' } }, sheets(thickness)).sizes.bays[0]
        ?.value ?? l('0');
    expect(w(subtract(of('23/32'), of('3/4')))).toBe('3/64');
  });

  test('Example 5 of carcass: openings held, the outside shrinks 3/32', () => {
    const held: Case = {
      ...plainCase,
      hold: 'openings',
      opening: l('18'),
      clear: l('58'),
      stocks: { side: 'b', back: 'k', tray: 't' },
    };
    const wide = (thickness: string) => work(held, sheets(thickness)).sizes.width.value;
    expect(w(subtract(wide('3/4'), wide('23/32')))).toBe('3/32');
    expect(checkOf(work(held)).every((line) => line.meets)).toBe(true);
  });

  test('Example 10 of carcass: cleats 2 3/4 wide in rabbets 11/32 deep: 37 5/8 long, notch 2 13/16 × 23/32', () => {
    const c = work({ ...plainCase, cleats: 1, cleatWide: l('2 3/4'), cleatRabbet: l('11/32') });
    expect(w(part(c, 'cleat').length.sum.value)).toBe('37 5/8');
    const [notch] = part(c, 'partition1').notches;
    expect(notch && [w(notch.long), w(notch.deep)]).toEqual(['2 13/16', '23/32']);
    // right under the top: the 9/32 housed in it is no room for a cleat
    expect(notch && w(add(notch.near, notch.long))).toBe('58 31/32');
    // one place for both: the side's rabbet ends at the top's lower face, 64 1/4 less 23/32
    const rabbet = part(c, 'left').rabbets.find((r) => r.id === 'cleat1');
    expect(rabbet?.to && w(rabbet.to)).toBe('63 17/32');
    expect(rabbet?.from && rabbet.to && w(subtract(rabbet.to, rabbet.from))).toBe('2 13/16');
  });

  test('Example 11 of carcass: a base frame with four cross members has its laps at 0, 11 11/12, 23 5/6 and 35 3/4', () => {
    const c = work(
      {
        ...plainCase,
        hasBase: true,
        crosses: 4,
        crossWide: l('2 5/8'),
        stocks: { ...plainCase.stocks, base: 'u', cross: 'o' },
      },
      [...sheets(), sheet('u', '1 17/32'), sheet('o', '1 1/2')],
    );
    expect(part(c, 'baserail').laps.map((lap) => w(lap.near))).toEqual(['0', '11 11/12', '23 5/6', '35 3/4']);
    expect([part(c, 'baserail'), part(c, 'basecross')].map((p) => w(p.laps[0]?.deep ?? l('0')))).toEqual([
      '3/4',
      '3/4',
    ]);
  });

  test('Example 8 of carcass: edging 11/16 thick round a 38 3/4 top over a frame: 2 13/32 wide, 38 3/4 to 40 1/8', () => {
    const c = work(
      {
        ...plainCase,
        hasLooseTop: true,
        looseSide: l('3/16'),
        hasBase: true,
        hasEdging: true,
        lip: l('5/32'),
        stocks: { ...plainCase.stocks, base: 'u', edging: 'e' },
      },
      [...sheets(), sheet('u', '1 17/32'), sheet('e', '11/16')],
    );
    const edge = part(c, 'edgefront');
    expect([edge.width.sum.value, edge.length.sum.value, edge.longPoint?.value ?? l('0')].map(w)).toEqual([
      '2 13/32',
      '38 3/4',
      '40 1/8',
    ]);
  });
});

describe('frameOf', () => {
  test('Example 6 of carcass: frame 38 3/4 × 60 1/8, rails 35 3/8, middle stile 56 1/2, openings 17, packing, sill', () => {
    const frame = frameOf(work(framedCase).sizes);
    expect(
      [frame.width, frame.height, frame.rails, frame.middles, frame.sill].map((s) => w(s.value)),
    ).toEqual(['38 3/4', '60 1/8', '35 3/8', '56 1/2', '29/32']);
    const [left, right] = frame.openings;
    expect([left?.wide, left?.left, left?.right, right?.wide].map((s) => s && w(s.value))).toEqual([
      '17',
      '25/32',
      '21/64',
      '17',
    ]);
  });

  test('Example 7 of carcass: trays 18 7/16 are locked behind the left and the middle stile, no wider than 23/32 and, centred, 11/32; set off centre 17/32', () => {
    const locked = warningsOf(work(framedCase)).flatMap((x) => (x.code === 'trays-locked' ? [x] : []));
    expect(locked.map((x) => [x.stile, w(x.widest), x.comesOff])).toEqual([
      ['left', '23/32', false],
      ['middle', '11/32', false],
    ]);
    expect(locked.map((x) => x.free && w(x.free))).toEqual([undefined, '17/32']);
    expect(warningsOf(work(framedCase)).some((x) => x.code === 'trays-wider')).toBe(true);
  });

  test('once every piece over them comes off the trays pass; while one does not, they do not', () => {
    const codes = (more: object) => warningsOf(work({ ...framedCase, ...more })).map(({ code }) => code);
    expect(codes({ stilesOff: true, middleOff: true })).not.toContain('trays-wider');
    expect(codes({ stilesOff: true })).toContain('trays-wider');
  });

  test('sill and packing are told where drawers stand, and nowhere else', () => {
    const codes = (...bays: readonly number[]) =>
      warningsOf(work(framedCase), new Set(bays)).flatMap((x) =>
        x.code === 'packing' ? [`packing ${x.bay}`] : x.code === 'sill' ? ['sill'] : [],
      );
    expect(codes()).toEqual([]);
    expect(codes(2)).toEqual(['sill', 'packing 2']);
  });

  test('a stile no wider than the tray groove floor locks nothing at that side', () => {
    const narrow = warningsOf(work({ ...framedCase, stile: l('23/32') }));
    expect(narrow.flatMap((x) => (x.code === 'trays-locked' ? [x.stile] : []))).toEqual(['middle']);
  });
});

describe('a case that stands on the floor', () => {
  test('has its bottom in a rabbet at the end of each side, and a length that still adds up', () => {
    const c = work({ ...plainCase, feet: undefined });
    const side = part(c, 'left');
    expect(side.rabbets.map((r) => [r.id, r.along, w(r.width), w(r.depth)])[0]).toEqual([
      'bottom',
      { at: 'end', named: 'bottom' },
      '23/32',
      '9/32',
    ]);
    expect(side.board && layOut(side.board).problems).toEqual([]);
    expect(checkOf(c).every((line) => line.meets)).toBe(true);
  });
});

describe('what stops a case', () => {
  test('bays all given that do not make the clear width say by how much', () => {
    const [problem] = stopped({ ...plainCase, bays: [l('18'), l('18')] });
    expect(problem?.code === 'bays-off' && w(problem.by)).toBe('-7/32');
    expect(stopped({ ...plainCase, bays: [l('18'), undefined] })).toEqual([]);
  });

  const stopped = (c: Case) => {
    const worked = partsOf(c, { stuff: sheets(), tape: '1/32' });
    return worked.ok ? [] : worked.error;
  };

  test('what is missing is asked for, all of it', () => {
    const codes = stopped({ ...plainCase, width: undefined, depth: undefined });
    expect(codes.map((p) => ('field' in p ? p.field : p.code))).toEqual(['width', 'depth']);
    expect(stopped({ ...plainCase, stocks: {} }).map((p) => ('stock' in p ? p.stock : ''))).toEqual([
      'side',
      'back',
      'tray',
    ]);
  });

  test.each([
    'feet',
    'ease',
    'fit',
    'cleatRabbetWide',
    'notchDeep',
    'looseFront',
    'looseSide',
    'lip',
    'toeBack',
  ] as const)('%s under nothing says by how much', (field) => {
    expect(stopped({ ...plainCase, [field]: negate(l('1/64')) })).toContainEqual({
      code: 'negative',
      field,
      by: l('1/64'),
    });
    expect(stopped({ ...plainCase, [field]: l('0') }).map((p) => p.code)).not.toContain('negative');
  });

  // 11 1/4 deep, toe board 23/32: at most 10 17/32 back, and 20 is 9 15/32 too much
  test('a toe board behind its case, and room of more than the rabbet, say the most', () => {
    const deep = { ...plainCase, depth: l('11 1/4'), hasToe: true, feet: l('4'), hasBack: true };
    expect(stopped({ ...deep, toeBack: l('20'), backDeep: l('3/8'), ease: l('40') })).toEqual([
      { code: 'too-much', field: 'toeBack', by: l('9 15/32'), most: l('10 17/32') },
      { code: 'too-much', field: 'ease', by: l('39 5/8'), most: l('3/8') },
    ]);
  });

  test('a shelf below the bottom and trays with less than no room at the top are named', () => {
    const inside: Case['inside'] = [
      { id: 's', kind: 'fixed', bay: 2, at: negate(l('1')) },
      { id: 'trays', kind: 'trays', bay: 1, endRoom: negate(l('1/2')), slack: negate(l('1/64')) },
    ];
    expect(stopped({ ...plainCase, inside })).toEqual([
      { code: 'negative-inside', in: 's', field: 'at', by: l('1') },
      { code: 'negative-inside', in: 'trays', field: 'endRoom', by: l('1/2') },
      { code: 'negative-inside', in: 'trays', field: 'slack', by: l('1/64') },
    ]);
  });

  test('a case narrower than its sides says by how much', () => {
    const [problem] = stopped({ ...plainCase, width: l('2') });
    // 2 less three thicknesses of 23/32
    expect(problem?.code === 'no-opening' && w(problem.by)).toBe('5/32');
  });

  test('a dado as deep as the side goes through, one a hair less does not', () => {
    expect(stopped({ ...plainCase, dado: l('23/32') })).toMatchObject([{ code: 'through', field: 'dado' }]);
    expect(stopped({ ...plainCase, dado: l('22/32') })).toEqual([]);
    expect(warningsOf(work({ ...plainCase, dado: l('22/32') }))[0]).toMatchObject({
      code: 'deep',
      field: 'dado',
    });
  });

  test('a usual depth nobody said is told as deep only where it leaves less than a third', () => {
    const deep = (side: string, backDeep?: string) => {
      const c = { ...plainCase, dado: l('1/8'), partitionDado: l('1/8'), topRabbet: l('1/8') };
      const own = { ...c, backDeep: backDeep === undefined ? undefined : l(backDeep) };
      const [, ...rest] = sheets();
      return warningsOf(work(own, [sheet('a', side), ...rest])).flatMap((x) =>
        x.code === 'deep' ? [x.field] : [],
      );
    };
    expect(deep('0.714')).toEqual([]); // the usual 3/8 leaves .339 of .714
    expect(deep('0.714', '3/8')).toEqual(['backDeep']); // said, it is over half
    expect(deep('1/2')).toEqual(['backDeep']); // the usual leaves 1/8 of 1/2
  });

  test('a shelf over the top says how high it may stand', () => {
    const c = { ...plainCase, inside: [{ id: 's', kind: 'fixed', bay: 2, at: l('58') } as const] };
    const [problem] = stopped(c);
    expect(problem?.code === 'above-the-top' && [w(problem.by), w(problem.most)]).toEqual([
      '1/32',
      '57 31/32',
    ]);
  });

  test('a bay that is not there is named', () => {
    expect(stopped({ ...plainCase, inside: [{ id: 's', kind: 'loose', bay: 3 }] })).toMatchObject([
      { code: 'no-bay', bay: 3, bays: 2 },
    ]);
  });

  test('cleat, rabbet and notch that differ are named with what stands proud', () => {
    const c = work({ ...plainCase, cleats: 1, cleatRabbetWide: l('11/16'), notchDeep: l('3/4') });
    const proud = warningsOf(c).flatMap((x) => (x.code === 'cleat-proud' ? [[x.where, w(x.by)]] : []));
    expect(proud).toEqual([
      ['side', '1/32'],
      ['partition', '-1/32'],
    ]);
  });
});
