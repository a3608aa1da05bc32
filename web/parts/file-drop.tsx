import { type DragEvent, useState } from 'react';
import './file-drop.css';

interface FileDropProps {
  readonly label: string;
  readonly hint: string;
  /** As the attribute of the file field, such as `.json`. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
}

/** Takes one file, dropped or chosen. */
export function FileDrop({ label, hint, accept, onFile }: FileDropProps) {
  const [isOver, setOver] = useState(false);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const file = event.dataTransfer.files.item(0);
    if (file) onFile(file);
  };
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- dropping is the mouse's other way; the field inside takes keys
    <label
      className={isOver ? 'file-drop file-drop-over' : 'file-drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <input
        type="file"
        className="unseen"
        accept={accept}
        onChange={(event) => {
          const file = event.target.files?.item(0);
          // The same file chosen again must be told as well.
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
      <span className="file-drop-label">{label}</span>
      <span className="soft">{hint}</span>
    </label>
  );
}
