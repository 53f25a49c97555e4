import type { Operation } from '../../trade/setups/operation';
import { Dock } from '../../ui/dock';
import { workWord } from './part-words';

type WhichProps = {
  readonly title: string;
  readonly pieces: readonly Operation[];
  readonly onChoose: (piece: Operation) => void;
  readonly onClose: () => void;
};

/** Which of several pieces is meant, by name. */
export const WhichPiece = ({ title, pieces, onChoose, onClose }: WhichProps) => (
  <Dock title={title} onClose={onClose}>
    <ul class="choices">
      {pieces.map((op) => (
        <li key={op.id}>
          <button type="button" onClick={() => onChoose(op)}>
            <b>{workWord(op.name)}</b>
          </button>
        </li>
      ))}
    </ul>
  </Dock>
);
