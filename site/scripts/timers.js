// Timers.
export function open() {}
