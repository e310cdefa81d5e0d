/** A picture in greys, 0 black to 255 white, row by row from the top. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly values: Uint8Array;
}
