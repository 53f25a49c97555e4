import { describe, expect, test } from 'vitest';
import { editCase, editPutUp, editStock, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { zero } from '../../src/length/length';
import { anchorOf, cureOf, usualCure } from '../../src/plan/put-up-plan';
import { installId } from '../../src/trade/setups/install-steps';
import { l, w } from '../trade/grooves/sample';
import { worked } from './job-of';

const decided = (high: string, cleats: number): readonly Change[] => [
  ...editStock('s', { name: 'Ply', kind: 'sheet', planned: l('3/4') }),
  ...editCase('c1', {
    hold: 'outside',
    width: l('36'),
    height: l(high),
    depth: l('16'),
    sideStock: 's',
    hasTop: true,
    cleats,
  }),
];
const card = (...changes: readonly Change[]) => anchorOf(worked(changes).plan, 'c1');

describe('anchorOf', () => {
  test('the cleat of the case is what the anchors go through; what is lacking is counted', () => {
    const own = card(...decided('60', 1));
    // nothing is said yet: it is asked for, and nothing lacks
    expect([own?.lacks, own?.asks]).toEqual([[], ['fixings']]);
    expect(card(...decided('60', 1), ...editPutUp('c1', { fixings: 1 }))?.lacks).toEqual([
      { code: 'too-few', by: 1 },
    ]);
    expect(own?.facts.map((fact) => fact.code)).not.toContain('strip-between');
    expect(card(...decided('60', 1), ...editPutUp('c1', { fixings: 2 }))?.lacks).toEqual([]);
  });

  test('over 60 high a strip between as well: 64 1/4 is 4 1/4 over', () => {
    const strip = card(...decided('64 1/4', 1))?.facts.find((fact) => fact.code === 'strip-between');
    expect(strip?.code === 'strip-between' && w(strip.past)).toBe('4 1/4');
  });

  test('a tall case that has a strip between of its own is fixed through that', () => {
    // Architectural Woodwork Standards, 1 Oct 2009, 4.4.18: over 60 a third nailer, so none at 60
    const between = (high: string, own: Parameters<typeof editCase>[1], cleats = 0) => {
      const strip = card(...decided(high, cleats), ...editCase('c1', own))?.facts.find(
        (fact) => fact.code === 'strip-between',
      );
      return strip?.code === 'strip-between' ? (strip.has ?? 'none') : undefined;
    };
    expect(between('64 1/4', { hasNailers: true })).toBe('nailer');
    expect(between('64 1/4', { hasNailers: true, nailers: 2 })).toBe('none');
    expect(between('60', { hasNailers: true })).toBeUndefined();
    expect([between('64 1/4', {}, 3), between('64 1/4', {}, 2)]).toEqual(['cleat', 'none']);
  });

  test('without a cleat the back alone does not bear; what is said stands over what the case has', () => {
    const bare = card(...decided('60', 0));
    expect([bare?.lacks, bare?.asks]).toEqual([[], ['fixings', 'cleat']]);
    const said = (own: Parameters<typeof editPutUp>[1]) => card(...decided('60', 0), ...editPutUp('c1', own));
    expect(said({ fixings: 1, washers: false })?.lacks.map((lack) => lack.code)).toEqual([
      ...['too-few', 'back-alone', 'no-washers'],
    ]);
    expect(said({ fixings: 2 })).toMatchObject({ lacks: [{ code: 'back-alone' }], asks: ['washers'] });
    const thin = editPutUp('c1', { fixings: 2, cleatThick: l('3/8'), cleatWide: l('2'), washers: true });
    // 1/2 - 3/8, 2 1/2 - 2
    expect(card(...decided('60', 1), ...thin)?.lacks).toMatchObject([
      { code: 'cleat-thin', by: l('1/8') },
      { code: 'cleat-narrow', by: l('1/2') },
    ]);
  });

  test('nothing while nobody knows how high it is', () => {
    expect(card(...editCase('c1', { name: 'Cabinet' }))).toBeUndefined();
  });
});

describe('cureOf', () => {
  const cured = (...changes: readonly Change[]) => {
    const { job, folded } = worked([...decided('60', 1), ...changes]);
    return cureOf(job, 'c1', folded);
  };
  const on = tickOf(installId('c1', 'finish'), zero);

  test('counts its days from the tick of the finish: 2 November and 14 days', () => {
    expect(cured(...editPutUp('c1', { cureDays: 14 }), ...on)).toMatchObject({
      is: 'curing',
      since: '2026-11-02T08:30:00.000Z',
      until: '2026-11-16T08:30:00.000Z',
      usual: false,
    });
  });

  test('seven days stand in, and are told to be a stand-in', () => {
    expect(usualCure).toBe(7);
    expect(cured(...on)).toMatchObject({ until: '2026-11-09T08:30:00.000Z', usual: true });
  });

  test('not on yet, and ticked as cured', () => {
    expect(cured().is).toBe('not-on');
    expect(cured(...on, ...tickOf(installId('c1', 'cure'), zero)).is).toBe('cured');
  });
});
