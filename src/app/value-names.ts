import { shopFields } from '../screens/shared/shop-field-words';
import type { ShopField } from '../trade/machines/shop';

/** What names a figure or a setting that could not be kept, by its key. @example valueName('settings figure') */
export function valueName(key: string): string {
  const [of = '', name = ''] = key.split(' ');
  if (of === 'shop') return shopFields[name as ShopField];
  if (name.startsWith('strip/')) return 'A line of the strip';
  if (name === 'figure') return 'Figure';
  return name.startsWith('shelf/') ? 'What lies in the drawers' : 'A setting of this phone';
}
