/** Two plates and the clamp between them, as one line: the sign of the house. */
export const Mark = () => (
  <svg className="bar-mark" viewBox="0 0 32 32" aria-hidden="true">
    <path d="M4 9 H28 M4 23 H28" />
    <path d="M16 3 V29 M11 5.5 H21 M11 26.5 H21" className="bar-mark-bolt" />
  </svg>
);
