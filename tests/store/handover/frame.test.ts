import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFrame, writeFrame } from '../../../src/store/handover/frame';
import { runs } from '../../runs';
import { bytesOf } from './codes';

describe('writeFrame and readFrame', () => {
  const frame = { bundle: 0xfedcba98, length: 70_000, count: 200, number: 65_535, block: bytesOf(350, 3) };

  test('a frame comes back the same', () => {
    expect(readFrame(writeFrame(frame))).toEqual({ ok: true, value: frame });
  });

  test('holds only what codes write in five and a half bits a character', () => {
    expect(writeFrame(frame)).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
  });

  test.each([
    ['', 'not-ours'],
    ['https://example.org', 'not-ours'],
    ['KL:BB8', 'not-ours'],
    ['kl1:BB8', 'not-ours'],
    ['KL0:BB8', 'not-ours'],
    ['KL1:', 'misread'],
    ['KL1:BB8', 'misread'],
    [writeFrame({ ...frame, count: 0 }), 'misread'],
    [writeFrame({ ...frame, count: 513 }), 'misread'],
    [writeFrame({ ...frame, count: 199 }), 'misread'],
    [writeFrame({ ...frame, block: new Uint8Array() }), 'misread'],
    ['KL2:WHATEVER', 'newer-code'],
    ['KL10:WHATEVER', 'newer-code'],
  ])('%.20s is refused', (text, code) => {
    const read = readFrame(text);
    expect(read.ok ? 'taken' : read.error.code).toBe(code);
  });

  test('with any characters changed, taken out or put in it is thrown away', () => {
    const text = writeFrame(frame);
    const spot = fc.record({
      at: fc.nat(text.length - 1),
      cut: fc.nat(3),
      put: fc.stringMatching(/^[0-9A-Z $%*+\-./:]{0,3}$/),
    });
    fc.assert(
      fc.property(fc.array(spot, { minLength: 1, maxLength: 4 }), (spots) => {
        const bad = spots.reduce((t, { at, cut, put }) => t.slice(0, at) + put + t.slice(at + cut), text);
        const read = readFrame(bad);
        expect(read.ok).toBe(bad === text);
      }),
      { numRuns: runs(200) },
    );
  }, 600_000);
});
