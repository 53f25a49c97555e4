import { describe, expect, test } from 'vitest';
import { add } from '../../../src/length/length';
import { clearances, fitFrom } from '../../../src/trade/grooves/fit';
import { trayFor } from '../../../src/trade/grooves/tray';
import { l, w } from './sample';

const readings = (...texts: string[]) => texts.map(l);

describe('fitFrom', () => {
  test('Example 16 of grooves: .707 .712 .709 .7105 with .005 wants .717, 23/32 by the nearest 64th, loosest .01', () => {
    const fit = fitFrom(readings('.707', '.712', '.709', '.7105'), clearances.glued, true);
    if (!fit.ok) throw new Error(fit.error.code);
    expect(fit.value.width.equals(l('.717'))).toBe(true);
    expect(w(fit.value.nearest64.value)).toBe('23/32');
    expect(fit.value.loosest.equals(l('.01'))).toBe(true);
    expect(fit.value.spread.equals(l('.005'))).toBe(true);
    expect([fit.value.wideSpread, fit.value.groups]).toEqual([false, undefined]);
  });

  // Limits: common practice, no source.
  test('a glue line looser than .015 offers two groups of sheets, split where they differ most', () => {
    const fit = fitFrom(readings('.719', '.703', '.718', '.704'), clearances.glued, true);
    if (!fit.ok) throw new Error(fit.error.code);
    expect(fit.value.groups?.map((g) => g.map((x) => x.toString()))).toEqual([
      ['0.703', '0.704'],
      ['0.718', '0.719'],
    ]);
    expect(fit.value.wideSpread).toBe(true);
  });

  test('the two groups are as narrow as they can be', () => {
    const fit = fitFrom(readings('.700', '.718', '.706', '.712'), clearances.glued, true);
    expect(fit.ok && fit.value.groups?.map((g) => g.map((x) => x.toString()))).toEqual([
      ['0.7', '0.706'],
      ['0.712', '0.718'],
    ]);
  });

  test('a glue line loose by its clearance alone is warned of, and no sheets are parted', () => {
    const fit = fitFrom(readings('.7', '.7'), clearances.slides, true);
    expect(fit.ok && [fit.value.weakGlueLine, fit.value.groups]).toEqual([true, undefined]);
    const just = fitFrom(readings('.7', '.71'), clearances.glued, true);
    expect(just.ok && [just.value.loosest.toString(), just.value.weakGlueLine]).toEqual(['0.015', false]);
  });

  test.each([
    ['.715625', false],
    ['.715626', true],
  ])('readings of .7 and %s, 1/64 apart or a hair more, are two lots: %s', (other, want) => {
    const fit = fitFrom(readings('.7', other), clearances.slides, false);
    expect(fit.ok && fit.value.wideSpread).toBe(want);
  });

  test('a part that slides is not split: its play is wanted', () => {
    const fit = fitFrom(readings('.719', '.703'), clearances.slides, false);
    expect(fit.ok && fit.value.groups).toBeUndefined();
  });

  test('a single reading is its own thinnest and thickest', () => {
    const fit = fitFrom(readings('18 mm'), clearances.gluedEasy, true);
    expect(fit.ok && w(fit.value.spread)).toBe('0');
    expect(fit.ok && fit.value.width.equals(l('18 mm').add(l('.008')))).toBe(true);
  });

  test('refuses no readings, and names the one that is nothing', () => {
    expect(fitFrom([], clearances.glued, true)).toEqual({ ok: false, error: { code: 'no-readings' } });
    expect(fitFrom(readings('.71', '0'), clearances.glued, true)).toEqual({
      ok: false,
      error: { code: 'not-positive', at: 1 },
    });
  });
});

test('a clearance below nothing is refused by how much, and none at all is well', () => {
  const groove = (clearance: string) => fitFrom(readings('.71'), l(clearance), true);
  const found = groove('-1/64');
  expect(found.ok || found.error).toMatchObject({ code: 'clearance-negative', by: l('1/64') });
  expect(groove('0').ok).toBe(true);
});

describe('trayFor', () => {
  const tray = (bow: string, opening = '18 7/64') =>
    trayFor(l(opening), l('3/16'), { slack: l('3/64'), bow: l(bow), tape: '1/32' });

  test('Example 17 of grooves: in an 18 7/64 bay, grooves 3/16, slack 3/64, bow 1/64: 18 7/16, least bearing 1/8', () => {
    const found = tray('1/64');
    if (!found.ok) throw new Error(found.error.code);
    const { width, bearing, thinBearing } = found.value;
    expect([w(width), w(bearing), thinBearing]).toEqual(['18 7/16', '1/8', false]);
  });

  test('an opening of nothing and grooves of no depth are named', () => {
    const play = { slack: l('0'), bow: l('0'), tape: '1/32' } as const;
    expect(trayFor(l('0'), l('3/16'), play)).toMatchObject({
      error: { code: 'not-positive', what: 'opening' },
    });
    expect(trayFor(l('18'), l('0'), play)).toMatchObject({ error: { code: 'not-positive', what: 'depth' } });
  });

  test('with a hair more bow rests on too little', () => {
    const found = tray('1/32');
    expect(found.ok && [w(found.value.bearing), found.value.thinBearing]).toEqual(['7/64', true]);
  });

  test('is cut down to the tape, never up: 18 3597/8128 goes to 18 7/16', () => {
    const found = tray('0', '18 1121/8128');
    expect(found.ok && [w(found.value.width), w(found.value.cut.value)]).toEqual([
      w(add(l('18 1121/8128'), l('21/64'))),
      '18 7/16',
    ]);
  });

  test.each([
    ['-1/64', '0', 'slack-negative'],
    ['0', '-1/64', 'bow-negative'],
    ['0', '0', 'ok'],
  ])('slack %s and bow %s: %s', (slack, bow, code) => {
    const found = trayFor(l('18'), l('3/16'), { slack: l(slack), bow: l(bow), tape: '1/32' });
    expect(found.ok || !('by' in found.error) ? 'ok' : `${found.error.code} ${w(found.error.by)}`).toBe(
      code === 'ok' ? 'ok' : `${code} 1/64`,
    );
  });

  test('refuses slack that takes the whole of it', () => {
    const found = trayFor(l('1/64'), l('1/64'), { slack: l('1/4'), bow: l('0'), tape: '1/32' });
    expect(found.ok || !('by' in found.error) || [found.error.code, w(found.error.by)]).toEqual([
      'no-width',
      '13/64',
    ]);
  });
});
