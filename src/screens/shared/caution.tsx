import type { Caution as Code } from '../../trade/cautions/caution';
import type { Bench } from '../bench';
import { CautionLine } from './caution-line';
import { cautionWords } from './caution-words';

/** The line of any caution, on screens that come with the second file. */
export const Caution = ({ bench, code }: { readonly bench: Bench; readonly code: Code }) => (
  <CautionLine bench={bench} code={code} words={cautionWords(code)} />
);
