import type { Ref } from 'preact';
import { isNegative, type Length } from '../length/length';
import { readLength } from '../length/read';
import type { Units } from '../length/units';
import './wedge.css';
import './mixed.css';

type WedgeProps = {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly units: Units;
  /** A figure below nothing is one too. */
  readonly signed: boolean;
  readonly onReading: (value: Length) => void;
  readonly field: Ref<HTMLInputElement>;
};

/** Typed entry: `18-7/64`, `146 mm`, and calipers that send their reading with Enter. */
export function Wedge({ text, onText, units, signed, onReading, field }: WedgeProps) {
  const read = readLength(text, { unit: units });
  const below = read.ok && !signed && isNegative(read.value.value);
  const wrong = text.trim() !== '' && (!read.ok || below);
  return (
    <form
      class="wedge"
      onSubmit={(event) => {
        event.preventDefault();
        if (read.ok && !below) onReading(read.value.value);
      }}
    >
      <label>
        <span class="s muted">or typed</span>
        <input
          ref={field}
          value={text}
          inputMode="text"
          autocomplete="off"
          aria-invalid={wrong}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      </label>
      {read.ok && !below && (
        <button type="submit" class="chip">
          Use {read.value.echo}
        </button>
      )}
      {read.ok && read.value.notes.some(({ code }) => code === 'comma-of-thousands') && (
        <span class="s rem">the comma is a decimal point; for a thousand leave it out</span>
      )}
      {wrong && (
        <span class="s rem">
          {below ? `${read.value.echo} is less than nothing: nothing or more` : 'not a length yet'}
        </span>
      )}
    </form>
  );
}
