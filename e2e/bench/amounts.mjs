// How much is measured: the whole, or so little of everything that it only shows that each part still runs.

// Speeds: how many times slower the processor.

export const whole = {
  starts: { rounds: 5, speeds: [1, 4, 6] },
  taps: { times: 40 },
  durable: { times: 40, speeds: [1, 4, 6] },
  logs: { long: 100_000, short: 100, five: 5000, opens: 5, ticks: 50 },
  reckoning: { warmUp: 0.2, seconds: 0.5 },
  ordering: { parts: [20, 100, 400], turns: 7 },
  chain: { sizes: ['small', 'large'], warmUp: 5, turns: 15 },
  lists: { size: 'large', opens: 5 },
  sheets: { effort: 2000, each: 1 },
  sticks: { effort: undefined, every: 1 },
};

export const tiny = {
  starts: { rounds: 1, speeds: [4] },
  taps: { times: 2 },
  durable: { times: 2, speeds: [4] },
  logs: { long: 500, short: 10, five: 20, opens: 1, ticks: 2 },
  reckoning: { warmUp: 0, seconds: 0.02 },
  ordering: { parts: [20], turns: 1 },
  chain: { sizes: ['small'], warmUp: 0, turns: 1 },
  lists: { size: 'small', opens: 1 },
  sheets: { effort: 5, each: 1000 },
  sticks: { effort: 5, every: 1000 },
};
