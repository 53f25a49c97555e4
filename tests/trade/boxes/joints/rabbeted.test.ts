import { describe, expect, test } from 'vitest';
import { boxWarnings } from '../../../../src/trade/boxes/box';
import { rabbeted, usualRabbet } from '../../../../src/trade/boxes/joints/rabbeted';
import { l, w } from '../../grooves/sample';
import { cutsWith, drawersWith } from './corner';

const half = { boxJoint: 'rabbeted', frontRabbet: l('1/2') } as const;

describe('a front rabbeted for its sides', () => {
  test('is rabbeted across both ends, as wide as a side and as deep as said', () => {
    const cuts = cutsWith(half);
    const rabbets = ['left', 'right'].map((end) => cuts.get(`boxfront rabbet~${end} 1`));
    expect(rabbets.map((op) => [w(op?.figure), w(op?.setup.height)])).toEqual([
      ['1/2', '1/2'],
      ['1/2', '1/2'],
    ]);
    // a rabbet as wide as the stock is thick wants that measured
    expect(rabbets.map((op) => op?.fits)).toEqual(['half', 'half']);
    expect([...cuts.keys()].filter((id) => /tails|pins|fingers/.test(id))).toEqual([]);
  });

  // 16 1/2 − 1/2 − 1/2 − half of 1/64 = 15 63/128, on the tape 15 1/2 with 1/128 over it
  test('has the dado for its back measured from the front end of the side', () => {
    const dado = cutsWith(half).get('side along~back left');
    expect(dado?.setup.on).toEqual({ at: 'end', named: 'front' });
    expect([w(dado?.figure), w(dado?.setup.figure?.rest)]).toEqual(['15 1/2', '-1/128']);
    expect(w(dado?.setup.cutter)).toBe('33/64');
  });

  // 16 3/4 − (3/4 − 3/8) = 16 3/8
  test('takes half of its thickness where nothing is said', () => {
    expect(w(cutsWith({ boxJoint: 'rabbeted' }).get('side len left')?.figure)).toBe('16 3/8');
    // half of 15/32 is 15/64, half of .71 is .355 and goes up to 23/64
    expect([l('15/32'), l('.71')].map((front) => w(usualRabbet(front, '1/32')))).toEqual(['15/64', '23/64']);
  });

  test('cannot be rabbeted as deep as it is thick, nor by nothing', () => {
    const wrong = (deep: string) => {
      const made = drawersWith({ boxJoint: 'rabbeted', frontRabbet: l(deep) });
      return made.ok ? 'ok' : made.error.map((p) => ('over' in p ? `${p.code} ${w(p.over)}` : p.code)).join();
    };
    expect(['3/4', '7/8', '0', '23/32'].map(wrong)).toEqual([
      'rabbet-through 0',
      'rabbet-through 1/8',
      'not-positive',
      'ok',
    ]);
  });
});

// [S1] half to two thirds: of 3/4, 3/8 to 1/2
test('a rabbet under half of the front, over two thirds, or under the groove is said', () => {
  const says = (deep: string, groove = '1/4') => {
    const made = drawersWith({ boxJoint: 'rabbeted', frontRabbet: l(deep), grooveDeep: l(groove) });
    const [first] = made.ok ? made.value.drawers : [];
    return first ? boxWarnings(first.plan, rabbeted).map((x) => x.code) : [];
  };
  expect(['11/32', '3/8', '1/2', '17/32'].map((deep) => says(deep))).toEqual([
    ['rabbet-shallow'],
    [],
    [],
    ['rabbet-deep'],
  ]);
  expect(says('3/16')).toEqual(['rabbet-shallow', 'groove-past-rabbet']);
});

// common practice, no source: 3/8 behind the back; with 1/64 of room shared out, 49/128 is the least that is set
test('little side behind the back is said, and a dado past half the side', () => {
  const says = (behind: string, backDado = '1/4') => {
    const made = drawersWith({ ...half, behind: l(behind), backDado: l(backDado) });
    const [first] = made.ok ? made.value.drawers : [];
    return first ? boxWarnings(first.plan, rabbeted).map((x) => x.code) : [];
  };
  expect([says('3/8'), says('49/128'), says('0')]).toEqual([['land-thin'], [], []]);
  expect(says('1/2', '9/32')).toEqual(['dado-deep']);
});
