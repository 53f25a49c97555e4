import { describe, expect, test } from 'vitest';
import { editBank, editBoard, editCase, editJob, editRun, editStock, editWide } from '../../src/job/edits';
import type { Change, Json } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { isMoment } from '../../src/job/kinds';
import { fieldAt } from '../../src/job/paths';
import { fromMillimetres, inches } from '../../src/length/length';
import { usualOf } from '../../src/trade/carcass/usual';
import { usualBank } from '../../src/trade/fronts/usual-bank';

const valuesOf = (changes: readonly Change[]): Map<string, Json> => {
  const values = new Map<string, Json>();
  for (const c of changes) if (c.kind === 'edit' && c.value !== null) values.set(c.path, c.value);
  return values;
};

describe('jobOf', () => {
  test('what was edited reads back, typed and exact', () => {
    const job = jobOf(
      'j',
      valuesOf([
        ...editJob({ name: 'Tray case', tape: '1/64' }),
        ...editBoard('b1', { name: 'Side', length: inches(257n, 4n), made: 'pair', machine: 'router' }),
        ...editRun('b1', 'r1', { spacing: 'given', at: [inches(1n), inches(5n, 127n)], centred: true }),
        ...editWide('b1', 'w1', { near: inches(-23n, 32n), width: inches(23n, 32n) }),
        ...editStock('s1', { name: 'A', readings: [inches(707n, 1000n)] }),
      ]),
    );
    expect(job).toMatchObject({ name: 'Tray case', tape: '1/64', unread: [] });
    expect(job.boards[0]).toMatchObject({
      id: 'b1',
      name: 'Side',
      made: 'pair',
      machine: 'router',
      length: inches(257n, 4n),
    });
    expect(job.boards[0]?.runs[0]).toMatchObject({
      spacing: 'given',
      at: [inches(1n), inches(5n, 127n)],
      centred: true,
    });
    expect(job.boards[0]?.wides[0]?.near).toEqual(inches(-23n, 32n));
    expect(job.stock[0]?.readings).toEqual([inches(707n, 1000n)]);
  });

  test('a place taken away keeps its gap through the log', () => {
    const [change] = editRun('b1', 'r1', { at: [inches(1n), undefined, inches(5n, 127n)] });
    expect(change).toMatchObject({ value: ['1', null, '5/127'] });
    const job = jobOf('j', valuesOf(editRun('b1', 'r1', { at: [inches(1n), undefined] })));
    expect(job.boards[0]?.runs[0]?.at).toEqual([inches(1n), undefined]);
    expect(fieldAt('boards/b1/runs/r1/at')?.read(['1', 'x'])).toBeUndefined();
  });

  test('in a job in millimetres what stands in while nothing is said is round in them', () => {
    const edits = [...editCase('c1', { name: 'Case' }), ...editBank('k1', { name: 'Bank' })];
    const [metric, inch] = (['1 mm', '1/32'] as const).map((tape) =>
      jobOf('j', valuesOf([...editJob({ tape }), ...edits])),
    );
    const usual = (job = metric) => [
      job?.cases[0] && usualOf(job.cases[0]).dado,
      job?.banks[0] && usualBank(job.banks[0]).reveal,
    ];
    expect(usual()).toEqual([fromMillimetres(6n), fromMillimetres(2n)]);
    expect(usual(inch)).toEqual([inches(1n, 4n), inches(3n, 32n)]);
  });

  test('lengths are kept as exact text, never a decimal', () => {
    const [change] = editBoard('b1', { length: inches(47n, 64n) });
    expect(change).toEqual({ kind: 'edit', path: 'boards/b1/length', value: '47/64' });
  });

  test('a value that cannot be read falls back to the usual and is named', () => {
    const job = jobOf(
      'j',
      new Map<string, Json>([
        ['tape', '1/7'],
        ['boards/b1/length', 'long'],
        ['boards/b1/name', 'Side'],
      ]),
    );
    expect(job.tape).toBe('1/32');
    expect(job.boards[0]?.length).toBeUndefined();
    expect(job.unread).toEqual(['tape', 'boards/b1/length']);
  });

  test('boards, runs and sheets keep the order they were made in, whatever their ids', () => {
    const ids = ['b', '7', 'a', '10', '1'];
    const job = jobOf(
      'j',
      valuesOf(
        ids.flatMap((id) => [
          ...editBoard(id, { name: id }),
          ...editRun(id, '2', { face: 'A' }),
          ...editRun(id, '1', { face: 'B' }),
          ...editStock(id, { name: id }),
        ]),
      ),
    );
    expect(job.boards.map(({ id }) => id)).toEqual(ids);
    expect(job.stock.map(({ id }) => id)).toEqual(ids);
    expect(job.boards[0]?.runs.map(({ id }) => id)).toEqual(['2', '1']);
  });

  test('a removed board, run or sheet is not there', () => {
    const job = jobOf(
      'j',
      valuesOf([
        ...editBoard('b1', { name: 'x', gone: true }),
        ...editStock('s1', { name: 'A', gone: true }),
      ]),
    );
    expect([job.boards, job.stock]).toEqual([[], []]);
  });
});

describe('isMoment', () => {
  test.each(['2026-11-25T10:00:00.000Z', '2024-02-29T23:59Z', '2026-11-25T10:00:00Z'])('%s is one', (text) =>
    expect(isMoment(text)).toBe(true),
  );
  test.each(['', '0', '2026-13-01T00:00:00Z', '2026-11-25T25:00:00Z', '2026-11-25T:::::Z', '2026-11-25'])(
    '“%s” is none',
    (text) => expect(isMoment(text)).toBe(false),
  );
});

describe('fieldAt', () => {
  test.each([
    '__proto__',
    'constructor',
    'boards/b1/__proto__',
    'boards/__proto__/name',
    'boards/b1/runs/r1/toString',
    'boards',
    'boards/b1',
    'stock/s1/length',
    'a/b/c/d/e',
  ])('%s is no field of a job', (path) => expect(fieldAt(path)).toBeUndefined());

  test.each([
    'name',
    'boards/b1/length',
    'boards/b1/runs/r1/at',
    'boards/b1/wides/w1/near',
    'stock/s1/readings',
  ])('%s is one', (path) => expect(fieldAt(path)).toBeDefined());
});
