import { Dock } from '../../ui/dock';
import { useTypedText } from '../shared/use-typed-text';
import { nameLine } from './figure.model';
import type { FigureState } from './figure.state';
import * as words from './words';
import '../../ui/field-text.css';
import '../shared/ask.css';

type NameDockProps = {
  readonly state: FigureState;
  readonly id: string;
  readonly set: (state: FigureState) => void;
  readonly onClose: () => void;
};

/** A name for a line of the strip: typed, or one of the usual. However it is left, what was typed is kept. */
export function NameDock({ state, id, set, onClose }: NameDockProps) {
  const { text, onInput, keep } = useTypedText({
    place: `Name ${id}`,
    title: words.draftName,
    now: state.lines.find((l) => l.id === id)?.name ?? '',
    most: 60,
    onDone: (name) => set(nameLine(state, id, name)),
  });
  const done = (name: string) => {
    keep(name);
    onClose();
  };
  return (
    <Dock title={words.nameLine} onClose={onClose}>
      <form
        class="body"
        onSubmit={(event) => {
          event.preventDefault();
          done(text);
        }}
      >
        <input class="field-text" aria-label={words.lineName} value={text} onInput={onInput} />
        <div class="chips usual">
          {words.usualNames.map((name) => (
            <button key={name} type="button" class="chip" onClick={() => done(name)}>
              {name}
            </button>
          ))}
        </div>
        <button type="submit" class="btn main full">
          {words.nameIt}
        </button>
      </form>
    </Dock>
  );
}
