import type { Ref } from 'preact';
import type { Length } from '../length/length';
import { readLength } from '../length/read';

type WedgeProps = {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly metric: boolean;
  readonly onReading: (value: Length) => void;
  readonly field: Ref<HTMLInputElement>;
};

/** Typed entry: `18-7/64`, `146 mm`, and calipers that send their reading with Enter. */
export function Wedge({ text, onText, metric, onReading, field }: WedgeProps) {
  const read = readLength(text, { unit: metric ? 'mm' : 'in' });
  const wrong = text.trim() !== '' && !read.ok;
  return (
    <form
      class="wedge"
      onSubmit={(event) => {
        event.preventDefault();
        if (read.ok) onReading(read.value.value);
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
      {read.ok && (
        <button type="submit" class="chip">
          Use {read.value.echo}
        </button>
      )}
      {read.ok && read.value.notes.some(({ code }) => code === 'comma-of-thousands') && (
        <span class="s rem">the comma is a decimal point; for a thousand leave it out</span>
      )}
      {wrong && <span class="s rem">not a length yet</span>}
    </form>
  );
}
