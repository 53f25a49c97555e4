import { type Bank, newBank } from '../../../src/trade/fronts/bank';
import { l } from '../../trade/grooves/sample';

/** Two fronts of 12, gaps of 1/8 over them, 1/16 between them and 3/32 under them. */
export const twoFronts: Bank = {
  ...newBank('b'),
  width: l('18'),
  height: l('24 9/32'),
  depth: l('20'),
  count: 2,
  top: l('1/8'),
  between: l('1/16'),
  bottom: l('3/32'),
};
