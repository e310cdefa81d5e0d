/**
 * What a page means, beside how it looks (ISO 32000-1, 14.8: tagged PDF): a tree of parts that a reading machine walks
 * in its own order, whatever order they were drawn in. Only what is drawn through here is in the tree or is marked as
 * ornament.
 */
export interface Tags {
  /** A text; within a picture it is part of the picture. */
  text<T>(tag: string, draw: () => T): T;
  /** Rules, grounds, page numbers: what no one needs to hear. */
  ornament<T>(draw: () => T): T;
  /** A drawing that is heard as alt says it. */
  picture<T>(alt: string, draw: () => T): T;
  /** All that is drawn meanwhile belongs to one part: a table, a row, a section. */
  within<T>(tag: string, draw: () => T): T;
  /** A section at this place of the order, to be filled later and as often as wanted. */
  section(): <T>(draw: () => T) => T;
  end(): void;
}

export function createTags(doc: PDFKit.PDFDocument): Tags {
  const root = doc.struct('Document');
  doc.addStructure(root);
  const parents = [root];
  let silent = false;
  const parent = () => parents[parents.length - 1]!;

  /** One marked piece of the page, as a part of that kind. */
  const marked = <T>(tag: 'P', options: { alt?: string }, draw: () => T): T => {
    if (silent) return draw();
    silent = true;
    const part = doc.struct(tag, options);
    parent().add(part);
    const content = doc.markStructureContent(tag);
    const result = draw();
    doc.endMarkedContent();
    part.add(content);
    part.end();
    silent = false;
    return result;
  };
  const inside = <T>(element: PDFKit.PDFStructureElement, draw: () => T): T => {
    if (silent) return draw();
    parents.push(element);
    const result = draw();
    parents.pop();
    return result;
  };
  return {
    text: (tag, draw) => marked(tag as 'P', {}, draw),
    picture: (alt, draw) => marked('Figure' as 'P', { alt }, draw),
    ornament(draw) {
      if (silent) return draw();
      silent = true;
      doc.markContent('Artifact', { type: 'Layout' });
      const result = draw();
      doc.endMarkedContent();
      silent = false;
      return result;
    },
    within(tag, draw) {
      if (silent) return draw();
      const element = doc.struct(tag);
      parent().add(element);
      return inside(element, draw);
    },
    section() {
      const element = doc.struct('Sect');
      parent().add(element);
      return (draw) => inside(element, draw);
    },
    end: () => root.end(),
  };
}
