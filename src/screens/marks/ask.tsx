import { useState } from 'preact/hooks';
import { asInches, asNumber, type Length, type Ratio } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Change } from '../../store/entry';
import { Blank } from '../../ui/blank';
import { ChoiceDock, Dock } from '../../ui/dock';
import { KeySheet } from '../../ui/key-sheet';
import { Bare, Given } from '../../ui/mixed';

/** A blank of a sentence: what it holds now, and the edits that filling it makes. */
export type Ask =
  | {
      readonly as: 'length';
      readonly title: string;
      readonly now: Length | undefined;
      /** What stands in while nothing is said, and the word beside it: `usual` when not said. */
      readonly usual?: Length | undefined;
      readonly word?: string;
      /** It may be below nothing. */
      readonly signed?: boolean;
      readonly save: (value: Length | undefined) => readonly Change[];
    }
  | {
      /** A number without a unit: pounds, a ratio, a share. */
      readonly as: 'amount';
      readonly title: string;
      readonly now: Ratio | undefined;
      readonly usual?: Ratio | undefined;
      readonly save: (value: Ratio | undefined) => readonly Change[];
    }
  | {
      readonly as: 'count';
      readonly title: string;
      readonly now: number | undefined;
      readonly save: (value: number | undefined) => readonly Change[];
    }
  | {
      readonly as: 'text';
      readonly title: string;
      readonly now: string;
      readonly save: (value: string) => readonly Change[];
    }
  | {
      readonly as: 'choice';
      readonly title: string;
      readonly now: string;
      readonly choices: readonly { readonly value: string; readonly label: string; readonly hint?: string }[];
      readonly save: (value: string) => readonly Change[];
    };

type AskBlankProps = {
  readonly ask: Ask;
  readonly open: Ask | undefined;
  readonly wrong?: boolean;
  readonly onOpen: (ask: Ask) => void;
};

/** The blank itself, showing what it holds. */
export function AskBlank({ ask, open, wrong, onOpen }: AskBlankProps) {
  return (
    <Blank
      label={ask.title}
      open={open?.title === ask.title}
      wrong={wrong ?? false}
      choice={ask.as === 'choice'}
      onTap={() => onOpen(ask)}
    >
      {shown(ask)}
    </Blank>
  );
}

function shown(ask: Ask) {
  switch (ask.as) {
    case 'length':
      if (ask.now) return <Given value={ask.now} />;
      return (
        ask.usual && (
          <span class="usual">
            <Given value={ask.usual} /> <small>{ask.word ?? 'usual'}</small>
          </span>
        )
      );
    case 'amount':
      if (ask.now) return <Bare value={ask.now} />;
      return (
        ask.usual && (
          <span class="usual">
            <Bare value={ask.usual} /> <small>usual</small>
          </span>
        )
      );
    case 'choice':
      return ask.choices.find((c) => c.value === ask.now)?.label;
    case 'text':
      return ask.now || undefined;
    case 'count':
      return ask.now;
  }
}

type AskDockProps = {
  readonly ask: Ask;
  readonly tape: Tape;
  /** Thicknesses the stock reads at, to tap. */
  readonly sheets?: readonly { readonly name: string; readonly thickness: Length }[];
  readonly onSave: (changes: readonly Change[]) => void;
  /** While it is being keyed. */
  readonly onTry?: (changes: readonly Change[] | undefined) => void;
  readonly onClose: () => void;
};

/** What docks below when a blank is tapped. */
export function AskDock({ ask, tape, sheets = [], onSave, onTry = () => undefined, onClose }: AskDockProps) {
  switch (ask.as) {
    case 'length':
      return (
        <KeySheet
          title={ask.title}
          tape={tape}
          fill="length"
          now={ask.now}
          signed={ask.signed}
          sheets={sheets}
          onLength={(value) => onSave(ask.save(value))}
          onTry={(value) => onTry(ask.save(typeof value === 'number' ? undefined : value))}
          onClose={onClose}
        />
      );
    case 'amount':
      return (
        <KeySheet
          title={ask.title}
          tape="1/64"
          fill="amount"
          now={ask.now && asInches(ask.now)}
          onLength={(value) => onSave(ask.save(value && asNumber(value)))}
          onTry={(value) => onTry(ask.save(value && typeof value !== 'number' ? asNumber(value) : undefined))}
          onClose={onClose}
        />
      );
    case 'count':
      return (
        <KeySheet
          title={ask.title}
          tape={tape}
          fill="count"
          nowCount={ask.now}
          onCount={(value) => onSave(ask.save(value))}
          onTry={(value) => onTry(ask.save(typeof value === 'number' ? value : undefined))}
          onClose={onClose}
        />
      );
    case 'choice':
      return (
        <ChoiceDock
          title={ask.title}
          choices={ask.choices}
          chosen={ask.now}
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
          onDone={(text) => onSave(ask.save(text))}
          onClose={onClose}
        />
      );
  }
}

type TextDockProps = {
  readonly title: string;
  readonly now: string;
  readonly most?: number;
  readonly onDone: (text: string) => void;
  readonly onClose: () => void;
};

export function TextDock({ title, now, most = 80, onDone, onClose }: TextDockProps) {
  const [text, setText] = useState(now);
  const done = () => {
    if (text.trim() !== now) onDone(text.trim());
    onClose();
  };
  return (
    <Dock title={title} onClose={done}>
      <form
        class="body acts"
        onSubmit={(event) => {
          event.preventDefault();
          done();
        }}
      >
        <input
          class="field-text"
          aria-label={title}
          value={text}
          maxLength={most}
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <button type="submit" class="btn main full">
          Done
        </button>
      </form>
    </Dock>
  );
}
