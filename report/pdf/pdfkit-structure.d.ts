/** Attributes of structure elements that pdfkit 0.20 writes and its type declarations do not have yet. */
declare namespace PDFKit.Mixins {
  interface StructureElementOptions {
    /** Whose header a `TH` is (ISO 32000-1:2008, table 349). */
    scope?: 'Row' | 'Column' | 'Both';
    /** Where a figure stands: left, top, right, bottom from the upper left corner of the page, pt. */
    bbox?: [number, number, number, number];
  }
}
