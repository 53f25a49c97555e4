import { useState } from 'preact/hooks';
import { Dock } from '../../ui/dock';
import type { Desk } from './desk';
import { changeLine, dropLine, measureBack, pressKey } from './figure.model';
import { builtOn, callIt, type Line, lineValue } from './lines';
import { NameDock } from './name-dock';
import * as words from './words';

type LineDockProps = {
  readonly line: Line;
  readonly desk: Desk;
  /** Back to the keys. */
  readonly leave: () => void;
  readonly onClose: () => void;
};

/** What can be done with a line of the strip. */
export function LineDock({ line, desk: { state, bench, set, take }, leave, onClose }: LineDockProps) {
  const [naming, setNaming] = useState(false);
  if (naming) return <NameDock state={state} id={line.id} set={set} onClose={() => setNaming(false)} />;
  const back = `#${line.id}`;
  const isBack = state.from === back;
  const worth = lineValue(state.lines, line.id);
  const use = () => {
    take(pressKey(state, { key: 'line', id: line.id }, bench.settings.value.tape));
    leave();
  };
  const change = () => {
    set(changeLine(state, line.id));
    leave();
  };
  const fromIt = () => {
    set(measureBack(state, isBack ? '' : back));
    onClose();
  };
  const strike = () => {
    set(dropLine(state, line.id));
    onClose();
  };
  return (
    <Dock title={callIt(state.lines, line.id)} onClose={onClose}>
      <div class="body acts">
        <Act label={words.useIt} main onTap={use} />
        {worth.ok && worth.value.kind === 'length' && (
          <Act label={words.measureBack(isBack)} onTap={fromIt} />
        )}
        <Act label={words.changeIt(builtOn(state.lines, line.id).length)} onTap={change} />
        <Act label={words.nameIt} onTap={() => setNaming(true)} />
        <Act label={words.strikeOut} onTap={strike} />
      </div>
    </Dock>
  );
}

type ActProps = { readonly label: string; readonly main?: boolean; readonly onTap: () => void };

const Act = ({ label, main, onTap }: ActProps) => (
  <button type="button" class={main ? 'btn main' : 'btn'} onClick={onTap}>
    {label}
  </button>
);
