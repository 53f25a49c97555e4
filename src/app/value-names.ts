import { shopFields } from '../screens/shared/shop-field-words';
import type { ValueNames } from './values-in-hand';

/** What names a figure or a setting that could not be kept. */
export const valueNames: ValueNames = {
  shop: (field) => shopFields[field],
  setting: (key) =>
    key.startsWith('strip/')
      ? 'A line of the strip'
      : key === 'figure'
        ? 'Figure'
        : key.startsWith('shelf/')
          ? 'What lies in the drawers'
          : 'A setting of this phone',
};
