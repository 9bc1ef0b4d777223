/** An id is the name of a folder, a file or an address, and of what its author refers to. */
export const idPattern = /^[a-z][a-z0-9-]*$/;
