import type { AcidRound } from '../../trade/boxes/acid';

/** Why a wood should not stand round what goes in. @example 'Oak, for the frame: oak gives off acid …' */
export const acidText = ({ stuff, wood, things }: AcidRound): string =>
  `${stuff}: ${wood}, like fresh glue and oil finishes, gives off acid that attacks ${things.join(', ')}. Take another wood, such as maple, poplar or birch, and ask a conservator.`;
