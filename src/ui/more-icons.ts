/** What a first visit does not show: in a file with the screens that do. */
export const moreIcons = {
  down: 'm4 9 8 8 8-8',
  up: 'm4 16 8-8 8 8',
  erase: 'M8 5h13v14H8L2 12zM12 9.5l5 5m0-5-5 5',
  dim: 'M20 14.5A8.5 8.5 0 1 1 9.5 4a7 7 0 0 0 10.5 10.5z',
  tick: 'm4 12.5 5.5 6L20 6',
  cross: 'M5 5l14 14M19 5L5 19',
  measure: 'M2 6h20M4 6v13l3-4V6M13 6v9l3 4V6',
  light:
    'M12 7.8a4.2 4.2 0 1 0 0 8.4 4.2 4.2 0 0 0 0-8.4zM12 2v2.4M12 19.6V22M2 12h2.4M19.6 12H22M5 5l1.6 1.6M17.4 17.4 19 19M5 19l1.6-1.6M17.4 6.6 19 5',
  keys: 'M3.5 6h17A1.5 1.5 0 0 1 22 7.5v10a1.5 1.5 0 0 1-1.5 1.5h-17A1.5 1.5 0 0 1 2 17.5v-10A1.5 1.5 0 0 1 3.5 6zM6 10h.01M10 10h.01M14 10h.01M18 10h.01M7 15h10',
  share: 'M12 15V3M7.5 7.5 12 3l4.5 4.5M5 12v9h14v-9',
  from: 'M12 14V3M6.5 8.5 12 3l5.5 5.5M3 19.5h18',
  warn: 'M12 3 2 20h20zM12 10v4.5M12 17.4v.1',
  voice: 'M4 9.5v5h4l5 4.5V5L8 9.5zM16.5 9a4 4 0 0 1 0 6M19 6.5a8 8 0 0 1 0 11',
  gear: 'M4 7h9M19 7h1M4 17h1M11 17h9M16 4.5v5M8 14.5v5',
};
