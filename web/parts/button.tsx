import type { ReactNode } from 'react';

/** `primary`: the one thing to do now. `plain`: another way. `quiet`: small matters. `grave`: cannot be taken back. */
export type ButtonKind = 'primary' | 'plain' | 'quiet' | 'grave';

/** Class of a button, for links that look like one. */
export const buttonClass = (kind: ButtonKind = 'plain', size: 'usual' | 'work' = 'usual'): string =>
  `button button-${kind}${size === 'work' ? ' button-work' : ''}`;

interface ButtonProps {
  readonly children: ReactNode;
  readonly kind?: ButtonKind;
  /** `work`: larger, for gloves. */
  readonly size?: 'usual' | 'work';
  readonly type?: 'button' | 'submit';
  readonly isDisabled?: boolean;
  readonly onPress?: () => void;
  /** Name for those who hear it, where the words on it do not stand alone. */
  readonly label?: string;
}

/** The browser's own button: nothing needs to be loaded for it. */
export const Button = ({ children, kind, size, type = 'button', isDisabled, onPress, label }: ButtonProps) => (
  <button
    type={type}
    className={buttonClass(kind, size)}
    disabled={isDisabled}
    aria-label={label}
    onClick={() => onPress?.()}
  >
    {children}
  </button>
);
