/** One-character fractions, as phones and word processors make them. Source: Unicode, Latin-1 and Number Forms. */
export const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

const signs = Object.keys(vulgar).join('');

export const startsWithVulgar = new RegExp(`^[${signs}]`);

/** What an unspaced hyphen after a whole number must stand before, to mean "and". */
export const startsWithFraction = new RegExp(`^(?:\\d+[/⁄∕]\\d|[${signs}])`);

/** What an unspaced hyphen after a foot mark must stand before. */
export const startsWithFigure = new RegExp(`^[\\d${signs}]`);
