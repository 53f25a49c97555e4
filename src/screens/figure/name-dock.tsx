import { useState } from 'preact/hooks';
import { Dock } from '../../ui/dock';
import { type FigureState, nameLine } from './figure.model';

type NameDockProps = {
  readonly state: FigureState;
  readonly id: string;
  readonly set: (state: FigureState) => void;
  readonly onClose: () => void;
};

const usual = ['Opening', 'Inside width', 'Side', 'Shelf', 'One bay', 'Reveal'];

/** A name for a line of the strip: typed, or one of the usual. */
export function NameDock({ state, id, set, onClose }: NameDockProps) {
  const [name, setName] = useState(state.lines.find((l) => l.id === id)?.name ?? '');
  const done = (text: string) => {
    set(nameLine(state, id, text.trim().slice(0, 60)));
    onClose();
  };
  return (
    <Dock title="Name this line" onClose={onClose}>
      <form
        class="body"
        onSubmit={(event) => {
          event.preventDefault();
          done(name);
        }}
      >
        <input
          class="field-text"
          aria-label="Name"
          value={name}
          maxLength={60}
          onInput={(event) => setName(event.currentTarget.value)}
        />
        <div class="chips usual">
          {usual.map((word) => (
            <button key={word} type="button" class="chip" onClick={() => done(word)}>
              {word}
            </button>
          ))}
        </div>
        <button type="submit" class="btn main full">
          Name it
        </button>
      </form>
    </Dock>
  );
}
