/** So much of a file is read at a time, bytes. */
const chunk = 1 << 20;

/**
 * The lines of a file, read a piece at a time: a file of any size takes no more room than its longest line.
 *
 * @param most characters of a line; a longer one ends the reading
 */
export async function* linesOf(file: Blob, most: number): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let rest = '';
  for (let at = 0; at < file.size; at += chunk) {
    const last = at + chunk >= file.size;
    rest += decoder.decode(await file.slice(at, at + chunk).arrayBuffer(), { stream: !last });
    const lines = rest.split('\n');
    rest = lines.pop() ?? '';
    yield* lines;
    if (rest.length > most) return;
  }
  if (rest !== '') yield rest;
}
