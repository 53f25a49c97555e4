import type { Caution as Code } from '../../trade/cautions/caution';
import type { Bench } from '../bench';
import { CautionLine } from './line';
import { cautionWords } from './words';

/** The line of any caution, on screens that come with the second file. */
export const Caution = ({ bench, code }: { readonly bench: Bench; readonly code: Code }) => (
  <CautionLine bench={bench} code={code} words={cautionWords(code)} />
);
