import { expose } from 'comlink';
import { compose } from '../../geometry/artwork/compose.ts';
import { trace } from '../../geometry/artwork/trace.ts';
import { writePathData } from '../../geometry/measure/path-data.ts';
import { outlineBox } from '../../geometry/measure/outline-box.ts';
import { motifById } from '../../geometry/motifs/catalogue.ts';
import { drawMotif } from '../../geometry/motifs/draw-motif.ts';
import { beginBeats } from './beat.ts';
import type { ArtworkApi } from './artwork-api.ts';

const api: ArtworkApi = {
  compose: (shapes, cut) => Promise.resolve(compose(shapes, cut)),
  trace: (picture, wish) => Promise.resolve(trace(picture, wish)),
  motif: (id, options) => {
    const motif = motifById(id);
    const outline = motif ? drawMotif(motif, options) : [];
    const box = outlineBox(outline);
    return Promise.resolve({ path: writePathData(outline, 4), width: box ? box.maxX - box.minX : 1 });
  },
};

expose(api);
beginBeats();
