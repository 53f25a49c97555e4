import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length';
import { markAt } from '../../../src/length/tape';
import {
  atPitch,
  drift,
  fill,
  mostParts,
  nearFrom,
  openings,
  realPitch,
} from '../../../src/trade/grooves/place';
import { runs } from '../../runs';
import { l, w } from './sample';

const sixtyFourths = (max: number, min = 0) => fc.integer({ min, max }).map((n) => inches(BigInt(n), 64n));

describe('nearFrom', () => {
  test('takes half a width off a centre', () => {
    expect(w(nearFrom(l('3'), l('1/2'), 'centre'))).toBe('2 3/4');
  });
});

describe('atPitch', () => {
  test('counts every groove from the first', () => {
    expect(atPitch(l('2 1/8'), l('1 13/16'), 2).map(w)).toEqual(['2 1/8', '3 15/16']);
  });
});

describe('fill', () => {
  test('Example 1 of grooves: room 53 21/32 at 1 13/16 holds thirty, 1 3/32 over', () => {
    const { count, leftOver } = fill(l('53 21/32'), l('1 13/16'));
    expect([count, w(leftOver)]).toEqual([30, '1 3/32']);
  });

  test('room of nothing holds one', () => expect(fill(l('0'), l('1')).count).toBe(1));

  test('room of less than nothing holds none', () => expect(fill(l('-1/64'), l('1')).count).toBe(0));

  test('counts as laying them down one by one does', () => {
    const property = fc.property(sixtyFourths(4000, -64), sixtyFourths(200, 1), (room, pitch) => {
      let count = 0;
      for (let at = inches(0n); at.lte(room); at = at.add(pitch) as typeof at) count += 1;
      expect(fill(room, pitch).count).toBe(count);
    });
    fc.assert(property, { numRuns: runs(500) });
  });
});

describe('openings', () => {
  test('parts and openings add back up to the span exactly, the first and the last openings alike', () => {
    const property = fc.property(sixtyFourths(5000, 640), fc.integer({ min: 1, max: 12 }), (span, n) => {
      const [part, width] = [l('11/32'), l('13/32')];
      const { opening, nears } = openings(span, n, { part, width });
      expect(
        opening
          .mul(BigInt(n + 1))
          .add(part.mul(BigInt(n)))
          .equals(span),
      ).toBe(true);
      const ease = l('1/32');
      const last = nears[n - 1];
      expect(nears[0]?.add(ease).equals(opening)).toBe(true);
      expect(last && span.sub(last).sub(ease).sub(part).equals(opening)).toBe(true);
    });
    fc.assert(property, { numRuns: runs(300) });
  });
});

describe('mostParts', () => {
  test.each([
    ['10', '3', 3],
    ['9', '3', 2],
    ['2', '3', 0],
  ])('over %s of parts %s thick is %s', (span, part, most) => {
    expect(mostParts(l(span), l(part))).toBe(most);
  });
});

describe('drift', () => {
  test('Example 7 of grooves: of eleven grooves stepped at a pitch rounded to 1/32 is 5/64', () => {
    const pitch = l('2 7/128');
    const error = markAt(pitch, '1/32').value.sub(pitch) as ReturnType<typeof l>;
    expect(w(error)).toBe('1/128');
    expect(w(drift(error, 11))).toBe('5/64');
  });

  test('of one groove is nothing', () => expect(w(drift(l('1/8'), 1))).toBe('0'));
});

describe('realPitch', () => {
  test('Example 15 of grooves: of thirty that end 1/64 short is 1 1507/1856, each step off by -1/1856', () => {
    const real = realPitch(l('6 31/32'), l('59 33/64'), 30);
    expect(w(real)).toBe('1 1507/1856');
    const step = real.sub(l('1 13/16')) as typeof real;
    expect([w(step), w(drift(step, 30))]).toEqual(['-1/1856', '-1/64']);
  });

  test('needs two grooves', () => expect(() => realPitch(l('1'), l('2'), 1)).toThrow(RangeError));

  test.each(['1', '31/32'])('a last groove at %s does not lie past a first at 1', (last) =>
    expect(() => realPitch(l('1'), l(last), 30)).toThrow(RangeError),
  );
});
