import { useRef, type ReactNode } from 'react';
import { Button } from './Button.tsx';

interface FileButtonProps {
  readonly accept: string;
  readonly multiple?: boolean;
  readonly testId?: string;
  readonly onFiles: (files: readonly File[]) => void;
  readonly children: ReactNode;
}

export function FileButton({ accept, multiple = false, testId, onFiles, children }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        data-testid={testId}
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
