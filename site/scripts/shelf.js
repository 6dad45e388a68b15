// The shelf: what the person keeps to fill forms from.
export function open() {}
