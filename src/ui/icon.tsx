import './icon.css';
import type { moreIcons } from './more-icons';

/** What a first visit shows; the others come with the screens that draw them. */
const first = {
  back: 'M15 4 7 12l8 8',
  next: 'M3 12h17m-7-7 7 7-7 7',
  plus: 'M12 4v16M4 12h16',
  undo: 'M4 10h10a6 6 0 0 1 0 12h-3M4 10l5-5M4 10l5 5',
  job: 'M4 3h16v18H4zM4 9h16M12 9v12M12 15h8',
  marks: 'M6 2h7v20H6zM13 6H9M13 10h-3M13 14H9M13 18h-3M21 9l-4 3 4 3',
  cuts: 'M3 6l2 2 3-4M3 13l2 2 3-4M3 20l2 2 3-4M11 6h10M11 13h10M11 20h10',
  sheets: 'M4 2h16v20H4zM11 2v20M4 9h7M11 14h9',
  figure: 'M3 5v14M1.5 7 3 5M8 12h13M12 4h5v4.5h-5zM12 15.5h5V20h-5z',
  phone: 'M8 2h8a2 2 0 0 1 2 2v16a2 2 0 0 1-2 2H8a2 2 0 0 1-2-2V4a2 2 0 0 1 2-2zM9 12l2.2 2.5L15.2 9',
};

export type IconName = keyof typeof first | keyof typeof moreIcons;

const paths: Partial<Record<IconName, string>> = first;

export const addIcons = (more: typeof moreIcons): void => void Object.assign(paths, more);

export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg class="i" viewBox="0 0 24 24" aria-hidden="true">
    <path d={paths[name]} />
  </svg>
);
