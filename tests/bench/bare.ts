/** Floor: what it costs to start Node and do nothing. */
export {};
