/** A row's content, whatever the order of its keys. */
export const canonical = (row: unknown): string => JSON.stringify(row, sortedKeys) ?? '';

const sortedKeys = (_: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;
