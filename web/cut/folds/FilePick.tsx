import { useRef, type ReactNode } from 'react';
import { Button } from '../../ui/Button.tsx';

interface FilePickProps {
  readonly accept: string;
  readonly multiple?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
  readonly children: ReactNode;
}

/** A button that asks for files. */
export function FilePick({ accept, multiple = false, onFiles, children }: FilePickProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        accept={accept}
        multiple={multiple}
        onChange={(e) => {
          const files = [...(e.target.files ?? [])];
          // the same file may be chosen again
          e.target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
      <Button kind="plain" onClick={() => input.current?.click()}>
        {children}
      </Button>
    </>
  );
}
