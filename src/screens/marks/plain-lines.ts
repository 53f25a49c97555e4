import { writeMark } from '../../length/write';
import type { View } from '../../plan/board-layout';
import { exactly } from '../shared/exact-words';
import { callGroove } from '../shared/groove-name';
import { passText } from '../shared/layout-words';
import { wordsAt } from '../shared/machines/groove-words';
import { ownName } from '../shared/machines/machine-names';
import { setWords } from '../shared/machines/set-words';
import * as words from './words';

/** A board's marks and settings as plain lines, for a helper or a scrap of paper. */
export function plainLines({ board, layout, marks, settings, tape, own }: View): string {
  const call = (groove: { readonly id: string }) => callGroove(layout, groove.id);
  const near = marks.map((m) =>
    words.lineOfMark({
      groove: call(m.groove),
      near: writeMark(m.near, tape),
      width: exactly(m.groove.width),
      other: writeMark(m.other, tape),
    }),
  );
  const set = settings.settings.map((s) =>
    [call(s.groove), passText(s), `${setWords[s.measures]} ${writeMark(s.figure, tape)}`]
      .filter(Boolean)
      .join(', '),
  );
  const [first] = settings.settings;
  const from = first ? wordsAt(board).measured(first, board) : '';
  const how = first ? [words.linesOfSettings(own ? `${ownName(own)}, ${from}` : from), ...set] : [];
  return [words.lineOfBoard(board), words.linesOfMarks, ...near, ...how].join('\n');
}
