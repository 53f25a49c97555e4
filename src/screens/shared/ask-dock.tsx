import type { Change } from '../../job/entry';
import { asInches, asNumber, type Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { ChoiceDock, Dock } from '../../ui/dock';
import { KeySheet } from '../../ui/key-sheet';
import '../../ui/field-text.css';
import type { Ask } from './ask';
import { useTypedText } from './use-typed-text';

type AskDockProps = {
  readonly ask: Ask;
  readonly tape: Tape;
  /** Thicknesses the stock reads at, to tap. */
  readonly sheets?: readonly { readonly name: string; readonly thickness: Length }[];
  readonly onSave: (changes: readonly Change[]) => void;
  /** What is wrong with the figure as it is keyed. */
  readonly says?: readonly string[];
  /** What comes of it. */
  readonly tells?: string | undefined;
  /** While it is being keyed. */
  readonly onTry?: (changes: readonly Change[] | undefined) => void;
  readonly onClose: () => void;
};

type OpenProps = Omit<AskDockProps, 'ask' | 'onSave'> & {
  readonly ask: Ask | undefined;
  /** Keeps what was said, under the name of the blank. */
  readonly act: (label: string, changes: readonly Change[]) => unknown;
};

/** What docks below when a blank is tapped; nothing while none is. */
export const AskDock = ({ ask, act, ...at }: OpenProps) =>
  ask ? <DockOf key={ask.title} {...at} ask={ask} onSave={(changes) => act(ask.title, changes)} /> : null;

function DockOf(props: AskDockProps) {
  const { ask, onSave, onClose } = props;
  switch (ask.as) {
    case 'length':
      return <LengthDock {...props} ask={ask} />;
    case 'amount':
      return <AmountDock {...props} ask={ask} />;
    case 'count':
      return <CountDock {...props} ask={ask} />;
    case 'choice':
      return (
        <ChoiceDock
          title={ask.title}
          choices={ask.choices}
          chosen={ask.now}
          more={ask.more}
          onChoose={(value: string) => {
            onSave(ask.save(value));
            onClose();
          }}
          onClose={onClose}
        />
      );
    case 'text':
      return (
        <TextDock
          title={ask.title}
          now={ask.now}
          {...(ask.most ? { most: ask.most } : {})}
          onDone={(text) => onSave(ask.save(text))}
          onClose={onClose}
        />
      );
  }
}

type DockProps<As extends Ask['as']> = AskDockProps & { readonly ask: Extract<Ask, { readonly as: As }> };

const LengthDock = ({ ask, tape, says, tells, sheets = [], onSave, onTry, onClose }: DockProps<'length'>) => (
  <KeySheet
    title={ask.title}
    tape={tape}
    fill="length"
    kind={ask.kind}
    now={ask.now}
    signed={ask.signed}
    refuse={(value) => (typeof value === 'number' ? undefined : ask.refuse?.(value))}
    says={says}
    tells={tells}
    sheets={sheets}
    onLength={(value) => onSave(ask.save(value))}
    onTry={(value) => onTry?.(ask.save(typeof value === 'number' ? undefined : value))}
    onClose={onClose}
  />
);

const AmountDock = ({ ask, says, tells, onSave, onTry, onClose }: DockProps<'amount'>) => (
  <KeySheet
    title={ask.title}
    tape="1/64"
    fill="amount"
    unit={ask.unit}
    now={ask.now && asInches(ask.now)}
    says={says}
    tells={tells}
    refuse={(value) => (typeof value === 'number' ? undefined : ask.refuse?.(asNumber(value)))}
    onLength={(value) => onSave(ask.save(value && asNumber(value)))}
    onTry={(value) => onTry?.(ask.save(value && typeof value !== 'number' ? asNumber(value) : undefined))}
    onClose={onClose}
  />
);

const CountDock = ({ ask, tape, says, onSave, onTry, onClose }: DockProps<'count'>) => (
  <KeySheet
    title={ask.title}
    tape={tape}
    fill="count"
    unit={ask.unit}
    nowCount={ask.now}
    says={says}
    refuse={(value) => (typeof value === 'number' ? ask.refuse?.(value) : undefined)}
    onCount={(value) => onSave(ask.save(value))}
    onTry={(value) => onTry?.(ask.save(typeof value === 'number' ? value : undefined))}
    onClose={onClose}
  />
);

type TextDockProps = {
  readonly title: string;
  readonly now: string;
  readonly most?: number;
  /** It may have several lines: there Enter begins the next. */
  readonly lines?: boolean;
  readonly onDone: (text: string) => void;
  readonly onClose: () => void;
};

/** A name or a note: however it is left, what was typed is kept; ended by force, it is there again. */
export function TextDock({ title, now, most = 80, lines, onDone, onClose }: TextDockProps) {
  const { text, onInput } = useTypedText({ place: title, title, now, most, onDone });
  const field = { class: 'field-text', 'aria-label': title, value: text, onInput };
  return (
    <Dock title={title} onClose={onClose}>
      <form
        class="body acts"
        onSubmit={(event) => {
          event.preventDefault();
          onClose();
        }}
      >
        {lines ? <textarea {...field} rows={5} /> : <input {...field} />}
        <button type="submit" class="btn main full">
          Done
        </button>
      </form>
    </Dock>
  );
}
