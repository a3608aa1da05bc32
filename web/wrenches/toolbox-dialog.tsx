import type { Wrench } from '@clampwright/core/wrench';
import { AdapterDialog } from './adapter-dialog.tsx';
import { CalibrationDialog } from './calibration-dialog.tsx';
import { ExtensionDialog } from './extension-dialog.tsx';
import { WrenchDialog } from './wrench-dialog.tsx';

/** What is being entered. */
export type DialogKind =
  | { readonly kind: 'wrench' | 'adapter' | 'extension' }
  | { readonly kind: 'calibration'; readonly wrench: Wrench };

interface ToolboxDialogProps {
  readonly open: DialogKind;
  readonly onClose: () => void;
}

export function ToolboxDialog({ open, onClose }: ToolboxDialogProps) {
  switch (open.kind) {
    case 'wrench':
      return <WrenchDialog onClose={onClose} />;
    case 'adapter':
      return <AdapterDialog onClose={onClose} />;
    case 'extension':
      return <ExtensionDialog onClose={onClose} />;
    case 'calibration':
      return <CalibrationDialog wrench={open.wrench} onClose={onClose} />;
  }
}
