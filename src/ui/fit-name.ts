/** Size of a name in a drawing, and the height of its line, pixels: the smallest type there is. */
const size = 16;
const line = 18;

/** So wide a letter is at most, of the size: names are short, so a wide one counts. */
const letter = 0.58;

/**
 * How a name stands in a patch of a drawing: across it over its figure, in one row with it, up the patch alone, or as a
 * number with its name in a key below.
 */
type NameFit = 'across' | 'row' | 'upright' | 'key';

/** Room for the figure: under the name, and beside it. Pixels. */
const figure = { high: 40, wide: 72 };

/**
 * A name is shown whole or not at all.
 *
 * @param wide, tall room, pixels
 * @example fitName('Left side', { wide: 90, tall: 200 }) // 'across'
 */
export function fitName(
  name: string,
  { wide, tall }: { readonly wide: number; readonly tall: number },
): NameFit {
  const lines = linesIn(name, wide - 8);
  if (lines !== undefined && lines * line + figure.high <= tall) return 'across';
  if (line + 8 <= tall && widthOf(name) + figure.wide <= wide) return 'row';
  return widthOf(name) <= tall - 8 && wide >= line + 2 ? 'upright' : 'key';
}

const widthOf = (text: string): number => text.length * size * letter;

/** So many lines it takes; undefined where one word alone is too wide. */
function linesIn(name: string, wide: number): number | undefined {
  let [lines, used] = [0, wide];
  for (const word of name.split(' ')) {
    const own = widthOf(word);
    if (own > wide) return undefined;
    const on = used + widthOf(' ') + own;
    [lines, used] = lines > 0 && on <= wide ? [lines, on] : [lines + 1, own];
  }
  return lines;
}
