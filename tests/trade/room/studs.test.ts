import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, howMany, less, subtract } from '../../../src/length/length';
import { type StudPlan, studsBehind } from '../../../src/trade/room/studs';
import { runs } from '../../runs';
import { between, figures, l, refusal, spelled, value } from './sample';

const plan: StudPlan = {
  found: l('11 1/4'),
  edge: 'left',
  stud: l('1 1/2'),
  spacing: l('16'),
  cleat: { from: l('2'), to: l('58') },
  end: l('2'),
  zones: [{ from: l('42'), to: l('46') }],
  keep: l('2'),
};
const zone = (from: string, to: string) => ({ from: l(from), to: l(to) });
const studs = (more: Partial<StudPlan>) => studsBehind({ ...plan, ...more }, l('1/16'));

describe('studsBehind', () => {
  test('Example 7 of room: fix 12 and 28, 44 is on the pipe, 60 past the cleat', () => {
    const found = value(studs({}));
    expect([figures(found.fix), found.tooFew]).toEqual([['12', '28'], false]);
    expect(spelled(found.refused)).toEqual([
      { why: 'in-zone', at: { value: '44', rest: '0' }, zone: { from: '42', to: '46' } },
    ]);
  });

  test('from a right edge the centre is half a stud to the left, and the spacing goes both ways', () => {
    // 29 3/4 - 3/4 = 29: 13, 29, 45
    const found = value(studs({ found: l('29 3/4'), edge: 'right', zones: [] }));
    expect(figures(found.fix)).toEqual(['13', '29', '45']);
  });

  test('a spacing is never rounded and added up: 19 1/5 on centre, each mark for itself', () => {
    // 12, 31.2, 50.4: sixteenths 31 3/16 strong .0125, 50 3/8 strong .025 (50 6/16 = 50.375, 50 7/16 = 50.4375)
    const found = value(studs({ spacing: l('19.2'), zones: [] }));
    expect(spelled(found.fix)).toEqual([
      { value: '12', rest: '0' },
      { value: '31 3/16', rest: '1/80' },
      { value: '50 3/8', rest: '1/40' },
    ]);
  });

  test.each([
    // 28 stands 2 off 30, and 1 63/64 off 29 63/64
    ['just so far from a zone as wanted', [zone('30', '31')], ['12', '28', '44'], []],
    ['a 64th nearer', [zone('29 63/64', '31')], ['12', '44'], ['near-zone']],
    ['just as far past one', [zone('25', '26')], ['12', '28', '44'], []],
    ['on the edge of one', [zone('28', '31')], ['12', '44'], ['in-zone']],
    [
      'in two at once, the one it is in is told',
      [zone('29', '31'), zone('27', '28')],
      ['12', '44'],
      ['in-zone'],
    ],
  ])('%s', (_, zones, fix, why) => {
    const found = value(studs({ zones }));
    expect([figures(found.fix), found.refused.map((x) => x.why)]).toEqual([fix, why]);
  });

  test('how much nearer than wanted is told', () => {
    // zone 29 1/4 on: 28 is 1 1/4 off, 3/4 too near
    const { refused } = value(studs({ zones: [zone('29 1/4', '31')] }));
    expect(spelled(refused)).toEqual([
      {
        why: 'near-zone',
        at: { value: '28', rest: '0' },
        zone: { from: '29 1/4', to: '31' },
        by: '3/4',
      },
    ]);
  });

  test('a centre just at the margin is taken, nearer to an end not', () => {
    expect(figures(value(studs({ cleat: zone('10', '46'), zones: [] })).fix)).toEqual(['12', '28', '44']);
    // 12 is 1 15/16 from the left end and 44 is 1 from the right
    const near = value(studs({ cleat: zone('10 1/16', '45'), zones: [] }));
    expect([figures(near.fix), near.tooFew]).toEqual([['28'], true]);
    expect(spelled(near.refused)).toEqual([
      { why: 'near-end', at: { value: '12', rest: '0' }, by: '1/16' },
      { why: 'near-end', at: { value: '44', rest: '0' }, by: '1' },
    ]);
  });

  test('between two studs there is none', () => {
    const found = value(studs({ cleat: zone('13', '27'), zones: [] }));
    expect(found).toEqual({ fix: [], refused: [], tooFew: true });
  });

  test.each([
    [{ stud: l('0') }, { code: 'not-positive', what: 'stud' }],
    [{ end: l('-1') }, { code: 'negative', what: 'end', by: '1' }],
    [{ keep: l('-1/2') }, { code: 'negative', what: 'keep', by: '1/2' }],
    [{ spacing: l('1 1/2') }, { code: 'spacing', by: '0' }],
    [{ spacing: l('1') }, { code: 'spacing', by: '1/2' }],
    [{ cleat: zone('58', '2') }, { code: 'cleat', by: '56' }],
    [
      { cleat: zone('2', '2'), end: l('0') },
      { code: 'cleat', by: '0' },
    ],
    [{ cleat: zone('2', '5') }, { code: 'cleat', by: '1' }],
    [{ zones: [zone('46', '42')] }, { code: 'zone', zone: { from: '46', to: '42' }, by: '4' }],
  ])('%o is refused', (more, want) => {
    expect(refusal(studs(more))).toEqual(want);
  });

  test('a grain of nothing is refused', () => {
    expect(refusal(studsBehind(plan, l('0')))).toEqual({ code: 'not-positive', what: 'grain' });
  });

  test('every stud behind the cleat is fixed to or refused, and none fixed lies near a zone or an end', () => {
    const zones = fc.array(
      fc.tuple(between(0, 100), between(0, 6)).map(([from, long]) => ({ from, to: add(from, long) })),
      { maxLength: 3 },
    );
    fc.assert(
      fc.property(between(0, 90), between(5, 24), zones, between(20, 90), (found, spacing, given, to) => {
        const at = { ...plan, found, spacing, zones: given, cleat: { from: l('2'), to } };
        const { fix, refused } = value(studsBehind(at, l('1/16')));
        const all = [...fix, ...refused.map((x) => x.at)].map((x) => add(x.value, x.rest));
        // exact centres, whole spacings from the one found, as many as the cleat holds
        const centre = add(found, l('3/4'));
        for (const x of all) expect(howMany(subtract(x, centre), spacing).d).toBe(1n);
        const [a, b, s, c] = [l('2'), to, spacing, centre].map((x) => Number(x.valueOf()));
        let many = 0;
        for (let k = -100; k <= 100; k++) {
          const x = (c ?? 0) + k * (s ?? 0);
          if (x >= (a ?? 0) && x <= (b ?? 0)) many++;
        }
        expect(all.length).toBe(many);
        for (const x of fix.map((mark) => add(mark.value, mark.rest))) {
          expect(less(subtract(x, l('2')), plan.end) || less(subtract(to, x), plan.end)).toBe(false);
          for (const { from, to: end } of given)
            expect(less(subtract(from, plan.keep), x) && less(x, add(end, plan.keep))).toBe(false);
        }
        expect(fix.some((x) => refused.some((y) => equals(x.value, y.at.value)))).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  });
});
