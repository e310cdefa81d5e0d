export const PAGE_POLICY: string;
export const FRAME_POLICY: string;
