import { type Token, tokensOf } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { markAt, type Tape } from '../../length/tape';
import { remainder, writeLength, writeNumber } from '../../length/write';
import { callIt, type Line, lineValue } from './lines';

/**
 * The strip as plain lines, to send or print.
 *
 * @example stripText([{ id: '1', name: 'Side', text: '1/2 + 1/4' }], '1/32') // 'Side: 1/2 + 1/4 = 3/4'
 */
export const stripText = (lines: readonly Line[], tape: Tape): string =>
  lines.map((line) => lineText(lines, line, tape)).join('\n');

function lineText(lines: readonly Line[], line: Line, tape: Tape): string {
  const expr = parseLine(line.text);
  const working = expr.ok ? workingText(tokensOf(expr.value), lines) : line.text;
  const sum = `${callIt(lines, line.id)}: ${working}`;
  const worth = lineValue(lines, line.id);
  if (!worth.ok) return sum;
  if (worth.value.kind !== 'length') return `${sum} = ${writeNumber(worth.value.value)}`;
  const mark = markAt(worth.value.value, tape);
  const left = remainder(mark.rest, tape);
  return `${sum} = ${writeLength(mark.value, tape)}${left ? ` ${left.word} ${left.by}`.trimEnd() : ''}`;
}

/** A sum in one line, as the screen shows it: lines by name, counts bare. */
const workingText = (tokens: readonly Token[], lines: readonly Line[]): string =>
  tokens
    .map((token) => (token.is === 'line' ? callIt(lines, token.id) : token.text))
    .join(' ')
    .replace(/\( /g, '(')
    .replace(/ \)/g, ')');
