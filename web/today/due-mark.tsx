/** Past due: a filled flag. Soon: an empty one. The words stand beside it. */
export const DueMark = ({ isPast }: { readonly isPast: boolean }) => (
  <svg className={`due-mark${isPast ? ' due-mark-past' : ''}`} viewBox="0 0 32 32" aria-hidden="true">
    <path d="M8 4 V28" />
    <path d="M8 5 H27 L22 11 L27 17 H8 Z" className="due-mark-cloth" />
  </svg>
);
