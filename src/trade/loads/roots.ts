import { isqrt } from '../../length/diagonal';
import { inches, isPositive, type Length, type Ratio } from '../../length/length';

/** The greatest whole number whose cube is not above n, n >= 0, by halving. @example cubeRoot(26n) // 2n */
function cubeRoot(n: bigint): bigint {
  let [low, high] = [0n, 1n];
  while (high ** 3n <= n) high *= 2n;
  while (high - low > 1n) {
    const mid = (low + high) / 2n;
    if (mid ** 3n <= n) low = mid;
    else high = mid;
  }
  return low;
}

function check(x: Ratio, grain: Length): void {
  if (x.s < 0n) throw new RangeError('root of a negative');
  if (!isPositive(grain)) throw new RangeError('grain must be > 0');
}

/**
 * The greatest whole number of grains whose square is not above `square`: no float, so no wrong mark.
 *
 * @param square square inches, >= 0; @param grain inches, > 0
 * @throws RangeError for a negative, or a grain of nothing: a mistake in the program
 * @example squareRootDown(ratio(26n), inches(1n)) // 5
 */
export function squareRootDown(square: Ratio, grain: Length): Length {
  check(square, grain);
  const k = isqrt((square.n * grain.d ** 2n) / (square.d * grain.n ** 2n));
  return inches(k * grain.n, grain.d);
}

/**
 * The same for a cube.
 *
 * @example cubeRootDown(ratio(26n), inches(1n)) // 2
 */
export function cubeRootDown(cube: Ratio, grain: Length): Length {
  check(cube, grain);
  const k = cubeRoot((cube.n * grain.d ** 3n) / (cube.d * grain.n ** 3n));
  return inches(k * grain.n, grain.d);
}

/**
 * The least whole number of grains whose cube is not under it.
 *
 * @example cubeRootUp(ratio(26n), inches(1n)) // 3
 */
export function cubeRootUp(cube: Ratio, grain: Length): Length {
  const down = cubeRootDown(cube, grain);
  const isExact = down.mul(down).mul(down).equals(cube);
  return isExact ? down : (down.add(grain) as Length);
}
