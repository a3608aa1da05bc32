import type { ReactNode } from 'react';
import { Dialog as AriaDialog } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { useReturnFocus } from './use-return-focus.ts';

interface DialogProps {
  readonly title: string;
  readonly children: ReactNode;
  /** Asked by Escape or a press beside it. */
  readonly onClose: () => void;
  /** `alertdialog`: something must be decided; a press beside it does not close it. */
  readonly role?: 'dialog' | 'alertdialog';
  readonly size?: 'usual' | 'wide';
}

/** A sheet laid over the page. Shown while it is rendered. */
export function Dialog({ title, children, onClose, role = 'dialog', size = 'usual' }: DialogProps) {
  useReturnFocus();
  return (
    <ModalOverlay
      isOpen
      isDismissable={role === 'dialog'}
      className="dialog-shade"
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Modal className={`dialog-frame dialog-${size}`}>
        <AriaDialog role={role} className="dialog">
          <Heading slot="title" className="dialog-title">
            {title}
          </Heading>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}

/** The buttons at the foot of a dialog, the weightiest first. */
export const DialogActions = ({ children }: { readonly children: ReactNode }) => (
  <div className="dialog-actions">{children}</div>
);
