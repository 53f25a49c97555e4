/**
 * A text cut to so many units at most, between two signs as a person counts them: an emoji of several parts goes
 * whole or not at all.
 *
 * @example cutTo('ab👨‍👩‍👧', 4) // 'ab'
 */
export function cutTo(text: string, most: number): string {
  if (text.length <= most) return text;
  let cut = '';
  for (const sign of signsOf(text)) {
    if (cut.length + sign.length > most) break;
    cut += sign;
  }
  return cut;
}

const signsOf = (text: string): readonly string[] =>
  typeof Intl.Segmenter === 'function'
    ? [...new Intl.Segmenter(undefined, { granularity: 'grapheme' }).segment(text)].map(
        ({ segment }) => segment,
      )
    : [...text];
