import { Icon, type IconName } from './icon';

type ChipProps = { readonly label: string; readonly onTap: () => void };

/** A small button in a row of its like. */
export const Chip = ({ label, onTap }: ChipProps) => (
  <button type="button" class="chip" onClick={onTap}>
    {label}
  </button>
);

type ButtonProps = ChipProps & {
  /** `main` is what the screen is for; `quiet` has no frame; `big` stands alone. */
  readonly look?: 'main' | 'main full' | 'quiet' | 'full' | 'big';
  readonly icon?: IconName;
};

/** A button that a glove can hit. */
export const Button = ({ label, look, icon, onTap }: ButtonProps) => (
  <button type="button" class={look ? `btn ${look}` : 'btn'} onClick={onTap}>
    {icon && <Icon name={icon} />}
    {label}
  </button>
);

/** To the page that comes next. */
export const Onward = ({ label, onTap }: ChipProps) => (
  <button type="button" class="btn main" onClick={onTap}>
    {label} <Icon name="next" />
  </button>
);
