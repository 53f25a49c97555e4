import { useEffect, useRef, useState } from 'preact/hooks';
import { cutTo } from '../../ui/cut-text';
import { Dock } from '../../ui/dock';
import { draftPlace, drafts, noteDraft } from '../../ui/drafts';
import { type FigureState, nameLine } from './figure.model';

type NameDockProps = {
  readonly state: FigureState;
  readonly id: string;
  readonly set: (state: FigureState) => void;
  readonly onClose: () => void;
};

const most = 60;
const usual = ['Opening', 'Inside width', 'Side', 'Shelf', 'One bay', 'Reveal'];

/** A name for a line of the strip: typed, or one of the usual. However it is left, what was typed is kept. */
export function NameDock({ state, id, set, onClose }: NameDockProps) {
  const place = useRef(draftPlace(`Name ${id}`)).current;
  const now = state.lines.find((l) => l.id === id)?.name ?? '';
  const [name, setName] = useState(drafts.peek()[place]?.text ?? now);
  const given = useRef(false);
  const keep = (text: string) => {
    if (given.current) return;
    given.current = true;
    noteDraft(place, '', '');
    if (text.trim() !== now) set(nameLine(state, id, cutTo(text.trim(), most)));
  };
  const leaving = useRef(() => keep(name));
  leaving.current = () => keep(name);
  useEffect(() => () => leaving.current(), []);
  const done = (text: string) => {
    keep(text);
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
          onInput={(event) => {
            const typed = cutTo(event.currentTarget.value, most);
            if (typed !== event.currentTarget.value) event.currentTarget.value = typed;
            setName(typed);
            noteDraft(place, 'Name of a line', typed);
          }}
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
