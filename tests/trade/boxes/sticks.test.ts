import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, inches, less, ratio } from '../../../src/length/length';
import {
  boxHeightMost,
  contentsByFill,
  frontFor,
  loadOf,
  loadSays,
  sheetWeight,
  tallestIn,
  whatDoesNotFit,
} from '../../../src/trade/boxes/contents';
import { jigCheck, type PullPlan, pullHoles } from '../../../src/trade/boxes/pulls';
import { nextCut, type StickPlan, setBack, sticksOf, stickWarnings } from '../../../src/trade/boxes/sticks';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const plan: StickPlan = {
  bottoms: ['24 55/64', '19 23/32', '13 55/64', '7 5/16', '5/64'].map(l),
  sill: l('29/32'),
  boxUp: l('3/8'),
  centre: l('1 5/8'),
  slide: l('1 25/32'),
};
const sticks = (more: Partial<StickPlan> = {}) => {
  const made = sticksOf({ ...plan, ...more });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};

describe('sticksOf', () => {
  test('EX 7c: sticks longest first, and what comes off between them with a kerf of 3/32', () => {
    const found = sticks().map((s) => s.length);
    expect(found.map((x) => w(x))).toEqual(['26 7/8', '21 47/64', '15 7/8', '9 21/64', '2 3/32']);
    const offcuts = found.slice(0, -1).map((x, k) => nextCut(x, found[k + 1] ?? x, l('3/32')).offcut);
    expect(offcuts.map((x) => w(x))).toEqual(['5 3/64', '5 49/64', '6 29/64', '7 9/64']);
  });

  test('H.7: from the front bottoms as measured; the last is too short to hold at a saw', () => {
    const found = sticks({ bottoms: ['24 53/64', '19 11/16', '13 55/64', '7 5/16', '5/64'].map(l) });
    expect(found.map((s) => w(s.length))).toEqual(['26 27/32', '21 45/64', '15 7/8', '9 21/64', '2 3/32']);
    expect(stickWarnings(found).map((x) => x.drawer)).toEqual([5]);
  });

  test('a stick of 3 is well; one that measures shorter than the next wants a new one', () => {
    expect(stickWarnings([{ drawer: 1, length: l('3'), sum: { value: l('3'), terms: [] } }])).toEqual([]);
    expect(w(nextCut(l('9 1/4'), l('9 21/64'), l('3/32')).short)).toBe('5/64');
    expect(nextCut(l('9 21/64'), l('9 21/64'), l('3/32')).short).toBeUndefined();
  });

  test('a slide under the bottom of the case is refused, by how much', () => {
    const made = sticksOf({ ...plan, sill: l('-2'), bottoms: [l('5/64')] });
    expect(!made.ok && [made.error.drawer, w(made.error.by)]).toEqual([1, '13/16']);
  });

  test('drawers from the top give sticks that strictly shorten', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.bigInt({ min: 1n, max: 2000n }), { minLength: 2, maxLength: 9 }),
        (ns) => {
          const found = sticks({ bottoms: ns.map((n) => inches(n, 64n)) });
          found.slice(1).forEach((s, k) => {
            expect(less(s.length, found[k]?.length ?? s.length)).toBe(true);
          });
        },
      ),
      { numRuns: runs(100) },
    );
  });

  test('slides stand back by an inset front, and flush behind one that covers', () => {
    expect([w(setBack('inset', l('23/32'))), w(setBack('overlay', l('23/32')))]).toEqual(['23/32', '0']);
  });
});

describe('contents', () => {
  const room = {
    over: l('5/64'),
    underRail: false,
    boxUp: l('3/8'),
    grooveUp: l('13/32'),
    bottom: l('11/32'),
    play: l('1/2'),
  };

  test('EX 7d: a crystal of 4 3/16 with 1/2 play asks for a front of 5 23/64', () => {
    expect(w(frontFor(l('4 3/16'), room))).toBe('5 23/64');
  });

  test('H.6: under the rail a box may be 4 5/64 less play high: 4 1/8 would strike by 3/64; with 1/4 play 3 53/64', () => {
    const at = { front: l('4 3/8'), over: l('5/64'), underRail: true, boxUp: l('3/8') };
    expect(w(boxHeightMost({ ...at, play: l('0') }))).toBe('4 5/64');
    expect(w(l('4 1/8').sub(boxHeightMost({ ...at, play: l('0') })) as never)).toBe('3/64');
    expect(w(boxHeightMost({ ...at, play: l('1/4') }))).toBe('3 53/64');
    expect(w(boxHeightMost({ ...at, underRail: false, play: l('1/4') }))).toBe('4 13/64');
  });

  test('the front a thing asks for takes just that thing', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 1n, max: 2000n }), fc.boolean(), (n, underRail) => {
        const tall = inches(n, 77n);
        const at = { ...room, underRail };
        expect(equals(tallestIn({ ...at, front: frontFor(tall, at) }), tall)).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });

  test('EX 10e: quartz filling three tenths of 15 5/32 × 14 15/32 × 3 weighs 18.9 lb, 37 % of a 75 lb pair with its box', () => {
    const contents = contentsByFill({
      wide: l('15 5/32'),
      deep: l('14 15/32'),
      high: l('3'),
      fill: ratio(3n, 10n),
      gravity: ratio(265n, 100n),
    });
    expect(contents.valueOf().toFixed(1)).toBe('18.9');
    const says = loadSays(contents.add(9n) as typeof contents, ratio(75n));
    expect(says.code).toBe('within');
    expect(says.code !== 'rating-missing' && Math.round(says.share.valueOf() * 100)).toBe(37);
  });

  test('a rating is asked for, never assumed; three quarters is within, more is near, more than all is over', () => {
    expect(loadSays(ratio(10n), undefined).code).toBe('rating-missing');
    expect(loadSays(ratio(10n), ratio(0n)).code).toBe('rating-missing');
    expect([75n, 76n, 100n, 101n].map((n) => loadSays(ratio(n), ratio(100n)).code)).toEqual([
      'within',
      'near',
      'near',
      'over',
    ]);
  });

  test('things are counted and weighed; one not weighed is said, one too tall or too long by how much', () => {
    const things = [
      { id: 'a', name: 'Quartz', heavy: ratio(5n, 2n), count: 4, tall: l('4'), long: l('9') },
      { id: 'b', name: 'Whelk', count: 2, tall: l('2') },
    ];
    const load = loadOf(things);
    expect([load.contents.valueOf(), load.unweighed]).toEqual([10, 2]);
    const off = whatDoesNotFit(things, { tallest: l('3 7/8'), longest: l('9') });
    expect(off.map((x) => [x.code, x.thing, w(x.by)])).toEqual([['too-tall', 'a', '1/8']]);
  });

  test('a square foot of 23/32 ply weighs 2.2 lb (common practice, no source), half as thick half as much', () => {
    const at = { long: l('12'), wide: l('12') };
    expect(sheetWeight({ ...at, thick: l('23/32') }).valueOf()).toBe(2.2);
    expect(sheetWeight({ ...at, thick: l('23/64') }).valueOf()).toBe(1.1);
  });
});

describe('pullHoles', () => {
  const front: PullPlan = { width: l('16 15/16'), height: l('6'), pulls: 1, centres: l('3 3/4') };
  const holes = (more: Partial<PullPlan> = {}) => {
    const made = pullHoles({ ...front, ...more });
    if (!made.ok) throw new Error(made.error.code);
    return made.value;
  };
  const code = (more: Partial<PullPlan>) => {
    const made = pullHoles({ ...front, ...more });
    return made.ok ? undefined : made.error.code;
  };

  test('EX 7d: 3 3/4 apart on 16 15/16: 6 19/32 and 10 11/32', () => {
    expect(holes().map((h) => w(h.x))).toEqual(['6 19/32', '10 11/32']);
    expect(w(holes()[0]?.y)).toBe('3');
  });

  test('two pulls stand a quarter in when not said; a knob has one hole', () => {
    const { centres: _, ...knob } = front;
    expect(
      pullHoles({ ...knob, pulls: 2, width: l('16'), fromTop: l('2') }).ok &&
        holes({ pulls: 2, width: l('16'), centres: l('0'), fromTop: l('2') }).map(
          (h) => `${w(h.x)}, ${w(h.y)}`,
        ),
    ).toEqual(['4, 2', '12, 2']);
  });

  test('holes are alike from both ends, and the jig check is what lies between the outer ones', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 500n, max: 2000n }),
        fc.constantFrom(1 as const, 2 as const),
        (n, pulls) => {
          const width = inches(n, 64n);
          const made = pullHoles({ ...front, width, pulls, centres: l('1') });
          if (!made.ok) return;
          const xs = made.value.map((h) => h.x);
          const [first] = xs;
          const last = xs[xs.length - 1];
          if (!first || !last) throw new Error('no holes');
          expect(equals(last, width.sub(first) as typeof first)).toBe(true);
          expect(equals(jigCheck(width, first), last.sub(first) as typeof first)).toBe(true);
        },
      ),
      { numRuns: runs(100) },
    );
  });

  test('centres wider than the front, pulls that meet, and a hole off the front are refused', () => {
    expect(code({ centres: l('17') })).toBe('centres-too-wide');
    expect(code({ centres: l('16 7/8') })).toBeUndefined();
    expect(code({ pulls: 2, fromEnd: l('7') })).toBe('pulls-meet');
    expect(code({ fromTop: l('6') })).toBe('off-the-front');
  });
});
