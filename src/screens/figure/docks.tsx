import { type Tape, tapes } from '../../length/tape';
import { sheetsOf } from '../../plan/measured-sheets';
import { ChoiceDock } from '../../ui/dock';
import type { Desk } from './desk';
import { useFigure } from './figure.model';
import { NameDock } from './name-dock';
import { type Sum, SumsDock } from './sums';
import * as words from './words';

/** What is docked below the keys, if anything. */
export type Open = 'tape' | 'sums' | 'name' | 'sheets' | undefined;

type DocksProps = {
  readonly desk: Desk;
  readonly open: Open;
  readonly onSum: (kind: Sum) => void;
  readonly onClose: () => void;
};

export function Docks({ desk, open, onSum, onClose }: DocksProps) {
  if (open === 'tape') return <TapeDock desk={desk} onClose={onClose} />;
  if (open === 'sheets') return <SheetsDock desk={desk} onClose={onClose} />;
  if (open === 'sums') return <SumsDock onChoose={onSum} onClose={onClose} />;
  if (open === 'name' && desk.state.current !== '')
    return <NameDock state={desk.state} id={desk.state.current} set={desk.set} onClose={onClose} />;
  return null;
}

type OneDockProps = { readonly desk: Desk; readonly onClose: () => void };

const tapeChoices = tapes.map((value) => ({ value, label: words.tapeChoice(value) }));

function TapeDock({ desk: { bench }, onClose }: OneDockProps) {
  return (
    <ChoiceDock
      title={words.tapeTitle}
      choices={tapeChoices}
      chosen={bench.settings.value.tape}
      onChoose={(tape: Tape) => {
        void bench.keep({ tape });
        onClose();
      }}
      onClose={onClose}
    />
  );
}

function SheetsDock({ desk: { state, bench, take }, onClose }: OneDockProps) {
  const sheets = sheetsOf(bench.job.value);
  return (
    <ChoiceDock
      title={words.sheetsTitle}
      choices={sheets.map((s) => ({ value: s.id, label: s.name, hint: s.says }))}
      chosen={undefined}
      onChoose={(id: string) => {
        const sheet = sheets.find((s) => s.id === id);
        if (sheet) take(useFigure(state, sheet.name, sheet.thickest, bench.settings.value.tape));
        onClose();
      }}
      onClose={onClose}
    />
  );
}
