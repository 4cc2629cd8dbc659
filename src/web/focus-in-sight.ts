/** Brings what has the focus wholly into sight, clear of the bar at the foot. */
export function bringFocusIntoSight(): void {
  window.document
    .querySelector(":focus-visible")
    ?.scrollIntoView({ block: "nearest", inline: "nearest", behavior: "instant" });
}

/**
 * After each Tab: by itself the browser leaves a link half outside a table that scrolls, and of a large box it brings
 * only the line of the cursor into sight.
 */
export function keepFocusInSight(): void {
  window.document.addEventListener("keyup", ({ key }) => {
    if (key === "Tab") bringFocusIntoSight();
  });
}
