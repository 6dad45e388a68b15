// The mix log.
export function open() {}
