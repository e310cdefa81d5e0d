import type { Plugin } from 'vite';

const UNPACKS_FACES = /\/geometry\/adapters\/woff\.ts$/;

/**
 * A copy of fflate of its own for what unpacks faces, holding no more than that. The first load needs it; in one copy with
 * what writes and reads archives later, it would bring all of that along.
 */
export function leanFaces(): Plugin {
  return {
    name: 'lean-faces',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (source !== 'fflate' || !importer || !UNPACKS_FACES.test(importer)) return null;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && `${found.id}?faces`;
    },
  };
}
