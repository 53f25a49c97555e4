/** Size of a name in a drawing, and the height of its line, pixels: the smallest type there is. */
const size = 16;
const line = 18;

/** So wide a letter is at most, of the size: names are short, so a wide one counts. */
const letter = 0.58;

/** How a name stands in a patch of a drawing: across it, up it, or as a number with its name in a key below. */
type NameFit = 'across' | 'upright' | 'key';

/**
 * A name is shown whole or not at all.
 *
 * @param wide, tall room, pixels; @param figure height kept for the figure under it, pixels
 * @example fitName('Left side', { wide: 90, tall: 200, figure: 24 }) // 'across'
 */
export function fitName(
  name: string,
  { wide, tall, figure }: { readonly wide: number; readonly tall: number; readonly figure: number },
): NameFit {
  const lines = linesIn(name, wide - 8);
  if (lines !== undefined && lines * line + figure <= tall) return 'across';
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
