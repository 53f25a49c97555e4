/** A key as it went down; `at` in milliseconds on any steady clock. */
export type Stroke = { readonly key: string; readonly at: number; readonly repeat?: boolean };

/** Strokes that came faster than a hand types. */
export type Burst = { readonly text: string; readonly first: number; readonly last: number };

type Heard = {
  readonly burst: Burst | undefined;
  /** The stroke began a burst: whatever it may spoil can still be noted. */
  readonly began?: true;
  /** What calipers typed, as they typed it, when this stroke was the Enter that ends it. */
  readonly reading?: string;
};

// Common practice, no source: boards that type send a key every 8 to 50 ms; a fast hand leaves 100 ms and more.
const widestGap = 80;
const longest = 300;
const fewest = 3;
const mostFigures = 8;

/**
 * Listens for calipers that act as a keyboard: digits, one comma or point, a sign before, then Enter, no two further
 * apart than 80 ms and the whole within 300 ms. A scanner's letters, a code of many figures or a held key are none.
 *
 * @param burst what was heard so far
 * @returns what is heard now, and the reading when it is whole
 * @example hear({ text: '18.25', first: 0, last: 40 }, { key: 'Enter', at: 50 }).reading // '18.25'
 */
export function hear(burst: Burst | undefined, { key, at, repeat }: Stroke): Heard {
  if (key === 'Shift') return { burst }; // goes down before a sign on some layouts
  const goesOn = burst !== undefined && at - burst.last <= widestGap && at - burst.first <= longest;
  if (key === 'Enter')
    return goesOn && isReading(burst.text) ? { burst: undefined, reading: burst.text } : nothing;
  const sign = key.length === 1 && !repeat ? key : noSign;
  if (goesOn) return { burst: { text: burst.text + sign, first: burst.first, last: at } };
  return sign === noSign ? nothing : { burst: { text: sign, first: at, last: at }, began: true };
}

/** Stands for a key that no reading has in it, so that what comes right behind it is none either. */
const noSign = '?';
const nothing: Heard = { burst: undefined };

function isReading(text: string): boolean {
  const figures = text.replace(/\D/g, '').length;
  return /^[+-]?\d*[.,]?\d*$/.test(text) && text.length >= fewest && figures > 0 && figures <= mostFigures;
}
