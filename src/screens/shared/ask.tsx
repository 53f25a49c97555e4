import type { Change } from '../../job/entry';
import type { BandKind } from '../../length/bands';
import type { Length, Ratio } from '../../length/length';
import { Blank } from '../../ui/blank';
import { Bare, Given } from '../../ui/given';
import './ask.css';

/** A blank of a sentence: what it holds now, and the edits that filling it makes. */
export type Ask =
  | {
      readonly as: 'length';
      readonly title: string;
      readonly now: Length | undefined;
      /** What it is for, as far as it says how large a figure can be meant. */
      readonly kind?: BandKind | undefined;
      /** What stands in while nothing is said, and the word beside it: `usual` when not said. */
      readonly usual?: Length | undefined;
      readonly word?: string;
      /** It may be below nothing. */
      readonly signed?: boolean;
      /** Of a thing made elsewhere: what it is in inches stands beside it in a job in millimetres. */
      readonly asMade?: boolean;
      /** Why a figure cannot be, and what would do: then it is not taken. */
      readonly refuse?: (value: Length) => string | undefined;
      readonly save: (value: Length | undefined) => readonly Change[];
    }
  | {
      /** A number without a length: a weight, a ratio, a share. */
      readonly as: 'amount';
      readonly title: string;
      readonly now: Ratio | undefined;
      /** What it is in, said beside it. */
      readonly unit?: string;
      readonly usual?: Ratio | undefined;
      readonly refuse?: (value: Ratio) => string | undefined;
      readonly save: (value: Ratio | undefined) => readonly Change[];
    }
  | {
      readonly as: 'count';
      readonly title: string;
      readonly now: number | undefined;
      /** What stands in while nothing is said. */
      readonly word?: string;
      /** What is counted, where it is not pieces. */
      readonly unit?: string;
      readonly refuse?: (value: number) => string | undefined;
      readonly save: (value: number | undefined) => readonly Change[];
    }
  | {
      readonly as: 'text';
      readonly title: string;
      readonly now: string;
      /** Signs at most; 80 when not said. */
      readonly most?: number;
      readonly save: (value: string) => readonly Change[];
    }
  | {
      readonly as: 'choice';
      readonly title: string;
      readonly now: string;
      readonly choices: readonly { readonly value: string; readonly label: string; readonly hint?: string }[];
      /** What else may be done where none of them will do. */
      readonly more?: { readonly label: string; readonly onTap: () => void };
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
      length={ask.as === 'length'}
      onTap={() => onOpen(ask)}
    >
      {shown(ask)}
    </Blank>
  );
}

function shown(ask: Ask) {
  switch (ask.as) {
    case 'length':
      if (ask.now) return <Given value={ask.now} asMade={ask.asMade} />;
      return (
        ask.usual && (
          <span class="usual">
            <Given value={ask.usual} asMade={ask.asMade} /> <small>{ask.word ?? 'usual'}</small>
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
      return ask.now ?? (ask.word && <span class="usual">{ask.word}</span>);
  }
}
