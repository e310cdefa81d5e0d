/** Size on screen, CSS pixels. */
export interface SizePx {
  readonly width: number;
  readonly height: number;
}
