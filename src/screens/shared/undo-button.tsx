import { BarButton } from '../../ui/bar';
import type { Bench } from '../bench';

/** Takes back the last act of this phone, by name; fifty deep, over restarts. */
export function UndoButton({ bench, wordless }: { readonly bench: Bench; readonly wordless?: boolean }) {
  const act = bench.undoLabel.value;
  return (
    <BarButton
      icon="undo"
      label="Undo"
      says={act === undefined ? 'Undo' : `Undo: ${act}`}
      wordless={wordless ?? false}
      disabled={act === undefined}
      onTap={() => void bench.undo()}
    />
  );
}
