import { describe, expect, test } from 'vitest';
import { editBank, editJob, editOwnName } from '../../src/job/edits';
import { absolute, add, subtract } from '../../src/length/length';
import { stepsOf } from '../../src/plan/breakdown';
import { sawsGone, sawsLike, sheetSaws } from '../../src/plan/sheet-saws';
import type { OwnMachine, Shop } from '../../src/trade/machines/shop';
import { placesOf } from '../../src/trade/sheets/tree';
import { l, w } from '../length/write-figures';
import { at, sampleLog, takenUp, withMore } from './laid-sample';

const plunge: OwnMachine = {
  id: 'own1',
  name: 'Plunge saw',
  like: 'plunge',
  figures: { kerf: l('3/32'), circularGuide: l('118') },
};
const rail: OwnMachine = { id: 'own2', name: 'Rail saw', like: 'circular', figures: { shoeKeep: l('4') } };
const old: OwnMachine = {
  id: 'own3',
  name: 'Old saw',
  like: 'fence',
  figures: { single: l('5/32'), capacity: l('52') },
};
const shop: Shop = {
  kerf: l('5/64'),
  single: l('1/8'),
  shoeKeep: l('5'),
  capacity: l('30'),
  own: [plunge, rail, old],
};
const kerf = (job: Parameters<typeof sheetSaws>[0]) => {
  const found = sheetSaws(job, shop).kerf;
  return found && w(found);
};

describe('the kerf of a plan', () => {
  test('is the widest of the saws that cut it: nothing said, 1/8 of the table saw over 5/64', () =>
    expect([kerf({}), kerf({ guideOnly: true })]).toEqual(['1/8', '5/64']));

  test('along the guide alone it is that of the saw of its own: 3/32, whatever the table saw takes', () =>
    expect([kerf({ guideSaw: 'own1', guideOnly: true }), kerf({ guideSaw: 'own1' })]).toEqual([
      '3/32',
      '1/8',
    ]));

  test('at the fence of the old saw 5/32; where no fence cuts, that says nothing', () =>
    expect([kerf({ fenceSaw: 'own3' }), kerf({ fenceSaw: 'own3', guideOnly: true })]).toEqual([
      '5/32',
      '5/64',
    ]));

  test('a saw whose kerf is blank is asked, though the shop’s is known; nothing stands in for it', () => {
    const found = sheetSaws({ guideSaw: 'own2' }, shop);
    expect([found.kerf, found.unmeasured]).toEqual([undefined, [{ saw: rail, field: 'kerf' }]]);
  });

  test('one that this shop has not, or that works otherwise, is passed over, and the first is named', () => {
    expect(kerf({ guideSaw: 'own9', guideOnly: true })).toBe('5/64');
    expect(kerf({ guideSaw: 'own3', guideOnly: true })).toBe('5/64');
    expect(sawsGone({ guideSaw: 'own9', fenceSaw: 'own3' }, shop)).toEqual(['own9']);
    expect(sawsGone({ guideSaw: 'own9' }, { kerf: l('1/8') })).toEqual([]);
    expect([sawsLike(shop, 'circular'), sawsLike(shop, 'fence')]).toEqual([[plunge, rail], [old]]);
  });
});

describe('plan, numbered cuts and parts agree', () => {
  const log = withMore(sampleLog, [
    ...editJob({ guideSaw: 'own1', guideOnly: true }),
    ...editOwnName('own1', 'Plunge saw'),
  ]);
  const planned = takenUp(log, 'sheeta', shop);
  const { job, found } = at(planned, shop);
  const [sheet] = job.sheets;
  if (!sheet) throw new Error('no sheet');

  test('the sheet is laid out with 3/32, and every cut takes just that between its two sides', () => {
    expect(w(sheet.kerf)).toBe('3/32');
    const steps = stepsOf(sheet, job, found);
    expect(steps.length).toBeGreaterThan(0);
    for (const { size, near, far, way } of steps) {
      const along = way === 'rip' ? 'wide' : 'long';
      expect(w(subtract(subtract(size[along], near[along]), far[along]))).toBe('3/32');
    }
  });

  test('each is along the guide: its edge on the line, or, on the waste, 3/32 beyond it', () => {
    const steps = stepsOf(sheet, job, found);
    for (const step of steps) {
      expect(step.tool).toBe('guide');
      const off = step.onKeep && add(step.onKeep.value, step.onKeep.rest);
      const line = add(step.figure.value, step.figure.rest);
      if (off) expect(off.equals(line)).toBe(true);
      const beyond = step.onWaste && add(step.onWaste.value, step.onWaste.rest);
      if (beyond) expect(w(absolute(subtract(beyond, line)))).toBe('3/32');
    }
    expect(steps.some(({ onKeep }) => onKeep)).toBe(true);
  });

  test('every piece is as large on the sheet as it is wanted', () => {
    for (const { branch, size } of placesOf(sheet, sheet.kerf))
      if (branch.is === 'piece') {
        const piece = found.pieces.get(branch.piece);
        expect([piece?.long, piece?.wide].map((x) => x && w(x)).sort()).toEqual(
          [w(size.long), w(size.wide)].sort(),
        );
      }
  });

  test('cut on another saw by then, the plan says that it was made for another kerf', () => {
    const moved = withMore(planned, editJob({ guideSaw: undefined }));
    expect(at(moved, shop).found.pools.find(({ pool }) => pool.id === 'sheeta')?.changed).toBe(true);
    expect(at(planned, shop).found.pools.find(({ pool }) => pool.id === 'sheeta')?.changed).toBe(false);
  });
});

test('five fronts out of one piece: four kerfs of 3/32 in place of 5/64 are 4 × 1/64 = 1/16 longer', () => {
  const blank = (changes: ReturnType<typeof editJob>) => {
    const { plan } = at(withMore(sampleLog, [...editBank('drawers', { fromBlank: true }), ...changes]), shop);
    const found = plan.parts.find(({ name }) => name.role === 'blank');
    if (!found) throw new Error('no blank');
    return found.width.sum.value;
  };
  expect(w(subtract(blank(editJob({ guideSaw: 'own1' })), blank([])))).toBe('1/16');
});
