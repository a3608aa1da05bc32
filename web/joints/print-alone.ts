/** Prints one figure of the page and nothing else. */
export function printAlone(figure: Element): void {
  figure.classList.add('printed-alone');
  globalThis.addEventListener('afterprint', () => figure.classList.remove('printed-alone'), { once: true });
  globalThis.print();
}
