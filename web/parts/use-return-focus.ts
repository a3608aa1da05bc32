import { useEffect, useState } from 'react';

const DIALOG = '[role=dialog], [role=alertdialog]';

/** What on the page itself had the focus last when a dialog came; a dialog that follows another keeps it. */
let before: Element | undefined;

function remember(): void {
  const { activeElement } = document;
  if (activeElement && activeElement !== document.body && !activeElement.closest(DIALOG)) before = activeElement;
}

function giveBack(): void {
  if (document.activeElement !== document.body || document.querySelector(DIALOG)) return;
  const there = before?.isConnected ? before : document.querySelector('main');
  if (there instanceof HTMLElement || there instanceof SVGElement) there.focus({ preventScroll: true });
}

/**
 * Gives the focus back when the last of several dialogs has gone: to what opened the first, or, where that is gone too,
 * to the place. The dialogs themselves know only whatever was before them, which may have been a dialog.
 */
export function useReturnFocus(): void {
  useState(remember);
  useEffect(() => {
    return () => {
      // The dialog gives its own back in the next frame; this comes after it.
      requestAnimationFrame(() => requestAnimationFrame(giveBack));
    };
  }, []);
}
