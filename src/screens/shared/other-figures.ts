import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { viewOf } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import { spoilsFit } from '../../trade/grooves/second-mark';
import type { Shop } from '../../trade/machines/shop';
import { capital } from './capital';
import { passText } from './layout-words';
import * as words from './setup-words';

type Second = { readonly label: string; readonly figure: Rounded };

type FiguresAt = { readonly shop: Shop; readonly tape: Tape; readonly setting: string };

/** What more is told of the setting of a groove: to its teeth, from the other end, each with its remainder. */
export function otherFiguresOf(board: Board, { shop, tape, setting: id }: FiguresAt) {
  const setting = viewOf(board, shop, tape).settings.settings.find((s) => s.id === id);
  if (!setting) return undefined;
  const { measures, strip, passes, second } = setting;
  const figures: readonly Second[] = [
    ...(measures === 'stop-to-near-teeth' ? [] : [{ label: words.nearTeeth, figure: setting.nearTeeth }]),
    { label: words.farTeeth, figure: setting.farTeeth },
    { label: words.otherEnd, figure: setting.otherEnd },
  ];
  const notes = [
    ...(strip && passes > 1 ? [capital(passText(setting))] : []),
    ...(second && spoilsFit(second) ? [words.secondWall(second)] : []),
  ];
  return { main: setting.figure, figures, notes };
}
