/** The sample as a job file: the build says once, under `all`, what all its entries say alike. */
export function wholeSample(text: string): string {
  try {
    const { all, entries, ...file } = JSON.parse(text);
    return JSON.stringify({ ...file, entries: entries.map((entry: object) => ({ ...all, ...entry })) });
  } catch {
    // no job file: whoever reads it says so
    return text;
  }
}
