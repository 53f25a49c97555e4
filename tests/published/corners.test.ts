import { describe, expect, test } from 'vitest';
import { inches } from '../../src/length/length';
import { cornerOf } from '../../src/trade/room/corner';
import { roundTurn } from '../../src/trade/room/turn';

describe('roundTurn', () => {
  // Source: Wolfram MathWorld, Moving Ladder Problem (mathworld.wolfram.com/MovingLadderProblem.html; date not read).
  // Seen: "What is the longest ladder that can be moved around a right-angled hallway of unit width? For a straight,
  // rigid ladder, the answer is 2sqrt(2)". √8 is 2.8284.
  // Source: a text on the problem of the ladder (matematikaa1.blogspot.com/2015/11/the-problem-of-ladder.html, November
  // 2015), and as the answer of a calculus book a forum quotes (freemathhelp.com, thread 90868; book not named). Seen:
  // the longest is (a^(2/3) + b^(2/3))^(3/2). Rows 2 to 4 are worked from it: 8 and 27 give (4 + 9)^(3/2) = 13 √13 =
  // 46.8721, 1 and 8 give 5 √5 = 11.1803, 27 and 64 give (9 + 16)^(3/2) = 125 exactly.
  // A ladder has no width, a case has: ours is a millionth wide, which takes some millionths off the length, so a
  // whole root is missed by one mark of a thousandth.
  test.each([
    [1n, 1n, 2828n],
    [8n, 27n, 46872n],
    [1n, 8n, 11180n],
    [27n, 64n, 124999n],
  ])('a line goes from a corridor of %s into one of %s up to so many thousandths: %s', (a, b, want) => {
    const plan = { long: inches(1n), wide: inches(1n, 1_000_000n) };
    const found = roundTurn({ a: inches(a), b: inches(b) }, plan, inches(1n, 1000n));
    expect(found.ok && found.value.longest?.mul(1000n).toFraction()).toBe(`${want}`);
  });
});

describe('cornerOf', () => {
  // Source: Euclid, Elements II.12 and II.13 (memory): in a triangle with an obtuse angle the square on the side under
  // it is greater than the two others together by twice one side and what the other reaches out over it; with an acute
  // angle less by the same. Sides are ours: on 13, 14, 15 the foot of the height parts 14 into 5 and 9, and on 4, 13,
  // 15 it lies 5 outside the 4: 13² = 5² + 12², 15² = 9² + 12².
  test.each([
    [14n, 13n, 15n, 5n],
    [4n, 13n, 15n, -5n],
  ])('legs %s and %s with %s across: the side leg reaches %s in', (back, side, across, want) => {
    const found = cornerOf({ back: inches(back), side: inches(side), across: inches(across) });
    expect(found.ok && found.value.inAt.equals(want)).toBe(true);
  });
});
