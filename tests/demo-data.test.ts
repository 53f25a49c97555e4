import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { writeLength } from '../src/length/write';
import { viewOf } from '../src/screens/marks/view';
import { planOf } from '../src/screens/plan';
import { readJobFile } from '../src/store/file';
import { jobOf } from '../src/store/job';
import { fold } from '../src/store/log';
import { checkOf } from '../src/trade/carcass/check';
import { spacerFor } from '../src/trade/grooves/lay-out';
import { trayFor } from '../src/trade/grooves/tray';
import { l } from './length/write-figures';

const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
if (!file.ok) throw new Error(file.error.code);
const job = jobOf(file.value.job, fold(file.value.entries).values);
const plan = planOf(job, {});
const view = (id: string) => {
  const board = plan.parts.find((p) => p.id === id)?.board;
  if (!board) throw new Error(id);
  return viewOf(board, {}, job.tape);
};
const near = (id: string, groove: string): string => {
  const mark = view(id).marks.find((m) => m.groove.id === groove);
  return mark ? writeLength(mark.near.value) : 'none';
};

describe('the sample job', () => {
  test('nothing in it is unreadable or cannot be cut', () => {
    expect(job.unread).toEqual([]);
    for (const { id, board } of plan.parts) {
      if (!board) continue;
      expect(view(id).layout.problems).toEqual([]);
      expect(view(id).settings.settings.length).toBeGreaterThan(0);
    }
    for (const found of plan.worked.values()) {
      expect(found.ok && checkOf(found.value).every((line) => line.meets)).toBe(true);
    }
    expect(plan.order.ok && plan.order.value.proved).toBe(true);
  });

  test('thirty tray grooves stand on one datum: side and partition carry the same layout', () => {
    expect([near('case~left', 'trays~1'), near('case~left', 'trays~30')]).toEqual(['6 31/32', '59 17/32']);
    expect([near('case~partition1', 'trays~1'), near('case~partition1', 'trays~30')]).toEqual([
      '2 13/32',
      '54 31/32',
    ]);
    expect(view('case~left').marks.find((m) => m.groove.id === 'trays~30')?.mate?.value).toEqual(
      l('54 31/32'),
    );
    const { spacer, at } = spacerFor(l('4 27/32'), l('9/32'));
    expect([writeLength(spacer), at]).toEqual(['4 9/16', 'mate']);
  });

  test('the tray for them is 18 7/16, and sits an eighth in its groove at the worst', () => {
    const tray = trayFor(l('18 7/64'), l('3/16'), { slack: l('3/64'), bow: l('1/64'), tape: job.tape });
    expect(tray.ok && [writeLength(tray.value.cut.value), writeLength(tray.value.bearing)]).toEqual([
      '18 7/16',
      '1/8',
    ]);
  });
});

describe('the drawers of the sample job', () => {
  const bank = plan.banks.get('drawers');

  test('work out with nothing asked for, in the bay under the middle rail', () => {
    expect(bank?.fronts.ok && bank.fronts.value.heights.map((h) => writeLength(h))).toEqual([
      '4 3/8',
      '5 1/16',
      '5 25/32',
      '6 15/32',
      '7 5/32',
    ]);
    expect(bank?.drawers?.ok).toBe(true);
    expect(bank?.parts).toHaveLength(25);
  });

  test('every groove for a bottom runs out inside a tail', () => {
    const drawers = bank?.drawers?.ok ? bank.drawers.value.drawers : [];
    expect(drawers).toHaveLength(5);
    for (const { tails } of drawers) expect(tails.tails.ok && tails.tails.value.groove?.inside).toBe(true);
  });

  test('all that goes in goes in: no thing is taller than its drawer takes', () => {
    const first = planOf({ ...job, banks: job.banks.map((b) => ({ ...b, contentsFirst: true })) }, {});
    const found = first.banks.get('drawers')?.fronts;
    expect(found?.ok && found.value.heights.map((h) => writeLength(h))).toEqual(
      bank?.fronts.ok ? bank.fronts.value.heights.map((h) => writeLength(h)) : [],
    );
  });
});
