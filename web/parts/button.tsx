import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components/Button';

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

export function Button({ children, kind, size, type = 'button', onPress, label, ...rest }: ButtonProps) {
  return (
    <AriaButton
      {...rest}
      type={type}
      className={buttonClass(kind, size)}
      {...(onPress ? { onPress: () => onPress() } : {})}
      {...(label ? { 'aria-label': label } : {})}
    >
      {children}
    </AriaButton>
  );
}
