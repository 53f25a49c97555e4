import { adds } from './option-words';

type ChipProps = { readonly label: string; readonly onTap: () => void };

/** A small act at the end of a sentence. */
export const Chip = ({ label, onTap }: ChipProps) => (
  <button type="button" class="chip" onClick={onTap}>
    {label}
  </button>
);

/** What may be added to the case. */
export const Add = ({ label, onTap }: ChipProps) => (
  <button type="button" class="btn quiet" onClick={onTap}>
    {adds(label)}
  </button>
);
