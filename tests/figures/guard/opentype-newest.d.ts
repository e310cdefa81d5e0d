/** The newest major under a name of its own, so that both can be held against each other in one run. */
declare module 'opentype-newest' {
  import type opentype from 'opentype.js';
  const newest: Pick<typeof opentype, 'parse'>;
  export default newest;
}
