import type { GrooveGauge } from '../../../trade/machines/gauges';
import type { GrooveMachineId } from '../../../trade/machines/stored-ids';

/** What is set for a groove, in the order of the hand. */
export const setWords: Readonly<Record<GrooveGauge, string>> = {
  'stop-to-near-teeth': 'Stop block at',
  'other-stop-to-teeth': 'Stop block at',
  'fence-scale': 'Fence scale at',
  'guide-edge': 'Guide edge at',
  spacer: 'Spacer in the stop',
  'fence-mark': 'Fence pencil mark at',
};

/** What one stands at where grooves are cut: “To the router”. All but these are a saw. */
const stoodAt: Partial<Record<GrooveMachineId, string>> = { router: 'router', tablerouter: 'router table' };

/** @example standsAt({ machine: 'fence' }) // 'saw' */
export const standsAt = ({ machine }: { readonly machine: GrooveMachineId }): string =>
  stoodAt[machine] ?? 'saw';
