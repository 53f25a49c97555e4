import { add, isPositive, type Length, subtract } from '../../length/length';
import type { Shop } from '../machines/shop';

/** Where the guide's edge goes, from the edge measured from; not known without the shoe of that side. Inches. */
type GuidePlaces = { readonly onKeep?: Length; readonly onWaste?: Length };

/**
 * A circular saw along a guide: what is kept ends at the line, the kerf goes on the other side of it. On the keep
 * piece the guide lies back from the line by the shoe, on the waste beyond the kerf by the shoe.
 *
 * @param line from the edge measured from, inches; `keep`: `near` keeps 0 … line, `far` keeps what is beyond it
 * @param at.kerf inches, > 0; @param at.shop its shoe edges to the nearer tooth face
 * @returns inches from the same edge; may lie off the sheet
 * @example guidePlaces(inches(71n, 4n), { keep: 'near', kerf: inches(5n, 64n), shop }).onWaste // 19 17/64: Example 2 of sheets
 */
export function guidePlaces(
  line: Length,
  { keep, kerf, shop }: { readonly keep: 'near' | 'far'; readonly kerf: Length; readonly shop: Shop },
): GuidePlaces {
  const { shoeKeep, shoeWaste, atGuide } = shop;
  const known = (shoe: Length): boolean => atGuide === true || isPositive(shoe);
  const away = keep === 'near' ? add : subtract;
  const back = keep === 'near' ? subtract : add;
  return {
    ...(shoeKeep && known(shoeKeep) ? { onKeep: back(line, shoeKeep) } : {}),
    ...(shoeWaste && known(shoeWaste) ? { onWaste: away(away(line, kerf), shoeWaste) } : {}),
  };
}
