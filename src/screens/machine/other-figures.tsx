import type { Rounded } from '../../length/round';
import { showsDecimals, type Tape } from '../../length/tape';
import { viewOf } from '../../plan/board-layout';
import { spoilsFit } from '../../trade/grooves/second-mark';
import type { Operation } from '../../trade/setups/operation';
import { Lens } from '../../ui/lens';
import { Inline, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import { boardOf } from '../shared/board-of';
import { capital } from '../shared/capital';
import { passText } from '../shared/layout-words';
import * as words from './words';

type FiguresProps = { readonly bench: Bench; readonly op: Operation };

/** Further figures of a groove, each with its remainder: to its far teeth, and from the other end. */
export function OtherFigures({ bench, op: { groove } }: FiguresProps) {
  const tape = bench.job.value?.tape;
  const board = groove && boardOf(bench, groove.board);
  if (!board || !tape) return null;
  const setting = viewOf(board, bench.shop.value, tape).settings.settings.find(
    (s) => s.id === groove.setting,
  );
  if (!setting) return null;
  return (
    <>
      <div class="pad-x seconds">
        {setting.measures !== 'stop-to-near-teeth' && (
          <Second label={words.nearTeeth} figure={setting.nearTeeth} tape={tape} />
        )}
        <Second label={words.farTeeth} figure={setting.farTeeth} tape={tape} />
        <Second label={words.otherEnd} figure={setting.otherEnd} tape={tape} />
      </div>
      {setting.strip && setting.passes > 1 && <p class="pad-x note">{capital(passText(setting))}</p>}
      {setting.second && spoilsFit(setting.second) && (
        <p class="pad-x note">{words.secondWall(setting.second)}</p>
      )}
      {!showsDecimals(tape) && (
        <div class="lensbox">
          <Lens mark={setting.figure.value} rest={setting.figure.rest} tape={tape} />
        </div>
      )}
    </>
  );
}

type SecondProps = { readonly label: string; readonly figure: Rounded; readonly tape: Tape };

const Second = ({ label, figure, tape }: SecondProps) => (
  <p>
    {label} <br />
    <Inline value={figure.value} tape={tape === '0.001' ? '1/64' : tape} />{' '}
    <Remainder rest={figure.rest} tape={tape} by={false} />
  </p>
);
