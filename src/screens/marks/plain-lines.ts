import { writeLength, writeMark } from '../../length/write';
import type { View } from '../../plan/board-layout';
import { callGroove, measuresText, passText, setWords } from '../shared/layout-words';

/** A board's marks and settings as plain lines, for a helper or a scrap of paper. */
export function plainLines({ board, layout, marks, settings, tape }: View): string {
  const head = `${board.name || 'Board'}, ${board.length ? writeLength(board.length) : ''} long. Measure from the ${board.end} end.`;
  const knife = marks.map(
    (m) =>
      `${callGroove(layout, m.groove.id)}: ${writeMark(m.near, tape)}, ${writeLength(m.groove.width)} wide, from the other end ${writeMark(m.other, tape)}`,
  );
  const set = settings.settings.map((s) =>
    [
      `${callGroove(layout, s.groove.id)}`,
      passText(s),
      `${setWords[s.measures]} ${writeMark(s.figure, tape)}`,
    ]
      .filter(Boolean)
      .join(', '),
  );
  const how = settings.settings[0] ? [`Settings: ${measuresText(settings.settings[0], board)}`, ...set] : [];
  return [head, 'Near edges:', ...knife, ...how].join('\n');
}
