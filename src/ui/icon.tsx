import './icon.css';

const paths = {
  back: 'M15 4 7 12l8 8',
  down: 'm4 9 8 8 8-8',
  up: 'm4 16 8-8 8 8',
  next: 'M3 12h17m-7-7 7 7-7 7',
  plus: 'M12 4v16M4 12h16',
  undo: 'M4 10h10a6 6 0 0 1 0 12h-3M4 10l5-5M4 10l5 5',
  erase: 'M8 5h13v14H8L2 12zM12 9.5l5 5m0-5-5 5',
  dim: 'M20 14.5A8.5 8.5 0 1 1 9.5 4a7 7 0 0 0 10.5 10.5z',
  tick: 'm4 12.5 5.5 6L20 6',
  cross: 'M5 5l14 14M19 5L5 19',
  job: 'M4 3h16v18H4zM4 9h16M12 9v12M12 15h8',
  marks: 'M6 2h7v20H6zM13 6H9M13 10h-3M13 14H9M13 18h-3M21 9l-4 3 4 3',
  cuts: 'M3 6l2 2 3-4M3 13l2 2 3-4M3 20l2 2 3-4M11 6h10M11 13h10M11 20h10',
  sheets: 'M4 2h16v20H4zM11 2v20M4 9h7M11 14h9',
  figure: 'M3 5v14M1.5 7 3 5M8 12h13M12 4h5v4.5h-5zM12 15.5h5V20h-5z',
  measure: 'M2 6h20M4 6v13l3-4V6M13 6v9l3 4V6',
  phone: 'M8 2h8a2 2 0 0 1 2 2v16a2 2 0 0 1-2 2H8a2 2 0 0 1-2-2V4a2 2 0 0 1 2-2zM9 12l2.2 2.5L15.2 9',
  light:
    'M12 7.8a4.2 4.2 0 1 0 0 8.4 4.2 4.2 0 0 0 0-8.4zM12 2v2.4M12 19.6V22M2 12h2.4M19.6 12H22M5 5l1.6 1.6M17.4 17.4 19 19M5 19l1.6-1.6M17.4 6.6 19 5',
  keys: 'M3.5 6h17A1.5 1.5 0 0 1 22 7.5v10a1.5 1.5 0 0 1-1.5 1.5h-17A1.5 1.5 0 0 1 2 17.500v-10A1.500 1.500 0 0 1 3.500 6zM6 10h.01M10 10h.01M14 10h.01M18 10h.01M7 15h10',
  share: 'M12 15V3M7.5 7.500 12 3l4.500 4.500M5 12v9h14v-9',
  from: 'M12 14V3M6.5 8.5 12 3l5.5 5.5M3 19.500h18',
  warn: 'M12 3 2 20h20zM12 10v4.500M12 17.400v.1',
  gear: 'M4 7h9M19 7h1M4 17h1M11 17h9M16 4.500v5M8 14.500v5',
} as const;

export type IconName = keyof typeof paths;

export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg class="i" viewBox="0 0 24 24" aria-hidden="true">
    <path d={paths[name]} />
  </svg>
);
