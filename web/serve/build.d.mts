export const DIST: string;
export function buildWhenStale(): void;
