/** Whether this browser can draw in three dimensions; tried on a canvas of its own, which is let go at once. */
export function hasWebGl(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  gl?.getExtension('WEBGL_lose_context')?.loseContext();
  return gl !== null;
}
