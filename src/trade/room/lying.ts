import { isPositive, type Length, longest, shortest } from '../../length/length';

/** The outside sizes of a case as it stands. Inches, > 0. */
export type CaseSize = { readonly width: Length; readonly height: Length; readonly depth: Length };
export type SizeName = keyof CaseSize;

const names = ['width', 'height', 'depth'] as const;

/** The first size that is nothing or less. */
export const noSize = (size: CaseSize): SizeName | undefined => names.find((name) => !isPositive(size[name]));

/** A case carried straight on: which size lies across, which stands up, and which trails. */
export type Way = { readonly across: SizeName; readonly up: SizeName; readonly trailing: SizeName };

/** Each of the three faces ahead, each both ways up. */
export const ways: readonly Way[] = names.flatMap((trailing) =>
  names.flatMap((across) =>
    names.flatMap((up) =>
      new Set([trailing, across, up]).size === names.length ? [{ across, up, trailing }] : [],
    ),
  ),
);

/** How a case is carried round a turn: on its feet, on its back, or on its side. */
export type Lies = 'upright' | 'on-back' | 'on-side';

/** How long and how wide a case is seen from above, and how high it stands. Inches. */
export type Plan = { readonly long: Length; readonly wide: Length };

const standing: Record<Lies, SizeName> = { upright: 'height', 'on-back': 'depth', 'on-side': 'width' };

/**
 * A case seen from above, three ways.
 *
 * @param size inches, > 0
 * @returns inches, long >= wide
 * @example liesThreeWays(size)[1] // on its back: as long and as wide as the case is high and wide
 */
export const liesThreeWays = (
  size: CaseSize,
): readonly { readonly lies: Lies; readonly plan: Plan; readonly up: Length }[] =>
  (['upright', 'on-back', 'on-side'] as const).map((lies) => {
    const flat = names.filter((name) => name !== standing[lies]).map((name) => size[name]);
    const [a = size.width, b = size.width] = flat;
    return { lies, plan: { long: longest(a, b), wide: shortest(a, b) }, up: size[standing[lies]] };
  });
