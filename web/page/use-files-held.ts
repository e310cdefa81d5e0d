import { useUi } from './page-context.ts';

/** True while no files are given, since the shop's own numbers are missing and nobody said that others will do. */
export function useFilesHeld(): boolean {
  return useUi((s) => s.numbers !== undefined && !s.foreignFiles);
}
