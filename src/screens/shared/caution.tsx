import type { Caution as Code } from '../../trade/cautions/caution';
import type { Bench } from '../bench';
import { CautionLine, type Whole } from './caution-line';
import { cautionWords } from './caution-words';

type CautionProps = {
  readonly bench: Bench;
  readonly code: Code;
  readonly whole?: Whole | undefined;
};

/** The line of any caution, on screens that come with the second file. */
export const Caution = ({ bench, code, whole }: CautionProps) => (
  <CautionLine {...{ bench, code, whole }} words={cautionWords(code)} />
);
