import { absolute, isNegative, isZero, type Length } from '../../length/length';
import { exactly } from './exact-words';

const asPlanned = 'as planned';

/**
 * How far a reading is from the plan. @example againstPlan(inches(-1n, 16n)) // '1/16 under plan'
 * @param off reading less plan, inches
 */
export const againstPlan = (off: Length): string =>
  isZero(off) ? asPlanned : `${exactly(absolute(off))} ${isNegative(off) ? 'under plan' : 'over plan'}`;
