import { describe, expect, test } from 'vitest';
import { editStock } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { jobOf } from '../../src/job/job';
import { type Folded, fold } from '../../src/job/log';
import { subtract } from '../../src/length/length';
import { fromStored, toStored } from '../../src/length/stored';
import { type Plan, planOf } from '../../src/plan/plan';
import { partitionFace } from '../../src/trade/carcass/boards';
import type { Inside } from '../../src/trade/carcass/case';
import { frameOf } from '../../src/trade/carcass/frame';
import { openingOver } from '../../src/trade/carcass/standing';
import { layOut } from '../../src/trade/grooves/lay-out';
import { noLongerFit } from '../../src/trade/setups/changes';
import { l, w } from '../length/write-figures';
import { caseDecided } from './carried-cabinet-case';

/**
 * Steps 1, 2 and 10 of the carried cabinet (demo-data/README.md), from a job file to figures. Every figure was worked
 * by hand, not by this code.
 */
const entriesOf = (changes: readonly Change[], from = 1): readonly Entry[] =>
  changes.map((change, k) => ({
    job: 'cabinet',
    device: 'p1',
    count: from + k,
    at: '2026-11-02T08:00:00Z',
    act: `p1.${from + k}`,
    label: 'worked',
    ...change,
  }));

/** Through a job file and back: what is kept is text. */
function worked(changes: readonly Change[]): { readonly plan: Plan; readonly folded: Folded } {
  const file = readJobFile(writeJobFile({ job: 'cabinet', entries: entriesOf(changes) }));
  if (!file.ok) throw new Error(file.error.code);
  const folded = fold(file.value.entries);
  const job = jobOf('cabinet', folded.values);
  expect(job.unread).toEqual([]);
  return { plan: planOf(job, {}), folded };
}

const part = (plan: Plan, role: string) => {
  const found = plan.parts.find((p) => p.id === `case~${role}`);
  if (!found) throw new Error(role);
  return found;
};
const size = (plan: Plan, role: string) => {
  const { length, width } = part(plan, role);
  return `${w(length.sum.value)} × ${w(width.sum.value)}`;
};
const sizes = (plan: Plan) => {
  const found = plan.worked.get('case');
  if (!found?.ok) throw new Error('the case does not work out');
  return found.value.sizes;
};
const nears = (plan: Plan, role: string) => {
  const board = part(plan, role).board;
  return board
    ? layOut(board)
        .grooves.filter((g) => !g.wide)
        .map((g) => g.near)
    : [];
};

describe('the carried cabinet, from job file to figures', () => {
  const { plan } = worked(caseDecided);

  test('step 1 of the carried cabinet: frame opening 56 1/2; upper bay 25 7/16 over a drawer bay of 29 5/16; its top 30 7/32 over the bottom', () => {
    const frame = frameOf(sizes(plan));
    expect(w(frame.middles.value)).toBe('56 1/2');
    expect(w(frame.sill.value)).toBe('29/32');
    expect(w(openingOver(sizes(plan), 2))).toBe('25 7/16');
    expect(w(l('29 5/16').add(frame.sill.value) as ReturnType<typeof l>)).toBe('30 7/32');
    expect(size(plan, 'midrail')).toBe('17 × 1 3/4');
  });

  test('step 2 of the carried cabinet: first tray groove 6 31/32 on the side, 2 13/32 on the partition; the thirtieth 59 17/32 and 54 31/32', () => {
    expect([nears(plan, 'left')[0], nears(plan, 'left')[29]].map((x) => x && w(x))).toEqual([
      '6 31/32',
      '59 17/32',
    ]);
    expect([nears(plan, 'partition1')[0], nears(plan, 'partition1')[29]].map((x) => x && w(x))).toEqual([
      '2 13/32',
      '54 31/32',
    ]);
  });

  describe('step 10 of the carried cabinet: the sides are cut, then the second sheet reads 18 mm', () => {
    const sides = plan.operations.filter(
      (op) => ['case~left', 'case~right'].includes(op.part) && (op.what === 'rip' || op.what === 'length'),
    );
    const ticks: readonly Change[] = sides.map((op) => ({
      kind: 'tick',
      op: op.id,
      figure: toStored(op.figure),
    }));
    const reading = editStock('sheetb', { readings: [l('18 mm')], used: l('18 mm') });
    const { plan: thin, folded } = worked([...caseDecided, ...ticks, ...reading]);

    test('sides stand, and so do bottom and top', () => {
      expect(sides).toHaveLength(4);
      expect(size(thin, 'left')).toBe('64 1/4 × 17 1/2');
      expect(size(thin, 'bottom')).toBe('37 1/2 × 17 7/32');
      expect(size(thin, 'top')).toBe('37 5/8 × 17 7/32');
    });

    test('clear height, partition and bays move', () => {
      expect(w(sizes(thin).clearHeight.value)).toBe('58 719/1016');
      const { length } = part(thin, 'partition1');
      expect(w(length.sum.value)).toBe('59 549/2032');
      // down to 59 1/4: it stands between two housings
      expect([w(length.mark.value), length.mark.rest.valueOf().toFixed(4)]).toEqual(['59 1/4', '0.0202']);
      expect(sizes(thin).bays.map((b) => w(b.value))).toEqual(['18 465/4064', '18 465/4064']);
    });

    test('the tray grooves not cut move with the datum, .0101 lower, and the spacer follows', () => {
      expect(w(sizes(thin).datum.value)).toBe('4 847/1016');
      expect(w(nears(thin, 'left')[0] ?? l('0'))).toBe('6 487/508');
      expect(w(subtract(sizes(thin).datum.value, sizes(thin).joints.partitionDado))).toBe('4 2245/4064');
    });

    test('sill, head and packing grow; the frame opening stays 17', () => {
      const frame = frameOf(sizes(thin));
      expect(w(frame.sill.value)).toBe('931/1016');
      expect(w(frame.head.value)).toBe('1 37/127');
      expect(w(frame.openings[1]?.left.value ?? l('0'))).toBe('677/2032');
      expect(w(frame.openings[1]?.wide.value ?? l('0'))).toBe('17');
    });

    test('partition lines, fixed shelf and tray', () => {
      const { joints } = sizes(thin);
      const face = partitionFace(sizes(thin), 1);
      expect(w(face.add(joints.dado) as typeof face)).toBe('18 201/508');
      expect(w(face.add(joints.topRabbet) as typeof face)).toBe('18 931/2032');
      expect(w(part(thin, 'shelf').length.sum.value)).toBe('18 2751/4064');
      const tray = part(thin, 'trays').length;
      expect([w(tray.sum.value), w(tray.mark.value)]).toEqual(['18 3597/8128', '18 7/16']);
    });

    test('ticks of the sides stand, nothing cut has moved, and the dado in them waits for its stack', () => {
      const cutTo = (op: string) => {
        const tick = folded.ticks.get(op);
        const read = tick && fromStored(tick.figure);
        return read?.ok ? { figure: read.value } : undefined;
      };
      expect(sides.every((op) => folded.ticks.has(op.id))).toBe(true);
      expect(noLongerFit(thin.operations, cutTo)).toEqual([]);
      const dado = thin.operations.find(
        (op) => op.part === 'case~left' && op.which?.is === 'groove' && op.which.seat.in === 'bottom',
      );
      expect(dado?.fits).toBe('sheetb');
      expect(w(dado?.setup.cutter ?? l('0'))).toBe(w(l('18 mm').add(l('1/200')) as ReturnType<typeof l>));
    });
  });
});

test('a thing in a bay keeps its kind through the file', () => {
  const { plan } = worked(caseDecided);
  const kinds: readonly Inside['kind'][] = ['trays', 'fixed', 'rail'];
  expect(plan.job.cases[0]?.inside.map((i) => i.kind)).toEqual(kinds);
});
