import type { Bench } from '../bench';
import type { Pressed } from './figure.model';
import type { FigureState } from './figure.state';

/** What every part of Figure is given: what stands, and how to go on from it. */
export type Desk = {
  readonly state: FigureState;
  readonly bench: Bench;
  readonly set: (state: FigureState) => void;
  /** Takes what came of an act, or says why nothing did. */
  readonly take: (pressed: Pressed) => void;
};
