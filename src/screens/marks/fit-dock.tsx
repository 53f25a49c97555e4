import type { BandKind } from '../../length/bands';
import type { Length } from '../../length/length';
import { clearancesIn } from '../../trade/grooves/fit';
import { ChoiceDock } from '../../ui/dock';
import { KeySheet } from '../../ui/key-sheet';
import { unitInHand } from '../../ui/unit-in-hand';
import { type Given, here, type Kind } from './fit-given';
import * as words from './fit-words';

/** The blank that is open: a number is a reading given on the screen, the one after the last is the next. */
export type Open = 'sheet' | 'kind' | 'other' | number;

type DockProps<T = Open> = {
  readonly given: Given;
  readonly open: T;
  readonly onClose: () => void;
};

/** What docks below when a blank is tapped. */
export function FitDock({ given, open, onClose }: DockProps) {
  if (open === 'sheet') return <SheetDock {...{ given, open, onClose }} />;
  if (open === 'kind') return <KindDock {...{ given, open, onClose }} />;
  if (open !== 'other') return <ReadingDock key={open} {...{ given, open, onClose }} />;
  return (
    <LengthDock
      title={words.clearanceTitle}
      kind="clearance"
      now={given.clearance}
      onLength={given.setOther}
      onClose={onClose}
    />
  );
}

const SheetDock = ({ given: { sheets, sheet, setSheet }, onClose }: DockProps) => (
  <ChoiceDock
    title={words.whichSheet}
    choices={[
      ...sheets.map((s) => ({ value: s.id, label: s.name, hint: s.says })),
      { value: here, label: words.readHere.label },
    ]}
    chosen={sheet}
    onChoose={(value: string) => {
      setSheet(value);
      onClose();
    }}
    onClose={onClose}
  />
);

/** The usual kinds of fit; one that is chosen brings its own clearance. */
const KindDock = ({ given: { kind, setKind, setOther }, onClose }: DockProps) => (
  <ChoiceDock
    title={words.kindsTitle}
    choices={words.kinds.map((k) => ({
      ...k,
      hint: words.kindHint(k.value, clearancesIn(unitInHand())[k.value]),
    }))}
    chosen={kind}
    onChoose={(value: Kind) => {
      setKind(value);
      setOther(undefined);
      onClose();
    }}
    onClose={onClose}
  />
);

const ReadingDock = ({ given: { own, setOwn }, open: at, onClose }: DockProps<number>) => (
  <LengthDock
    title={words.reading(at, own[at] !== undefined)}
    kind="thickness"
    now={own[at]}
    onLength={(value) => setOwn([...own.slice(0, at), ...(value ? [value] : []), ...own.slice(at + 1)])}
    onClose={onClose}
  />
);

type LengthDockProps = {
  readonly title: string;
  readonly kind: BandKind;
  readonly now: Length | undefined;
  readonly onLength: (value: Length | undefined) => void;
  readonly onClose: () => void;
};

const LengthDock = (props: LengthDockProps) => <KeySheet {...props} tape="1/64" fill="length" />;
